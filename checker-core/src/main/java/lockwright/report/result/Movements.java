package lockwright.report.result;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.report.Arms;
import lockwright.report.ConditionWords;
import lockwright.report.LeverWords;

/** A run as lines in words: the two half-strokes of one pull, if nothing is between, are one. */
public final class Movements {
  /** Of gates that have a gate lock, which no lever tells of. */
  private static final String GATES = "gates ";

  private final Parts parts;
  private final Arms arms = new Arms();

  public Movements(Parts parts) {
    this.parts = parts;
    for (JsonNode lever : parts.result().required("levers")) {
      JsonNode work = lever.required("work");
      if (work.has("signal")) {
        List<String> ways = new ArrayList<>();
        work.path("for").forEach(t -> ways.add(t.asText()));
        arms.lever(
            work.get("signal").asText(), lever.get("id").asText(), ways, work.has("slotted"));
      }
    }
    for (JsonNode control : parts.result().at("/controls/armControls")) {
      List<String> needs = new ArrayList<>();
      control.required("needs").forEach(n -> needs.add(n.asText()));
      arms.control(control.required("signal").asText(), needs);
    }
  }

  /**
   * A line.
   *
   * @param thing what is worked: "lever 3", "points 5", "gates Fen Lane", "section A to B"
   * @param last the number of its last movement, from 1
   */
  public record Line(String thing, String done, String moved, int last) {}

  private record Move(JsonNode event, String to, JsonNode before, JsonNode after, int last) {}

  /** How the box stands before the first movement. */
  public String beginning(JsonNode run) {
    List<String> words = new ArrayList<>(List.of("all levers normal"));
    for (Map.Entry<String, JsonNode> quantity : run.required("beginning").properties()) {
      String value = quantity.getValue().asText();
      boolean plain = List.of("N", "0", "no", "unused", "come", "empty", "whole").contains(value);
      if (quantity.getKey().startsWith(GATES)) {
        words.add(gates(quantity.getKey().substring(GATES.length()), value));
      } else if (!plain && !quantity.getKey().endsWith(": phase")) {
        words.add(quantity.getKey() + " " + value);
      }
    }
    return String.join("; ", words);
  }

  /** Whole strokes in words, one after another: "pull 3 Bolt, replace 2 Points". */
  public String words(JsonNode events) {
    List<String> words = new ArrayList<>();
    for (JsonNode event : events) {
      words.add(done(new Move(event, event.path("to").asText(), event, event, 0)));
    }
    return String.join(", ", words);
  }

  public List<Line> lines(JsonNode run) {
    List<Move> moves = new ArrayList<>();
    JsonNode before = run.required("beginning");
    int number = 0;
    for (JsonNode step : run.required("steps")) {
      number++;
      JsonNode event = step.required("event");
      JsonNode after = step.required("after");
      String to = event.path("to").asText();
      Move last = moves.isEmpty() ? null : moves.get(moves.size() - 1);
      if (last != null && goesOn(last, event)) {
        moves.set(moves.size() - 1, new Move(last.event(), to, last.before(), after, number));
      } else {
        moves.add(new Move(event, to, before, after, number));
      }
      before = after;
    }
    return moves.stream()
        .map(m -> new Line(worked(m.event()), done(m), moved(m), m.last()))
        .toList();
  }

  /** Whether the event is the second half of the stroke that the move began. */
  private static boolean goesOn(Move move, JsonNode event) {
    return move.to().equals("M")
        && thing(move.event()).equals(thing(event))
        && !event.required("to").asText().equals(move.event().required("from").asText());
  }

  private static String thing(JsonNode event) {
    String kind = event.required("kind").asText();
    if (kind.equals("rod")) {
      return "rod of " + event.required("points").asText();
    }
    return event.has("deed") ? kind : kind + " " + event.required(named(kind)).asText();
  }

  /** The field of an event that names what moves. */
  private static String named(String kind) {
    return kind.equals("gates") ? "levelCrossing" : kind;
  }

  private static String worked(JsonNode event) {
    return event.has("section") ? "section " + event.get("section").asText() : thing(event);
  }

  private String done(Move move) {
    JsonNode event = move.event();
    String kind = event.required("kind").asText();
    if (kind.equals("instrument")) {
      return "section "
          + event.required("section").asText()
          + ": "
          + event.required("deed").asText()
          + " at "
          + event.required("instrument").asText();
    }
    if (kind.equals("lock")) {
      return "section "
          + event.required("section").asText()
          + ": "
          + event.required("deed").asText()
          + " of "
          + event.required("groundFrame").asText();
    }
    if (kind.equals("condition")) {
      String name = event.required("condition").asText();
      JsonNode condition = parts.part("condition", name);
      List<String> of = new ArrayList<>();
      condition.required("of").forEach(o -> of.add(o.asText()));
      return ConditionWords.change(
          name, condition.required("kind").asText(), of, event.required("met").asBoolean());
    }
    if (kind.equals("rod")) {
      String points = event.required("points").asText();
      return "the rod of points " + parts.labelled("points", points) + " breaks";
    }
    String from = event.required("from").asText();
    boolean reverse = from.equals("N") || move.to().equals("R");
    String far =
        move.to().equals("M") ? " part-way" : from.equals("M") ? " the rest of the way" : "";
    String name = event.required(named(kind)).asText();
    if (kind.equals("points") && parts.part("points", name).has("workedElectrically")) {
      return "points "
          + parts.labelled("points", name)
          + (move.to().equals("M")
              ? " begin to move to "
              : from.equals("M") ? " come to lie " : " move to ")
          + (reverse ? "reverse" : "normal");
    }
    if (kind.equals("lever")) {
      String label = parts.part("lever", name).path("label").asText();
      return LeverWords.of(name, label, from, move.to());
    }
    return switch (kind) {
          case "points" ->
              (parts.part("points", name).has("workedByHand") ? "by hand: " : "")
                  + (reverse ? "reverse points " : "restore points ")
                  + parts.labelled("points", name);
          case "gates" ->
              (reverse ? "open the gates of " : "close the gates of ") + name + " to the road";
          default -> throw new IllegalArgumentException("no event of this version: " + event);
        }
        + far;
  }

