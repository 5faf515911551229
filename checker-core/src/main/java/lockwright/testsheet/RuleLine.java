package lockwright.testsheet;

import java.util.List;
import lockwright.railway.words.Event;
import lockwright.working.State;

/**
 * One line of the sheet that tries what holds a lever besides the table, or an arm, as it was
 * played: with all as it needs it the lever is free, or the arm off; else nothing but the one thing
 * wanting holds the lever, or the arm on.
 *
 * @param number after those of the table
 * @param setUp the movements before it, each of which is to be free
 * @param at the state in which it is tried
 */
public record RuleLine(int number, List<Event> setUp, State at, RuleTrial trial) {
  public RuleLine {
    setUp = List.copyOf(setUp);
  }

  /** Whether the lever is to be free, or the arm off. */
  public boolean free() {
    return trial.wanting().isEmpty();
  }

  int movements() {
    return setUp.size() + (free() && trial.tried() instanceof RuleTrial.AtLever ? 1 : 0);
  }
}
