package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lockwright.report.result.Parts;

/** What an instance requires, as a formula; 6 of {@code docs/meaning.md}. */
final class Formula {
  /** What the words of a formula mean. */
  static final List<List<String>> WORDS =
      List.of(
          List.of(
              "off(s)",
              "arm s is off where off is the danger: its lever (of several, one; of slotted ones,"
                  + " each) is not fully N,"
                  + " and no control holds it on"),
          List.of(
              "clear(s)",
              "arm s is off, with its lever (of several, one; of slotted ones, each) fully R, and"
                  + " no control holds it on"),
          List.of(
              "clear(s by l)", "arm s is off by one of levers l, those for the route or the path"),
          List.of("N(p), R(p)", "points p lie normal, or reverse"),
          List.of("between(p)", "points p lie neither way"),
          List.of("lever part-way(p)", "the lever of points p stands part-way"),
          List.of("bolted(p), free(p)", "a bolt of points p is surely in; every one is surely out"),
          List.of(
              "home(g)",
              "the release of ground frame g is home: its lever at N, or no token in its lock"),
          List.of(
              "locked across the road(c)",
              "the gates of level crossing c stand across the road and are surely held so"),
          List.of(
              "meet(s, t)",
              "routes of s and t that are not in conflict lie, each with an overlap if it needs one, and"
                  + " no choice of the overlaps that lie keeps them apart"),
          List.of("moved(x)", "the movement that is made is one of x"),
          List.of("out(t), fresh(t)", "the tokens out of section t; those of them that are fresh"),
          List.of("always, some run", "in every state and movement of every run; in one of them"),
          List.of(
              "strokes lead to",
              "whole strokes of levers, points of ground frames or worked by hand, and gates, and nothing"
                  + " else, come there"),
          List.of("\u00ac \u2227 \u2228 \u21d2", "not, and, or, if ... then"));

  static final String AND = " \u2227 ";
  static final String OR = " \u2228 ";
  private static final String THEN = " \u21d2 ";
  static final String NOT = "\u00ac";

  private final JsonNode result;
  private final Parts anchors;

  Formula(JsonNode result, Parts anchors) {
    this.result = result;
    this.anchors = anchors;
  }

  /**
   * The formula of an instance.
   *
   * @throws IllegalArgumentException if its requirement is none of the catalogue's
   */
  String of(JsonNode instance) {
    JsonNode concerns = instance.required("concerns");
    List<String> signals = names(concerns.required("signals"));
    List<String> points = names(concerns.required("points"));
    List<String> routes = names(concerns.required("routes"));
    List<String> sections = names(concerns.required("sections"));
    return switch (instance.required("name").asText()) {
      case "points set" -> always(pointsSet(signals, routes, names(concerns.required("levers"))));
      case "points bolted" ->
          always(off(signals) + AND + any(routes, false) + THEN + "bolted(" + points.get(0) + ")");
      case "bolt and points agree" ->
          always(
              "between("
                  + points.get(0)
                  + ")"
                  + (anchors.part("points", points.get(0)).has("rodMayBreak")
                      ? AND + "lever part-way(" + points.get(0) + ")"
                      : "")
                  + THEN
                  + "free("
                  + points.get(0)
                  + ")");
      case "route held" ->
          always(off(signals) + AND + any(routes, false) + THEN + NOT + moved(routes.get(0)));
      case "flank protected" -> always(flank(off(signals), instance.required("id").asText()));
      case "overlap set" ->
          always(off(signals) + AND + any(routes, false) + THEN + overlap(routes.get(0)));
      case "overlaps apart" ->
          always(
              NOT
                  + "(off("
                  + signals.get(0)
                  + ")"
                  + AND
                  + "off("
                  + signals.get(1)
                  + ")"
                  + AND
                  + "meet("
                  + signals.get(0)
                  + ", "
                  + signals.get(1)
                  + "))");
      case "no conflict" ->
          always(NOT + "(" + conflict(signals, names(concerns.required("levers"))) + ")");
      case "box closed" -> always(closed(signals, concerns.required("levers").get(0).asText()));
      case "distant follows" -> always(distant(signals.get(0)));
      case "release home" ->
          always(
              off(signals)
                  + AND
                  + any(routes, false)
                  + THEN
                  + "home("
                  + concerns.required("groundFrames").get(0).asText()
                  + ")");
      case "road closed" ->
          always(
              off(signals)
                  + AND
                  + any(routes, false)
                  + THEN
                  + "locked across the road("
                  + concerns.required("levelCrossings").get(0).asText()
                  + ")");
      case "points held in rear" ->
          always(
              off(signals)
                  + THEN
                  + NOT
                  + "between("
                  + points.get(0)
                  + ")"
                  + AND
                  + NOT
                  + "moved("
                  + points.get(0)
                  + ")");
      case "one token out" -> always("out(" + sections.get(0) + ") \u2264 1");
      case "section signal earned" ->
          always(
              goesOff(signals.get(0), sections.get(0))
                  + THEN
                  + "fresh("
                  + sections.get(0)
                  + ") \u2265 1");
      case "section signals apart" ->
          always(NOT + "(off(" + signals.get(0) + ")" + AND + "off(" + signals.get(1) + "))");
      case "siding locked" ->
          always(siding(concerns.required("groundFrames").get(0).asText(), sections.get(0)));
      case "points to points" -> always(apart(instance.required("apart").required("lies")));
      case "route can be cleared" ->
          "some run: "
              + clear(
                  signals.get(0), names(anchors.part("route", routes.get(0)).required("tracks")))
              + AND
              + any(routes, false);
      case "lever can be moved" ->
          "some run: lever " + concerns.required("levers").get(0).asText() + " at R";
      case "frame can be restored" -> "always: strokes lead to all levers at N";
      default -> throw new IllegalArgumentException("no requirement of this version: " + instance);
    };
  }

