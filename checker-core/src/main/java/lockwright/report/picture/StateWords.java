package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** A state in words: all that is not normal. */
final class StateWords {
  private StateWords() {}

  /** The things of the railway: "signal 2 off; points 5 reverse". */
  static String ofRailway(JsonNode result, BoxState state) {
    List<String> words = outside(result, state);
    for (JsonNode section : result.path("sections")) {
      section(section, state).forEach(l -> words.add(name(section) + " " + l));
    }
    words.addAll(conditions(result, state));
    return words.isEmpty() ? "All is normal." : sentence(words, "all else is normal.");
  }

  /** What levers work, and the routes set; a phrase for each that is not normal. */
  static List<String> outside(JsonNode result, BoxState state) {
    List<String> words = new ArrayList<>();
    for (JsonNode signal : result.at("/layout/signals")) {
      add(words, "signal " + id(signal), state.signal(id(signal)), "off", "part-way");
    }
    for (JsonNode points : result.at("/layout/points")) {
      add(words, "points " + id(points), state.points(id(points)), "reverse", "lying neither way");
      if (points.has("boltLever")) {
        words.add("bolt of points " + id(points) + " " + state.bolt(points.get("boltLever")));
      }
    }
    for (JsonNode frame : result.at("/layout/groundFrames")) {
      String given = frame.has("releaseSection") ? "given, a token in its lock" : "given";
      add(words, "release of ground frame " + id(frame), state.release(frame), given, "part-way");
    }
    for (LevelCrossing crossing : LevelCrossing.of(result)) {
      words.add("level crossing " + crossing.id() + ": " + gates(crossing, state));
    }
    for (JsonNode route : state.routesSet()) {
      words.add("route " + route.get("name").asText() + " set");
    }
    return words;
  }

  /** How gates stand, and how their lock is: "gates across the road, lock in". */
  static String gates(LevelCrossing crossing, BoxState state) {
    String stand =
        state
            .gates(crossing)
            .map(
                place ->
                    switch (place) {
                      case NORMAL -> "gates across the road";
                      case PART_WAY -> "gates part-way";
                      case REVERSED -> "gates across the line";
                    })
            .orElse("gates anywhere");
    return stand + (crossing.lock() ? ", lock " + state.gateLock(crossing) : "");
  }

  /** The levers: "lever 2 reversed". */
  static String ofLevers(JsonNode result, BoxState state) {
    List<String> words = new ArrayList<>();
    for (JsonNode lever : result.path("levers")) {
      String label = lever.get("label").asText();
      String name = "lever " + id(lever) + (label.isEmpty() ? "" : " (" + label + ")");
      add(words, name, state.lever(id(lever)), "reversed", "part-way");
    }
    return words.isEmpty() ? "All levers are normal." : sentence(words, "the others are normal.");
  }

  /** What a state says of a section, a line for each fact. */
  static List<String> section(JsonNode section, BoxState state) {
    String prefix = "section " + name(section) + ": ";
    List<String> lines = new ArrayList<>();
    for (JsonNode instrument : section.get("instruments")) {
      String at = instrument.get("name").asText();
      state.value(prefix + "tokens in " + at).ifPresent(v -> lines.add("in " + at + ": " + v));
      if (yes(state, prefix + "plunging at " + at)) {
        lines.add("plunging at " + at);
      }
      if (yes(state, prefix + "withdrawal at " + at)) {
        lines.add("withdrawal at " + at);
      }
    }
    state.value(prefix + "tokens out").ifPresent(v -> lines.add("out: " + v));
    state.value(prefix + "release").ifPresent(v -> lines.add("release " + v));
    return lines;
  }

  /** The conditions from outside, as far as the state tells of them: "Platform clear met". */
  static List<String> conditions(JsonNode result, BoxState state) {
    List<String> words = new ArrayList<>();
    for (JsonNode condition : result.at("/controls/conditions")) {
      state
          .value("condition " + name(condition))
          .ifPresent(v -> words.add(name(condition) + (v.equals("met") ? " met" : " not met")));
    }
    return words;
  }

  private static boolean yes(BoxState state, String quantity) {
    return state.value(quantity).filter("yes"::equals).isPresent();
  }

  private static void add(
      List<String> words, String thing, BoxState.Place place, String reversed, String partWay) {
    if (place != BoxState.Place.NORMAL) {
      words.add(thing + " " + (place == BoxState.Place.REVERSED ? reversed : partWay));
    }
  }

  private static String sentence(List<String> words, String rest) {
    return String.join("; ", words) + "; " + rest;
  }

  static String id(JsonNode thing) {
    return thing.get("id").asText();
  }

  private static String name(JsonNode section) {
    return section.get("name").asText();
  }

  static String joined(JsonNode list, String between) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(JsonNode::asText)
        .collect(Collectors.joining(between));
  }
}
