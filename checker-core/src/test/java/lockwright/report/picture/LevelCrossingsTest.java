package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Gates are drawn, and said, as docs/meaning.md 2.4 has them stand. */
class LevelCrossingsTest {
  private static final JsonNode BOX =
      Drawn.result(Path.of("src", "test", "resources", "boxes", "every-form"));
  private static final String ROAD = "level-crossing normal";
  private static final String LINE = "level-crossing reversed";
  private static final String PART = "level-crossing part-way";

  private static Element diagram(Map<String, String> state) {
    return Drawn.parsed(Pictures.diagram(BOX, state));
  }

  private static List<Element> drawn(Map<String, String> state, String crossing) {
    return Drawn.that(diagram(state), "data-level-crossing").stream()
        .filter(g -> g.getAttribute("data-level-crossing").equals(crossing))
        .toList();
  }

  private static String kind(Map<String, String> state, String crossing) {
    List<String> kinds =
        drawn(state, crossing).stream().map(g -> g.getAttribute("class")).distinct().toList();
    assertThat(kinds).hasSize(1);
    return kinds.get(0);
  }

  @Test
  void it_is_drawn_over_each_of_its_tracks_with_its_lever() {
    Element root = diagram(Map.of());
    Map<String, List<java.awt.geom.Line2D>> rails = Drawn.rails(root);
    for (JsonNode crossing : BOX.at("/layout/levelCrossings")) {
      List<Element> drawn = drawn(Map.of(), crossing.get("id").asText());
      assertThat(drawn).hasSize(crossing.get("tracks").size());
      for (int i = 0; i < drawn.size(); i++) {
        Element road = Drawn.all(drawn.get(i), "line").get(0);
        double x = Double.parseDouble(road.getAttribute("x1")) + 9;
        double y = Double.parseDouble(road.getAttribute("y1")) + 16;
        assertThat(rails.get(crossing.get("tracks").get(i).asText()))
            .anySatisfy(l -> assertThat(l.ptSegDist(x, y)).isLessThan(0.01));
        assertThat(
                String.join(
                    " ", Drawn.labels(drawn.get(i)).stream().map(Drawn.Label::text).toList()))
            .contains(crossing.get("id").asText(), crossing.get("gateLever").asText());
      }
    }
  }

  @Test
  void gates_on_a_lever_stand_by_its_normal() {
    assertThat(kind(Map.of(), "Quarry Road")).isEqualTo(ROAD);
    assertThat(kind(Map.of("lever 12", "M"), "Quarry Road")).isEqualTo(PART);
    assertThat(kind(Map.of("lever 12", "R"), "Quarry Road")).isEqualTo(LINE);
    JsonNode other =
        Drawn.result(Path.of("src", "test", "resources", "boxes", "two-level-crossings"));
    BoxState normal = new BoxState(other, Map.of());
    BoxState pulled = new BoxState(other, Map.of("lever 2", "R"));
    LevelCrossing lane = LevelCrossing.of(other).get(0);
    assertThat(normal.gates(lane)).contains(BoxState.Place.REVERSED);
    assertThat(pulled.gates(lane)).contains(BoxState.Place.NORMAL);
  }

  @Test
  void gates_with_a_lock_stand_where_the_state_says_and_the_lock_by_its_lever() {
    assertThat(kind(Map.of(), "Fen Lane")).isEqualTo("level-crossing not-known");
    assertThat(Drawn.all(drawn(Map.of(), "Fen Lane").get(0), "line")).hasSize(4);
    Map<String, String> state = new TreeMap<>(Map.of("gates Fen Lane", "R"));
    assertThat(kind(state, "Fen Lane")).isEqualTo(LINE);
    assertThat(text(state)).contains("lock 11 (out)");
    state.putAll(Map.of("gates Fen Lane", "N", "lever 11", "R"));
    assertThat(kind(state, "Fen Lane")).isEqualTo(ROAD);
    assertThat(text(state)).contains("lock 11 (in)");
    state.put("lever 11", "M");
    assertThat(text(state)).contains("lock 11 (neither)");
  }

  private static List<String> text(Map<String, String> state) {
    return Drawn.labels(drawn(state, "Fen Lane").get(0)).stream().map(Drawn.Label::text).toList();
  }

  /** Bars along the line close the road, bars over the line close the line. */
  @Test
  void the_bars_lie_as_the_gates_do() {
    for (Element bar : bars(Map.of())) {
      assertThat(bar.getAttribute("y1")).isEqualTo(bar.getAttribute("y2"));
    }
    for (Element bar : bars(Map.of("lever 12", "R"))) {
      assertThat(bar.getAttribute("x1")).isEqualTo(bar.getAttribute("x2"));
    }
    assertThat(Pictures.stylesheet()).contains(".level-crossing.part-way .gate { stroke-dasharray");
  }

  private static List<Element> bars(Map<String, String> state) {
    List<Element> bars =
        Drawn.all(drawn(state, "Quarry Road").get(0), "line").stream()
            .filter(l -> l.getAttribute("class").equals("gate"))
            .toList();
    assertThat(bars).hasSize(2);
    return bars;
  }

  @Test
  void how_gates_stand_is_said_and_covers_nothing() {
    Map<String, String> state = Map.of("gates Fen Lane", "R", "lever 12", "M");
    assertThat(diagram(state).getAttribute("aria-label"))
        .contains("level crossing Fen Lane: gates across the line, lock out")
        .contains("level crossing Quarry Road: gates part-way")
        .contains("track departure; level crossing Quarry Road, gates on lever 12");
    Drawn.readable(Pictures.diagram(BOX, state));
    assertThat(diagram(state).getAttribute("viewBox"))
        .isEqualTo(diagram(Map.of()).getAttribute("viewBox"));
  }

  /** Brown for gates and gate locks: British practice; common practice, no source, from memory. */
  @Test
  void their_handles_are_brown() {
    Element frame = Drawn.parsed(Pictures.frame(BOX, Map.of()));
    Map<String, String> kinds = Map.of("11", "gate-lock", "12", "gates-lever", "13", "wickets");
    kinds.forEach(
        (lever, kind) -> {
          assertThat(Drawn.the(frame, "data-lever", lever).getAttribute("class"))
              .isEqualTo("lever " + kind + " normal");
          assertThat(Pictures.stylesheet())
              .containsPattern("\\." + kind + " \\.handle[^{]*\\{ fill: var\\(--brown\\)");
        });
  }
}