  /** What the movement moves outside the frame, and what else is other after it. */
  private String moved(Move move) {
    List<String> moved = new ArrayList<>();
    String kind = move.event().required("kind").asText();
    String own = "";
    String arm = null;
    if (kind.equals("lever")) {
      String lever = move.event().required("lever").asText();
      own = "lever " + lever;
      JsonNode work = parts.part("lever", lever).required("work");
      String signal = work.path("signal").asText();
      if (arms.followsOneLever(signal)) {
        work(work, move.to(), move.after(), moved);
      } else {
        arm = signal;
      }
    } else if (kind.equals("gates")) {
      String crossing = move.event().required("levelCrossing").asText();
      own = GATES + crossing;
      moved.add(gates(crossing, move.to()));
    }
    if (kind.equals("condition")) {
      own = thing(move.event());
    }
    moved.addAll(arms.changes(arm, values(move.before()), values(move.after())));
    for (Map.Entry<String, JsonNode> q : move.after().properties()) {
      if (!q.getKey().equals(own) && !q.getValue().equals(move.before().get(q.getKey()))) {
        moved.add(q.getKey() + " now " + q.getValue().asText());
      }
    }
    return String.join("; ", moved);
  }

  private static Map<String, String> values(JsonNode state) {
    Map<String, String> values = new HashMap<>();
    state.properties().forEach(q -> values.put(q.getKey(), q.getValue().asText()));
    return values;
  }

  private static void work(JsonNode work, String to, JsonNode after, List<String> moved) {
    switch (work.required("kind").asText()) {
      case "signal" -> {
        String signal = work.required("signal").asText();
        moved.add("signal " + signal + one(to, " on", " part-way, taken as off", " off"));
      }
      case "points" -> {
        List<String> with = new ArrayList<>();
        work.required("points").forEach(p -> with.add(p.asText()));
        with.removeIf(p -> after.path("rod of " + p).asText("whole").startsWith("broken"));
        with.removeIf(p -> !after.path("points " + p).asText(to).equals(to));
        if (!with.isEmpty()) {
          moved.add(
              "points "
                  + String.join(", ", with)
                  + one(to, " lie normal", " lie neither way", " lie reverse"));
        }
        if (!work.required("economicalLock").isEmpty()) {
          moved.add(
              "economical lock of "
                  + list(work.required("economicalLock"))
                  + one(to, " in", " out", " in"));
        }
      }
      case "bolt" -> {
        boolean in = work.required("normal").asText().equals("in");
        moved.add(
            "bolt of "
                + list(work.required("points"))
                + one(to, in ? " in" : " out", " neither in nor out", in ? " out" : " in"));
      }
      case "release" ->
          moved.add(
              "release of "
                  + work.required("groundFrame").asText()
                  + one(to, " home", " neither home nor given", " given"));
      case "gates" -> {
        boolean road = work.required("normal").asText().equals("across the road");
        String stand = road || to.equals("M") ? to : to.equals("N") ? "R" : "N";
        moved.add(gates(work.required("levelCrossing").asText(), stand));
      }
      case "gate lock" -> {
        boolean in = work.required("normal").asText().equals("in");
        moved.add(
            "gate lock of "
                + work.required("levelCrossing").asText()
                + one(to, in ? " in" : " out", " neither in nor out", in ? " out" : " in"));
      }
      case "wickets" ->
          moved.add(
              "wickets of "
                  + work.required("levelCrossing").asText()
                  + one(to, " normal", " part-way", " reverse"));
      case "closing" ->
          moved.add(one(to, "box switched in", "box not fully switched out", "box switched out"));
      case "spare", "out of use" -> {}
      default -> throw new IllegalArgumentException("no work of this version: " + work);
    }
  }

  /**
   * How gates stand.
   *
   * @param place N across the road, R across the line
   */
  private static String gates(String crossing, String place) {
    return "gates of " + crossing + one(place, " across the road", " part-way", " across the line");
  }

  private static String list(JsonNode names) {
    List<String> words = new ArrayList<>();
    names.forEach(n -> words.add(n.asText()));
    return String.join(", ", words);
  }

  private static String one(String to, String normal, String partWay, String reverse) {
    return to.equals("N") ? normal : to.equals("M") ? partWay : reverse;
  }
}
