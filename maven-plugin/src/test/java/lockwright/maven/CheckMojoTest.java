package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import lockwright.audit.Disagreement;
import lockwright.verdict.Verdict;
import lockwright.worker.Found;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The goal on a small box: one road, a signal that reads to each of two ways, bolted points. */
class CheckMojoTest {
  static final String PLAN =
      """
      lockwright: 1
      box: Alder Fen
      tracks: [approach, junction, main, branch]
      joints: [approach + junction]
      points:
        4: {toe: junction, normal: main, reverse: branch}
      signals:
        1: {at: approach > junction, arm: stop, for: main}
        2: {at: approach > junction, arm: stop, for: branch}
      limits: {approach: block, main: block, branch: block}
      passenger: [approach, junction, main, branch]
      """;
  static final String FRAME =
      """
      levers:
        1: {signal: 1, label: Main home}
        2: {signal: 2, label: Branch home}
        3: {bolt: 4, normal: out, label: Bolt}
        4: {points: 4, label: Junction points}
      """;
  static final String LOCKING =
      """
      lever;released by;locks;locks both ways
      1;3;2, 4;
      2;3, 4;;
      3;;;4
      """;

  /** Kept to the end, so that one solver process, which has its folder there, serves all. */
  @TempDir static Path all;

  private Path basedir;
  private final RecordingLog log = new RecordingLog();
  private final CheckMojo goal = new CheckMojo();

  @BeforeEach
  void a_project_with_a_good_box() throws IOException {
    basedir = Files.createTempDirectory(all, "project");
    goal.basedir = basedir.toFile();
    goal.box = basedir.resolve("box").toFile();
    goal.outputFolder = basedir.resolve("target/lockwright").toFile();
    goal.seconds = 120;
    goal.depth = 16;
    goal.setLog(log);
    Files.createDirectories(basedir.resolve("box"));
    write("plan.yaml", PLAN);
    write("frame.yaml", FRAME);
    write("locking.csv", LOCKING);
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(basedir.resolve("box").resolve(file), text);
  }

  private Path output(String file) {
    return basedir.resolve("target/lockwright").resolve(file);
  }

  private void anOldOutput() throws IOException {
    Files.createDirectories(basedir.resolve("target/lockwright"));
    for (String file :
        List.of(
            "check.txt",
            "result.json",
            "read-back.txt",
            "read-back.csv",
            "proof-report.html",
            "findings.sarif",
            "junit.xml",
            "summary.md")) {
      Files.writeString(output(file), "old");
    }
  }

