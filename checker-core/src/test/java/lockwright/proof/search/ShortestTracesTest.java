package lockwright.proof.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Sat4jSolvers;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Transition.Effect;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** That the trace which is given is a shortest; random boxes are tried against brute force. */
class ShortestTracesTest {
  /** The state is reached by the later transition, a making after the earlier one. */
  @Test
  void a_state_is_nearer_than_a_making_of_the_same_moment() {
    Target either =
        new Target("either", Term.is(1, 1), List.of(new Target.Making(2, Term.is(0, 1))), true);

    assertThat(reached(either, Optional.empty(), 3))
        .isEqualTo(new Trace(List.of(0, 0), List.of(1)));
  }

  @Test
  void what_another_engine_found_is_followed_to_a_state_at_its_very_end() {
    Target either =
        new Target("either", Term.is(1, 1), List.of(new Target.Making(2, Term.FALSE)), true);
    Trace known = new Trace(List.of(0, 0), List.of(1));

    assertThat(reached(either, Optional.of(known), 0)).isEqualTo(known);
  }

  /** Two variables, each set by a transition, and one that clears the first. */
  private static Trace reached(Target target, Optional<Trace> told, int depth) {
    TransitionSystem system =
        new TransitionSystem(
            List.of(new Variable("a", 2), new Variable("b", 2)),
            Term.and(Term.is(0, 0), Term.is(1, 0)),
            List.of(
                new Transition("set a", Term.TRUE, List.of(Effect.of(0, List.of(1, 1)))),
                new Transition("set b", Term.TRUE, List.of(Effect.of(1, List.of(1, 1)))),
                new Transition("clear a", Term.TRUE, List.of(Effect.of(0, List.of(0, 0))))),
            List.of(target),
            List.of());
    Knowledge known = Knowledge.none(system);
    if (told.isPresent()) {
      known = known.with(target.name(), new Verdict.Reached(told.get(), false), "another");
    }
    return new ShortestTraces(depth)
        .improve(new Problem(system, new Sat4jSolvers(), progress -> {}), known)
        .verdicts()
        .get(target.name())
        .fold(n -> null, reached -> reached.shortest() ? reached.trace() : null, unknown -> null);
  }
}
