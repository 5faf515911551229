package lockwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;
import lockwright.report.result.Movements;
import lockwright.report.result.Parts;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** A ground frame that tokens release, on the page: 2.3, 4.4 and 6 of docs/meaning.md. */
class TokenSidingPageTest {
  private static final JsonNode RESULT = Pages.json(Pages.SIDING);
  private static final Parts ANCHORS = new Parts(RESULT);
  private static final String LOCKED = "siding locked: ground frame Pit, section Marl to Holm";

  @Test
  void the_sequence_ends_at_the_lock() {
    Instance siding =
        CheckedBox.read(Pages.SIDING).requirements().stream()
            .filter(i -> i.id().equals(LOCKED))
            .findFirst()
            .orElseThrow();
    assertThat(siding.movements()).hasSize(5);
    Movements.Line last = siding.movements().get(4);
    assertThat(last.thing()).isEqualTo("section Marl to Holm");
    assertThat(last.done()).isEqualTo("section Marl to Holm: put a fresh token in the lock of Pit");
    assertThat(last.moved()).isEqualTo("section Marl to Holm: lock of Pit now fresh");
    assertThat(siding.things().stream().map(Instance.Thing::words))
        .containsExactly("section Marl to Holm", "ground frame Pit");
  }

  @Test
  void the_formula_says_when_the_siding_is_locked() {
    assertThat(new Formula(RESULT, ANCHORS).of(ANCHORS.part("requirement", LOCKED)))
        .isEqualTo(
            "always: (home(Pit) \u21d2 N(P1)) \u2227"
                + " (\u00achome(Pit) \u21d2 out(Marl to Holm) \u2264 1)");
  }

  @Test
  void the_read_back_says_what_releases_the_ground_frame() {
    Element page = Pages.parse(ProofReport.checked(Pages.SIDING)).getDocumentElement();
    assertThat(page.getTextContent())
        .contains("tokens of section Marl to Holm, held while open")
        .contains("Line from left to right: section Marl to Holm; track line to pit;");
  }
}
