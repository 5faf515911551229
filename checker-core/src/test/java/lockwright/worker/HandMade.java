package lockwright.worker;

import java.util.ArrayList;
import java.util.List;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Transition.Effect;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;

/** Small systems, built by hand. */
final class HandMade {
  private HandMade() {}

  /**
   * A signal that is pulled and put back only over reversed points, which it then holds: off over
   * normal points is never reached; off at all, by two transitions.
   */
  static TransitionSystem signalOverPoints() {
    return new TransitionSystem(
        List.of(new Variable("points", 2), new Variable("signal", 2)),
        Term.and(Term.is(0, 0), Term.is(1, 0)),
        List.of(
            moving("reverse points", Term.is(1, 0), 0, 1),
            moving("restore points", Term.is(1, 0), 0, 0),
            moving("pull signal", Term.is(0, 1), 1, 1),
            moving("put signal back", Term.TRUE, 1, 0)),
        List.of(
            reaching("off over normal points", Term.and(Term.is(0, 0), Term.is(1, 1))),
            reaching("off", Term.is(1, 1))),
        List.of());
  }

  /** As before, with a counter beside it, whose last state is too far away to be found in time. */
  static TransitionSystem withFarTarget() {
    TransitionSystem near = signalOverPoints();
    int bits = 24;
    List<Variable> variables = new ArrayList<>(near.variables());
    List<Term> initial = new ArrayList<>(List.of(near.initial()));
    List<Transition> transitions = new ArrayList<>(near.transitions());
    List<Term> ones = new ArrayList<>();
    List<Effect> resets = new ArrayList<>();
    for (int bit = 0; bit < bits; bit++) {
      int variable = variables.size();
      variables.add(new Variable("bit " + bit, 2));
      initial.add(Term.is(variable, 0));
      List<Term> guard = new ArrayList<>(ones);
      guard.add(Term.is(variable, 0));
      List<Effect> effects = new ArrayList<>(resets);
      effects.add(Effect.of(variable, List.of(1, 1)));
      transitions.add(new Transition("count to bit " + bit, Term.and(guard), effects));
      ones.add(Term.is(variable, 1));
      resets.add(Effect.of(variable, List.of(0, 0)));
    }
    List<Target> targets = new ArrayList<>(near.targets());
    targets.add(reaching("far", Term.and(ones)));
    return new TransitionSystem(variables, Term.and(initial), transitions, targets, List.of());
  }

  private static Transition moving(String name, Term guard, int variable, int to) {
    return new Transition(name, guard, List.of(Effect.of(variable, List.of(to, to))));
  }

  private static Target reaching(String name, Term states) {
    return new Target(name, states, List.of(), true);
  }
}
