package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import lockwright.spec.form.FileForm;
import lockwright.spec.form.Form;
import lockwright.spec.form.Schemas;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Of files spoilt at one place, a schema refuses just those that its reader refuses. */
class SchemasAgreeTest {
  private static final Map<String, BiConsumer<Node, Problems>> READERS =
      Map.of(
          "plan", PlanReader::read,
          "frame", FrameReader::read,
          "locking", LockingReader::readYaml,
          "sections", SectionsReader::read,
          "controls", ControlsReader::read,
          "waivers", WaiversReader::read,
          "drawing", DrawingReader::read,
          "lessons", LessonsReader::read);

  /** No box of the tests has the converse of locks. */
  private static final String CONVERSE =
      "locking:\n  - {lever: 1, releases: [2, 3], locked by: 4}\n";

  static List<FileForm> all() {
    return Schemas.ALL;
  }

  @ParameterizedTest
  @MethodSource("all")
  void a_schema_refuses_just_what_its_reader_refuses(FileForm form) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Schemas.text(form));
    List<String> differ = new ArrayList<>();
    Set<String> missing = new TreeSet<>(keys(form.mapping()));
    int refused = 0;
    int taken = 0;
    for (String file : files(form.name())) {
      Node root = YamlReader.read("file.yaml", file, new Problems()).orElseThrow();
      for (FormMutants mutant : FormMutants.of(form.mapping(), root)) {
        Problems problems = new Problems();
        READERS.get(form.name()).accept(mutant.root(), problems);
        boolean reader = !problems.isEmpty();
        boolean editor = !schema.validate(SchemaTest.json(mutant.root(), true)).isEmpty();
        if (reader != editor) {
          differ.add(mutant.what() + ": " + (reader ? problems.sorted() : "taken by the reader"));
        }
        missing.removeIf(key -> mutant.what().endsWith("without " + key));
        refused += reader ? 1 : 0;
        taken += reader ? 0 : 1;
      }
    }
    assertThat(differ).isEmpty();
    assertThat(missing).as("keys that no file of these boxes has").isEmpty();
    assertThat(refused).isGreaterThan(5);
    assertThat(taken).isPositive();
  }

  private static List<String> files(String name) throws IOException {
    List<String> files = new ArrayList<>();
    for (Path box : SpecsOnDisk.children(SpecsOnDisk.BOXES)) {
      Path file = box.resolve(name + ".yaml");
      if (Files.exists(file)) {
        files.add(Files.readString(file));
      }
    }
    if (name.equals("locking")) {
      files.add(CONVERSE);
    }
    return files;
  }

  private static List<String> keys(Form form) {
    if (form instanceof Form.Shared shared) {
      return keys(shared.form());
    } else if (form instanceof Form.OneOf either) {
      return either.forms().stream().flatMap(one -> keys(one).stream()).toList();
    } else if (form instanceof Form.Items items) {
      return keys(items.item());
    } else if (form instanceof Form.Named named) {
      return keys(named.each());
    } else if (form instanceof Form.Mapping mapping) {
      return mapping.keys().stream()
          .flatMap(key -> Stream.concat(Stream.of(key.name()), keys(key.form()).stream()))
          .toList();
    }
    return List.of();
  }
}
