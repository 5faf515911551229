package lockwright.spec;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lockwright.railway.BoxBuilder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that would harm, mislead or stop a careless reader become problems, and quickly. */
@Timeout(value = 10, unit = SECONDS)
class HostileFilesTest {
  @TempDir private Path folder;

  @BeforeEach
  void a_good_spec() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    assertThat(BoxBuilder.read(folder).problems()).isEmpty();
  }

  @Test
  void an_alias_bomb_does_not_go_off() throws IOException {
    String bomb =
        IntStream.range(1, 25)
            .mapToObj(i -> "a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n")
            .collect(Collectors.joining("", "a0: &a0 x\n", ""));
    SpecsOnDisk.write(folder, "frame.yaml", bomb);
    assertThat(places()).containsExactly("YAML-102 frame.yaml:1:5");
  }

  @Test
  void an_anchor_that_refers_to_itself_is_refused() throws IOException {
    SpecsOnDisk.write(folder, "frame.yaml", "levers: &a [*a]\n");
    assertThat(places()).containsExactly("YAML-102 frame.yaml:1:9");
  }

  @ParameterizedTest
  @ValueSource(ints = {1_000, 100_000})
  void deep_nesting_is_refused(int levels) throws IOException {
    SpecsOnDisk.write(folder, "frame.yaml", "levers: " + "[".repeat(levels));
    assertThat(places()).containsExactly("YAML-109 frame.yaml:1:18");
  }

  @ParameterizedTest
  @ValueSource(strings = {" ", ",", " or", "or ", "3 ", "\n", "(", "3,"})
  void a_long_cell_is_refused_quickly(String part) throws IOException {
    String cell = "3" + part.repeat(900_000 / part.length()) + "!";
    SpecsOnDisk.write(
        folder, "locking.csv", "lever;locks;when\n1;4;\"" + cell + "\"\n2;\"" + "\";\n");
    assertThat(SpecFolder.read(folder).problems()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a+", "a ", ">", "+ "})
  void a_long_pair_of_tracks_is_refused_quickly(String part) throws IOException {
    String joint = "'" + part.repeat(900_000 / part.length()) + "'";
    SpecsOnDisk.change(folder, "plan.yaml", "[approach + junction]", "[" + joint + "]");
    assertThat(places()).contains("PLAN-106 plan.yaml:5:11");
  }

  @Test
  void thousands_of_unknown_names_are_told_quickly() throws IOException {
    String names = "wrong, ".repeat(20_000);
    SpecsOnDisk.change(folder, "plan.yaml", "[approach, junction, main, branch]\nj", "[a]\nj");
    SpecsOnDisk.change(folder, "plan.yaml", "passenger: [", "passenger: [" + names);
    assertThat(BoxBuilder.read(folder).problems()).hasSizeGreaterThan(20_000);
  }

  @ParameterizedTest
  @CsvSource({"UTF-16LE", "UTF-16BE", "ISO-8859-1"})
  void another_character_set_is_refused(String charset) throws IOException {
    Files.write(folder.resolve("locking.csv"), "lever;locks;note\n1;4;für\n".getBytes(charset));
    assertThat(SpecFolder.read(folder).problems())
        .hasSize(1)
        .allMatch(p -> p.code().equals("FILE-105") || p.code().equals("FILE-106"));
  }

  @Test
  void a_lone_surrogate_or_an_overlong_form_is_refused() throws IOException {
    for (byte[] bytes : List.of(bytes(0xED, 0xA0, 0x80), bytes(0xC0, 0x80), bytes(0xFF))) {
      Files.write(folder.resolve("locking.csv"), bytes);
      assertThat(places()).containsExactly("FILE-105 locking.csv:1:1");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 0x7F, 0x85, 0xAD, 0x061C, 0x200B, 0x202E, 0x2028, 0x2066, 0xFEFF, 0xFFFE})
  void an_invisible_or_turning_character_is_refused(int character) throws IOException {
    String label = "Main " + Character.toString(character) + "home";
    SpecsOnDisk.change(folder, "frame.yaml", "Main home", label);
    assertThat(places()).containsExactly("FILE-106 frame.yaml:2:30");
  }

  @Test
  void a_name_with_a_letter_that_only_looks_alike_is_refused() throws IOException {
    SpecsOnDisk.change(folder, "plan.yaml", "[approach + ", "[\u0430pproach + "); // Cyrillic
    assertThat(BoxBuilder.read(folder).problems())
        .anyMatch(p -> p.code().equals("PLAN-104") && p.what().contains("'\\u0430pproach'"));
  }

  @Test
  void a_byte_order_mark_and_other_line_ends_change_nothing_but_the_digest() throws IOException {
    BoxBuilder.Built plain = BoxBuilder.read(folder);
    for (String file : plain.digests().keySet()) {
      String text = Files.readString(folder.resolve(file));
      SpecsOnDisk.write(folder, file, "\uFEFF" + text.replace("\n", "\r\n").stripTrailing());
    }
    BoxBuilder.Built other = BoxBuilder.read(folder);
    assertThat(other.box()).isEqualTo(plain.box());
    assertThat(other.digests()).isNotEqualTo(plain.digests());
  }

  @Test
  void a_link_is_not_followed() throws IOException {
    Path outside = Files.createTempFile("locking", ".csv");
    Files.move(folder.resolve("locking.csv"), outside, StandardCopyOption.REPLACE_EXISTING);
    Files.createSymbolicLink(folder.resolve("locking.csv"), outside);
    assertThat(places()).containsExactly("FILE-103 locking.csv:1:1");
    Files.delete(outside);
  }

  @Test
  void a_link_to_itself_is_refused() throws IOException {
    Files.delete(folder.resolve("frame.yaml"));
    Files.createSymbolicLink(folder.resolve("frame.yaml"), Path.of("frame.yaml"));
    assertThat(places()).containsExactly("FILE-103 frame.yaml:1:1");
  }

  @Test
  void a_pipe_does_not_stop_the_reading() throws Exception {
    Path pipe = folder.resolve("sections.yaml");
    Process mkfifo = new ProcessBuilder("mkfifo", pipe.toString()).start();
    assumeTrue(mkfifo.waitFor() == 0, "this system makes no pipes");
    assertThat(places()).containsExactly("FILE-103 sections.yaml:1:1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Sections.yaml",
        "sections.yml",
        "section.yaml",
        "PLAN.YAML",
        "sections",
        "waiver.yaml"
      })
  void a_file_under_a_name_almost_right_is_told(String name) throws IOException {
    SpecsOnDisk.write(folder, name, "sections: {}\n");
    assumeTrue(SpecsOnDisk.children(folder).size() == 4, "this system takes the two names for one");
    assertThat(places()).containsExactly("FILE-107 " + name + ":1:1");
  }

  @Test
  void other_files_may_lie_beside() throws IOException {
    SpecsOnDisk.write(folder, "README.md", "drawn from sheet 12\n");
    assertThat(BoxBuilder.read(folder).problems()).isEmpty();
  }

  @Test
  void a_folder_that_is_not_there_is_a_problem() {
    assertThat(SpecsOnDisk.places(SpecFolder.read(folder.resolve("gone")).problems()))
        .containsExactly(
            "FILE-101 frame.yaml:1:1", "FILE-101 locking.csv:1:1", "FILE-101 plan.yaml:1:1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "# nothing\n", "---\n", "null", "~", "[]", "{}", "levers: {}", "levers:"})
  void an_empty_frame_is_no_frame(String text) throws IOException {
    SpecsOnDisk.write(folder, "frame.yaml", text);
    assertThat(BoxBuilder.read(folder).box()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "lever;locks", "lever;locks\n;\n"})
  void an_empty_table_is_no_table(String text) throws IOException {
    SpecsOnDisk.write(folder, "locking.csv", text);
    assertThat(BoxBuilder.read(folder).box()).isEmpty();
  }

  @Test
  void the_digest_is_that_of_the_bytes() throws Exception {
    byte[] bytes = Files.readAllBytes(folder.resolve("plan.yaml"));
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
    assertThat(SpecFolder.read(folder).digests())
        .containsEntry("plan.yaml", HexFormat.of().formatHex(digest));
  }

  private List<String> places() {
    return SpecsOnDisk.places(BoxBuilder.read(folder).problems());
  }

  private static byte[] bytes(int... values) {
    byte[] bytes = new byte[values.length];
    IntStream.range(0, values.length).forEach(i -> bytes[i] = (byte) values[i]);
    return bytes;
  }
}
