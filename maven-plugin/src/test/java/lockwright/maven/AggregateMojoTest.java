package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lockwright.report.Cautions;
import org.apache.maven.model.Build;
import org.apache.maven.model.Model;
import org.apache.maven.model.Plugin;
import org.apache.maven.model.PluginExecution;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.project.MavenProject;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The gate over the boxes of all modules: nothing that was not checked is counted as proved. */
class AggregateMojoTest {
  private static final Instant STARTED = Instant.parse("2031-04-30T10:00:00.900Z");

  @TempDir static Path checked;
  @TempDir Path root;
  private final RecordingLog log = new RecordingLog();
  private final AggregateMojo goal = new AggregateMojo();
  private final List<MavenProject> modules = new ArrayList<>();

  @BeforeAll
  static void a_check() throws Exception {
    Files.createDirectories(checked.resolve("box"));
    Files.writeString(checked.resolve("box/plan.yaml"), CheckMojoTest.PLAN);
    Files.writeString(checked.resolve("box/frame.yaml"), CheckMojoTest.FRAME);
    Files.writeString(checked.resolve("box/locking.csv"), CheckMojoTest.LOCKING);
    CheckMojo check = new CheckMojo();
    check.basedir = checked.toFile();
    check.box = checked.resolve("box").toFile();
    check.outputFolder = checked.resolve("target/lockwright").toFile();
    check.seconds = 120;
    check.depth = 16;
    check.setLog(new RecordingLog());
    check.execute();
  }

  @BeforeEach
  void two_modules_that_were_checked_and_one_without_a_box() throws IOException {
    goal.outputFolder = root.resolve("all/target/lockwright").toFile();
    goal.setLog(log);
    for (String name : List.of("one", "two")) {
      modules.add(module(name, true));
      for (String file :
          List.of(
              "box/plan.yaml",
              "box/frame.yaml",
              "box/locking.csv",
              "target/lockwright/result.json",
              "target/lockwright/proof-report.html")) {
        Path copy = root.resolve(name).resolve(file);
        Files.createDirectories(copy.getParent());
        Files.copy(checked.resolve(file), copy);
        Files.setLastModifiedTime(copy, FileTime.from(Instant.parse("2031-04-30T10:00:00Z")));
      }
    }
    modules.add(module("all", false));
  }

  private MavenProject module(String name, boolean checks) {
    Model model = new Model();
    model.setGroupId("boxes");
    model.setArtifactId(name);
    model.setName("Boxes <of> the line");
    model.setBuild(new Build());
    model.getBuild().setDirectory("target");
    if (checks) {
      Plugin plugin = new Plugin();
      plugin.setGroupId("lockwright");
      plugin.setArtifactId("lockwright-maven-plugin");
      PluginExecution execution = new PluginExecution();
      execution.addGoal("check");
      plugin.addExecution(execution);
      model.getBuild().addPlugin(plugin);
    }
    MavenProject project = new MavenProject(model);
    project.setFile(root.resolve(name).resolve("pom.xml").toFile());
    return project;
  }

  private String page() throws IOException {
    return Files.readString(root.resolve("all/target/lockwright/index.html"));
  }

  private void edit(String file, UnaryOperator<String> edit) throws IOException {
    Path path = root.resolve("two").resolve(file);
    String old = Files.readString(path);
    assertThat(edit.apply(old)).isNotEqualTo(old);
    Files.writeString(path, edit.apply(old));
    Files.setLastModifiedTime(path, FileTime.from(Instant.parse("2031-04-30T10:00:00Z")));
  }

  private void refused(String why) throws IOException {
    Throwable failure =
        catchThrowable(() -> goal.aggregate("Boxes <of> the line", modules, STARTED));
    assertThat(failure)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT PROVED: Of 2 boxes 1 pass, 1 not checked in this build: ")
        .hasMessageContaining("boxes:two: " + why);
    assertThat(page())
        .contains("\u2718 Does not pass. ", "\u2718 not checked in this build", why)
        .contains("<a href=\"../../../one/target/lockwright/proof-report.html\">")
        .doesNotContain("../two/", "\u2714 Passes");
    assertThat(log.lines).isEmpty();
  }

