package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.descriptor.MojoDescriptor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The goal on the results of a check of the small box that fails, as they are and altered. */
class LessonsMojoTest {
  @TempDir static Path checked;
  private static String failure;

  @TempDir Path basedir;
  private final RecordingLog log = new RecordingLog();
  private final LessonsMojo goal = new LessonsMojo();

  @BeforeAll
  static void a_check_that_fails() throws Exception {
    spec(checked);
    CheckMojo check = new CheckMojo();
    check.basedir = checked.toFile();
    check.box = checked.resolve("box").toFile();
    check.outputFolder = checked.resolve("target/lockwright").toFile();
    check.seconds = 120;
    check.depth = 16;
    check.setLog(new RecordingLog());
    failure = catchThrowable(check::execute).getMessage();
  }

  private static void spec(Path basedir) throws IOException {
    Files.createDirectories(basedir.resolve("box"));
    Files.writeString(basedir.resolve("box/plan.yaml"), CheckMojoTest.PLAN);
    Files.writeString(basedir.resolve("box/frame.yaml"), CheckMojoTest.FRAME);
    Files.writeString(
        basedir.resolve("box/locking.csv"), CheckMojoTest.LOCKING.replace("2;3, 4;;\n", "2;3;;\n"));
  }

  @BeforeEach
  void a_project_that_was_checked() throws IOException {
    spec(basedir);
    goal.basedir = basedir.toFile();
    goal.box = basedir.resolve("box").toFile();
    goal.outputFolder = basedir.resolve("target/lockwright").toFile();
    goal.setLog(log);
    Files.createDirectories(output("lessons"));
    Files.copy(checked.resolve("target/lockwright/result.json"), output("result.json"));
    Files.writeString(output("lessons/points-set-000000000000.html"), "an old lesson");
    Files.writeString(output("lessons/my notes.html"), "the trainer's own");
  }

  private Path output(String file) {
    return basedir.resolve("target/lockwright").resolve(file);
  }

  private List<String> lessons() throws IOException {
    try (Stream<Path> all = Files.list(output("lessons"))) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void a_red_build_ends_with_the_command_that_makes_lessons() {
    assertThat(failure.lines().toList())
        .contains("broken: points set: signal 2")
        .endsWith("lessons:  mvn lockwright:lessons");
  }

  @Test
  void what_is_broken_becomes_a_lesson_and_old_ones_go() throws Exception {
    goal.execute();
    assertThat(lessons())
        .contains("index.html", "my notes.html")
        .anyMatch(f -> f.matches("points-set-[0-9a-f]{12}\\.html"))
        .doesNotContain("points-set-000000000000.html")
        .noneMatch(f -> f.endsWith(".unfinished"));
    assertThat(Files.readString(output("lessons/index.html"))).contains("points set: signal 2");
    assertThat(log.lines)
        .anyMatch(l -> l.startsWith("WARNING NOT PROVED: "))
        .endsWith("INFO " + (lessons().size() - 2) + " lessons: " + output("lessons/index.html"));
  }

  @Test
  void of_a_result_that_does_not_stand_no_lesson_is_made() throws Exception {
    String result = Files.readString(output("result.json"));
    Files.writeString(
        output("result.json"),
        result.replaceFirst("\"verdict\": \"broken\"", "\"verdict\": \"x\""));
    refused();
    Files.writeString(output("result.json"), result);
    Files.writeString(basedir.resolve("box/plan.yaml"), CheckMojoTest.PLAN + "# a remark\n");
    refused();
    Files.delete(output("result.json"));
    refused();
  }

  private void refused() throws IOException {
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT VERIFIED: ")
        .hasMessageContaining("not checked in this run, so there are no lessons\n");
    assertThat(lessons()).containsExactly("my notes.html");
  }

  private void trainer(String words) throws IOException {
    Files.writeString(basedir.resolve("box/lessons.yaml"), words);
  }

  /** The check rests on none of it, so the result of before stands. */
  @Test
  void what_the_trainer_writes_needs_no_new_check() throws Exception {
    trainer(
        """
        lessons:
          'points set: signal 2':
            steps:
              pull 2: Where do the points lie?
          'points set: signal 1': {introduction: Not now.}
        why not:
          Why are the points held?: {reversed: 3, pull: 4}
        """);
    goal.execute();
    assertThat(lessons()).anyMatch(f -> f.matches("why-not-[0-9a-f]{12}\\.html"));
    String broken =
        lessons().stream().filter(f -> f.startsWith("points-set-")).findFirst().orElseThrow();
    assertThat(Files.readString(output("lessons").resolve(broken)))
        .contains("Where do the points lie?");
    assertThat(log.lines)
        .contains("WARNING LESSON-201 box/lessons.yaml:5:4")
        .endsWith("INFO " + (lessons().size() - 2) + " lessons: " + output("lessons/index.html"));
  }

  @Test
  void what_would_teach_wrongly_fails_with_all_that_is_wrong_and_no_lesson_is_made()
      throws IOException {
    trainer(
        """
        lessons:
          'points set: signal 2': {steps: {pull 4: No such step.}}
        why not:
          The home with the bolt in: {reversed: 3, pull: 1}
        """);
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NO LESSONS: 2 problems in box/, the first:\nLESSON-202 box/")
        .hasMessageContaining("more: docs/messages/LESSON-202.md");
    assertThat(log.lines)
        .contains(
            "ERROR LESSON-202 box/lessons.yaml:2:36", "ERROR LESSON-203 box/lessons.yaml:4:50");
    assertThat(lessons()).containsExactly("my notes.html");
  }

  @Test
  void the_command_names_what_was_not_usual() {
    File base = basedir.toFile();
    MojoExecution lifecycle =
        new MojoExecution(new MojoDescriptor(), "east box", MojoExecution.Source.LIFECYCLE);
    assertThat(Again.command("lessons", null, base, base, new File(base, "box"), null))
        .isEqualTo("mvn lockwright:lessons");
    assertThat(
            Again.command(
                "lessons",
                lifecycle,
                base,
                base.getParentFile(),
                new File(base, "my box"),
                "2031-04-30"))
        .isEqualTo(
            "mvn -f "
                + base.getName()
                + "/pom.xml \"lockwright:lessons@east box\" \"-Dlockwright.box=my box/\""
                + " -Dlockwright.date=2031-04-30");
  }
}
