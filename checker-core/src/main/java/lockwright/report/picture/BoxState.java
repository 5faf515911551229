package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lockwright.report.Arms;

/** What a state means for the things that are drawn; {@code docs/meaning.md} 2.2. */
final class BoxState {
  /** Where a lever or a thing is: normal, part-way (or neither way) or reversed. */
  enum Place {
    NORMAL,
    PART_WAY,
    REVERSED
  }

  private static final String EMPTY = "empty";
  private static final String CONDITION = "condition ";
  private static final String LOCK_OF = ": lock of ";
  private static final List<String> RODS =
      List.of("whole", "broken at N", "broken at M", "broken at R");

  private final Map<String, String> values;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Map<String, JsonNode> points = new HashMap<>();
  private final Map<String, JsonNode> signals = new HashMap<>();
  private final Map<String, JsonNode> levers = new HashMap<>();
  private final JsonNode routes;
  private final Arms arms = new Arms();

  BoxState(JsonNode result, Map<String, String> values) {
    this.values = Map.copyOf(values);
    result.at("/layout/points").forEach(p -> points.put(p.get("id").asText(), p));
    result.at("/layout/signals").forEach(s -> signals.put(s.get("id").asText(), s));
    result.path("levers").forEach(l -> levers.put(l.get("id").asText(), l));
    routes = result.path("routes");
    for (JsonNode lever : levers.values()) {
      JsonNode work = lever.get("work");
      if (work.has("signal")) {
        boolean slotted = work.has("slotted");
        arms.lever(
            work.get("signal").asText(),
            lever.get("id").asText(),
            texts(work.path("for")),
            slotted);
      }
    }
    for (JsonNode control : result.at("/controls/armControls")) {
      arms.control(control.get("signal").asText(), texts(control.get("needs")));
    }
  }

  private static List<String> texts(JsonNode all) {
    List<String> texts = new ArrayList<>();
    all.forEach(t -> texts.add(t.asText()));
    return texts;
  }

  Optional<String> value(String quantity) {
    return Optional.ofNullable(values.get(quantity));
  }

  Place lever(String id) {
    return place("lever " + id);
  }

  /** Whether the release of a ground frame is home or given, or its lever part-way. */
  Place release(JsonNode groundFrame) {
    Place byLever =
        groundFrame.has("releaseLever")
            ? lever(groundFrame.get("releaseLever").asText())
            : Place.REVERSED;
    if (!groundFrame.has("releaseSection")) {
      return byLever;
    }
    String lock = lock(groundFrame);
    asked.add(lock);
    return values.getOrDefault(lock, EMPTY).equals(EMPTY) ? Place.NORMAL : byLever;
  }

  /** The quantity of the lock that a token of a section opens. */
  private static String lock(JsonNode groundFrame) {
    String section = groundFrame.get("releaseSection").asText();
    return "section " + section + LOCK_OF + groundFrame.get("id").asText();
  }

  /** The values of something that was asked for. */
  static List<String> values(String asked) {
    if (asked.startsWith(CONDITION)) {
      return List.of("unmet", "met");
    }
    if (asked.startsWith("rod of ")) {
      return RODS;
    }
    return asked.contains(LOCK_OF) ? List.of(EMPTY, "fresh", "other") : List.of("N", "M", "R");
  }

  Place points(String id) {
    if (points.get(id).has("sprung")) {
      return Place.NORMAL;
    }
    String rod = "rod of " + id;
    if (points.get(id).has("rodMayBreak")) {
      asked.add(rod);
      String broken = values.getOrDefault(rod, RODS.get(0));
      if (!broken.equals(RODS.get(0))) {
        return place(broken.substring(broken.length() - 1), rod);
      }
    }
    JsonNode lever = points.get(id).get("lever");
    boolean own = lever == null || points.get(id).has("workedElectrically");
    return own ? place("points " + id) : lever(lever.asText());
  }

  /** As its levers, if no control holds it on. */
  Place signal(String id) {
    return place(arms.place(id, this::ask), id);
  }

  /** How its arm is given for a route. */
  Place armOfRoute(JsonNode route) {
    String signal = route.get("signal").asText();
    return place(arms.placeFor(signal, texts(route.get("tracks")), this::ask), signal);
  }

  private String ask(String quantity) {
    asked.add(quantity);
    return values.get(quantity);
  }

  /** The kind of arm that a lever works; empty if it works none. */
  String armOf(JsonNode lever) {
    JsonNode signal = signals.get(lever.at("/work/signal").asText());
    return signal == null ? "" : signal.get("arm").asText();
  }

  /** Whether the bolt is "in", "out", or "neither". */
  String bolt(JsonNode boltLever) {
    Place place = lever(boltLever.asText());
    JsonNode work = levers.get(boltLever.asText()).get("work");
    if (work.get("kind").asText().equals("points")) {
      return place == Place.PART_WAY ? "out" : "in";
    }
    if (place == Place.PART_WAY) {
      return "neither";
    }
    boolean in = work.get("normal").asText().equals("in") == (place == Place.NORMAL);
    return in ? "in" : "out";
  }

  /**
   * How gates stand: normal across the road, reversed across the line. Nothing if a lock that is
   * normally out holds them nowhere and the state does not say.
   */
  Optional<Place> gates(LevelCrossing crossing) {
    String quantity = "gates " + crossing.id();
    String normal = levers.get(crossing.lever()).at("/work/normal").asText();
    if (crossing.lock()) {
      asked.add(quantity);
      boolean known = values.containsKey(quantity) || normal.equals("in");
      return known ? Optional.of(place(quantity)) : Optional.empty();
    }
    Place place = lever(crossing.lever());
    if (normal.equals("across the road") || place == Place.PART_WAY) {
      return Optional.of(place);
    }
    return Optional.of(place == Place.NORMAL ? Place.REVERSED : Place.NORMAL);
  }

  /** Whether the lock of gates is "in", "out", or "neither"; empty if there is none. */
  String gateLock(LevelCrossing crossing) {
    return crossing.lock() ? bolt(crossing.thing().get("gateLever")) : "";
  }

  /** The routes of arms that are not surely on, for which all points lie. */
  List<JsonNode> routesSet() {
    List<JsonNode> set = new ArrayList<>();
    for (JsonNode route : routes) {
      if (set(route)) {
        set.add(route);
      }
    }
    return set;
  }

  /** Its arm is not surely on, and all its points lie. */
  boolean set(JsonNode route) {
    return armOfRoute(route) != Place.NORMAL && lies(route);
  }

  private boolean lies(JsonNode route) {
    for (JsonNode passed : route.get("points")) {
      Place needed = passed.get("lie").asText().equals("normal") ? Place.NORMAL : Place.REVERSED;
      if (!passed.has("sprung") && points(passed.get("points").asText()) != needed) {
        return false;
      }
    }
    return true;
  }

  /**
   * The levers, points, gates, locks and conditions whose places were asked for, in the order in
   * which they were.
   */
  Set<String> asked() {
    return Collections.unmodifiableSet(asked);
  }

  private Place place(String quantity) {
    asked.add(quantity);
    return place(values.getOrDefault(quantity, "N"), quantity);
  }

  private static Place place(String value, String of) {
    return switch (value) {
      case "N" -> Place.NORMAL;
      case "M" -> Place.PART_WAY;
      case "R" -> Place.REVERSED;
      default -> throw new IllegalArgumentException(of + " is " + value);
    };
  }
}
