package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What stands on one spot beside the line: the arms of a post, or a limit of shunt.
 *
 * @param end the end of a track that a train leaves as it passes
 * @param arms the signals, the first written highest; none for a limit of shunt
 */
record Posts(Plan.End end, List<JsonNode> arms) {
  private static final double SIZE = 11;
  private static final double LIMIT_OF_SHUNT = 66;

  /** From the line to the post, the length of an arm, and to the far side of the number. */
  static final double STUB = 9;

  static final double ARM = 16;
  static final double HEIGHT = STUB + ARM + 16;

  static List<Posts> of(Plan plan) {
    Map<Plan.End, List<JsonNode>> posts = new LinkedHashMap<>();
    for (JsonNode signal : plan.layout.get("signals")) {
      posts.computeIfAbsent(Plan.End.of(signal.get("stands")), e -> new ArrayList<>()).add(signal);
    }
    List<Posts> all = new ArrayList<>();
    posts.forEach((end, arms) -> all.add(new Posts(end, arms)));
    for (JsonNode track : plan.layout.get("tracks")) {
      for (int end = 0; end < 2; end++) {
        if (track.get("ends").get(end).get("limitOfShunt").asBoolean()) {
          all.add(new Posts(new Plan.End(track.get("id").asText(), end), List.of()));
        }
      }
    }
    return all;
  }

  /** The number of the lever, and the name of the signal where it is another. */
  static String number(JsonNode signal) {
    String id = signal.get("id").asText();
    String lever =
        signal.has("levers")
            ? StateWords.joined(signal.get("levers"), ", ")
            : signal.path("lever").asText();
    String letter = signal.get("arm").asText().equals("calling-on") ? " C" : "";
    if (lever.isEmpty()) {
      return id + " fixed" + letter;
    }
    return (lever.equals(id) ? id : lever + " \u00b7 " + id) + letter;
  }

  static double slot(JsonNode signal) {
    return Math.max(22, Text.bold(number(signal), SIZE) + 7);
  }

  double width() {
    return arms.isEmpty() ? LIMIT_OF_SHUNT : 8 + arms.stream().mapToDouble(Posts::slot).sum();
  }
}
