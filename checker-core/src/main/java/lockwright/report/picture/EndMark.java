package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** The room that the mark at the end of a line takes, in any state, and its fixed words. */
final class EndMark {
  static final double SIZE = 11;
  static final double LEADING = 13;
  static final double PAD = 6;

  private EndMark() {}

  /** How far it reaches beyond the end of the track. */
  static double width(Node node) {
    return switch (node.kind) {
      case SECTION -> 14 + 2 * PAD + sectionWidth(node.thing);
      case CUT -> 18 + Text.width(words(node), SIZE);
      case LIMIT ->
          node.named()
              ? 14 + Text.width(node.name, SIZE)
              : node.name.equals("buffer stop") ? 10 : 16;
      default -> 0;
    };
  }

  /** Half its height. */
  static double height(Node node) {
    return node.kind == Node.Kind.SECTION
        ? PAD + 4 + LEADING * (fixed(node.thing).size() + 4 + instruments(node.thing)) / 2
        : 12;
  }

  static List<String> words(Node node) {
    return switch (node.kind) {
      case CUT -> List.of("on at mark " + node.name);
      case LIMIT -> node.named() ? List.of(node.name) : List.of();
      default -> List.of();
    };
  }

  /** The name of a section, in lines, and how many tokens it has. */
  static List<String> fixed(JsonNode section) {
    List<String> lines = new ArrayList<>(Text.wrapped(section.get("name").asText(), SIZE, 130));
    int tokens = section.get("tokens").asInt();
    lines.add(tokens + " " + section.get("token").asText() + (tokens == 1 ? "" : "s"));
    return lines;
  }

  static String instrument(JsonNode instrument) {
    return "in " + Text.wrapped(instrument.get("name").asText(), SIZE, 150, 1).get(0);
  }

  /** Which levers a withdrawal here releases; empty if none. */
  static String release(JsonNode section) {
    return section.has("release")
        ? "release of " + StateWords.joined(section.get("release").get("levers"), ", ") + ":"
        : "";
  }

  private static int instruments(JsonNode section) {
    return section.get("instruments").size();
  }

  private static double sectionWidth(JsonNode section) {
    List<String> name = fixed(section);
    List<String> lines = new ArrayList<>();
    section
        .get("instruments")
        .forEach(i -> lines.add(instrument(i) + ": " + section.get("tokens").asText()));
    lines.add("withdrawal: " + "m".repeat(6));
    lines.add(release(section) + " locked");
    return Math.max(1.12 * Text.width(name, SIZE), Text.width(lines, SIZE));
  }
}
