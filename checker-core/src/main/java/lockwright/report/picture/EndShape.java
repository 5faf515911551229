package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** How a line goes on where a track ends. */
final class EndShape {
  private final Svg svg;
  private final BoxState state;

  EndShape(Svg svg, BoxState state) {
    this.svg = svg;
    this.state = state;
  }

  /**
   * @param side the side of the track that the node is on
   */
  void draw(Node node, Side side, double y) {
    int away = side.sign();
    double x = node.x;
    String anchor = side == Side.LEFT ? "end" : "start";
    if (node.kind == Node.Kind.SECTION) {
      section(node, side, y);
      return;
    }
    svg.open("g", "class", "end");
    svg.title(node.kind == Node.Kind.CUT ? EndMark.words(node).get(0) : node.name);
    if (node.kind == Node.Kind.CUT) {
      svg.circle("mark", x, y, 4);
      svg.text("own", x + away * 9, y + 4, anchor, EndMark.words(node).get(0));
    } else if (node.name.equals("buffer stop")) {
      svg.path("buffer", path(x - away * 5, y - 8, x, y - 8, x, y + 8, x - away * 5, y + 8));
    } else if (node.named()) {
      svg.line("beyond", x, y, x + away * 8, y);
      svg.text("own", x + away * 11, y + 4, anchor, node.name);
    } else {
      svg.line("beyond", x - 3, y + 8, x + 3, y - 8);
      svg.line("beyond", x + 3 + away * 3, y + 8, x + 9 + away * 3, y - 8);
    }
    svg.close();
  }

  private void section(Node node, Side side, double y) {
    JsonNode section = node.thing;
    double half = EndMark.height(node) - 4;
    double width = EndMark.width(node) - 14;
    double left = side == Side.LEFT ? node.x - 8 - width : node.x + 8;
    svg.open("g", "class", "section", "data-section", node.name);
    svg.title("section " + node.name);
    svg.line("beyond", node.x, y, node.x + side.sign() * 8, y);
    svg.rect("instruments", left, y - half, width, 2 * half);
    double line = y - half + EndMark.PAD + 9;
    List<String> fixed = EndMark.fixed(section);
    for (String words : fixed) {
      svg.text(
          words.equals(fixed.get(fixed.size() - 1)) ? "own" : "number",
          left + EndMark.PAD,
          line,
          "start",
          words);
      line += EndMark.LEADING;
    }
    for (String words : lines(node)) {
      svg.text("own", left + EndMark.PAD, line, "start", words);
      line += EndMark.LEADING;
    }
    svg.close();
  }

  private List<String> lines(Node node) {
    JsonNode section = node.thing;
    String prefix = "section " + section.get("name").asText() + ": ";
    double width = EndMark.width(node) - 14 - 2 * EndMark.PAD;
    List<String> lines = new ArrayList<>();
    List<String> all = new ArrayList<>();
    for (JsonNode instrument : section.get("instruments")) {
      String name = instrument.get("name").asText();
      all.add(name);
      state
          .value(prefix + "tokens in " + name)
          .ifPresent(v -> lines.add(EndMark.instrument(instrument) + ": " + v));
    }
    if (lines.isEmpty()) {
      String words = "instruments: " + String.join(", ", all);
      lines.addAll(Text.wrapped(words, EndMark.SIZE, width, all.size() + 1));
    }
    state.value(prefix + "tokens out").ifPresent(v -> lines.add("out: " + v));
    state.value(prefix + "release").ifPresent(v -> lines.add(EndMark.release(section) + " " + v));
    for (String what : List.of("plunging", "withdrawal")) {
      List<String> where = new ArrayList<>();
      for (JsonNode instrument : section.get("instruments")) {
        String at = instrument.get("name").asText();
        if (state.value(prefix + what + " at " + at).filter("yes"::equals).isPresent()) {
          where.add(at);
        }
      }
      if (!where.isEmpty()) {
        String words = what + ": " + String.join(", ", where);
        lines.addAll(Text.wrapped(words, EndMark.SIZE, width, 1));
      }
    }
    return lines;
  }

  private static String path(double... at) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < at.length; i += 2) {
      path.append(i == 0 ? "M" : "L");
      path.append(Svg.number(at[i])).append(' ').append(Svg.number(at[i + 1]));
    }
    return path.toString();
  }
}
