package lockwright.spec.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas are what the forms say; {@code -Dlockwright.schemas=write} writes them. */
class WrittenSchemasTest {
  private static final Path SPECS = Path.of("..", "specs");

  @BeforeAll
  static void write_them_anew_if_that_is_asked_for() throws IOException {
    if ("write".equals(System.getProperty("lockwright.schemas"))) {
      Schemas.write(SPECS);
    }
  }

  static Iterable<FileForm> all() {
    return Schemas.ALL;
  }

  @ParameterizedTest
  @MethodSource("all")
  void a_published_schema_is_what_its_form_says(FileForm form) throws IOException {
    assertThat(Files.readString(SPECS.resolve(form.name() + ".schema.json")))
        .as("write the schemas anew, with -Dlockwright.schemas=write")
        .isEqualTo(Schemas.text(form));
  }
}
