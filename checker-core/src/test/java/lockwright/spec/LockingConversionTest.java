package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The two forms of a locking table by example, and what stops the turning of one into the other.
 */
class LockingConversionTest {
  @TempDir Path folder;

  @Test
  void a_table_as_a_spreadsheet_saves_it_becomes_yaml() throws IOException {
    write(
        "locking.csv",
        "\uFEFFlever;when;released by;note;locks;holds;\r\n"
            + "\"1\";;3;\"see \"\"B\"\",\r\nsheet 2; left\";4;;\r\n"
            + ";;;;;;\r\n"
            + "2; 5 R  and 6 N;\"3,4\";=1+2;;yes;\r\n"
            + "2;;7 or 8;;;no;\r\n");
    assertThat(converted("locking.yaml"))
        .isEqualTo(
            """
            locking:
              - {lever: 1, released by: 3, locks: 4, note: "see \\"B\\",\\r\\nsheet 2; left"}
              - {lever: 2, released by: [3, 4], when: 5 R and 6 N, holds: yes, note: "=1+2"}
              - {lever: 2, released by: 7 or 8}
            """);
    assertThat(converted("locking.csv"))
        .isEqualTo(
            "lever;released by;locks;when;holds;note\n"
                + "1;3;4;;;\"see \"\"B\"\",\r\nsheet 2; left\"\n"
                + "2;3, 4;;5 R and 6 N;yes;=1+2\n"
                + "2;7 or 8;;;;\n");
  }

  @Test
  void what_one_cell_cannot_hold_goes_into_a_row_more() throws IOException {
    write(
        "locking.yaml",
        "locking: [{lever: 1, released by: [2, 3 or 4, 5, 6], locks: '7, 7', note: all}]");
    assertThat(converted("locking.csv"))
        .isEqualTo(
            """
            lever;released by;locks;note
            1;2;;all
            1;3 or 4;;all
            1;5, 6;7;all
            1;;7;all
            """);
  }

  @Test
  void a_cell_is_never_longer_than_can_be_read() throws IOException {
    String levers =
        IntStream.range(1000, 1400).mapToObj(String::valueOf).collect(Collectors.joining(", "));
    write("locking.yaml", "locking: [{lever: 1, locks: [" + levers + "]}]");
    List<String> entries = WrittenTable.yaml(Files.readString(folder.resolve("locking.yaml")));
    assertThat(WrittenTable.csv(converted("locking.csv"))).isEqualTo(entries).hasSize(400);
  }

  @Test
  void comments_are_told_for_csv_has_none() throws IOException {
    write(
        "locking.yaml",
        """
        # sheet 2
        locking:   # all of it

          - {lever: 1, locks: 4, note: "no # comment"}
          - lever: 2  # the branch
            locks: [4, # first
              5]
            note: |
              # no comment
          # last
        """);
    LockingConversion.Done done = LockingConversion.convert(folder, SpecFolder.read(folder));
    assertThat(done.lost().stream().map(c -> c.at() + c.text()))
        .containsExactly(
            "locking.yaml:1:1 sheet 2",
            "locking.yaml:2:12 all of it",
            "locking.yaml:5:15 the branch",
            "locking.yaml:6:16 first",
            "locking.yaml:10:3 last");
    assertThat(Files.readString(folder.resolve("locking.csv")))
        .isEqualTo("lever;released by;locks;note\n1;;4;no # comment\n2;;4, 5;# no comment\n");
  }

  @Test
  void a_table_without_a_row_stays_one() throws IOException {
    write("locking.yaml", "locking: []\n");
    assertThat(converted("locking.csv")).isEqualTo("lever;released by\n");
    assertThat(converted("locking.yaml")).isEqualTo("locking: []\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"lever;locks\n1;x\n", "lever;locks\n1;\n", "nothing"})
  void a_table_with_a_problem_is_left_alone(String table) throws IOException {
    write("locking.csv", table);
    SpecFolder spec = SpecFolder.read(folder);
    assertThatThrownBy(() -> LockingConversion.convert(folder, spec))
        .isInstanceOf(IllegalArgumentException.class);
    assertOnly("locking.csv", table);
  }

  @Test
  void a_table_that_would_be_too_large_to_read_is_left_alone() throws IOException {
    String table = "lever;locks;note\n1;4;" + "\\".repeat(600_000) + "\n";
    write("locking.csv", table);
    SpecFolder spec = SpecFolder.read(folder);
    assertThatThrownBy(() -> LockingConversion.convert(folder, spec))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("locking.yaml would not give the same entries when read back")
        .hasMessageContaining("FILE-104");
    assertOnly("locking.csv", table);
  }

  @ParameterizedTest
  @ValueSource(strings = {"locking.csv", "locking.yaml"})
  void a_table_changed_meanwhile_is_left_alone(String file) throws IOException {
    write(file, file.endsWith("csv") ? "lever;locks\n1;4\n" : "locking: [{lever: 1, locks: 4}]");
    SpecFolder spec = SpecFolder.read(folder);
    write(file, "changed");
    assertThatThrownBy(() -> LockingConversion.convert(folder, spec))
        .isInstanceOf(IOException.class)
        .hasMessage(file + " was changed while it was converted");
    assertOnly(file, "changed");
  }

  @ParameterizedTest
  @ValueSource(strings = {"locking.yaml", "locking.yaml.unfinished"})
  void nothing_is_overwritten(String other) throws IOException {
    write("locking.csv", "lever;locks\n1;4\n");
    SpecFolder spec = SpecFolder.read(folder);
    write(other, "other");
    assertThatThrownBy(() -> LockingConversion.convert(folder, spec))
        .isInstanceOf(FileAlreadyExistsException.class);
    assertThat(folder.resolve(other)).hasContent("other");
    assertThat(folder.resolve("locking.csv")).hasContent("lever;locks\n1;4\n");
  }

  private String converted(String to) throws IOException {
    LockingConversion.convert(folder, SpecFolder.read(folder));
    assertThat(SpecsOnDisk.children(folder)).containsExactly(folder.resolve(to));
    return Files.readString(folder.resolve(to));
  }

  private void assertOnly(String file, String content) throws IOException {
    assertThat(SpecsOnDisk.children(folder)).containsExactly(folder.resolve(file));
    assertThat(Files.readString(folder.resolve(file))).isEqualTo(content);
  }

  private void write(String file, String text) throws IOException {
    Files.write(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8));
  }
}
