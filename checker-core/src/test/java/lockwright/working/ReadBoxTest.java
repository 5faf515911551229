package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.requirement.Requirement;
import org.junit.jupiter.api.Test;

/**
 * The junction of the Indian Railways Signal Engineering Manual, 12.26.7(c)(iii), read from files:
 * what it must keep is derived from its plan, and kept by its printed table.
 */
class ReadBoxTest {
  private static final Box JUNCTION = read();

  private static Box read() {
    try {
      Path folder = Path.of(ReadBoxTest.class.getResource("/boxes/e1-junction").toURI());
      return BoxBuilder.read(folder).box().orElseThrow();
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void the_printed_table_keeps_all_that_the_plan_asks_for() {
    BruteForce all = BruteForce.of(Working.parted(JUNCTION));
    assertThat(List.of(all.states(), (int) all.movements())).containsExactly(11, 20);
    assertThat(safety()).isNotEmpty().allMatch(r -> all.shortest(r).isEmpty());
    assertThat(safety())
        .flatExtracting(Requirement::speaksAbout)
        .allMatch(s -> all.shortest(s).isPresent());
    BruteForce whole = BruteForce.of(Working.whole(JUNCTION));
    assertThat(JUNCTION.requirements())
        .filteredOn(Requirement::possibility)
        .hasSize(7)
        .allMatch(
            r ->
                whole.shortest(r).isPresent()
                    != (r instanceof Requirement.FrameCanBeRestored)); // else it is broken
  }

  private static List<Requirement> safety() {
    return JUNCTION.requirements().stream().filter(r -> !r.possibility()).toList();
  }
}
