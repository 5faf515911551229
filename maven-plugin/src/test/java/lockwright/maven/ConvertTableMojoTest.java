package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The goal on the starter box; the tables themselves are tried in the core. */
class ConvertTableMojoTest {
  @TempDir Path basedir;
  private Path box;
  private final RecordingLog log = new RecordingLog();
  private final ConvertTableMojo goal = new ConvertTableMojo();

  @BeforeEach
  void a_box() throws IOException {
    Starter.ofVersion("1").write(basedir);
    box = basedir.resolve("box");
    goal.basedir = basedir.toFile();
    goal.box = box.toFile();
    goal.setLog(log);
  }

  @Test
  void there_and_back_it_is_the_same_box() throws Exception {
    Box before = BoxBuilder.read(box).box().orElseThrow();
    String table = Files.readString(box.resolve("locking.csv"));
    goal.execute();
    assertThat(box.resolve("locking.csv")).doesNotExist();
    assertThat(words(BoxBuilder.read(box).box().orElseThrow())).isEqualTo(words(before));
    goal.execute();
    assertThat(box.resolve("locking.yaml")).doesNotExist();
    assertThat(Files.readString(box.resolve("locking.csv"))).isEqualTo(table);
    assertThat(log.lines)
        .containsExactly(
            "INFO box/locking.csv is now locking.yaml, with the same entries",
            "INFO box/locking.yaml is now locking.csv, with the same entries");
  }

  private static Object words(Box box) {
    return box.locking().stream().map(entry -> entry.words() + " " + entry.note()).toList();
  }

  @Test
  void a_comment_that_is_lost_is_told() throws Exception {
    Files.delete(box.resolve("locking.csv"));
    Files.writeString(
        box.resolve("locking.yaml"), "locking:\n  - {lever: 2, locks: 5} # sheet 2\n");
    goal.execute();
    assertThat(log.lines)
        .containsExactly(
            "WARNING box/locking.yaml:2:26: a comment, which CSV cannot keep: # sheet 2",
            "INFO box/locking.yaml is now locking.csv, with the same entries");
  }

  @Test
  void problems_of_the_table_are_told_and_it_is_left_as_it_is() throws Exception {
    String table = "lever;locks\n2;15\n3;2 or 5\n";
    Files.writeString(box.resolve("locking.csv"), table);
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT CONVERTED: the table has problems, and was left as it is.\n")
        .hasMessageContaining("2 problems in box/, the first:\nLOCK-104 box/locking.csv:2:3");
    assertThat(log.lines)
        .contains("ERROR LOCK-104 box/locking.csv:2:3", "ERROR LOCK-102 box/locking.csv:3:3");
    assertThat(Files.readString(box.resolve("locking.csv"))).isEqualTo(table);
    assertThat(box.resolve("locking.yaml")).doesNotExist();
  }

  @Test
  void problems_of_other_files_do_not_hinder() throws Exception {
    Files.writeString(box.resolve("plan.yaml"), "not yet written");
    goal.execute();
    assertThat(box.resolve("locking.yaml")).exists();
  }

  @Test
  void two_tables_or_none_are_told() throws Exception {
    Files.writeString(box.resolve("locking.yaml"), "locking: []\n");
    assertThatThrownBy(goal::execute).hasMessageContaining("FILE-102 box/locking.yaml:1:1");
    Files.delete(box.resolve("locking.yaml"));
    Files.delete(box.resolve("locking.csv"));
    assertThatThrownBy(goal::execute).hasMessageContaining("FILE-101 box/locking.csv:1:1");
  }

  @Test
  void what_an_interrupted_run_left_is_named() throws Exception {
    Files.writeString(box.resolve("locking.yaml.unfinished"), "half");
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("in the way")
        .hasMessageEndingWith("locking.yaml.unfinished");
  }

  @Test
  void a_missing_folder_is_named() {
    goal.box = basedir.resolve("boxes/nowhere").toFile();
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageStartingWith("NOT CONVERTED: there is no folder boxes/nowhere/");
  }
}