  private List<String> outputs() throws IOException {
    try (Stream<Path> files = Files.list(basedir.resolve("target/lockwright"))) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> f.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void a_good_box_passes_and_says_so_in_two_lines() throws Exception {
    goal.execute();
    assertThat(log.lines)
        .anyMatch(l -> l.matches("INFO Alder Fen: [0-9]+ requirements of safety proved, .*"))
        .anyMatch(l -> l.startsWith("INFO Alder Fen: within the model and the listed files; not"))
        .allMatch(l -> l.startsWith("INFO "));
    assertThat(outputs())
        .containsExactly(
            "check.txt",
            "findings.sarif",
            "junit.xml",
            "proof-report.html",
            "read-back.csv",
            "read-back.txt",
            "result.json",
            "summary.md");
    assertThat(Files.readString(output("summary.md"))).startsWith("## Alder Fen: passes\n");
    assertThat(Files.readString(output("junit.xml"))).contains("failures=\"0\" errors=\"0\"");
    assertThat(Files.readString(output("findings.sarif"))).contains("\"uri\" : \"box/plan.yaml\"");
    assertThat(log.lines.get(log.lines.size() - 1))
        .isEqualTo("INFO proof report: " + output("proof-report.html"));
    assertThat(Files.readString(output("proof-report.html")))
        .contains("<h1>Proof report: Alder Fen</h1>", "Checked in the run that wrote this page.");
  }

  /** Where things are drawn is no matter of the check, so it passes all the same. */
  @Test
  void places_without_room_in_the_diagram_are_a_warning() throws Exception {
    write(
        "drawing.yaml",
        """
        points: {4: [12, 3]}
        joints: {approach + junction: [11.99, 3]}
        ends: {approach: [0, 3], main: [24, 3]}
        """);
    goal.execute();
    assertThat(log.lines)
        .contains("WARNING DRAW-201 box/drawing.yaml:2:31")
        .anyMatch(l -> l.matches("INFO Alder Fen: [0-9]+ requirements of safety proved, .*"));
    assertThat(Files.readString(output("proof-report.html")))
        .contains(
            "<p>Not all has room in it: there is no room between the joint approach + junction");
  }

  @Test
  void a_broken_box_fails_with_the_sequence_in_its_message() throws Exception {
    anOldOutput();
    write("locking.csv", LOCKING.replace("2;3, 4;;\n", "2;3;;\n"));
    Throwable failure = catchThrowable(goal::execute);
    assertThat(failure).isInstanceOf(MojoFailureException.class).hasNoCause();
    assertThat(failure.getMessage().lines())
        .containsSubsequence(
            "broken: points set: signal 2",
            "  beginning: all levers normal",
            "  1. pull 3 Bolt                  bolt of 4 in",
            "  2. pull 2 Branch home part-way  signal 2 part-way, taken as off",
            "  here it breaks: signal 2 is off, and no route of it lies with its flank traps",
            "  perhaps missing: '2 released by 4'; with it movement 2 would not be free",
            "to go on with the build all the same: -Dlockwright.warnOnly",
            "full log: " + output("check.txt"),
            "result:   " + output("result.json"),
            "report:   " + output("proof-report.html"));
    assertThat(failure.getMessage()).doesNotContainIgnoringCase("proved");
    assertThat(log.lines).contains("ERROR broken: points set: signal 2");
    assertThat(Files.readString(output("check.txt"))).contains("broken: points set: signal 2\n");
  }

  /** "1 locks 2" is implied: 1 locks 4, and 2 is released by 4. */
  @Test
  void asked_for_the_entries_it_says_how_many_are_needed() throws Exception {
    goal.entries = true;
    goal.execute();
    assertThat(log.lines)
        .contains(
            "INFO Alder Fen: entries: 6 of 6 looked at",
            "INFO Alder Fen: of 6 entries, each left out alone: 5 needed, 1 implied by others,"
                + " 0 not needed, 0 undecided");
    assertThat(Files.readString(output("check.txt"))).contains("implied by others: '1 locks 2'");
    assertThat(Files.readString(output("result.json"))).contains("\"implied by others\"");
  }

  @Test
  void the_one_flag_goes_on_and_says_not_proved() throws Exception {
    goal.warnOnly = true;
    write("locking.csv", LOCKING.replace("2;3, 4;;\n", "2;3;;\n"));
    goal.execute();
    assertThat(log.lines)
        .contains(
            "WARNING broken: points set: signal 2",
            "WARNING NOT PROVED: the build goes on, for lockwright.warnOnly is set")
        .noneMatch(l -> l.matches("INFO .*proved.*"));
  }

  private static final String WAIVER =
      """
      waived:
        "points set: signal 2":
          verdict: broken
          reason: to be mended with the frame
          role: signal engineer
          until: 2031-04-30
      """;

  @Test
  void a_breach_waived_until_a_day_passes_and_is_shown_as_broken() throws Exception {
    write("locking.csv", LOCKING.replace("2;3, 4;;\n", "2;3;;\n"));
    write("waivers.yaml", WAIVER);
    goal.date = "2031-04-30";
    goal.execute();
    assertThat(log.lines)
        .containsSubsequence(
            "WARNING Expected and waived: 1 holds (on 2031-04-30)",
            "WARNING   broken, waived: points set: signal 2",
            "WARNING     by: signal engineer, until 2031-04-30",
            "WARNING     reason: to be mended with the frame")
        .anyMatch(
            l ->
                l.matches(
                    "INFO Alder Fen: [0-9]+ requirements of safety proved, [0-9]+ possibilities"
                        + " shown, 1 broken as waived .*"));
    assertThat(Files.readString(output("check.txt")))
        .contains("\nbroken, waived: points set: signal 2\n")
        .doesNotContain("proved: points set: signal 2");
    assertThat(Files.readString(output("result.json")))
        .contains("\"passes\": true", "\"date\": \"2031-04-30\"", "\"state\": \"holds\"");
  }

  @Test
  void a_waiver_past_its_date_fails_and_is_named_in_the_message() throws Exception {
    write("locking.csv", LOCKING.replace("2;3, 4;;\n", "2;3;;\n"));
    write("waivers.yaml", WAIVER);
    goal.date = "2031-05-01";
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("requirements fails (1 past its date)\n")
        .hasMessageContaining(
            "\nbroken, waived only until 2031-04-30: points set: signal 2\n"
                + "  it is past its date: ")
        .hasMessageContaining("waivers.yaml:2:4\n");
    assertThat(log.lines)
        .contains(
            "ERROR Expected and waived: 1 past its date (on 2031-05-01)",
            "ERROR broken, waived only until 2031-04-30: points set: signal 2");
  }

  @Test
  void a_waiver_of_what_is_proved_fails_and_is_named_in_the_message() throws Exception {
    write("waivers.yaml", WAIVER);
    goal.date = "2031-04-01";
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("requirements fails (1 no longer bites)\n")
        .hasMessageContaining(
            "\nproved, and not broken as waived: points set: signal 2\n  it no longer bites: ");
  }

  @Test
  void without_a_date_a_box_with_a_waiver_is_not_checked_and_one_that_expects_is()
      throws Exception {
    write("locking.csv", LOCKING.replace("2;3, 4;;\n", "2;3;;\n"));
    write("waivers.yaml", WAIVER);
    goal.search =
        folder -> {
          throw new AssertionError("nothing is to be searched");
        };
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT VERIFIED: waivers.yaml waives something until a day")
        .hasMessageContaining("-Dlockwright.date=2031-04-30");
    goal.date = "today";
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT VERIFIED: 'today' is no date");
    goal.date = null;
    goal.search = new CheckMojo().search;
    write(
        "waivers.yaml",
        "expected:\n  'points set: signal 2': {verdict: broken, reason: a lesson}\n");
    goal.execute();
    assertThat(log.lines).contains("WARNING Expected and waived: 1 holds");
  }

  @Test
  void an_undecided_box_fails_and_nothing_undecided_is_called_proved() throws Exception {
    goal.effort = 1;
    goal.depth = 0;
    Throwable failure = catchThrowable(goal::execute);
    assertThat(failure).isInstanceOf(MojoFailureException.class);
    assertThat(failure.getMessage()).contains(" undecided").contains("undecided: ");
    assertThat(failure.getMessage()).doesNotContainIgnoringCase("proved");
    assertThat(log.lines).anyMatch(l -> l.startsWith("ERROR undecided: "));
    assertThat(log.lines).noneMatch(l -> l.toLowerCase(Locale.ROOT).contains("proved"));
  }

  @Test
  void a_skip_is_said_in_one_warning_and_leaves_no_old_output() throws Exception {
    anOldOutput();
    goal.skip = true;
    goal.execute();
    String words = "NOT VERIFIED: box/ was not checked, for lockwright.skip is set";
    assertThat(log.lines).containsExactly("WARNING " + words);
    assertThat(outputs()).containsExactly("check.txt");
    assertThat(output("check.txt")).hasContent(words);
  }

  @Test
  void a_missing_folder_fails_and_names_folder_and_parameter() throws Exception {
    anOldOutput();
    goal.box = basedir.resolve("boxes/alder-fen").toFile();
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("boxes/alder-fen/")
        .hasMessageContaining("parameter 'box' (property lockwright.box)");
    assertThat(outputs()).isEmpty();
  }

  @Test
  void all_problems_of_a_spec_are_told_with_their_places_and_no_stack_trace() throws Exception {
    anOldOutput();
    write("locking.csv", LOCKING.replace("2;3, 4;;", "2;3, 14;;").replace("3;;;4", "3;;;7"));
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasNoCause()
        .hasMessageStartingWith("NOT VERIFIED: 2 problems in box/, the first:\n")
        .hasMessageContaining("LOCK-104 box/locking.csv:3:");
    assertThat(log.lines)
        .allMatch(l -> l.startsWith("ERROR "))
        .anyMatch(l -> l.startsWith("ERROR LOCK-104 box/locking.csv:3:"))
        .anyMatch(l -> l.startsWith("ERROR LOCK-104 box/locking.csv:4:"));
    assertThat(outputs()).containsExactly("check.txt");
  }

  @Test
  void parameters_out_of_range_are_a_fault_of_the_user() {
    goal.seconds = 0;
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("seconds 0 (1 or more)");
  }

  @Test
  void a_file_in_place_of_the_output_folder_is_a_fault_of_the_machine() throws Exception {
    Files.writeString(basedir.resolve("target"), "a file");
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageStartingWith("NOT VERIFIED: ");
  }

  @Test
  void a_search_that_lies_is_a_fault_of_ours_with_its_stack_trace() {
    goal.search =
        folder ->
            (job, progress) -> {
              Map<String, Verdict> lies = new HashMap<>();
              job.system().targets().forEach(t -> lies.put(t.name(), new Verdict.Never(List.of())));
              return new Found(lies, Map.of(), "a liar");
            };
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("Please report it")
        .hasCauseInstanceOf(Disagreement.class);
    assertThat(log.lines)
        .anyMatch(l -> l.contains("Disagreement") && l.contains("\tat lockwright."))
        .noneMatch(l -> l.contains(" proved"));
    assertThat(output("check.txt")).doesNotExist();
  }

  @Test
  void a_process_that_cannot_be_started_is_a_fault_of_the_machine() {
    goal.search =
        folder ->
            (job, progress) -> {
              throw new IOException("no process");
            };
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage("NOT VERIFIED: files or processes fail: no process");
  }
}
