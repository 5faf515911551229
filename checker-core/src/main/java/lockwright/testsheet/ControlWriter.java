package lockwright.testsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.LeverLock;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.words.Event;
import lockwright.testsheet.ControlTrial.AtArm;
import lockwright.testsheet.ControlTrial.AtLever;
import lockwright.testsheet.ControlTrial.Tried;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.Condition;
import lockwright.working.Hold;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Writes the lines that try lever locks and arm controls: with each thing that one needs for itself
 * wanting, then with nothing wanting. All else lets the lever move, or gives the arm; so a lock or
 * a control that lacks the contact fails the line.
 */
final class ControlWriter {
  private final Box box;
  private final Working parted;
  private final Working whole;
  private final Walks walks;
  private final int before;
  private final List<ControlLine> lines = new ArrayList<>();
  private final List<ControlLines.NotTried> notTried = new ArrayList<>();
  private State now;

  /**
   * @param now where the lines of the table end
   * @param before how many they are
   */
  ControlWriter(Box box, Working parted, Working whole, Walks walks, State now, int before) {
    this.box = box;
    this.parted = parted;
    this.whole = whole;
    this.walks = walks;
    this.now = now;
    this.before = before;
  }

  ControlLines all() {
    for (LeverLock lock : box.controls().leverLocks()) {
      each(new AtLever(lock, Position.N));
      each(new AtLever(lock, Position.R));
    }
    for (ArmControl control : box.controls().armControls()) {
      given(control.signal()).forEach(levers -> each(new AtArm(control, levers)));
    }
    return new ControlLines(lines, notTried);
  }

  /** 2.7: the levers that give an arm, those together that give it only together. */
  private List<List<String>> given(String signal) {
    List<Lever> levers = box.frame().giving(signal);
    List<String> ids = levers.stream().map(Lever::id).toList();
    return levers.stream().anyMatch(l -> ((Work.OfSignal) l.work()).slotted())
        ? List.of(ids)
        : ids.stream().map(List::of).toList();
  }

  private void each(Tried tried) {
    if (!tried.needs().isEmpty()) {
      tried.needs().forEach(c -> write(new ControlTrial(tried, Optional.of(c))));
      write(new ControlTrial(tried, Optional.empty()));
    }
  }

  /** Goes to where it can be tried, tries it, and writes down what was played. */
  private void write(ControlTrial trial) {
    if (trial.tried() instanceof AtLever l && !box.frame().lever(l.lock().lever()).work().moves()) {
      notTried.add(
          new ControlLines.NotTried(trial, "lever " + l.lock().lever() + " does not move"));
      return;
    }
    Outcome outcome = walks.shortest(List.of(now), goal(trial));
    if (!(outcome instanceof Outcome.Found found)) {
      notTried.add(new ControlLines.NotTried(trial, why(trial, outcome)));
      return;
    }
    State at = found.walk().to();
    State after = at;
    if (trial.tried() instanceof AtLever lever) {
      List<Hold> held = parted.holds(at, half(lever));
      List<Hold> perhaps = whole.holds(at, lever.stroke());
      int expected = trial.lacking().isPresent() ? 1 : 0;
      if (held.size() != expected || perhaps.size() != expected) {
        throw new IllegalStateException(trial + " is not as planned: " + held + perhaps);
      }
      after = expected == 1 ? at : whole.make(at, lever.stroke());
    }
    lines.add(new ControlLine(before + lines.size() + 1, found.walk().events(), at, trial));
    now = after;
  }

  private List<Condition> goal(ControlTrial trial) {
    List<Condition> goal = new ArrayList<>();
    List<Condition> contacts = new ArrayList<>();
    for (Contact contact : trial.tried().needs()) {
      Condition met = whole.met(contact);
      contacts.add(met);
      goal.add(trial.lacking().filter(contact::equals).isPresent() ? Condition.not(met) : met);
    }
    if (trial.tried() instanceof AtLever lever) {
      goal.add(whole.stands(lever.lock().lever(), lever.from()));
      Stream.of(parted.movement(half(lever)), whole.movement(lever.stroke()))
          .flatMap(m -> m.orElseThrow().requires().stream())
          .map(Need::condition)
          .filter(c -> !contacts.contains(c))
          .distinct()
          .forEach(goal::add);
    } else if (trial.tried() instanceof AtArm arm) {
      for (Lever lever : box.frame().giving(arm.control().signal())) {
        boolean gives = arm.levers().contains(lever.id());
        goal.add(whole.stands(lever.id(), gives ? Position.R : Position.N));
      }
    }
    return goal;
  }

  private static String why(ControlTrial trial, Outcome outcome) {
    if (outcome instanceof Outcome.NotWithin limit) {
      return "not found within " + limit.movements() + " movements, where a limit was met";
    }
    return trial.lacking().isPresent()
        ? "in no state that can be reached is it the one thing wanting"
        : "in no state that can be reached is nothing wanting";
  }

  private static Event.LeverMoves half(AtLever lever) {
    return new Event.LeverMoves(lever.lock().lever(), lever.from(), Position.M);
  }
}
