package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The goal on the results of a check of the small box, as they are and altered. */
class ReportMojoTest {
  @TempDir static Path checked;
  @TempDir Path basedir;
  private final RecordingLog log = new RecordingLog();
  private final ReportMojo goal = new ReportMojo();

  @BeforeAll
  static void a_check() throws Exception {
    spec(checked);
    CheckMojo check = new CheckMojo();
    check.basedir = checked.toFile();
    check.box = checked.resolve("box").toFile();
    check.outputFolder = checked.resolve("target/lockwright").toFile();
    check.seconds = 120;
    check.depth = 16;
    check.setLog(new RecordingLog());
    check.execute();
  }

  private static void spec(Path basedir) throws IOException {
    Files.createDirectories(basedir.resolve("box"));
    Files.writeString(basedir.resolve("box/plan.yaml"), CheckMojoTest.PLAN);
    Files.writeString(basedir.resolve("box/frame.yaml"), CheckMojoTest.FRAME);
    Files.writeString(basedir.resolve("box/locking.csv"), CheckMojoTest.LOCKING);
  }

  @BeforeEach
  void a_project_that_was_checked() throws IOException {
    spec(basedir);
    goal.basedir = basedir.toFile();
    goal.box = basedir.resolve("box").toFile();
    goal.outputFolder = basedir.resolve("target/lockwright").toFile();
    goal.setLog(log);
    Files.createDirectories(output("x").getParent());
    Files.copy(checked.resolve("target/lockwright/result.json"), output("result.json"));
    Files.writeString(output("proof-report.html"), "an old page, all proved");
  }

  private Path output(String file) {
    return basedir.resolve("target/lockwright").resolve(file);
  }

  private static void edit(Path file, UnaryOperator<String> edit) throws IOException {
    String old = Files.readString(file);
    assertThat(edit.apply(old)).isNotEqualTo(old);
    Files.writeString(file, edit.apply(old));
  }

  private void refused(String why) throws IOException {
    Throwable failure = catchThrowable(goal::execute);
    assertThat(failure)
        .isInstanceOf(MojoFailureException.class)
        .hasNoCause()
        .hasMessageStartingWith("NOT VERIFIED: ")
        .hasMessageContaining(": not checked in this run\n")
        .hasMessageContaining(why);
    assertThat(failure.getMessage().lines().toList())
        .contains("report:   " + output("proof-report.html"));
    assertThat(log.lines).noneMatch(l -> l.contains("proved"));
    assertThat(Files.readString(output("proof-report.html")))
        .contains("<h1>Not checked in this run: ")
        .doesNotContain("proved", "\u2714", "class=\"verdict");
  }

  @Test
  void the_page_of_what_stands_is_that_of_the_check() throws Exception {
    goal.execute();
    assertThat(output("proof-report.html"))
        .hasSameBinaryContentAs(checked.resolve("target/lockwright/proof-report.html"));
    assertThat(log.lines)
        .anyMatch(l -> l.matches("INFO Alder Fen: [0-9]+ requirements of safety proved, .*"))
        .endsWith("INFO proof report: " + output("proof-report.html"));
  }

  @Test
  void one_verdict_edited_is_seen() throws Exception {
    edit(
        output("result.json"),
        r -> r.replaceFirst("\"verdict\": \"shown\"", "\"verdict\": \"proved\""));
    refused("/verdict");
  }

  @Test
  void one_clause_edited_is_seen() throws Exception {
    edit(
        output("result.json"),
        r -> r.replaceFirst("(\"clauses\": \\[\\s*\"lever . is )[NMR]", "$1M"));
    refused("does not stand");
  }

  @Test
  void one_file_of_the_spec_edited_is_seen_though_it_means_the_same() throws Exception {
    edit(basedir.resolve("box/plan.yaml"), p -> p + "# a remark\n");
    refused("plan.yaml is not the file that was checked");
  }

  @Test
  void a_date_that_is_none_is_seen() throws Exception {
    goal.date = "tomorrow";
    refused("is no date");
  }

  @Test
  void a_file_of_the_spec_with_a_fault_is_seen() throws Exception {
    edit(basedir.resolve("box/locking.csv"), p -> p.replace("2;3, 4;;", "2;3, 14;;"));
    refused("LOCK-104 box/locking.csv:3:");
  }

  @Test
  void without_a_result_or_a_spec_nothing_is_shown() throws Exception {
    Files.delete(output("result.json"));
    refused("there is no result.json");
    for (String file : List.of("plan.yaml", "frame.yaml", "locking.csv")) {
      Files.delete(basedir.resolve("box").resolve(file));
    }
    Files.delete(basedir.resolve("box"));
    refused("there is no folder box/");
  }
}
