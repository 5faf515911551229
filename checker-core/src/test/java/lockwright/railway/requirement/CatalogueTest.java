package lockwright.railway.requirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.section.Section;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The catalogue in words, `specs/requirements.yaml`, and the requirements in code are the same. */
class CatalogueTest {
  private static final String CATALOGUE = "/lockwright/specs/requirements.yaml";

  /** A box with an instance of every requirement. */
  private static List<Requirement> oneOfEach() {
    Drawing drawing =
        new Drawing()
            .tracks("a", "b", "c", "d")
            .joint("a", "b")
            .points("3", "b", "c", "d")
            .limit(Attachment.Limit.BLOCK, "a", "d")
            .section("line", "c")
            .groundFrame("yard", "3")
            .groundFrame("pit")
            .levelCrossing("lane", "b")
            .signal("1", Arm.STOP, "a", "b")
            .signal("2", Arm.STOP, "a", "b")
            .signal("4", Arm.DISTANT, "a", "b")
            .signal("5", Arm.STOP, "b", "a")
            .tracks("g", "h", "i", "k")
            .joint("g", "h")
            .joint("h", "i")
            .joint("i", "k")
            .limit(Attachment.Limit.BLOCK, "g", "k")
            .signal("6", Arm.STOP, "g", "h")
            .signal("7", Arm.STOP, "h", "i")
            .signal("8", Arm.STOP, "k", "i")
            .signal("9", Arm.STOP, "i", "h")
            .overlap("7", "i");
    junction(drawing);
    List<Section> sections = List.of(Frames.section("line", "c", "pit"));
    Derived derived =
        Derivation.derive(
            drawing.layout(), Frames.of(drawing.layout(), List.of("3"), 1, sections), sections);
    List<Requirement> all =
        new ArrayList<>(derived.requirements().stream().filter(r -> !r.possibility()).toList());
    all.addAll(derived.advice());
    derived.requirements().stream().filter(Requirement::possibility).forEach(all::add);
    return all;
  }

  /** Of double lines, for what is advice. */
  private static void junction(Drawing drawing) {
    drawing
        .tracks("m", "n", "o", "p", "q", "r", "s", "t", "u", "v")
        .joint("m", "n")
        .joint("r", "s")
        .points("10", "n", "o", "p")
        .crossing("x", "s", "t", "p", "q")
        .points("11", "v", "t", "u")
        .limit(Attachment.Limit.BLOCK, "m", "o", "q", "r", "u", "v")
        .signal("12", Arm.STOP, "m", "n")
        .signal("13", Arm.STOP, "r", "s");
  }

  private static List<Map<String, Object>> catalogue() throws IOException {
    try (InputStream in = CatalogueTest.class.getResourceAsStream(CATALOGUE)) {
      Yaml yaml = new Yaml(new SafeConstructor(new LoaderOptions()));
      Map<String, List<Map<String, Object>>> read = yaml.load(in);
      return read.get("requirements");
    }
  }

  @Test
  void every_kind_of_requirement_has_an_instance_in_the_box_used_here() {
    assertThat(oneOfEach().stream().<Class<?>>map(Requirement::getClass).distinct().toList())
        .containsExactlyInAnyOrder(Requirement.class.getPermittedSubclasses());
  }

  @Test
  void the_catalogue_names_the_requirements_in_the_order_of_their_instances() throws IOException {
    assertThat(catalogue().stream().map(e -> e.get("name")).toList())
        .isEqualTo(oneOfEach().stream().<Object>map(Requirement::name).distinct().toList());
  }

  @Test
  void the_catalogue_and_the_code_agree_on_what_is_a_possibility() throws IOException {
    for (Map<String, Object> entry : catalogue()) {
      assertThat(oneOfEach().stream().filter(r -> r.name().equals(entry.get("name"))))
          .allMatch(r -> (r.possibility() ? "possibility" : "safety").equals(entry.get("kind")));
    }
  }

  @Test
  void every_entry_says_what_it_applies_to_and_how_each_source_is_known() throws IOException {
    for (Map<String, Object> entry : catalogue()) {
      assertThat(entry.keySet()).containsExactly("name", "kind", "words", "applies to", "sources");
      assertThat((List<?>) entry.get("sources"))
          .isNotEmpty()
          .allSatisfy(
              s ->
                  assertThat(((Map<?, ?>) s).get("known"))
                      .isIn("read", "from memory", "common practice, no source"));
    }
  }

  @Test
  void no_two_instances_have_one_id() {
    assertThat(oneOfEach().stream().map(Requirement::id).toList()).doesNotHaveDuplicates();
  }
}
