package lockwright.testsheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.testsheet.RuleTrial.AtArm;
import lockwright.testsheet.RuleTrial.AtLever;
import lockwright.testsheet.RuleTrial.Tried;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.Condition;
import lockwright.working.Hold;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Writes the lines that try what holds levers besides the table, and arms by their controls: each
 * thing for itself wanting, then nothing wanting. All else lets the lever move, or gives the arm;
 * so a frame that lacks the one thing fails the line.
 */
final class RuleWriter {
  private final Box box;
  private final Working parted;
  private final Working whole;
  private final Walks walks;
  private final int before;
  private final List<RuleLine> lines = new ArrayList<>();
  private final List<RuleLines.NotTried> notTried = new ArrayList<>();
  private State now;

  /**
   * @param now where the lines of the table end
   * @param before how many they are
   */
  RuleWriter(Box box, Working parted, Working whole, Walks walks, State now, int before) {
    this.box = box;
    this.parted = parted;
    this.whole = whole;
    this.walks = walks;
    this.now = now;
    this.before = before;
  }

  RuleLines all() {
    for (Lever lever : box.frame().levers()) {
      if (lever.work().moves()) {
        atLever(new AtLever(lever.id(), Position.N));
        atLever(new AtLever(lever.id(), Position.R));
      }
    }
    for (ArmControl control : box.controls().armControls()) {
      List<String> needs = control.needs().stream().map(Contact::words).toList();
      given(control.signal()).forEach(levers -> each(new AtArm(control, levers), needs));
    }
    return new RuleLines(lines, notTried);
  }

  private void atLever(AtLever tried) {
    List<String> rules =
        needs(parted.movement(tried.half()))
            .filter(n -> n.hold().entry().isEmpty() && !n.itself())
            .map(n -> n.hold().words())
            .toList();
    each(tried, rules);
  }

  private static Stream<Need> needs(Optional<Movement> movement) {
    return movement.orElseThrow().requires().stream();
  }

  /** 2.7: the levers that give an arm, those together that give it only together. */
  private List<List<String>> given(String signal) {
    List<Lever> levers = box.frame().giving(signal);
    List<String> ids = levers.stream().map(Lever::id).toList();
    return levers.stream().anyMatch(l -> ((Work.OfSignal) l.work()).slotted())
        ? List.of(ids)
        : ids.stream().map(List::of).toList();
  }

  private void each(Tried tried, List<String> needs) {
    if (!needs.isEmpty()) {
      needs.forEach(n -> write(new RuleTrial(tried, Optional.of(n))));
      write(new RuleTrial(tried, Optional.empty()));
    }
  }

  /** Goes to where it can be tried, tries it, and writes down what was played. */
  private void write(RuleTrial trial) {
    Outcome outcome = walks.shortest(List.of(now), List.copyOf(goal(trial)));
    if (!(outcome instanceof Outcome.Found found)) {
      notTried.add(new RuleLines.NotTried(trial, why(trial, outcome)));
      return;
    }
    State at = found.walk().to();
    boolean asPlanned =
        trial.tried() instanceof AtLever lever
            ? shows(lever, trial.wanting(), at)
            : shows((AtArm) trial.tried(), trial.wanting(), at);
    if (!asPlanned) {
      throw new IllegalStateException(trial + " is not as planned in " + at);
    }
    RuleLine line = new RuleLine(before + lines.size() + 1, found.walk().events(), at, trial);
    lines.add(line);
    now =
        line.free() && trial.tried() instanceof AtLever lever ? whole.make(at, lever.stroke()) : at;
  }

  /** Held by what is wanting, and by no piece that is not marked; or free. */
  private boolean shows(AtLever lever, Optional<String> wanting, State at) {
    List<String> surely = parted.holds(at, lever.half()).stream().map(Hold::words).toList();
    return surely.equals(wanting.stream().toList())
        && whole.holds(at, lever.stroke()).stream()
            .allMatch(h -> wanting.isPresent() && h.entry().isEmpty());
  }

  /** Surely on, or surely off. */
  private boolean shows(AtArm arm, Optional<String> wanting, State at) {
    String signal = arm.control().signal();
    return wanting.isPresent() != whole.surelyOff(signal).evaluate(at)
        && wanting.isPresent() != whole.off(signal).evaluate(at);
  }

  private Set<Condition> goal(RuleTrial trial) {
    Set<Condition> goal = new LinkedHashSet<>();
    if (trial.tried() instanceof AtLever lever) {
      needs(parted.movement(lever.half()))
          .map(n -> wanted(n.condition(), n.hold().words(), trial))
          .forEach(goal::add);
      needs(whole.movement(lever.stroke()))
          .filter(n -> trial.wanting().isEmpty() || n.hold().entry().isPresent())
          .map(Need::condition)
          .forEach(goal::add);
    } else if (trial.tried() instanceof AtArm arm) {
      for (Contact contact : arm.control().needs()) {
        goal.add(wanted(whole.met(contact), contact.words(), trial));
      }
      for (Lever lever : box.frame().giving(arm.control().signal())) {
        boolean gives = arm.levers().contains(lever.id());
        goal.add(whole.stands(lever.id(), gives ? Position.R : Position.N));
      }
    }
    return goal;
  }

  private static Condition wanted(Condition need, String words, RuleTrial trial) {
    return trial.wanting().filter(words::equals).isPresent() ? Condition.not(need) : need;
  }

  private static String why(RuleTrial trial, Outcome outcome) {
    if (outcome instanceof Outcome.NotWithin limit) {
      return "not found within " + limit.movements() + " movements, where a limit was met";
    }
    return trial.wanting().isPresent()
        ? "in no state that can be reached is it the one thing wanting"
        : "in no state that can be reached is nothing wanting";
  }
}
