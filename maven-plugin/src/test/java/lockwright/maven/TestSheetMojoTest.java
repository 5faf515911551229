package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The goal on the small box of the check's tests; the papers are tried in the core. */
class TestSheetMojoTest {
  @TempDir Path basedir;
  private final RecordingLog log = new RecordingLog();
  private final TestSheetMojo goal = new TestSheetMojo();

  @BeforeEach
  void a_box() throws IOException {
    Path box = Files.createDirectories(basedir.resolve("box"));
    Files.writeString(box.resolve("plan.yaml"), CheckMojoTest.PLAN);
    Files.writeString(box.resolve("frame.yaml"), CheckMojoTest.FRAME);
    Files.writeString(box.resolve("locking.csv"), CheckMojoTest.LOCKING);
    goal.basedir = basedir.toFile();
    goal.box = box.toFile();
    goal.outputFolder = basedir.resolve("target/lockwright").toFile();
    goal.states = 1000;
    goal.setLog(log);
  }

  private Path output(String name) {
    return basedir.resolve("target/lockwright").resolve(name);
  }

  @Test
  void three_papers_are_written_and_the_figures_told() throws Exception {
    goal.execute();
    goal.execute();
    for (String name : Outputs.TEST_SHEET) {
      assertThat(Files.readString(output(name))).contains("Junction points", "locking.csv");
    }
    assertThat(log.lines)
        .anyMatch(
            l -> l.matches("INFO .*: test sheet of \\d+ lines; 5 of 6 entries covered both ways"))
        .contains("INFO This is an aid for checking written rules. It is not locking data.")
        .noneMatch(l -> l.startsWith("WARNING"));
  }

  @Test
  void a_limit_is_warned_of() throws Exception {
    goal.states = 2;
    goal.execute();
    assertThat(log.lines).anyMatch(l -> l.startsWith("WARNING a limit was met"));
    goal.states = 0;
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessage("NO TEST SHEET: lockwright.states is 0: 1 or more");
  }

  @Test
  void a_spec_with_problems_leaves_no_paper_behind() throws Exception {
    goal.execute();
    Files.writeString(basedir.resolve("box/locking.csv"), "lever;locks\n1;44\n");
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NO TEST SHEET: NOT VERIFIED: 1 problem in box/:")
        .hasMessageContaining("LOCK-104 box/locking.csv:2:3");
    for (String name : Outputs.TEST_SHEET) {
      assertThat(output(name)).doesNotExist();
    }
  }
}
