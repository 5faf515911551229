package lockwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import lockwright.railway.Box;
import lockwright.report.picture.Pictures;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;
import lockwright.report.result.Movements;
import lockwright.report.result.Parts;
import lockwright.worker.Limits;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Arms that several levers give, on pages and in pictures: 2.7 of docs/meaning.md. */
class SeveralLeversPageTest {
  private static final byte[] BYTES = Pages.result(box(), Limits.usual());
  private static final JsonNode RESULT = Pages.json(BYTES);
  private static final Parts ANCHORS = new Parts(RESULT);

  /** The box, without the entry that keeps the slotted arm from being off against the home. */
  private static Box box() {
    Box box = Pages.built("arm-with-two-levers").box().orElseThrow();
    return box.withLocking(
        box.locking().stream().filter(e -> !e.words().equals("1 locks 6")).toList());
  }

  private static String formula(String requirement) {
    return new Formula(RESULT, ANCHORS).of(ANCHORS.part("requirement", requirement));
  }

  @Test
  void formulas_say_by_which_lever() {
    assertThat(formula("points set: signal 1, lever 2"))
        .isEqualTo("always: off(1) \u2227 \u00aclever 2 at N \u21d2 R(4)");
    assertThat(formula("route can be cleared: route 1 to branch"))
        .isEqualTo("some run: clear(1 by 2) \u2227 R(4)");
    assertThat(formula("route can be cleared: route 6 to west"))
        .isEqualTo("some run: clear(6) \u2227 N(4)");
    assertThat(formula("distant follows: signal 5"))
        .isEqualTo("always: off(5) \u21d2 clear(1 by 1)");
    assertThat(formula("section signal earned: signal 1, section Bank to Holm"))
        .startsWith("always: lever 2 leaves N");
  }

  @Test
  void a_movement_says_what_the_arm_does_and_not_what_its_lever_does() {
    Instance apart =
        CheckedBox.read(BYTES).requirements().stream()
            .filter(i -> i.id().equals("no conflict: signals 1 and 6"))
            .findFirst()
            .orElseThrow();
    List<String> moved = apart.movements().stream().map(Movements.Line::moved).toList();
    assertThat(moved).contains("signal 6 still on", "signal 6 part-way, taken as off");
  }

  @Test
  void a_slotted_arm_is_drawn_off_with_all_its_levers_over() {
    assertThat(Pictures.outside(RESULT, Map.of("lever 7", "R")))
        .noneMatch(w -> w.contains("signal 6"));
    assertThat(Pictures.outside(RESULT, Map.of("lever 7", "R", "lever 6", "M")))
        .contains("signal 6 part-way", "route 6 to west set");
    assertThat(Pictures.outside(RESULT, Map.of("lever 7", "R", "lever 6", "R")))
        .contains("signal 6 off");
  }

  @Test
  void a_route_is_set_by_a_lever_that_is_for_it() {
    assertThat(Pictures.outside(RESULT, Map.of("lever 1", "R", "lever 4", "R")))
        .contains("signal 1 off")
        .noneMatch(w -> w.contains("route 1"));
    assertThat(Pictures.outside(RESULT, Map.of("lever 2", "R", "lever 4", "R")))
        .contains("route 1 to branch set");
  }

  @Test
  void the_page_and_the_diagram_name_all_levers_of_an_arm() {
    Element page = Pages.parse(ProofReport.checked(BYTES)).getDocumentElement();
    assertThat(page.getTextContent())
        .contains("signal 1, for branch")
        .contains("signal 6, slotted")
        .contains("stop signal 1 to the right, levers 1, 2");
  }
}
