package lockwright.testsheet;

import java.util.List;
import java.util.Optional;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.LeverLock;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;

/**
 * A lever lock or an arm control to be tried.
 *
 * @param lacking the one thing that it needs and has not; empty, if it has all
 */
public record ControlTrial(Tried tried, Optional<Contact> lacking) {
  /** What is tried: 2.9 of {@code docs/meaning.md}. */
  public sealed interface Tried {
    List<Contact> needs();
  }

  /** A lever lock, as its lever leaves one end. */
  public record AtLever(LeverLock lock, Position from) implements Tried {
    /** The stroke that is tried. */
    public Event.LeverMoves stroke() {
      return Strokes.whole(lock.lever(), from);
    }

    @Override
    public List<Contact> needs() {
      return from == Position.N ? lock.leavingNormal() : lock.leavingReversed();
    }
  }

  /**
   * An arm control.
   *
   * @param levers those that stand reversed to give the arm, alone or together; the others of the
   *     arm are normal
   */
  public record AtArm(ArmControl control, List<String> levers) implements Tried {
    public AtArm {
      levers = List.copyOf(levers);
    }

    @Override
    public List<Contact> needs() {
      return control.needs();
    }
  }
}
