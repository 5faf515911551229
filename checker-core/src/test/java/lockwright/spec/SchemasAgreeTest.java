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
import java.util.function.BiConsumer;
import lockwright.spec.form.FileForm;
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
    int refused = 0;
    int taken = 0;
    for (Path box :
        List.of(SpecsOnDisk.EVERY_FORM, SpecsOnDisk.BOXES.resolve("push-pull-shunts"))) {
      Path file = box.resolve(form.name() + ".yaml");
      if (!Files.exists(file)) {
        continue;
      }
      Node root =
          YamlReader.read("file.yaml", Files.readString(file), new Problems()).orElseThrow();
      for (FormMutants mutant : FormMutants.of(form.mapping(), root)) {
        Problems problems = new Problems();
        READERS.get(form.name()).accept(mutant.root(), problems);
        boolean reader = !problems.isEmpty();
        boolean editor = !schema.validate(SchemaTest.json(mutant.root(), true)).isEmpty();
        if (reader != editor) {
          differ.add(mutant.what() + ": " + (reader ? problems.sorted() : "taken by the reader"));
        }
        refused += reader ? 1 : 0;
        taken += reader ? 0 : 1;
      }
    }
    assertThat(differ).isEmpty();
    assertThat(refused).isGreaterThan(5);
    assertThat(taken).isPositive();
  }
}
