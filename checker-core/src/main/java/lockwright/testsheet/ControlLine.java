package lockwright.testsheet;

import java.util.List;
import lockwright.railway.words.Event;
import lockwright.working.State;

/**
 * One line of the sheet that tries a lever lock or an arm control, as it was played: with all that
 * it needs the lever is free, or the arm off; else nothing but this holds the lever, or the arm on.
 *
 * @param number after those of the table
 * @param setUp the movements before it, each of which is to be free
 * @param at the state in which it is tried
 */
public record ControlLine(int number, List<Event> setUp, State at, ControlTrial trial) {
  public ControlLine {
    setUp = List.copyOf(setUp);
  }

  /** Whether the lever is to be free, or the arm off. */
  public boolean free() {
    return trial.lacking().isEmpty();
  }

  int movements() {
    return setUp.size() + (free() && trial.tried() instanceof ControlTrial.AtLever ? 1 : 0);
  }
}
