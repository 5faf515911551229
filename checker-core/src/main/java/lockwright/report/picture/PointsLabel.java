package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** What is written at points, and the room that it takes in any state. */
final class PointsLabel {
  static final double SIZE = 11;

  private PointsLabel() {}

  /**
   * The number of the lever, the name where it is another, a hand or a spring, and how they lie.
   */
  static String points(JsonNode points, String lie) {
    String id = points.get("id").asText();
    String lever = points.path("lever").asText();
    String name = lever.isEmpty() || lever.equals(id) ? id : lever + " \u00b7 " + id;
    String by =
        points.has("workedByHand") ? ", by hand" : points.has("sprung") ? ", by spring" : "";
    return name + by + " (" + lie + ")";
  }

  /** The lever of the bolt, and where it is; empty if there is none. */
  static String bolt(JsonNode points, String where) {
    return points.has("boltLever")
        ? "bolt " + points.get("boltLever").asText() + " (" + where + ")"
        : "";
  }

  static double width(JsonNode points, String groundFrame) {
    List<String> lines = new ArrayList<>();
    lines.add(bolt(points, "neither"));
    double frame = groundFrame.isEmpty() ? 0 : 8 + Text.bold(groundFrame, SIZE);
    double own = Math.max(Text.width(lines, SIZE), Text.bold(points(points, "N"), SIZE));
    return Math.max(own, frame);
  }

  static double height(JsonNode points) {
    return 14 + 13 * (1 + (points.has("boltLever") ? 1 : 0)) + (points.has("groundFrame") ? 18 : 0);
  }
}
