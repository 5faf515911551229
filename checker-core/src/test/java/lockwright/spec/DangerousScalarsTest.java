package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nothing that is written is converted. The forms are those of the type repository for YAML 1.1,
 * pages "bool", "int", "float", "null" and "timestamp" (yaml.org/type), from memory.
 */
class DangerousScalarsTest {
  private static final String PLAN =
      "lockwright: 1\nbox: %1$s\ntracks: [%1$s]\nsignals:\n  %1$s: {at: a > b, arm: stop}\n"
          + "passenger: []\n";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NO",
        "off",
        "y",
        "010",
        "1_000",
        "0x1F",
        "1e3",
        "1.50",
        "null",
        "NaN",
        "2001-01-01"
      })
  void a_name_stays_the_text_that_was_written(String written) {
    Problems problems = new Problems();
    Node root = YamlReader.read("plan.yaml", PLAN.formatted(written), problems).orElseThrow();
    PlanFile plan = PlanReader.read(root, problems).orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    assertThat(plan.box().orElseThrow().text()).isEqualTo(written);
    assertThat(plan.tracks().get(0).id().text()).isEqualTo(written);
    assertThat(plan.signals().get(0).id().text()).isEqualTo(written);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1:30", "~", ".nan", "+1", "-1", "1e999,"})
  void what_is_no_name_is_refused_as_it_was_written(String written) {
    Problems problems = new Problems();
    Node root =
        YamlReader.read("plan.yaml", PLAN.formatted("'" + written + "'"), problems).orElseThrow();
    PlanReader.read(root, problems);
    assertThat(problems.sorted())
        .hasSize(3)
        .allMatch(p -> p.code().equals("PLAN-102") && p.what().contains("'" + written + "'"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"true", "True", "on", "Yes", "YES", "y", "1", "no way"})
  void yes_is_written_yes_and_nothing_else(String written, @TempDir Path folder) throws Exception {
    SpecsOnDisk.copy(SpecsOnDisk.EVERY_FORM, folder);
    SpecsOnDisk.change(folder, "frame.yaml", "open: yes", "open: " + written);
    assertThat(SpecsOnDisk.places(SpecFolder.read(folder).problems()))
        .containsExactly("YAML-111 frame.yaml:13:41");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0", "-1", "201", "2147483648", "1e2", "0x10", "007", "1_0", "1.0", ".inf", "ten"})
  void tokens_are_counted_from_1_to_200_in_digits(String written, @TempDir Path folder)
      throws Exception {
    SpecsOnDisk.copy(SpecsOnDisk.EVERY_FORM, folder);
    SpecsOnDisk.change(folder, "sections.yaml", "tokens: 4", "tokens: " + written);
    assertThat(SpecsOnDisk.places(SpecFolder.read(folder).problems()))
        .containsExactly("SECT-110 sections.yaml:5:13");
  }

  @Test
  void a_number_of_a_million_digits_is_refused_quickly(@TempDir Path folder) throws Exception {
    SpecsOnDisk.copy(SpecsOnDisk.EVERY_FORM, folder);
    SpecsOnDisk.change(folder, "sections.yaml", "tokens: 4", "tokens: " + "9".repeat(900_000));
    assertThat(SpecFolder.read(folder).problems())
        .hasSize(1)
        .allMatch(p -> p.code().equals("SECT-110") && p.text().length() < 400);
  }
}
