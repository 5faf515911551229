package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The goal on the small box of the check's tests; explanations are tried in the core. */
class ExplainMojoTest {
  @TempDir Path basedir;
  private final RecordingLog log = new RecordingLog();
  private final ExplainMojo goal = new ExplainMojo();

  @BeforeEach
  void a_box() throws IOException {
    Path box = Files.createDirectories(basedir.resolve("box"));
    Files.writeString(box.resolve("plan.yaml"), CheckMojoTest.PLAN);
    Files.writeString(box.resolve("frame.yaml"), CheckMojoTest.FRAME);
    Files.writeString(box.resolve("locking.csv"), CheckMojoTest.LOCKING);
    goal.basedir = basedir.toFile();
    goal.box = box.toFile();
    goal.states = 1000;
    goal.setLog(log);
  }

  @Test
  void it_tells_on_the_console_and_writes_nothing() throws Exception {
    goal.reversed = "3, 1";
    goal.lever = "3";
    goal.execute();
    assertThat(log.lines)
        .allMatch(l -> l.startsWith("INFO "))
        .anyMatch(l -> l.endsWith(": back-locked"))
        .anyMatch(l -> l.startsWith("INFO   held by box/locking.csv:2:3  1 released by 3"))
        .contains("INFO This is an aid for checking written rules. It is not locking data.");
    try (Stream<Path> files = Files.walk(basedir)) {
      assertThat(files.filter(Files::isRegularFile)).hasSize(3);
    }
  }

  @Test
  void all_faults_of_a_question_are_told_at_once() {
    goal.reversed = "7,3,3";
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT EXPLAINED:\nlockwright.lever\n  what: no lever is asked about")
        .hasMessageContaining("  fix:  name one: -Dlockwright.lever=1")
        .hasMessageContaining("the frame has no lever '7'")
        .hasMessageContaining("lever 3 is named twice");
  }

  @Test
  void a_spec_with_problems_a_missing_folder_and_a_limit_of_nothing_are_refused()
      throws IOException {
    goal.lever = "1";
    goal.states = 0;
    assertThatThrownBy(goal::execute).hasMessageContaining("lockwright.states is 0: 1 or more");
    Files.writeString(basedir.resolve("box/locking.csv"), "lever;locks\n1;44\n");
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("1 problem in box/:\nLOCK-104 box/locking.csv:2:3");
    goal.box = basedir.resolve("nowhere").toFile();
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT EXPLAINED: there is no folder nowhere/");
  }
}
