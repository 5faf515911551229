package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.report.LeverWords;

/**
 * The locking as a matrix, as it is written: a row for the lever that an entry stands under, a
 * column for the other. Levers that do not move, which no entry can name, are left out.
 */
final class MatrixPicture {
  private static final double CELL = 26;
  private static final double LETTER = 12;
  private static final double HEAD = 30;
  private static final double KEY_LINE = 18;

  /** Kinds of entry in the order of the key, with their letters. */
  private static final List<Kind> KINDS =
      List.of(
          new Kind("released by", "R", "released by"),
          new Kind("either", "E", "released by either of several"),
          new Kind("locks", "L", "locks"),
          new Kind("locks both ways", "B", "locks both ways"),
          new Kind("while normal locks both ways", "W", "while normal locks both ways"),
          new Kind("starts only with normal", "S", "starts only with normal"),
          new Kind("not again before", "T", "not again before (turn)"));

  private static String id(JsonNode lever) {
    return lever.get("id").asText();
  }

  private record Kind(String name, String letter, String words) {}

  private record Written(int index, String letter, String text, boolean conditional) {}

  private final List<JsonNode> levers = new ArrayList<>();
  private final Map<String, Integer> column = new HashMap<>();
  private final Map<List<String>, List<Written>> cells = new HashMap<>();
  private final double beside;
  private final double side;
  private final double cell;
  private final Svg svg;

  private MatrixPicture(JsonNode result) {
    for (JsonNode lever : result.path("levers")) {
      if (List.of("spare", "out of use").contains(lever.at("/work/kind").asText())) {
        continue;
      }
      column.put(lever.get("id").asText(), levers.size());
      levers.add(lever);
    }
    int entries = read(result.path("locking"));
    int most = cells.values().stream().mapToInt(List::size).max().orElse(1);
    double way = wayName();
    cell = Math.max(CELL, way) + (most > 4 ? LETTER * ((most + 1) / 2 - 2) : 0);
    beside = Math.max(44, way + 12);
    side =
        12 + beside + levers.stream().mapToDouble(l -> Text.width(heading(l), 12)).max().orElse(0);
    double grid = levers.size() * cell;
    svg =
        new Svg(
            "group",
            "matrix",
            Math.max(side + grid + 12, 560),
            HEAD + grid + (KINDS.size() + 3) * KEY_LINE,
            "Locking matrix of " + result.path("box").asText(),
            entries
                + " entries. A row for each lever, a column for each other lever; each entry is a"
                + " link to its line in the table.");
  }

  /** The room for the longest name of a way of a push-pull lever; none, where there is none. */
  private double wayName() {
    return levers.stream()
        .map(MatrixPicture::id)
        .filter(LeverWords::isWay)
        .mapToDouble(id -> Text.bold(id, 12) + 12)
        .max()
        .orElse(0);
  }

  static String of(JsonNode result) {
    MatrixPicture picture = new MatrixPicture(result);
    picture.grid();
    picture.key();
    return picture.svg.end();
  }

  private int read(JsonNode locking) {
    int index = 0;
    for (JsonNode entry : locking) {
      for (JsonNode other : entry.get("others")) {
        List<String> cell = List.of(entry.get("lever").asText(), other.asText());
        cells
            .computeIfAbsent(cell, c -> new ArrayList<>())
            .add(
                new Written(
                    index,
                    letter(entry),
                    entry.get("text").asText(),
                    !entry.get("when").isEmpty()));
      }
      index++;
    }
    return index;
  }

  private static String letter(JsonNode entry) {
    String name = entry.get("others").size() > 1 ? "either" : entry.get("kind").asText();
    return KINDS.stream()
        .filter(k -> k.name().equals(name))
        .findFirst()
        .map(Kind::letter)
        .orElseThrow(() -> new IllegalArgumentException("no kind of entry " + name));
  }

  private void grid() {
    for (JsonNode lever : levers) {
      String id = lever.get("id").asText();
      double at = column.get(id) * cell;
      String stripe = column.get(id) % 2 == 0 ? "even" : "odd";
      svg.rect("row " + stripe, 4, HEAD + at, side - 4 + levers.size() * cell, cell);
      svg.text("heading", side - beside, HEAD + at + cell / 2 + 4, "end", heading(lever));
      svg.text("letter", side - 8, HEAD + at + cell / 2 + 4, "end", id);
      svg.text("letter", side + at + cell / 2, HEAD - 8, "middle", id);
      svg.rect("itself", side + at, HEAD + at, cell, cell);
    }
    double end = levers.size() * cell;
    for (int i = 0; i <= levers.size(); i++) {
      String rule = i % 5 == 0 ? "rule fifth" : "rule";
      svg.line(rule, side + i * cell, HEAD, side + i * cell, HEAD + end);
      svg.line(rule, side, HEAD + i * cell, side + end, HEAD + i * cell);
    }
    for (JsonNode row : levers) {
      for (JsonNode other : levers) {
        List<String> names = List.of(row.get("id").asText(), other.get("id").asText());
        cell(names, cells.getOrDefault(names, List.of()));
      }
    }
  }

  /** The entries of a cell, side by side, in two lines if there are three or more. */
  private void cell(List<String> names, List<Written> entries) {
    int lines = entries.size() > 2 ? 2 : 1;
    int across = (entries.size() + lines - 1) / lines;
    double left = side + column.get(names.get(1)) * cell;
    double top = HEAD + column.get(names.get(0)) * cell;
    for (int i = 0; i < entries.size(); i++) {
      Written entry = entries.get(i);
      double width = cell / across;
      double height = cell / lines;
      double x = left + (i % across) * width;
      double y = top + (double) (i / across) * height;
      svg.open("a", "href", "#entry-" + entry.index(), "aria-label", entry.text());
      svg.title(entry.text());
      svg.rect(
          "entry" + (entry.conditional() ? " conditional" : ""),
          x + 1,
          y + 1,
          width - 2,
          height - 2);
      svg.text("letter", x + width / 2, y + height / 2 + 4, "middle", entry.letter());
      svg.close();
    }
  }

  private void key() {
    double y = HEAD + levers.size() * cell + KEY_LINE + 6;
    svg.text(
        "key",
        12,
        y,
        "start",
        "The row's lever ... the column's lever (spare, out of use left out):");
    for (Kind kind : KINDS) {
      y += KEY_LINE;
      svg.text("letter", 20, y, "middle", kind.letter());
      svg.text("key", 36, y, "start", kind.words());
    }
    y += KEY_LINE;
    svg.rect("entry conditional", 12, y - 12, 16, 15);
    svg.text(
        "key", 36, y, "start", "dashed: only under conditions, which the line in the table gives");
  }

  private static String heading(JsonNode lever) {
    List<String> label = Text.wrapped(lever.get("label").asText(), 12, 190, 1);
    return label.isEmpty() ? "" : label.get(0);
  }
}
