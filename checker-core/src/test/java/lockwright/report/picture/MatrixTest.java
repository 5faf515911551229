package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Each entry stands in its row and column, says its kind, and leads to its line. */
class MatrixTest {
  private static final Map<String, String> LETTERS =
      Map.of(
          "released by", "R",
          "locks", "L",
          "locks both ways", "B",
          "while normal locks both ways", "W",
          "starts only with normal", "S",
          "not again before", "T");

  static List<Path> boxes() throws IOException {
    return Drawn.boxes();
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void each_entry_is_a_link_where_its_levers_meet(Path box) {
    JsonNode result = Drawn.result(box);
    Element matrix = Drawn.parsed(Pictures.matrix(result));
    assertThat(matrix.getAttribute("role")).isEqualTo("group");
    List<String> expected = new ArrayList<>();
    int index = 0;
    for (JsonNode entry : result.get("locking")) {
      for (JsonNode other : entry.get("others")) {
        String letter =
            entry.get("others").size() > 1 ? "E" : LETTERS.get(entry.get("kind").asText());
        expected.add(
            String.join(
                "|",
                "#entry-" + index,
                entry.get("lever").asText(),
                other.asText(),
                letter,
                entry.get("text").asText(),
                Boolean.toString(!entry.get("when").isEmpty())));
      }
      index++;
    }
    assertThat(links(matrix)).containsExactlyInAnyOrderElementsOf(expected);
  }

  /** Link, row, column, letter, words, whether conditional; row and column by where it stands. */
  private static List<String> links(Element matrix) {
    List<Drawn.Label> headings =
        Drawn.labels(matrix).stream()
            .filter(l -> l.text().matches("\\d+[A-Z]?(-pull|-push)?"))
            .toList();
    double top = headings.stream().mapToDouble(h -> h.box().getY()).min().orElse(0);
    List<Drawn.Label> columns = headings.stream().filter(h -> h.box().getY() == top).toList();
    List<Drawn.Label> rows = headings.stream().filter(h -> h.box().getY() > top).toList();
    List<String> links = new ArrayList<>();
    for (Element link : Drawn.all(matrix, "a")) {
      Element rect = Drawn.all(link, "rect").get(0);
      Drawn.Label letter = Drawn.labels(link).get(0);
      double x = letter.box().getCenterX();
      double y = letter.box().getCenterY();
      links.add(
          String.join(
              "|",
              link.getAttribute("href"),
              nearest(rows, y, false),
              nearest(columns, x, true),
              letter.text(),
              link.getAttribute("aria-label"),
              Boolean.toString(rect.getAttribute("class").contains("conditional"))));
    }
    return links;
  }

  private static String nearest(List<Drawn.Label> headings, double at, boolean across) {
    String best = "";
    double least = Double.MAX_VALUE;
    for (Drawn.Label heading : headings) {
      double centre = across ? heading.box().getCenterX() : heading.box().getCenterY();
      if (Math.abs(centre - at) < least) {
        least = Math.abs(centre - at);
        best = heading.text();
      }
    }
    return best;
  }
}
