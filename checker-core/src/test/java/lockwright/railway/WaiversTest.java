package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What `waivers.yaml` may say of a box. The meaning is our own: `docs/meaning.md` 7. */
class WaiversTest {
  @TempDir private Path folder;

  @BeforeEach
  void a_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
  }

  private BoxBuilder.Built with(String waivers) throws IOException {
    SpecsOnDisk.write(folder, "waivers.yaml", waivers);
    return BoxBuilder.read(folder);
  }

  @Test
  void a_box_without_the_file_expects_nothing() {
    assertThat(BoxBuilder.read(folder).expectations()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"{}", "expected: {}", "waived: {}"})
  void so_does_an_empty_list(String empty) throws IOException {
    BoxBuilder.Built built = with(empty + "\n");
    assertThat(built.problems()).isEmpty();
    assertThat(built.expectations()).isEmpty();
    assertThat(built.digests()).containsKey("waivers.yaml");
  }

  @Test
  void the_nearest_name_is_offered() throws IOException {
    assertThat(
            with("expected:\n  'point set: signal 1': {verdict: broken, reason: r}\n").problems())
        .hasSize(1)
        .allMatch(p -> p.code().equals("WAIV-101"))
        .allMatch(p -> p.fix().startsWith("did you mean 'points set: signal 1'?"));
  }

  /** The box is whole but for what is said of it, so both kinds of fault are told at once. */
  @Test
  void a_fault_of_form_hides_no_unknown_name() throws IOException {
    BoxBuilder.Built built =
        with(
            """
            expected:
              'points set: signal 9': {verdict: broken, reason: r}
              'points set: signal 1': {verdict: bad, reason: r, until: 2031-04-30}
            """);
    assertThat(SpecsOnDisk.places(built.problems()))
        .containsExactly(
            "WAIV-101 waivers.yaml:2:4",
            "YAML-111 waivers.yaml:3:37",
            "YAML-106 waivers.yaml:3:53");
    assertThat(built.box()).isEmpty();
    assertThat(built.expectations()).isEmpty();
  }

  @Test
  void the_one_possibility_that_a_sequence_breaks_may_be_expected_to_be_broken()
      throws IOException {
    String restored = "expected:\n  'frame can be restored: all levers': {verdict: ";
    assertThat(with(restored + "broken, reason: r}\n").problems()).isEmpty();
    assertThat(with(restored + "undecided, reason: r}\n").problems()).isEmpty();
    for (String never : List.of("impossible", "empty")) {
      assertThat(with(restored + never + ", reason: r}\n").problems())
          .hasSize(1)
          .allMatch(p -> p.code().equals("WAIV-104"))
          .allMatch(p -> p.fix().equals("write broken or undecided"));
    }
    assertThat(
            with("expected:\n  'lever can be moved: lever 1': {verdict: broken, reason: r}\n")
                .problems())
        .hasSize(1)
        .allMatch(p -> p.fix().equals("write impossible or undecided"));
  }

  @Test
  void one_that_stands_twice_is_refused() throws IOException {
    String one = "  'points set: signal 1': {verdict: broken, reason: r}\n";
    assertThat(SpecsOnDisk.places(with("expected:\n" + one + one).problems()))
        .containsExactly("YAML-105 waivers.yaml:3:4");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2031-02-29",
        "2031-13-01",
        "2031-4-30",
        "20310430",
        "30.04.2031",
        "2031-04-30T00:00",
        "+2031-04-30",
        "tomorrow",
        "\u0662\u0660\u0663\u0661-04-30"
      })
  void what_is_no_date_is_refused(String until) throws IOException {
    String waiver = "{verdict: broken, reason: r, role: s, until: \"" + until + "\"}";
    assertThat(with("waived:\n  'points set: signal 1': " + waiver + "\n").problems())
        .hasSize(1)
        .allMatch(p -> p.code().equals("WAIV-103"));
  }
}
