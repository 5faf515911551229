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

/** Runs and formulas in words. The meaning is that of docs/meaning.md, 2.2 and 6. */
class MovementsTest {
  private static final JsonNode RESULT = Pages.json(Pages.STUCK);
  private static final Parts ANCHORS = new Parts(RESULT);

  private static JsonNode instance(String id) {
    return ANCHORS.part("requirement", id);
  }

  private static List<String> lines(JsonNode run) {
    return new Movements(ANCHORS)
        .lines(run).stream().map(l -> l.last() + " " + l.done() + " | " + l.moved()).toList();
  }

  /** The sequence of the README, for the junction without '1 locks 4'. */
  @Test
  void a_breach_is_told_as_by_the_build() {
    JsonNode sequence = instance("points set: signal 1").get("sequence");
    assertThat(lines(ANCHORS.part("run", sequence.get("run").textValue())))
        .containsExactly(
            "2 pull 4 Junction points | points 4 lie reverse",
            "4 pull 3 Bolt of 4 | bolt of 4 in",
            "5 pull 1 Main home part-way | signal 1 part-way, taken as off");
  }

  @Test
  void two_half_strokes_are_one_line_only_if_they_are_of_one_stroke() {
    ObjectNode run = JsonNodeFactory.instance.objectNode();
    ObjectNode state = run.putObject("beginning").put("lever 3", "N").put("lever 4", "N");
    ArrayNode steps = run.putArray("steps");
    for (String move : List.of("4NM", "4MN", "4NM", "3NM", "4MR", "3MR", "3RM", "3MN", "4RM")) {
      String lever = move.substring(0, 1);
      String to = move.substring(2);
      state = state.deepCopy().put("lever " + lever, to);
      ObjectNode step = steps.addObject();
      step.putObject("event")
          .put("kind", "lever")
          .put("lever", lever)
          .put("from", move.substring(1, 2))
          .put("to", to);
      step.set("after", state);
    }
    assertThat(lines(run))
        .containsExactly(
            "1 pull 4 Junction points part-way | points 4 lie neither way",
            "2 replace 4 Junction points the rest of the way | points 4 lie normal",
            "3 pull 4 Junction points part-way | points 4 lie neither way",
            "4 pull 3 Bolt of 4 part-way | bolt of 4 neither in nor out",
            "5 pull 4 Junction points the rest of the way | points 4 lie reverse",
            "6 pull 3 Bolt of 4 the rest of the way | bolt of 4 in",
            "8 replace 3 Bolt of 4 | bolt of 4 out",
            "9 replace 4 Junction points part-way | points 4 lie neither way");
  }

  @Test
  void each_requirement_has_its_formula() {
    Formula formula = new Formula(RESULT, ANCHORS);
    assertThat(formula.of(instance("points set: signal 1")))
        .isEqualTo("always: off(1) \u21d2 N(4)");
    assertThat(formula.of(instance("points bolted: signal 2, points 4")))
        .isEqualTo("always: off(2) \u2227 R(4) \u21d2 bolted(4)");
    assertThat(formula.of(instance("bolt and points agree: points 4")))
        .isEqualTo("always: between(4) \u21d2 free(4)");
    assertThat(formula.of(instance("route held: route 1 to main")))
        .isEqualTo("always: off(1) \u2227 N(4) \u21d2 \u00acmoved(points 4, bolt of 4)");
    assertThat(formula.of(instance("no conflict: signals 1 and 2")))
        .isEqualTo("always: \u00ac(off(1) \u2227 off(2))");
    assertThat(formula.of(instance("route can be cleared: route 2 to branch")))
        .isEqualTo("some run: clear(2) \u2227 R(4)");
    assertThat(formula.of(instance("lever can be moved: lever 3")))
        .isEqualTo("some run: lever 3 at R");
  }
}
