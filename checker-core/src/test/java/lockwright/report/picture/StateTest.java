package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** A state is drawn, and said, by the table of docs/meaning.md 2.2; the box is Quillby. */
class StateTest {
  private static final JsonNode BOX = Drawn.quillby();

  private static Element diagram(Map<String, String> state) {
    return Drawn.parsed(Pictures.diagram(BOX, state));
  }

  private static String kind(Map<String, String> state, String attribute, String name) {
    return Drawn.the(diagram(state), attribute, name).getAttribute("class");
  }

  @Test
  void an_arm_goes_off_with_its_lever() {
    assertThat(kind(Map.of(), "data-signal", "2")).isEqualTo("arm stop on");
    assertThat(kind(Map.of("lever 2", "R"), "data-signal", "2")).isEqualTo("arm stop off");
    assertThat(kind(Map.of("lever 2", "M"), "data-signal", "2")).isEqualTo("arm stop part-way");
    assertThat(kind(Map.of("lever 2", "R"), "data-signal", "3")).isEqualTo("arm calling-on on");
    assertThat(turn(Map.of())).isNotEqualTo(turn(Map.of("lever 2", "R")));
    assertThat(turn(Map.of("lever 2", "M"))).isNotIn(turn(Map.of()), turn(Map.of("lever 2", "R")));
  }

  private static String turn(Map<String, String> state) {
    Element arm = Drawn.the(diagram(state), "data-signal", "2");
    return Drawn.all(arm, "g").get(0).getAttribute("transform");
  }

  @Test
  void the_leg_that_lies_is_joined_and_the_other_parted() {
    double[] n = legs(Map.of());
    double[] m = legs(Map.of("lever 8", "M"));
    double[] r = legs(Map.of("lever 8", "R"));
    assertThat(n[0]).isZero();
    assertThat(n[1]).isGreaterThan(10);
    assertThat(r[0]).isGreaterThan(10);
    assertThat(r[1]).isZero();
    assertThat(m[0]).isGreaterThan(10);
    assertThat(m[1]).isGreaterThan(10);
    assertThat(words(Map.of("lever 8", "R"), "W")).contains("8 \u00b7 W (R)");
    assertThat(words(Map.of("points S", "R"), "S")).contains("S (R)");
  }

  /** How far from points W the normal and the reverse leg begin. */
  private static double[] legs(Map<String, String> state) {
    Element root = diagram(state);
    Element dot = Drawn.all(Drawn.the(root, "data-points", "W"), "circle").get(0);
    double x = Double.parseDouble(dot.getAttribute("cx"));
    double y = Double.parseDouble(dot.getAttribute("cy"));
    return List.of("road 1 west", "road 2").stream()
        .mapToDouble(t -> Drawn.rails(root).get(t).get(0).getP1().distance(x, y))
        .toArray();
  }

  private static List<String> words(Map<String, String> state, String points) {
    return Drawn.labels(Drawn.the(diagram(state), "data-points", points)).stream()
        .map(Drawn.Label::text)
        .toList();
  }

  @Test
  void a_bolt_is_in_out_or_neither() {
    assertThat(words(Map.of(), "W")).contains("bolt 9 (out)");
    assertThat(words(Map.of("lever 9", "R"), "W")).contains("bolt 9 (in)");
    assertThat(words(Map.of("lever 9", "M"), "W")).contains("bolt 9 (neither)");
    JsonNode station = Drawn.station();
    Map<String, String> partWay = Map.of("lever 18", "M", "lever 19", "R");
    String normal = Pictures.diagram(station, Map.of());
    assertThat(normal).contains("bolt 18 (in)").contains("bolt 19 (in)");
    assertThat(Pictures.diagram(station, partWay))
        .contains("bolt 18 (out)")
        .contains("bolt 19 (out)");
  }

  @Test
  void a_route_is_drawn_only_while_its_arm_is_not_on_and_its_points_lie() {
    assertThat(Drawn.that(diagram(Map.of()), "data-route")).isEmpty();
    assertThat(route(Map.of("lever 2", "R"))).contains("Route 2 to road 1 east set");
    assertThat(route(Map.of("lever 2", "R", "lever 8", "R"))).contains("Route 2 to road 2 set");
    assertThat(route(Map.of("lever 2", "M"))).contains("2 to road 1 east, arm part-way");
    assertThat(Drawn.that(diagram(Map.of("lever 2", "R", "lever 8", "M")), "data-route")).isEmpty();
    assertThat(Drawn.that(diagram(Map.of("lever 2", "R", "points S", "R")), "data-route"))
        .isEmpty();
  }

  private static String route(Map<String, String> state) {
    List<Element> routes = Drawn.that(diagram(state), "data-route");
    assertThat(routes).hasSize(1);
    return Drawn.text(routes.get(0));
  }

  @Test
  void tokens_and_releases_are_told() {
    String section = "section Sedgeholm to Quillby: ";
    Map<String, String> state =
        Map.of(
            section + "tokens in Sedgeholm",
            "9",
            section + "tokens out",
            "1",
            section + "plunging at Quillby",
            "yes",
            section + "withdrawal at Sedgeholm",
            "yes",
            section + "release",
            "given",
            "lever 12",
            "R");
    Element root = diagram(state);
    String drawn = Drawn.text(Drawn.the(root, "data-section", "Sedgeholm to Quillby"));
    assertThat(drawn)
        .contains("in Sedgeholm: 9", "out: 1", "plunging: Quillby", "withdrawal: Sedgeholm")
        .contains("release of 11: given");
    assertThat(Drawn.all(root, "g").stream().map(g -> g.getAttribute("class")))
        .contains("ground-frame reversed");
    assertThat(root.getAttribute("aria-label"))
        .contains("Sedgeholm to Quillby out: 1", "release of ground frame Siding given");
    Drawn.readable(Pictures.diagram(BOX, state));
  }

