package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** What is written at points, and the room that it takes in any state. */
final class PointsLabel {
  static final double SIZE = 11;

  private PointsLabel() {}

  /** The number of the lever, the name where it is another, and how they lie. */
  static String points(JsonNode points, String lie) {
    String id = points.get("id").asText();
    String lever = points.path("lever").asText();
    String name = lever.isEmpty() || lever.equals(id) ? id : lever + " " + id;
    return name + " (" + lie + ")";
  }

  /** The lever of the bolt, and where it is; empty if there is none. */
  static String bolt(JsonNode points, String where) {
    return points.has("boltLever")
        ? "bolt " + points.get("boltLever").asText() + " (" + where + ")"
        : "";
  }

  static double width(JsonNode points) {
    List<String> lines = new ArrayList<>();
    lines.add(points(points, "N"));
    lines.add(bolt(points, "neither"));
    lines.add(groundFrame(points));
    return Text.width(lines, SIZE) + (groundFrame(points).isEmpty() ? 0 : 8);
  }

  static double height(JsonNode points) {
    return 10
        + 13 * (1 + (points.has("boltLever") ? 1 : 0))
        + (points.has("groundFrame") ? 18 : 0);
  }

  static String groundFrame(JsonNode points) {
    return points.path("groundFrame").asText();
  }
}
