package lockwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lockwright.railway.BoxBuilder;
import lockwright.railway.requirement.Requirement;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

class RuleTest {
  private static final List<Requirement> BREAKABLE =
      Stream.of("quillby", "brindlewick")
          .flatMap(
              example ->
                  BoxBuilder.read(Path.of("..", "examples", "proved", example, "box"))
                      .box()
                      .orElseThrow()
                      .checked()
                      .stream())
          .filter(r -> !r.possibility() || r instanceof Requirement.FrameCanBeRestored)
          .toList();

  @Test
  void a_requirement_is_quoted_as_the_catalogue_has_it() throws IOException {
    Map<Object, Object> catalogue = new HashMap<>();
    try (InputStream in =
        RuleTest.class.getResourceAsStream("/lockwright/specs/requirements.yaml")) {
      Map<String, List<Map<String, Object>>> read =
          new Yaml(new SafeConstructor(new LoaderOptions())).load(in);
      read.get("requirements").forEach(r -> catalogue.put(r.get("name"), r.get("words")));
    }
    assertThat(BREAKABLE)
        .isNotEmpty()
        .allSatisfy(r -> assertThat(Rule.words(r)).isEqualTo(catalogue.get(r.name())));
  }

  @Test
  void every_requirement_that_a_sequence_breaks_has_words_for_its_breach() {
    assertThat(BREAKABLE).allSatisfy(r -> assertThat(Rule.broken(r)).isNotBlank());
  }
}