  private String goesOff(String signal, String section) {
    for (JsonNode control : result.at("/controls/armControls")) {
      if (control.required("signal").asText().equals(signal)) {
        String by =
            anchors.part("signal", signal).has("levers") ? " by " + earning(signal, section) : "";
        return "a movement brings about off(" + signal + ")" + by;
      }
    }
    return earning(signal, section) + " leaves N";
  }

  /** Not some of the one points and some of the other lying so. */
  private static String apart(JsonNode lies) {
    List<String> lots = new ArrayList<>();
    for (JsonNode lot : lies) {
      String lie = lot.required("lie").asText().equals("normal") ? "N(" : "R(";
      List<String> some = names(lot.required("points")).stream().map(p -> lie + p + ")").toList();
      lots.add(some.size() == 1 ? some.get(0) : "(" + String.join(OR, some) + ")");
    }
    return NOT + "(" + String.join(AND, lots) + ")";
  }

  private static String always(String what) {
    return "always: " + what;
  }

  private String pointsSet(List<String> signals, List<String> routes, List<String> levers) {
    String by = levers.isEmpty() ? "" : AND + NOT + "lever " + levers.get(0) + " at N";
    String off = off(signals) + by;
    return routes.isEmpty() ? NOT + off : off + THEN + any(routes, true);
  }

  /** The arm is off for what passes these tracks: where several levers share in it, by which. */
  private String clear(String signal, List<String> tracks) {
    List<String> by = sharing(signal, tracks);
    return "clear(" + signal + (by.isEmpty() ? "" : " by " + String.join(", ", by)) + ")";
  }

  /** Of several levers, each for some routes of the arm, those for what passes these tracks. */
  private List<String> sharing(String signal, List<String> tracks) {
    List<String> by = new ArrayList<>();
    for (JsonNode lever : anchors.part("signal", signal).path("levers")) {
      JsonNode work = anchors.part("lever", lever.asText()).required("work");
      if (names(work.path("for")).stream().anyMatch(tracks::contains)) {
        by.add(lever.asText());
      }
    }
    return by;
  }

  /** The lever, or the levers, with which an arm goes off into a section. */
  private String earning(String signal, String section) {
    if (!anchors.part("signal", signal).has("levers")) {
      return "lever " + anchors.part("signal", signal).required("lever").asText();
    }
    Set<String> levers = new LinkedHashSet<>();
    for (JsonNode route : result.required("routes")) {
      if (route.required("signal").asText().equals(signal)
          && route.required("end").path("section").asText().equals(section)) {
        levers.addAll(sharing(signal, names(route.required("tracks"))));
      }
    }
    return levers.size() == 1
        ? "lever " + levers.iterator().next()
        : "one of levers " + String.join(", ", levers);
  }

