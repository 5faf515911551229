package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * What a lever works, by the colour of its handle in British practice (common practice, no source).
 *
 * @param kind the class that gives the colour
 * @param lines the short word at the lever, in one line or two
 * @param words for those who do not see it
 * @param halved whether the handle has two colours
 */
record Handle(String kind, List<String> lines, String words, boolean halved) {
  /**
   * @param arm the kind of its arm, where it works a signal
   */
  static Handle of(JsonNode lever, String arm) {
    JsonNode work = lever.get("work");
    return switch (work.get("kind").asText()) {
      case "signal" -> signal(arm, work);
      case "points" -> points(work);
      case "bolt" ->
          new Handle(
              "bolt-lever", List.of("bolt"), "bolt of points " + list(work, "points"), false);
      case "release" ->
          new Handle(
              "release",
              List.of("release"),
              "release of ground frame " + work.get("groundFrame").asText(),
              false);
      case "gates" -> new Handle("gates-lever", List.of("gates"), crossing("gates", work), false);
      case "gate lock" ->
          new Handle("gate-lock", List.of("gate", "lock"), crossing("gate lock", work), false);
      case "wickets" -> new Handle("wickets", List.of("wickets"), crossing("wickets", work), false);
      case "closing" ->
          new Handle(
              "closing-lever",
              List.of("closing"),
              "closing lever of signals " + list(work, "signals"),
              false);
      case "out of use" ->
          new Handle(
              "out-of-use",
              List.of("out of", "use"),
              "out of use, was " + work.get("was").asText(),
              false);
      default -> new Handle("spare", List.of("spare"), "spare", false);
    };
  }

  private static Handle signal(String arm, JsonNode work) {
    String share =
        work.has("for") ? ", for " + list(work, "for") : work.has("slotted") ? ", slotted" : "";
    List<String> lines =
        switch (arm) {
          case "calling-on" -> List.of("calling", "on");
          case "shunting" -> List.of("shunt");
          default -> List.of(arm);
        };
    String kind = arm.equals("distant") ? "distant-arm" : "stop-arm";
    return new Handle(kind, lines, arm + " signal " + work.get("signal").asText() + share, false);
  }

  private static Handle points(JsonNode work) {
    String words = "points " + list(work, "points");
    if (work.get("economicalLock").isEmpty()) {
      return new Handle("points-lever", List.of("points"), words, false);
    }
    String bolted = words + ", with the bolt of " + list(work, "economicalLock");
    return new Handle("points-and-bolt", List.of("points", "& bolt"), bolted, true);
  }

  private static String crossing(String what, JsonNode work) {
    return what + " of level crossing " + work.get("levelCrossing").asText();
  }

  private static String list(JsonNode work, String field) {
    return StateWords.joined(work.get(field), ", ");
  }
}
