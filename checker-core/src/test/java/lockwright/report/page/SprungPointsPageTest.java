package lockwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import lockwright.railway.BoxBuilder;
import lockwright.report.readback.ReadBack;
import lockwright.report.result.Parts;
import org.junit.jupiter.api.Test;

/** Sprung points, on the page and in the read-back: 1.3, 2.3 and 6 of docs/meaning.md. */
class SprungPointsPageTest {
  private static final JsonNode RESULT = Pages.json(Pages.SPRUNG);
  private static final Parts ANCHORS = new Parts(RESULT);

  /** Signal 6 leads out over points 3, reverse: it asks nothing of them. */
  @Test
  void no_formula_asks_how_they_lie() {
    assertThat(formula("points set: signal 6"))
        .isEqualTo("always: off(6) \u21d2 (N(5) \u2227 N(T))");
    assertThat(formula("points set: signal 2")).isEqualTo("always: off(2) \u21d2 true");
    assertThat(formula("route held: route 6 to west"))
        .contains("points 5")
        .doesNotContain("points 3", "points T");
  }

  @Test
  void the_page_says_how_they_always_lie() {
    assertThat(Pages.parse(ProofReport.checked(Pages.SPRUNG)).getDocumentElement().getTextContent())
        .contains("Sprung points")
        .contains("to down loop; no path leads facing to up exit")
        .contains("for the trap; no path leads into it")
        .contains("3, sprung, by the reverse leg, trailing")
        .contains("3, by spring (N)");
  }

  @Test
  void the_read_back_says_what_leads_nowhere() {
    Path box = Path.of("src", "test", "resources", "boxes", "sprung-points");
    assertThat(ReadBack.text(BoxBuilder.read(box).box().orElseThrow()).replaceAll("\\s+", " "))
        .contains("worked by a spring: always N, pressed over by what trails through from R")
        .contains("no route by points 3 R: they are sprung, and are not passed facing to reverse")
        .contains("points 3 trailing, by the leg R; sprung, need lie no way");
  }

  private static String formula(String requirement) {
    return new Formula(RESULT, ANCHORS).of(ANCHORS.part("requirement", requirement));
  }
}
