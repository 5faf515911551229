package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A level crossing, and what is written at each track that it lies over.
 *
 * @param thing as in the layout of the result
 * @param lock whether its lever works a lock of the gates, and not the gates
 */
record LevelCrossing(JsonNode thing, boolean lock) {
  private static final double SIZE = 11;
  private static final double NAME_WIDTH = 92;

  /** From the line to either end of the road that is drawn. */
  static final double ROAD = 16;

  static List<LevelCrossing> of(JsonNode result) {
    List<LevelCrossing> all = new ArrayList<>();
    for (JsonNode thing : result.at("/layout/levelCrossings")) {
      for (JsonNode lever : result.path("levers")) {
        if (lever.get("id").equals(thing.get("gateLever"))) {
          boolean lock = lever.at("/work/kind").asText().equals("gate lock");
          all.add(new LevelCrossing(thing, lock));
        }
      }
    }
    return all;
  }

  String id() {
    return thing.get("id").asText();
  }

  String lever() {
    return thing.get("gateLever").asText();
  }

  boolean over(String track) {
    for (JsonNode one : thing.get("tracks")) {
      if (one.asText().equals(track)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Its name and its lever.
   *
   * @param where how the lock is, if it has one
   */
  List<String> lines(String where) {
    List<String> lines = new ArrayList<>(Text.wrapped(id(), SIZE, NAME_WIDTH));
    lines.add(lock ? "lock " + lever() + " (" + where + ")" : "gates " + lever());
    return lines;
  }

  double width() {
    return Math.max(44, Text.width(lines("neither"), SIZE) + 10);
  }

  double height() {
    return ROAD + Spacing.LEADING * lines("neither").size() + 4;
  }
}
