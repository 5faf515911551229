package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import lockwright.railway.BoxBuilder;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** The starter files of a new box: what they are, that they are good, and that none is lost. */
class NewBoxMojoTest {
  private static final List<String> FILES =
      List.of(
          "box-schemas/controls.schema.json",
          "box-schemas/drawing.schema.json",
          "box-schemas/frame.schema.json",
          "box-schemas/lessons.schema.json",
          "box-schemas/locking.schema.json",
          "box-schemas/plan.schema.json",
          "box-schemas/sections.schema.json",
          "box-schemas/waivers.schema.json",
          "box/frame.yaml",
          "box/locking.csv",
          "box/plan.yaml",
          "pom.xml");

  /** Kept to the end, so that one solver process, which has its folder there, serves all. */
  @TempDir static Path all;

  private Path folder;
  private final RecordingLog log = new RecordingLog();
  private final NewBoxMojo goal = new NewBoxMojo();

  @BeforeEach
  void an_empty_folder() throws IOException {
    folder = Files.createTempDirectory(all, "project");
    goal.basedir = folder.toFile();
    goal.version = "7.8.9";
    goal.setLog(log);
  }

  @Test
  void its_check_is_green_and_proves_something() throws Exception {
    goal.execute();
    assertThat(files()).isEqualTo(FILES);
    assertThat(BoxBuilder.read(folder.resolve("box")).problems()).isEmpty();
    assertThat(checked())
        .anyMatch(l -> l.matches("INFO Fennimere: [1-9][0-9]* requirements of safety proved, .*"));
  }

  @Test
  void every_entry_of_its_table_is_needed() throws Exception {
    goal.execute();
    Path table = folder.resolve("box/locking.csv");
    List<String> rows = Files.readAllLines(table);
    for (int left = 1; left < rows.size(); left++) {
      List<String> fewer = new ArrayList<>(rows);
      fewer.remove(left);
      Files.write(table, fewer);
      assertThatThrownBy(this::checked)
          .as("without " + rows.get(left))
          .hasMessageContaining("broken");
    }
  }

  @Test
  void the_section_shown_in_a_comment_is_a_good_one() throws Exception {
    goal.execute();
    Path plan = folder.resolve("box/plan.yaml");
    String text = Files.readString(plan);
    String shown =
        text.substring(text.indexOf("#   # yaml-language-server"))
            .lines()
            .map(l -> l.replaceFirst("^#   ", ""))
            .collect(Collectors.joining("\n"));
    Files.writeString(plan, text.replace(", branch: block}", "}"));
    Files.writeString(folder.resolve("box/sections.yaml"), shown);
    Files.writeString(
        folder.resolve("box/waivers.yaml"),
        """
        exempted:
          "flank protected: signal 2, from branch":
            reason: no home signal is written yet
        """);
    assertThat(BoxBuilder.read(folder.resolve("box")).problems()).isEmpty();
    assertThat(checked()).anyMatch(l -> l.contains("requirements of safety proved"));
    assertSchema("sections");
  }

  /** The comment names a path from the file's own folder: the yaml-language-server's README. */
  @ParameterizedTest
  @ValueSource(strings = {"plan", "frame"})
  void the_first_line_names_a_schema_that_is_there(String name) throws Exception {
    goal.execute();
    assertSchema(name);
  }

  private void assertSchema(String name) throws IOException {
    Path file = folder.resolve("box").resolve(name + ".yaml");
    String first = Files.readAllLines(file).get(0);
    String start = "# yaml-language-server: $schema=";
    assertThat(first).startsWith(start);
    assertThat(file.resolveSibling(first.substring(start.length())))
        .hasSameBinaryContentAs(Path.of("..", "specs", name + ".schema.json"));
  }

  @Test
  void the_pom_names_this_version_and_is_otherwise_that_of_the_example() throws Exception {
    goal.execute();
    Document pom = xml(folder.resolve("pom.xml"));
    Document example = xml(Path.of("..", "examples/proved/quillby/pom.xml"));
    assertThat(pom.getElementsByTagName("version").item(1).getTextContent()).isEqualTo("7.8.9");
    assertThat(pom.getElementsByTagName("plugin").item(0).getTextContent())
        .isEqualTo(
            example
                .getElementsByTagName("plugin")
                .item(0)
                .getTextContent()
                .replace("0.1.0-SNAPSHOT", "7.8.9"));
  }

  private static Document xml(Path file) throws Exception {
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pom.xml",
        "box/plan.yaml",
        "box/locking.csv",
        "box/locking.yaml",
        "box/sections.yaml",
        "box-schemas/plan.schema.json",
        "box",
        "box-schemas"
      })
  void whatever_is_in_the_way_is_named_and_nothing_is_written(String name) throws Exception {
    write(name, "mine");
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessage("nothing was written, for these are in the way: " + name);
    assertThat(files()).containsExactly(name);
    assertThat(folder.resolve(name)).hasContent("mine");
    assertThat(log.lines).isEmpty();
  }

  @Test
  void a_second_run_names_every_file() throws Exception {
    goal.execute();
    write("box/plan.yaml", "mine");
    assertThatThrownBy(goal::execute).hasMessageEndingWith(": " + String.join(", ", FILES));
    assertThat(folder.resolve("box/plan.yaml")).hasContent("mine");
  }

  @Test
  void other_files_do_not_hinder() throws Exception {
    write("README", "mine");
    goal.execute();
    assertThat(files()).hasSize(FILES.size() + 1).contains("README");
    assertThat(folder.resolve("README")).hasContent("mine");
  }

  /** As if a file had come there between looking and writing. */
  @Test
  void when_the_writing_stops_half_way_nothing_is_left_and_nothing_lost() throws Exception {
    write("pom.xml", "mine");
    assertThatThrownBy(() -> Starter.ofVersion("1").write(folder)).isInstanceOf(IOException.class);
    assertThat(files()).containsExactly("pom.xml");
    assertThat(folder.resolve("box")).doesNotExist();
    assertThat(folder.resolve("pom.xml")).hasContent("mine");
  }

  @Test
  void the_pom_is_written_last() throws IOException {
    assertThat(Starter.ofVersion("1").files().keySet()).last().isEqualTo("pom.xml");
  }

  private List<String> checked() throws Exception {
    RecordingLog said = new RecordingLog();
    CheckMojo check = new CheckMojo();
    check.basedir = folder.toFile();
    check.box = folder.resolve("box").toFile();
    check.outputFolder = folder.resolve("target/lockwright").toFile();
    check.seconds = 120;
    check.depth = 16;
    check.setLog(said);
    check.execute();
    return said.lines;
  }

  private void write(String name, String text) throws IOException {
    Files.createDirectories(folder.resolve(name).getParent());
    Files.writeString(folder.resolve(name), text);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(p -> folder.relativize(p).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }
}
