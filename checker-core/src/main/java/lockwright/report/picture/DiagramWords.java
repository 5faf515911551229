package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The diagram in words, line by line from left to right. */
final class DiagramWords {
  private DiagramWords() {}

  static String of(Plan plan, List<Line> lines) {
    List<Line> sorted = new ArrayList<>(lines);
    sorted.removeIf(line -> line.pieces.isEmpty());
    sorted.sort(
        Comparator.comparingDouble((Line l) -> l.row).thenComparingDouble(l -> l.end(Side.LEFT).x));
    StringBuilder words = new StringBuilder();
    for (Line line : sorted) {
      List<String> parts = new ArrayList<>();
      parts.add(node(line.end(Side.LEFT)));
      for (Piece piece : line.pieces) {
        parts.add("track " + piece.id() + (piece.passenger() ? "" : ", not passenger"));
        for (LevelCrossing crossing : plan.levelCrossings) {
          if (crossing.over(piece.id())) {
            String works = crossing.lock() ? ", gate lock on lever " : ", gates on lever ";
            parts.add("level crossing " + crossing.id() + works + crossing.lever());
          }
        }
        posts(plan, piece, parts);
        parts.add(node(piece.right()));
      }
      parts.removeIf(String::isEmpty);
      words.append("Line from left to right: ").append(String.join("; ", parts)).append(". ");
    }
    return words.toString().trim();
  }

  private static void posts(Plan plan, Piece piece, List<String> parts) {
    for (Posts posts : Posts.of(plan)) {
      if (plan.pieceAt.get(posts.end()) != piece) {
        continue;
      }
      String way = plan.side(posts.end()) == Side.RIGHT ? "to the right" : "to the left";
      if (posts.arms().isEmpty()) {
        parts.add("limit of shunt " + way);
      }
      for (JsonNode arm : posts.arms()) {
        String lever =
            arm.has("levers")
                ? ", levers " + StateWords.joined(arm.get("levers"), ", ")
                : arm.has("lever") ? ", lever " + arm.get("lever").asText() : ", fixed";
        String kind = arm.get("arm").asText();
        parts.add(kind + " signal " + arm.get("id").asText() + " " + way + lever);
      }
    }
  }

  private static String node(Node node) {
    return switch (node.kind) {
      case JOINT -> "";
      case POINTS -> "points " + node.name + worked(node.thing);
      case CROSSING -> "crossing " + node.name;
      case SECTION -> "section " + node.name;
      case CUT -> "cut, on at mark " + node.name;
      case LIMIT -> node.name;
    };
  }

  private static String worked(JsonNode points) {
    return points.has("lever")
        ? ", lever " + points.get("lever").asText()
        : points.has("groundFrame")
            ? ", ground frame " + points.get("groundFrame").asText()
            : points.has("workedByHand")
                ? ", worked by hand"
                : points.has("sprung") ? ", held normal by a spring" : "";
  }
}
