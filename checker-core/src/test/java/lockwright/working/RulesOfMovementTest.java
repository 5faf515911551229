package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.words.Event;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Order and rotation: docs/meaning.md 3.4. */
class RulesOfMovementTest {
  /** Order, 3.4: common practice, no source. */
  @Test
  void a_lever_that_starts_only_with_another_normal_is_free_of_it_afterwards() {
    Working working = Working.parted(threeSignals("a starts only with normal b").box());
    Frames frame = Frames.pulled(working, "b");
    assertThat(frame.free("a")).isFalse();
    State bothOff = Frames.pulled(working, "a", "b").state();
    assertThat(bothOff.values()).containsEntry("lever a", "R").containsEntry("lever b", "R");
  }

  @Test
  void order_under_conditions_is_asked_for_only_while_they_hold() {
    Working working = Working.parted(threeSignals("a starts only with normal b when c R").box());
    assertThat(Frames.pulled(working, "b").free("a")).isTrue();
    assertThat(Frames.pulled(working, "b", "c").free("a")).isFalse();
  }

  /** Rotation, 3.4: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "'',                              true",
    "a N>M/a M>N,                     false",
    "a N>M/a M>R/a R>M/a M>N,         false",
    "a N>M/a M>N/b N>M/b M>N,         false",
    "a N>M/a M>N/b N>M/b M>R,         false",
    "a N>M/a M>N/b N>M/b M>R/b R>M,   false",
    "a N>M/b N>M/b M>R/b R>M/b M>N/a M>N, true",
    "a N>M/a M>N/b N>M/b M>R/b R>M/b M>N, true",
    "b N>M/b M>R/a N>M/a M>N/b R>M/b M>N, true",
    "b N>M/b M>R/b R>M/a N>M/a M>N/b M>N, false"
  })
  void a_lever_is_not_pulled_again_before_another_has_been_and_is_back(String moved, boolean free) {
    Working working = Working.parted(threeSignals("a not again before b").box());
    State state = working.beginnings().iterator().next();
    for (String one : moved.isEmpty() ? new String[0] : moved.split("/")) {
      state = working.make(state, strokeOf(one));
    }
    assertThat(working.free(state, strokeOf("a N>M"))).isEqualTo(free);
  }

  private static Event strokeOf(String words) {
    return new Event.LeverMoves(
        words.substring(0, 1),
        Position.valueOf(words.substring(2, 3)),
        Position.valueOf(words.substring(4)));
  }

  private static HandBox threeSignals(String entry) {
    return new HandBox()
        .signal("a", Arm.STOP)
        .signal("b", Arm.STOP)
        .signal("c", Arm.STOP)
        .locking(entry);
  }

  /** What allows most lets the other stand at R as this one starts; what allows least does not. */
  @Test
  void with_whole_strokes_the_other_is_pulled_after_this_one_has_started() {
    Working working = Working.whole(threeSignals("a not again before b").box());
    State state = working.beginnings().iterator().next();
    for (String one : "b N>R/a N>R/a R>N/b R>N".split("/")) {
      state = working.make(state, strokeOf(one));
    }
    assertThat(working.free(state, strokeOf("a N>R"))).isFalse();
    for (String one : "b N>R/b R>N".split("/")) {
      state = working.make(state, strokeOf(one));
    }
    assertThat(working.free(state, strokeOf("a N>R"))).isTrue();
  }
}
