package lockwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import lockwright.report.result.Movements;
import lockwright.report.result.Parts;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Level crossings on the page, by 2.4 and 6 of docs/meaning.md; the box is invented. */
class LevelCrossingsTest {
  private static final JsonNode RESULT = Pages.json(Pages.GATES);
  private static final Parts ANCHORS = new Parts(RESULT);

  /**
   * @param moves lever L, lock or gates, the position before and the one after
   */
  private static JsonNode run(List<String> moves) {
    ObjectNode run = JsonNodeFactory.instance.objectNode();
    ObjectNode state =
        run.putObject("beginning").put("gates Mill Road", "R").put("lever 2", "N").put("turn", "N");
    ArrayNode steps = run.putArray("steps");
    for (String move : moves) {
      String to = move.substring(move.length() - 1);
      String thing = move.substring(0, move.length() - 3);
      boolean gates = thing.equals("gates Mill Road");
      state = state.deepCopy().put(gates ? thing : "lever " + thing, to);
      ObjectNode step = steps.addObject();
      step.putObject("event")
          .put("kind", gates ? "gates" : "lever")
          .put(gates ? "levelCrossing" : "lever", gates ? "Mill Road" : thing)
          .put("from", move.substring(move.length() - 2, move.length() - 1))
          .put("to", to);
      step.set("after", state);
    }
    return run;
  }

  @Test
  void gates_locks_and_wickets_are_told_as_they_move() {
    JsonNode run =
        run(
            List.of(
                "2 NM",
                "2 MR",
                "gates Mill Road RM",
                "gates Mill Road MN",
                "3 NM",
                "3 MR",
                "4 NR",
                "2 RM",
                "gates Mill Road NM"));
    Movements movements = new Movements(ANCHORS);
    assertThat(movements.beginning(run))
        .isEqualTo("all levers normal; gates of Mill Road across the line");
    assertThat(movements.lines(run).stream().map(l -> l.done() + " | " + l.moved()))
        .containsExactly(
            "pull 2 Gates of the lane | gates of Lane across the road",
            "close the gates of Mill Road to the road | gates of Mill Road across the road",
            "pull 3 Gate lock | gate lock of Mill Road in",
            "pull 4 Wickets | wickets of Lane reverse",
            "replace 2 Gates of the lane part-way | gates of Lane part-way",
            "open the gates of Mill Road to the road part-way | gates of Mill Road part-way");
  }

  @Test
  void a_route_holds_the_gates_and_the_gate_locks_over_its_tracks() {
    Formula formula = new Formula(RESULT, ANCHORS);
    assertThat(formula.of(ANCHORS.part("requirement", "route held: route 1 to east")))
        .isEqualTo(
            "always: off(1) \u2227 true \u21d2"
                + " \u00acmoved(gates of Lane, gates of Mill Road, gate lock of Mill Road)");
    assertThat(
            formula.of(ANCHORS.part("requirement", "road closed: signal 5, level crossing Lane")))
        .endsWith("locked across the road(Lane)");
  }

  @Test
  void the_breach_and_the_crossings_stand_on_the_page() {
    Document page = Pages.parse(ProofReport.checked(Pages.GATES));
    assertThat(Pages.text(page))
        .contains("Level crossing Lane", "gate lock of level crossing Mill Road, out at normal")
        .contains("gates of level crossing Lane, across the line at normal")
        .contains("wickets of level crossing Lane");
    assertThat(
            Pages.elements(page).stream()
                .map(e -> e.getAttribute("aria-label"))
                .filter(l -> l.contains("level crossing Mill Road: gates "))
                .map(l -> l.replaceAll(".*Mill Road: (.*?);.*", "$1")))
        .containsExactly(
            "gates anywhere, lock out",
            "gates across the road, lock neither",
            "gates across the road, lock out");
    List<String> failing =
        Pages.ofClass(page, "failing").stream().map(Element::getTextContent).toList();
    assertThat(failing).hasSize(2);
    assertThat(failing.get(0)).contains("route held: route 5 to west", "gates of Lane");
    assertThat(failing.get(1))
        .contains("road closed: signal 5, level crossing Mill Road", "gates of Mill Road");
  }
}
