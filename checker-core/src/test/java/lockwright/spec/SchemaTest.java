package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.BoxBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas that editors use agree with the readers, whether numbers are read as such or not. */
class SchemaTest {
  private static final Path SPECS = Path.of("..", "specs");
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Path STARTER =
      Path.of("..", "maven-plugin/src/main/resources/lockwright/maven/new-box/box");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan",
        "frame",
        "locking",
        "sections",
        "controls",
        "waivers",
        "drawing",
        "lessons"
      })
  void a_schema_is_itself_valid(String name) throws IOException {
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    JsonNode schema = new ObjectMapper().readTree(schemaOf(name).toFile());
    assertThat(
            registry
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"))
                .validate(schema))
        .isEmpty();
  }

  @Test
  void every_file_of_a_good_spec_is_valid() throws IOException {
    int files = 0;
    for (Path spec : goodSpecs()) {
      for (String name :
          List.of(
              "plan",
              "frame",
              "locking",
              "sections",
              "controls",
              "waivers",
              "drawing",
              "lessons")) {
        Path file = spec.resolve(name + ".yaml");
        if (Files.exists(file)) {
          files++;
          String text = Files.readString(file);
          assertThat(errors(name, asText(text))).as(file.toString()).isEmpty();
          assertThat(errors(name, asEditor(text))).as(file.toString()).isEmpty();
        }
      }
    }
    assertThat(files).isGreaterThanOrEqualTo(8);
  }

  @ParameterizedTest
  @CsvSource({
    "yaml-106-misspelt-key, plan",
    "yaml-107-signal-without-arm, plan",
    "yaml-108-text-for-a-list, plan",
    "yaml-110-no-signals, plan",
    "yaml-111-true-for-yes, plan",
    "yaml-112-points-named-twice, frame",
    "plan-101-version-2, plan",
    "plan-102-letter-outside-ascii, plan",
    "plan-102-track-named-trap, plan",
    "plan-106-signal-at-one-track, plan",
    "frame-101-leading-nought, frame",
    "frame-102-works-two-things, frame",
    "frame-111-too-many-levers, frame",
    "sect-101-letter-outside-ascii, sections",
    "sect-107-one-instrument, sections",
    "sect-110-noughts-before-the-number, sections",
    "control-101-letter-outside-ascii, controls",
    "control-101-named-as-an-arm, controls",
    "control-103-two-kinds, controls",
    "control-103-of-no-kind, controls",
    "control-107-track-circuit-for-one-pull, controls",
    "yaml-110-lever-lock-without-needs, controls",
    "draw-101-length-with-its-unit, drawing",
    "lesson-103-pull-and-replace, lessons",
    "lesson-104-lever-with-its-label, lessons",
    "lesson-106-first-a-lever-alone, lessons",
    "waiv-103-day-that-is-not, waivers",
    "yaml-107-waiver-without-role, waivers",
    "yaml-111-expected-to-be-proved, waivers",
  })
  void a_fault_of_form_is_invalid(String example, String name) throws IOException {
    Path file = SpecsOnDisk.REJECTED.resolve(example).resolve(name + ".yaml");
    assertThat(errors(name, asText(Files.readString(file)))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{lever: 1}",
        "{locks: 4}",
        "{lever: 1, locks: 2 or 3}",
        "{lever: 1, released by: '1, 3 or 4'}",
        "{lever: 1, locks: 4, when: 2}",
        "{lever: 1, locks: 4, holds: yes}",
        "{lever: 1, locks: 4, holds: maybe}",
        "{lever: 01, locks: 4}",
      })
  void a_wrong_row_of_the_locking_is_invalid_and_refused(String row) {
    String text = "locking:\n  - " + row + "\n";
    assertThat(errors("locking", asText(text))).isNotEmpty();
    Problems problems = new Problems();
    LockingReader.readYaml(YamlReader.read("locking.yaml", text, problems).orElseThrow(), problems);
    assertThat(problems.sorted()).isNotEmpty();
  }

  /** The starter, the specs of the tests, and each of the examples that the builder takes. */
  private static List<Path> goodSpecs() throws IOException {
    try (Stream<Path> paths = Files.walk(EXAMPLES)) {
      List<Path> examples =
          paths
              .filter(p -> p.getFileName().toString().equals("plan.yaml"))
              .filter(p -> !p.toString().contains("target"))
              .map(Path::getParent)
              .filter(p -> BoxBuilder.read(p).problems().isEmpty())
              .sorted()
              .toList();
      return Stream.of(List.of(STARTER), SpecsOnDisk.children(SpecsOnDisk.BOXES), examples)
          .flatMap(List::stream)
          .toList();
    }
  }

  private static List<Error> errors(String name, JsonNode file) {
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new ObjectMapper().readTree(schemaOf(name).toFile()))
          .validate(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path schemaOf(String name) {
    return SPECS.resolve(name + ".schema.json");
  }

  /** The tree as our readers see it: every scalar a text. */
  private static JsonNode asText(String yaml) {
    return json(yaml, false);
  }

  /** The tree as an editor sees it: integers of the core schema of YAML 1.2 are numbers. */
  private static JsonNode asEditor(String yaml) {
    return json(yaml, true);
  }

  private static JsonNode json(String yaml, boolean numbers) {
    return json(YamlReader.read("file.yaml", yaml, new Problems()).orElseThrow(), numbers);
  }

  static JsonNode json(Node node, boolean numbers) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = json.objectNode();
      mapping.fields().forEach(f -> object.set(f.key().text(), json(f.value(), numbers)));
      return object;
    }
    if (node instanceof Node.Sequence sequence) {
      ArrayNode array = json.arrayNode();
      sequence.items().forEach(item -> array.add(json(item, numbers)));
      return array;
    }
    String text = ((Node.Scalar) node).written().text();
    boolean number = numbers && text.matches("[0-9]{1,9}");
    return number ? json.numberNode(Integer.parseInt(text)) : json.textNode(text);
  }
}
