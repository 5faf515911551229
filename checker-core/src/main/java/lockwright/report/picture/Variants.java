package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * A part of a picture in every shape that it can have. Which places of levers, points and gates a
 * shape depends on is not written down anywhere: the part is drawn, and what it asks the state for
 * is tried in every place.
 */
final class Variants {
  private static final JsonMapper JSON = new JsonMapper();

  private final JsonNode result;
  private final BiConsumer<Svg, BoxState> part;

  /**
   * A shape.
   *
   * @param when the places in which it is so, of each thing that it depends on; JSON
   */
  private record Shape(ObjectNode when, String markup) {}

  private Variants(JsonNode result, BiConsumer<Svg, BoxState> part) {
    this.result = result;
    this.part = part;
  }

  /** The part as it is, if it never moves; else each of its shapes in a group that says when. */
  static String of(JsonNode result, BiConsumer<Svg, BoxState> part) {
    Svg svg = new Svg();
    for (Shape shape : new Variants(result, part).shapes(Map.of())) {
      if (shape.when().isEmpty()) {
        svg.written(shape.markup());
      } else if (!shape.markup().isEmpty()) {
        svg.open("g", "class", "variant", "data-when", shape.when().toString());
        svg.written(shape.markup()).close();
      }
    }
    return svg.part();
  }

  private List<Shape> shapes(Map<String, String> known) {
    BoxState state = new BoxState(result, known);
    Svg svg = new Svg();
    part.accept(svg, state);
    for (String asked : state.asked()) {
      if (!known.containsKey(asked)) {
        return branched(asked, known);
      }
    }
    return List.of(new Shape(JSON.createObjectNode(), svg.part()));
  }

  /** For every place of one thing; places that give the same shapes are told as one. */
  private List<Shape> branched(String thing, Map<String, String> known) {
    Map<List<Shape>, List<String>> places = new LinkedHashMap<>();
    for (String place : BoxState.values(thing)) {
      Map<String, String> more = new TreeMap<>(known);
      more.put(thing, place);
      places.computeIfAbsent(shapes(more), shapes -> new ArrayList<>()).add(place);
    }
    if (places.size() == 1) {
      return places.keySet().iterator().next();
    }
    List<Shape> all = new ArrayList<>();
    places.forEach(
        (shapes, in) ->
            shapes.forEach(
                shape -> {
                  ObjectNode when = JSON.createObjectNode();
                  in.forEach(when.putArray(thing)::add);
                  when.setAll(shape.when());
                  all.add(new Shape(when, shape.markup()));
                }));
    return all;
  }
}
