package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;

/** Words for single things. */
final class Said {
  private Said() {}

  /** A thing with its label, where it has one that says more. */
  static String of(String name, JsonNode thing) {
    String label = thing.path("label").asText();
    boolean more = !label.isEmpty() && !label.equals(thing.path("id").asText());
    return more ? name + ": " + label : name;
  }

  static String place(BoxState.Place place) {
    return switch (place) {
      case NORMAL -> "normal";
      case PART_WAY -> "part-way";
      case REVERSED -> "reversed";
    };
  }

  static String arm(BoxState.Place place) {
    return switch (place) {
      case NORMAL -> "on";
      case PART_WAY -> "part-way";
      case REVERSED -> "off";
    };
  }
}
