package lockwright.report;

import java.util.Locale;
import lockwright.railway.requirement.Expectation;

/** An expectation, and what became of it. */
public record Judgement(Expectation expectation, State state) {
  /** Only one that holds lets a build pass. */
  public enum State {
    /** The verdict is exactly the one written, and a waiver's last day is not over. */
    HOLDS,
    /** The verdict is another, be it better or worse. */
    NO_LONGER_BITES,
    /** The verdict is the one written, but the waiver's last day is over. */
    PAST_ITS_DATE;

    /** "no longer bites". */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  public boolean holds() {
    return state == State.HOLDS;
  }
}
