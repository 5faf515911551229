package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import lockwright.railway.BoxBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All problems of all files are told at once, by place. */
class AllProblemsTest {
  @Test
  void a_fault_in_each_file_is_told_in_one_reading(@TempDir Path folder) throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.EVERY_FORM, folder);
    SpecsOnDisk.change(folder, "plan.yaml", "passenger: [single line,", "passenger: [single lime,");
    SpecsOnDisk.change(folder, "plan.yaml", "at: up loop > approach", "at: up loop > yard");
    SpecsOnDisk.change(folder, "frame.yaml", "3: {signal: 3}", "3: {signal: 33}");
    SpecsOnDisk.change(folder, "locking.yaml", "locks: [3, 4, 7]", "locks: [3, 4, 17, 2, 10]");
    SpecsOnDisk.change(folder, "sections.yaml", "[Quarry Halt]", "[Quarry Holt]");
    SpecsOnDisk.change(folder, "waivers.yaml", "until: 2031-04-30", "until: 2031-04-31");
    assertThat(SpecsOnDisk.places(BoxBuilder.read(folder).problems()))
        .containsExactly(
            "FRAME-103 frame.yaml:4:15",
            "LOCK-104 locking.yaml:2:46",
            "LOCK-106 locking.yaml:2:50",
            "LOCK-105 locking.yaml:2:53",
            "FRAME-105 plan.yaml:40:3",
            "PLAN-110 plan.yaml:41:11",
            "PLAN-104 plan.yaml:60:13",
            "SECT-108 sections.yaml:7:18",
            "WAIV-103 waivers.yaml:8:12");
  }

  /** What cannot be read is not compared with what can. */
  @Test
  void a_condition_not_understood_makes_no_entry_the_same_as_another(@TempDir Path folder)
      throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.write(
        folder, "locking.csv", "lever;locks;when\n1;4;\n1;4;2 N or\n1;4;2 N OR 3 R\n");
    assertThat(SpecsOnDisk.places(BoxBuilder.read(folder).problems()))
        .containsExactly("LOCK-101 locking.csv:3:5", "LOCK-101 locking.csv:4:5");
  }

  @Test
  void a_message_has_four_lines_and_names_its_page() {
    Problem problem =
        new Problem("LOCK-104", new Span("locking.csv", 12, 5), "what is wrong", "what to do");
    assertThat(problem.text("boxes/mill-end/"))
        .isEqualTo(
            """
            LOCK-104 boxes/mill-end/locking.csv:12:5
              what: what is wrong
              fix:  what to do
              more: docs/messages/LOCK-104.md
            """);
  }

  @Test
  void what_the_author_wrote_cannot_write_lines_of_the_report() {
    assertThat(Problem.quote("x\nproved\u001b[2J\u202e"))
        .isEqualTo("'x\\u000aproved\\u001b[2J\\u202e'");
    assertThat(Problem.quote("a".repeat(1_000))).hasSize(65).endsWith("...'");
  }

  @Test
  void the_nearest_name_is_offered(@TempDir Path folder) throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    SpecsOnDisk.change(folder, "plan.yaml", "for: branch", "for: Brunch");
    assertThat(BoxBuilder.read(folder).problems())
        .hasSize(1)
        .allMatch(p -> p.fix().startsWith("did you mean 'branch'?"));
  }
}