  private static String off(List<String> signals) {
    return "off(" + signals.get(0) + ")";
  }

  /** Some one of the routes lies, perhaps with its flank traps. */
  private String any(List<String> routes, boolean traps) {
    List<String> all = routes.stream().map(r -> lies(r, traps)).toList();
    return all.size() == 1 ? all.get(0) : "(" + String.join(OR, all) + ")";
  }

  private String lies(String route, boolean traps) {
    JsonNode part = anchors.part("route", route);
    List<String> all = new ArrayList<>();
    needed(part).forEach(p -> all.add(lie(p)));
    if (traps) {
      part.required("flankTraps").forEach(t -> all.add(lie(t)));
    }
    return all.isEmpty()
        ? "true"
        : all.size() == 1 ? all.get(0) : "(" + String.join(AND, all) + ")";
  }

  /** The points that have to lie for a route or an overlap: not those that are sprung. */
  private static List<JsonNode> needed(JsonNode passing) {
    List<JsonNode> needed = new ArrayList<>();
    for (JsonNode p : passing.required("points")) {
      if (!p.has("sprung")) {
        needed.add(p);
      }
    }
    return needed;
  }

  static String lie(JsonNode points) {
    boolean normal = points.required("lie").asText().equals("normal");
    return (normal ? "N(" : "R(") + points.required("points").asText() + ")";
  }

  private String overlap(String route) {
    List<String> all = new ArrayList<>();
    for (JsonNode o : result.required("overlaps")) {
      if (o.required("route").asText().equals(route)) {
        List<String> points = new ArrayList<>();
        needed(o).forEach(p -> points.add(lie(p)));
        all.add(points.isEmpty() ? "true" : String.join(AND, points));
      }
    }
    return all.size() == 1 ? all.get(0) : "(" + String.join(")" + OR + "(", all) + ")";
  }

  private String flank(String off, String requirement) {
    List<String> all = new ArrayList<>();
    FlankFormula.guards(result.required("flankPaths"), requirement)
        .forEach(
            (route, guards) ->
                all.add(off + AND + lies(route, false) + THEN + String.join(AND, guards)));
    return all.size() == 1 ? all.get(0) : "(" + String.join(")" + AND + "(", all) + ")";
  }

  private String moved(String route) {
    JsonNode part = anchors.part("route", route);
    Set<String> things = new LinkedHashSet<>();
    needed(part).forEach(p -> things.add("points " + p.required("points").asText()));
    for (JsonNode t : part.required("flankTraps")) {
      if (!anchors.part("points", t.required("points").asText()).has("sprung")) {
        things.add("points " + t.required("points").asText());
      }
    }
    for (JsonNode p : needed(part)) {
      JsonNode points = anchors.part("points", p.required("points").asText());
      if (p.required("facing").asBoolean() && points.has("boltLever")) {
        things.add("bolt of " + points.required("id").asText());
      }
      if (points.has("groundFrame")) {
        things.add(release(points.required("groundFrame").asText()));
      }
    }
    Set<String> tracks = Set.copyOf(names(part.required("tracks")));
    for (JsonNode crossing : result.required("layout").required("levelCrossings")) {
      if (names(crossing.required("tracks")).stream().anyMatch(tracks::contains)) {
        String id = crossing.required("id").asText();
        JsonNode lever = anchors.part("lever", crossing.required("gateLever").asText());
        things.add("gates of " + id);
        if (lever.required("work").required("kind").asText().equals("gate lock")) {
          things.add("gate lock of " + id);
        }
      }
    }
    return "moved(" + (things.isEmpty() ? "nothing" : String.join(", ", things)) + ")";
  }

  /** The release that a route holds: of one by lever and token, the lever. */
  private String release(String frame) {
    for (JsonNode g : result.required("layout").required("groundFrames")) {
      if (g.required("id").asText().equals(frame)
          && g.has("releaseLever")
          && g.has("releaseSection")) {
        return "release lever of " + frame;
      }
    }
    return "release of " + frame;
  }

