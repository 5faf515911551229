package lockwright.proof.pdr;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import lockwright.system.Among;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;
import org.junit.jupiter.api.Test;

class RememberedTest {
  /** Two variables of three values; the one transition steps the first from 0 to 1. */
  private static final TransitionSystem SYSTEM =
      new TransitionSystem(
          List.of(new Variable("a", 3), new Variable("b", 3)),
          Term.is(0, 0),
          List.of(
              new Transition(
                  "step", Term.is(0, 0), List.of(Transition.Effect.of(0, List.of(1, 1, 2))))),
          List.of(),
          List.of());

  private final Remembered remembered = new Remembered(SYSTEM);

  @Test
  void no_step_into_a_cube_is_none_into_a_smaller_and_from_no_earlier_layer() {
    remembered.noStep(0, cube(new Among(0, List.of(1, 2))), 3, (Cube) null);
    Cube smaller = cube(new Among(0, List.of(1)), new Among(1, List.of(2)));

    assertThat(none(smaller, 3)).isEqualTo(bits(0));
    assertThat(none(smaller, 2)).isEqualTo(bits(0));
    assertThat(none(smaller, 4)).as("a later layer has more states").isNull();
    assertThat(none(cube(new Among(0, List.of(0, 1))), 3)).as("not within").isNull();
    assertThat(none(cube(new Among(1, List.of(2))), 3)).as("wider").isNull();
  }

  @Test
  void what_was_asked_outside_a_cube_holds_outside_those_that_contain_it_alone() {
    Cube outside = cube(new Among(0, List.of(1)), new Among(1, List.of(2)));
    remembered.noStep(0, cube(new Among(0, List.of(1))), 3, outside);

    assertThat(none(outside, 3)).isEqualTo(bits(0));
    assertThat(none(cube(new Among(0, List.of(1))), 3)).isEqualTo(bits(0));
    assertThat(none(cube(new Among(0, List.of(1)), new Among(1, List.of(0))), 3)).isNull();
  }

  @Test
  void a_state_is_remembered_while_it_is_there_and_leads_from_outside_into_the_cube() {
    remembered.state(new int[] {0, 2}, 2);
    Cube after = cube(new Among(0, List.of(1)));

    assertThat(remembered.predecessor(after, 2, s -> true).state()).containsExactly(0, 2);
    assertThat(remembered.predecessor(after, 3, s -> true)).isNotNull();
    assertThat(remembered.predecessor(after, 1, s -> true)).as("an earlier layer").isNull();
    assertThat(remembered.predecessor(after, 2, s -> false)).as("blocked since").isNull();
    assertThat(remembered.predecessor(cube(new Among(1, List.of(0))), 2, s -> true)).isNull();
    assertThat(remembered.predecessor(cube(new Among(1, List.of(2))), 2, s -> true))
        .as("inside already")
        .isNull();
  }

  @Test
  void a_transition_whose_guard_does_not_hold_leads_nowhere() {
    remembered.state(new int[] {1, 0}, 2);

    assertThat(remembered.predecessor(cube(new Among(0, List.of(0))), 2, s -> true)).isNull();
    assertThat(
            remembered.predecessor(
                cube(new Among(0, List.of(0, 2)), new Among(1, List.of(0))), 2, s -> true))
        .isNull();
  }

  /** The parts needed, or null if nothing is remembered. */
  private BitSet none(Cube cube, int layer) {
    BitSet needed = new BitSet();
    return remembered.noStep(0, cube, layer, needed) ? needed : null;
  }

  private static BitSet bits(int one) {
    BitSet bits = new BitSet();
    bits.set(one);
    return bits;
  }

  private static Cube cube(Among... parts) {
    return new Cube(List.of(parts));
  }
}