  @Test
  void an_instrument_is_not_drawn_with_tokens_of_which_nothing_is_known() {
    Element section = Drawn.the(diagram(Map.of()), "data-section", "Sedgeholm to Quillby");
    assertThat(Drawn.text(section))
        .contains("15 tokens")
        .contains("instruments:Sedgeholm, Quillby")
        .doesNotContain("in Sedgeholm");
  }

  @Test
  void what_is_not_normal_is_said() {
    String words =
        diagram(Map.of("lever 2", "R", "lever 8", "R", "lever 16", "M")).getAttribute("aria-label");
    assertThat(words)
        .contains("signal 2 off; ", "points W reverse; ", "points E lying neither way")
        .contains("route 2 to road 2 set", "distant signal 1 to the right, lever 1");
    assertThat(Drawn.parsed(Pictures.frame(BOX, Map.of("lever 2", "M"))).getAttribute("aria-label"))
        .contains("lever 2 (Down home) part-way; the others are normal.");
  }

  @Test
  void a_pulled_lever_stands_lower() {
    double normal = handle(Map.of());
    double partWay = handle(Map.of("lever 2", "M"));
    assertThat(partWay).isGreaterThan(normal);
    assertThat(handle(Map.of("lever 2", "R"))).isGreaterThan(partWay);
    assertThat(frame(Map.of("lever 2", "R")).getAttribute("class"))
        .isEqualTo("lever stop-arm reversed");
  }

  private static double handle(Map<String, String> state) {
    return Drawn.all(frame(state), "rect").stream()
        .filter(r -> r.getAttribute("class").equals("handle"))
        .mapToDouble(r -> Double.parseDouble(r.getAttribute("y")))
        .sum();
  }

  private static Element frame(Map<String, String> state) {
    return Drawn.the(Drawn.parsed(Pictures.frame(BOX, state)), "data-lever", "2");
  }

  /** Common practice, from memory: a signal stands on the left of the line as the driver goes. */
  @Test
  void a_signal_stands_on_the_left_of_the_trains_that_it_is_for() {
    Element root = diagram(Map.of());
    double line = Drawn.rails(root).get("west outer").get(0).getY1();
    assertThat(y(root, "2")).isLessThan(line);
    assertThat(y(root, "11")).isGreaterThan(line);
  }

  private static double y(Element root, String signal) {
    return Drawn.labels(Drawn.the(root, "data-signal", signal)).get(0).box().getCenterY();
  }

  /** Handle colours of British practice; common practice, no source, from memory. */
  @Test
  void handles_are_coloured_by_what_they_work() {
    Element quillby = Drawn.parsed(Pictures.frame(BOX, Map.of()));
    Element station = Drawn.parsed(Pictures.frame(Drawn.station(), Map.of()));
    Map<String, String> kinds =
        Map.of(
            "1",
            "distant-arm",
            "2",
            "stop-arm",
            "3",
            "stop-arm",
            "7",
            "stop-arm",
            "8",
            "points-lever",
            "9",
            "bolt-lever",
            "12",
            "release",
            "13",
            "spare");
    kinds.forEach(
        (lever, kind) ->
            assertThat(Drawn.the(quillby, "data-lever", lever).getAttribute("class"))
                .isEqualTo("lever " + kind + " normal"));
    assertThat(Drawn.the(station, "data-lever", "18").getAttribute("class"))
        .isEqualTo("lever points-and-bolt normal");
    assertThat(Pictures.stylesheet())
        .contains(
            ".stop-arm .handle { fill: var(--red)", ".distant-arm .handle { fill: var(--yellow)")
        .contains(
            ".release .handle { fill: var(--brown)", ".out-of-use .handle { fill: var(--white)");
  }

  @Test
  void nothing_but_what_moves_is_drawn_elsewhere_in_another_state() {
    Map<String, String> state = Map.of("lever 2", "R", "lever 8", "R", "lever 9", "M");
    assertThat(names(state)).isEqualTo(names(Map.of()));
    assertThat(diagram(state).getAttribute("viewBox"))
        .isEqualTo(diagram(Map.of()).getAttribute("viewBox"));
  }

  @Test
  void a_diagram_of_many_states_is_the_same_as_one_by_one() {
    Map<String, String> state = Map.of("lever 2", "R", "lever 8", "M");
    Function<Map<String, String>, String> diagrams = Pictures.diagrams(BOX);
    assertThat(diagrams.apply(state)).isEqualTo(Pictures.diagram(BOX, state));
    assertThat(diagrams.apply(Map.of())).isEqualTo(Pictures.diagram(BOX, Map.of()));
  }

  private static List<Drawn.Label> names(Map<String, String> state) {
    return Drawn.that(diagram(state), "data-track").stream()
        .flatMap(t -> Drawn.labels(t).stream())
        .toList();
  }
}