  private String siding(String frame, String section) {
    List<String> normal = new ArrayList<>();
    for (JsonNode g : result.required("layout").required("groundFrames")) {
      if (g.required("id").asText().equals(frame)) {
        g.required("points").forEach(p -> normal.add("N(" + p.asText() + ")"));
      }
    }
    return "(home("
        + frame
        + ")"
        + THEN
        + String.join(AND, normal)
        + ")"
        + AND
        + "("
        + NOT
        + "home("
        + frame
        + ")"
        + THEN
        + "out("
        + section
        + ") \u2264 1)";
  }

  private static String closed(List<String> signals, String lever) {
    return NOT
        + "lever "
        + lever
        + " at N"
        + THEN
        + signals.stream().map(s -> "clear(" + s + ")").collect(Collectors.joining(AND));
  }

  /**
   * @param closing the closing lever under which opposed routes are excepted, or none
   */
  private String conflict(List<String> signals, List<String> closing) {
    String both = "off(" + signals.get(0) + ")" + AND + "off(" + signals.get(1) + ")";
    String not = closing.isEmpty() ? "" : NOT + "lever " + closing.get(0) + " at R";
    List<String> pairs = new ArrayList<>();
    List<String> notOpposed = new ArrayList<>();
    int conflicts = 0;
    for (JsonNode c : result.required("conflicts")) {
      String first = c.required("first").asText();
      String second = c.required("second").asText();
      Set<String> of =
          Set.of(signalOf(first), signalOf(second)); // of different arms, so these are two
      if (of.equals(Set.copyOf(signals))) {
        conflicts++;
        if (c.required("canLieTogether").asBoolean()) {
          String lie = lies(first, false) + AND + lies(second, false);
          boolean excepted = !closing.isEmpty() && c.required("opposed").asBoolean();
          pairs.add("(" + lie + (excepted ? AND + not : "") + ")");
          if (!excepted) {
            notOpposed.add("(" + lie + ")");
          }
        }
      }
    }
    boolean all = conflicts == routesOf(signals.get(0)) * routesOf(signals.get(1));
    if (all && closing.isEmpty()) {
      return both;
    }
    if (all) {
      notOpposed.add(0, not);
      return both + AND + "(" + String.join(OR, notOpposed) + ")";
    }
    return both + AND + "(" + String.join(OR, pairs) + ")";
  }

  private String signalOf(String route) {
    return anchors.part("route", route).required("signal").asText();
  }

  private int routesOf(String signal) {
    int count = 0;
    for (JsonNode route : result.required("routes")) {
      count += route.required("signal").asText().equals(signal) ? 1 : 0;
    }
    return count;
  }

  private String distant(String distant) {
    JsonNode path = null;
    for (JsonNode p : result.required("distantPaths")) {
      path = p.required("distant").asText().equals(distant) ? p : path;
    }
    List<String> all = new ArrayList<>();
    boolean never = path == null || path.required("posts").isEmpty();
    if (path != null) {
      for (int i = 0; i < path.required("posts").size(); i++) {
        JsonNode post = path.required("posts").get(i);
        never |= post.isEmpty();
        List<String> beyond = names(path.required("beyond").get(i));
        String arms =
            names(post).stream().map(a -> clear(a, beyond)).collect(Collectors.joining(OR));
        all.add(post.size() > 1 ? "(" + arms + ")" : arms);
      }
      for (JsonNode p : path.required("facing")) {
        if (p.has("sprung")) {
          continue;
        }
        all.add(lie(p));
        JsonNode points = anchors.part("points", p.required("points").asText());
        JsonNode toe = anchors.part("track", points.required("toe").asText());
        if (toe.required("passenger").asBoolean()) {
          all.add("bolted(" + p.required("points").asText() + ")");
        }
      }
    }
    String off = "off(" + distant + ")";
    return never ? NOT + off : off + THEN + String.join(AND, all);
  }

  static List<String> names(JsonNode list) {
    List<String> names = new ArrayList<>();
    list.forEach(n -> names.add(n.asText()));
    return names;
  }
}