  @Test
  void two_boxes_that_pass_are_counted_together() throws Exception {
    goal.aggregate("Boxes <of> the line", modules, STARTED);
    assertThat(log.lines.get(0)).matches("INFO Of 2 boxes 2 pass: [0-9]*[02468] proved, .*");
    assertThat(page())
        .contains("<h1>Proof reports: Boxes &lt;of&gt; the line</h1>", "\u2714 Passes. Of 2 boxes")
        .contains("Certificates were not checked again for this page.")
        .contains("<a href=\"../../../two/target/lockwright/proof-report.html\">")
        .contains(Cautions.ALL.get(0), "Assumptions of all boxes", "whole strokes");
    String first = page();
    goal.aggregate("Boxes <of> the line", modules, STARTED);
    assertThat(page()).isEqualTo(first);
  }

  @Test
  void a_box_that_was_not_checked_is_red() throws Exception {
    Files.delete(root.resolve("two/target/lockwright/result.json"));
    refused("there is no result.json");
  }

  @Test
  void a_result_of_an_earlier_build_is_red() throws Exception {
    Files.setLastModifiedTime(
        root.resolve("two/target/lockwright/result.json"),
        FileTime.from(Instant.parse("2031-04-30T09:59:59Z")));
    refused("result.json is older than this build");
  }

  @Test
  void a_result_that_cannot_be_read_is_red() throws Exception {
    edit("target/lockwright/result.json", r -> r.substring(0, r.length() / 2));
    refused("result.json cannot be read as a result: ");
  }

  @Test
  void a_file_of_the_spec_changed_after_the_check_is_red() throws Exception {
    edit("box/plan.yaml", p -> p + "# a remark\n");
    refused("the files of the spec are not those that were checked");
  }

  @Test
  void a_verdict_edited_to_pass_is_red() throws Exception {
    edit(
        "target/lockwright/result.json",
        r -> r.replaceFirst("\"verdict\": \"shown\"", "\"verdict\": \"proved\""));
    refused("result.json cannot be read as a result: counted ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"target/lockwright/result.json", "target/lockwright/proof-report.html"})
  void a_page_that_is_not_that_of_the_result_is_red(String file) throws Exception {
    edit(file, r -> r.replace("Main home", "Branch starting"));
    refused("the proof report is not there, or is not that of result.json");
  }

  @Test
  void a_result_of_another_box_is_red() throws Exception {
    edit("target/lockwright/result.json", r -> r.replace("\"Alder Fen\"", "\"Another\""));
    refused("result.json is that of another box");
  }

  @Test
  void a_box_that_no_goal_checks_is_red() throws Exception {
    modules.set(1, module("two", false));
    refused("the module has a box, and does not check it");
  }

  @Test
  void a_box_that_is_broken_is_red_with_what_fails() throws Exception {
    edit("box/locking.csv", l -> l.replace("2;3, 4;;\n", "2;3;;\n"));
    CheckMojo check = new CheckMojo();
    check.basedir = root.resolve("two").toFile();
    check.box = root.resolve("two/box").toFile();
    check.outputFolder = root.resolve("two/target/lockwright").toFile();
    check.seconds = 120;
    check.depth = 16;
    check.warnOnly = true;
    check.setLog(new RecordingLog());
    check.execute();
    Throwable failure =
        catchThrowable(() -> goal.aggregate("Boxes <of> the line", modules, Instant.EPOCH));
    assertThat(failure).hasMessageContaining("boxes:two: does not pass: ");
    assertThat(page())
        .contains("\u2718 does not pass", "points set: signal 2 is broken: ")
        .contains("<a href=\"../../../two/target/lockwright/proof-report.html\">");
  }

  @Test
  void no_box_at_all_is_red() throws Exception {
    Throwable failure =
        catchThrowable(() -> goal.aggregate("no module", List.of(module("all", false)), STARTED));
    assertThat(failure).hasMessageStartingWith("NOT PROVED: no module has a box");
    assertThat(page()).contains("\u2718 Does not pass. Of 0 boxes 0 pass");
  }
}
