package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import lockwright.check.RandomBox;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.lifecycle.AfterContainer;
import org.w3c.dom.Element;

/**
 * Places given are drawn just there, whatever they are: there is one scale across and one down, by
 * which each is where the author has it. What is measured is the picture alone.
 */
class GivenPlacesProperties {
  private static int readable;
  private static int told;
  private static int silent;

  /** Near to where things stand anyway, as someone would read them off a plan in whole squares. */
  @Property(tries = 60, seed = "43", shrinking = ShrinkingMode.OFF)
  void places_that_are_about_right_are_kept(@ForAll @LongRange(min = 0) long seed) {
    Random random = new Random(seed);
    JsonNode result = Drawn.result(RandomBox.of(random));
    Map<String, Point2D> usual = places(result, Pictures.diagram(result, Map.of()));
    Map<String, Point2D> given = new TreeMap<>();
    boolean mirrored = random.nextInt(4) == 0;
    usual.forEach(
        (thing, at) -> {
          if (random.nextInt(3) > 0) {
            double across = Math.rint(at.getX() / 25) + random.nextInt(2);
            double down = Math.rint(at.getY() / 40);
            given.put(thing, new Point2D.Double(mirrored ? 400 - across : across, down));
          }
        });
    JsonNode drawn = with(result, given);
    String svg = Pictures.diagram(drawn, Map.of());
    kept(given, Drawn.parsed(svg));
    assertThat(Drawn.that(Drawn.parsed(svg), "data-signal"))
        .hasSameSizeAs(result.at("/layout/signals"));
    boolean noRoom = !Pictures.withoutRoom(drawn).isEmpty();
    try {
      Drawn.readable(svg);
      readable++;
    } catch (AssertionError e) {
      told += noRoom ? 1 : 0;
      silent += noRoom ? 0 : 1;
    }
  }

  /** Anywhere at all: lines lie on each other then, but nothing is left out or moved. */
  @Property(tries = 40, seed = "44", shrinking = ShrinkingMode.OFF)
  void places_that_make_no_sense_are_kept_too(@ForAll @LongRange(min = 0) long seed) {
    Random random = new Random(seed);
    JsonNode result = Drawn.result(RandomBox.of(random));
    Map<String, Point2D> given = new TreeMap<>();
    places(result, Pictures.diagram(result, Map.of()))
        .keySet()
        .forEach(
            thing ->
                given.put(thing, new Point2D.Double(random.nextInt(9999), random.nextInt(9999))));
    JsonNode drawn = with(result, given);
    String svg = Pictures.diagram(drawn, Map.of());
    assertThat(svg).doesNotContain("NaN", "Infinity");
    kept(given, Drawn.parsed(svg));
    assertThat(svg).isEqualTo(Pictures.diagram(drawn, Map.of()));
  }

  @AfterContainer
  static void nearly_all_that_are_about_right_are_readable_or_told() {
    assertThat(readable).isGreaterThan(55);
    assertThat(silent).as(readable + " readable, " + told + " told").isZero();
  }

  /** One scale for all, measured at the two that are given furthest apart. */
  static void kept(Map<String, Point2D> given, Element root) {
    for (boolean across : new boolean[] {true, false}) {
      Map<String, Double> wanted = new TreeMap<>();
      given.forEach((thing, at) -> wanted.put(thing, across ? at.getX() : at.getY()));
      List<String> order = new ArrayList<>(wanted.keySet());
      order.sort(Comparator.comparing(wanted::get));
      if (order.isEmpty() || wanted.get(order.get(0)).equals(wanted.get(last(order)))) {
        continue;
      }
      double range = wanted.get(last(order)) - wanted.get(order.get(0));
      boolean found = false;
      for (double from : drawn(root, order.get(0), across)) {
        for (double to : drawn(root, last(order), across)) {
          double scale = (to - from) / range;
          found |=
              scale > 0
                  && order.stream()
                      .allMatch(
                          thing ->
                              drawn(root, thing, across).stream()
                                  .anyMatch(
                                      at -> {
                                        double by = wanted.get(thing) - wanted.get(order.get(0));
                                        return Math.abs(from + scale * by - at) < 0.05;
                                      }));
        }
      }
      assertThat(found).as((across ? "across " : "down ") + given).isTrue();
    }
  }

  private static String last(List<String> order) {
    return order.get(order.size() - 1);
  }

