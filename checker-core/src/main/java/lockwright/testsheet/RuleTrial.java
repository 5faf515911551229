package lockwright.testsheet;

import java.util.List;
import java.util.Optional;
import lockwright.railway.control.ArmControl;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;

/**
 * What holds a lever besides the entries of the table, such as a token lock or a lever lock, or an
 * arm by its control, to be tried.
 *
 * @param wanting the one thing that is not as the lever or the arm needs it, in words; empty, if
 *     all is
 */
public record RuleTrial(Tried tried, Optional<String> wanting) {
  /** What is tried. */
  public sealed interface Tried {}

  /** A lever, as it leaves one end. */
  public record AtLever(String lever, Position from) implements Tried {
    /** The stroke that is tried. */
    public Event.LeverMoves stroke() {
      return Strokes.whole(lever, from);
    }

    Event.LeverMoves half() {
      return new Event.LeverMoves(lever, from, Position.M);
    }
  }

  /**
   * An arm with a control.
   *
   * @param levers those that stand reversed to give the arm, alone or together; the others of the
   *     arm are normal
   */
  public record AtArm(ArmControl control, List<String> levers) implements Tried {
    public AtArm {
      levers = List.copyOf(levers);
    }
  }
}
