package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Points worked electrically and rods that break, docs/meaning.md 2.8: what is free in a state, by
 * hand. 49 CFR 236.762, of indication locking; for rods, Board of Trade Requirements, no. 5, as
 * printed in W. H. Mills, Railway Construction (1898). That the current may drive points either way
 * while the lever is checked is a choice of ours.
 */
class IndicationTest {
  /** Lever 4 works 4A and 4B. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "N N N; lever 4 N>M",
        "M N N; lever 4 M>N, points 4A N>M, points 4B N>M",
        "M M N; points 4A M>R, points 4A M>N, points 4B N>M",
        "M R N; points 4A R>M, points 4B N>M",
        "M R R; lever 4 M>R, points 4A R>M, points 4B R>M",
        "R R R; lever 4 R>M",
      })
  void the_stroke_ends_only_when_all_points_have_answered(String stand, String free) {
    Working working = Working.parted(new HandBox().electric("4", "4A", "4B").box());
    assertThat(free(working, state(working, stand.split(" ")))).isEqualTo(free);
  }

  @Test
  void a_whole_stroke_is_that_of_the_points_too() {
    Working working = Working.whole(new HandBox().electric("4", "4A", "4B").box());
    State normal = state(working, "N", "N", "N");
    assertThat(free(working, normal)).isEqualTo("lever 4 N>R");
    State reverse = working.make(normal, working.movements().get(0).event());
    assertThat(reverse).isEqualTo(state(working, "R", "R", "R"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "N; whole; lever 4 N>M, rod of 4 breaks at N",
        "M; whole; lever 4 M>R, lever 4 M>N, rod of 4 breaks at M",
        "R; broken at N; lever 4 R>M",
        "M; broken at R; lever 4 M>R, lever 4 M>N",
      })
  void a_rod_breaks_once_and_where_the_lever_has_the_points(String lever, String rod, String free) {
    Working working = Working.parted(new HandBox().points("4").brokenRods("4").box());
    assertThat(free(working, state(working, lever, rod))).isEqualTo(free);
    assertThat(working.movements()).hasSize(7);
  }

  @Test
  void by_whole_strokes_no_rod_breaks() {
    Working working = Working.whole(new HandBox().points("4").brokenRods("4").box());
    assertThat(working.movements()).hasSize(2);
  }

  private static String free(Working working, State state) {
    return working.movements().stream()
        .filter(m -> working.free(state, m.event()))
        .map(m -> m.event().key())
        .collect(Collectors.joining(", "));
  }

  private static State state(Working working, String... stand) {
    Map<String, String> values = new TreeMap<>();
    assertThat(working.quantities()).hasSameSizeAs(List.of(stand));
    for (int i = 0; i < stand.length; i++) {
      values.put(working.quantities().get(i).key(), stand[i]);
    }
    return working.state(values);
  }
}
