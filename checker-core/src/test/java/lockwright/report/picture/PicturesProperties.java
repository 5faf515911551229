package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lockwright.check.RandomBox;
import lockwright.railway.Box;
import lockwright.railway.requirement.Derivation;
import lockwright.railway.requirement.Derived;
import lockwright.railway.requirement.RandomDrawing;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.lifecycle.AfterContainer;
import org.w3c.dom.Element;

/** Boxes at random, some that look like a railway and some that do not, are drawn whole. */
class PicturesProperties {
  private static int readable;
  private static int unreadable;

  @Property(tries = 60, seed = "41", shrinking = ShrinkingMode.OFF)
  void a_junction_is_drawn_without_crossing_lines(@ForAll @LongRange(min = 0) long seed) {
    JsonNode result = Drawn.result(RandomBox.of(new Random(seed)));
    String svg = Pictures.diagram(result, Map.of());
    Element root = Drawn.parsed(svg);
    drawnOnce(result, root);
    assertThat(Drawn.crossings(root)).isEmpty();
    Drawn.readable(svg);
    Drawn.readable(Pictures.frame(result, Map.of()));
  }

  /** Circles, balloons and roads that meet again: lines cross there, but all of it is drawn. */
  @Property(tries = 60, seed = "42", shrinking = ShrinkingMode.OFF)
  void any_layout_is_drawn_whole(@ForAll @LongRange(min = 0) long seed) {
    RandomDrawing drawn = RandomDrawing.of(new Random(seed));
    Derived derived = Derivation.derive(drawn.layout(), drawn.frame(), drawn.sections());
    JsonNode result =
        Drawn.result(
            new Box(
                "Random",
                drawn.layout(),
                drawn.frame(),
                List.of(),
                drawn.sections(),
                derived.routes(),
                derived.notSignalled(),
                derived.conflicts(),
                derived.distantPaths(),
                List.of()));
    String svg = Pictures.diagram(result, Map.of());
    drawnOnce(result, Drawn.parsed(svg));
    try {
      Drawn.readable(svg);
      readable++;
    } catch (AssertionError e) {
      // Where lines have to cross, one may pass through a label; counted below.
      unreadable++;
    }
  }

  @AfterContainer
  static void most_of_any_layouts_are_readable() {
    assertThat(readable + unreadable).isGreaterThanOrEqualTo(60);
    assertThat(unreadable).isLessThan(readable / 5);
  }

  private static void drawnOnce(JsonNode result, Element root) {
    JsonNode layout = result.get("layout");
    for (String kind : List.of("track", "points", "signal", "crossing")) {
      List<String> drawn =
          Drawn.that(root, "data-" + kind).stream()
              .map(g -> g.getAttribute("data-" + kind))
              .toList();
      JsonNode things = layout.get(kind.equals("points") ? kind : kind + "s");
      assertThat(drawn).containsExactlyInAnyOrderElementsOf(Drawn.ids(things));
    }
    List<String> places = new ArrayList<>();
    for (Element points : Drawn.that(root, "data-points")) {
      Element dot = Drawn.all(points, "circle").get(0);
      places.add(dot.getAttribute("cx") + " " + dot.getAttribute("cy"));
    }
    assertThat(places).doesNotHaveDuplicates();
    Drawn.rails(root).values().forEach(lines -> assertThat(lines).isNotEmpty());
    assertThat(Drawn.rails(root).values().stream().flatMap(List::stream))
        .allMatch(l -> l.getP1().distance(l.getP2()) > 1);
  }
}
