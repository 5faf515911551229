package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lockwright.report.Shown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** What every picture keeps to, on every box of the examples and tests. */
class PicturesTest {
  private static final Set<String> ELEMENTS =
      Set.of("svg", "title", "desc", "g", "a", "path", "line", "rect", "circle", "text");

  static List<Path> boxes() throws IOException {
    return Drawn.boxes();
  }

  static Stream<String> hostile() {
    return Stream.of(
        "</text></svg><script>alert(1)</script>",
        "\" onload=\"alert(1)\" x='",
        "]]> <![CDATA[ <!-- &amp; &#34; <?php",
        "two\nlines\r\n\tand a nought \u0000, a bell \u0007, an escape \u001b",
        "turned \u202e round \u2066 and \u200b nothing, half a pair \ud83d, \uffff",
        "beyond the plane: \ud83d\ude82 and far too long a label for any room there is at all",
        "");
  }

  @Test
  void there_are_boxes_to_draw() throws IOException {
    assertThat(boxes()).hasSizeGreaterThan(9);
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void a_picture_is_well_formed_and_keeps_to_a_strict_content_policy(Path box) {
    for (String svg : Drawn.pictures(Drawn.result(box), Map.of())) {
      Element root = Drawn.parsed(svg);
      assertThat(svg).startsWith("<svg ").endsWith("</svg>\n").doesNotContain("NaN", "Infinity");
      for (Element element : Drawn.all(root, "*")) {
        assertThat(element.getTagName()).isIn(ELEMENTS);
        assertThat(element.hasAttribute("style")).isFalse();
        assertThat(element.hasAttribute("id")).isFalse();
      }
      assertThat(root.getAttribute("aria-label")).isNotEmpty();
      assertThat(Drawn.all(root, "title").get(0).getParentNode()).isSameAs(root);
      assertThat(Drawn.all(root, "desc")).hasSize(1);
    }
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void no_label_lies_on_another_or_on_a_track(Path box) {
    Drawn.pictures(Drawn.result(box), Map.of()).forEach(Drawn::readable);
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void each_thing_is_drawn_once_with_its_number(Path box) {
    JsonNode result = Drawn.result(box);
    Element diagram = Drawn.parsed(Pictures.diagram(result, Map.of()));
    JsonNode layout = result.get("layout");
    Map<String, String> kinds =
        Map.of("tracks", "track", "points", "points", "signals", "signal", "crossings", "crossing");
    kinds.forEach(
        (list, kind) ->
            assertThat(
                    Drawn.that(diagram, "data-" + kind).stream()
                        .map(g -> g.getAttribute("data-" + kind))
                        .toList())
                .containsExactlyInAnyOrderElementsOf(Drawn.ids(layout.get(list))));
    for (String kind : List.of("points", "signal")) {
      for (JsonNode thing : layout.get(kind.equals("points") ? kind : "signals")) {
        Element drawn = Drawn.the(diagram, "data-" + kind, thing.get("id").asText());
        String words = Drawn.labels(drawn).get(0).text();
        assertThat(words).contains(thing.get("id").asText()).contains(thing.path("lever").asText());
      }
    }
    for (JsonNode frame : layout.get("groundFrames")) {
      String both = frame.has("releaseLever") && frame.has("releaseSection") ? " and token" : "";
      String words =
          frame.get("id").asText() + ", " + frame.path("releaseLever").asText("token") + both;
      assertThat(Drawn.labels(diagram).stream().map(Drawn.Label::text)).contains(words);
    }
    Element levers = Drawn.parsed(Pictures.frame(result, Map.of()));
    assertThat(Drawn.that(levers, "data-lever").stream().map(g -> g.getAttribute("data-lever")))
        .containsExactlyElementsOf(Drawn.ids(result.get("levers")));
    for (Element lever : Drawn.that(levers, "data-lever")) {
      assertThat(Drawn.labels(lever).stream().map(Drawn.Label::text))
          .contains(lever.getAttribute("data-lever").replaceAll("-pu(ll|sh)$", ""));
    }
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void the_same_box_gives_the_same_text(Path box) {
    assertThat(Drawn.pictures(Drawn.result(box), Map.of()))
        .isEqualTo(Drawn.pictures(Drawn.result(box), Map.of()));
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void words_of_the_author_stay_words(String label) {
    JsonNode result = Drawn.quillby().deepCopy();
    ((ObjectNode) result).put("box", "Box " + label);
    result.findParents("label").forEach(thing -> ((ObjectNode) thing).put("label", label));
    result.get("locking").forEach(entry -> ((ObjectNode) entry).put("text", "1 " + label));
    for (String svg : Drawn.pictures(result, Map.of())) {
      Element root = Drawn.parsed(svg);
      assertThat(svg).doesNotContain("<script", "<!", "<?");
      Set<String> names = new HashSet<>();
      Drawn.all(root, "*").forEach(e -> names.add(e.getTagName()));
      assertThat(ELEMENTS).containsAll(names);
      assertThat(Drawn.text(Drawn.all(root, "title").get(0)))
          .endsWith(" of " + Shown.line("Box " + label));
      Drawn.readable(svg);
    }
  }

  /**
   * A double line with a branch that crosses the up line: only the branch crosses, and only there.
   */
  @Test
  void a_station_is_drawn_without_other_crossings_than_its_own() {
    Element root = Drawn.parsed(Pictures.diagram(Drawn.station(), Map.of()));
    assertThat(Drawn.crossings(root)).isEmpty();
  }

  /** Seventy levers: both main lines straight, and no crossover or siding across another line. */
  @Test
  void a_large_station_is_drawn_along_its_main_lines() {
    Element root = Drawn.parsed(Pictures.diagram(Drawn.proved("pellowmere"), Map.of()));
    assertThat(Drawn.crossings(root)).isEmpty();
    assertThat(Drawn.height(root, "down line"))
        .isEqualTo(Drawn.height(root, "platform 1"))
        .isEqualTo(Drawn.height(root, "down main line"));
    assertThat(Drawn.height(root, "up line"))
        .isEqualTo(Drawn.height(root, "platform 2"))
        .isEqualTo(Drawn.height(root, "up main line"));
  }

  /** What is written first stands above, as on the plans in words at the head of these files. */
  @ParameterizedTest
  @ValueSource(strings = {"brindlewick", "pellowmere"})
  void the_down_line_stands_above_where_it_is_written_first(String box) {
    Element root = Drawn.parsed(Pictures.diagram(Drawn.proved(box), Map.of()));
    assertThat(Drawn.height(root, "down main")).isLessThan(Drawn.height(root, "up main"));
  }

  @Test
  void the_key_is_readable() {
    Drawn.readable(Pictures.key());
  }

  @Test
  void the_stylesheet_holds_nothing_from_elsewhere() {
    assertThat(Pictures.stylesheet())
        .contains("prefers-color-scheme: dark", "@media print")
        .doesNotContain("url(", "@import", "</");
  }
}