  /** Where a thing may be in the picture: of the end of a track, where either of its ends is. */
  private static List<Double> drawn(Element root, String thing, boolean across) {
    String kind = thing.substring(0, thing.indexOf(' '));
    String name = thing.substring(kind.length() + 1);
    List<Point2D> at =
        kind.equals("end")
            ? tips(Drawn.rails(root).get(name.substring(0, name.lastIndexOf(' '))))
            : List.of(dot(Drawn.the(root, "data-" + kind, name)));
    return at.stream().map(p -> across ? p.getX() : p.getY()).toList();
  }

  private static Point2D dot(Element thing) {
    Element dot = Drawn.all(thing, "circle").get(0);
    return new Point2D.Double(
        Double.parseDouble(dot.getAttribute("cx")), Double.parseDouble(dot.getAttribute("cy")));
  }

  /** Where points, crossings, and most ends of tracks are drawn where no place is given. */
  static Map<String, Point2D> places(JsonNode result, String svg) {
    Element root = Drawn.parsed(svg);
    Map<String, Point2D> places = new TreeMap<>();
    for (String kind : List.of("points", "crossing")) {
      for (Element thing : Drawn.that(root, "data-" + kind)) {
        places.put(kind + " " + thing.getAttribute("data-" + kind), dot(thing));
      }
    }
    Map<String, List<Line2D>> rails = Drawn.rails(root);
    for (JsonNode track : result.at("/layout/tracks")) {
      String id = track.get("id").asText();
      for (int end = 0; end < 2; end++) {
        JsonNode at = track.get("ends").get(end).get("attachedTo");
        String kind = at.get("kind").asText();
        boolean farIsJoint =
            track.get("ends").get(1 - end).at("/attachedTo/kind").asText().equals(kind);
        if (kind.equals("joint")) {
          String other = at.at("/with/track").asText();
          common(rails.get(id), rails.get(other))
              .filter(p -> id.compareTo(other) < 0)
              .ifPresent(p -> places.put("end " + id + " " + endOf(track, at), p));
        } else if (List.of("limit", "section").contains(kind) && !farIsJoint) {
          free(id, rails).ifPresent(p -> places.put("end " + id + " " + endOf(track, at), p));
        }
      }
    }
    return places;
  }

  private static int endOf(JsonNode track, JsonNode at) {
    return track.get("ends").get(0).get("attachedTo").equals(at) ? 0 : 1;
  }

  private static List<Point2D> tips(List<Line2D> lines) {
    return List.of(lines.get(0).getP1(), lines.get(lines.size() - 1).getP2());
  }

  private static Optional<Point2D> common(List<Line2D> a, List<Line2D> b) {
    return tips(a).stream()
        .filter(p -> tips(b).stream().anyMatch(q -> p.distance(q) < 0.02))
        .findFirst();
  }

  /** The tip of a track that no other track comes near to. */
  private static Optional<Point2D> free(String id, Map<String, List<Line2D>> rails) {
    List<Point2D> free = new ArrayList<>(tips(rails.get(id)));
    rails.forEach(
        (other, lines) -> {
          if (!other.equals(id)) {
            free.removeIf(p -> tips(lines).stream().anyMatch(q -> p.distance(q) < 30));
          }
        });
    return free.size() == 1 ? Optional.of(free.get(0)) : Optional.empty();
  }

  /** The same result with a drawing of these places. */
  static JsonNode with(JsonNode result, Map<String, Point2D> given) {
    ObjectNode drawn = result.deepCopy();
    ObjectNode drawing = drawn.putObject("drawing");
    ArrayNode all = drawing.putArray("places");
    drawing.putArray("tracks");
    given.forEach(
        (thing, at) -> {
          ObjectNode spot = all.addObject();
          String kind = thing.substring(0, thing.indexOf(' '));
          String name = thing.substring(kind.length() + 1);
          ObjectNode of = spot.putObject("of").put("kind", kind);
          if (kind.equals("end")) {
            int space = name.lastIndexOf(' ');
            of.put("track", name.substring(0, space));
            of.put("end", Integer.parseInt(name.substring(space + 1)));
          } else {
            of.put(kind, name);
          }
          spot.put("across", at.getX()).put("down", at.getY());
          ObjectNode place = spot.putObject("at").put("file", "drawing.yaml");
          place.put("line", all.size() + 1).put("column", 6);
        });
    return drawn;
  }
}
