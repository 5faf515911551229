package lockwright.report.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Parts the plan into lines. The first is the way from left to right that passes most tracks, of
 * passenger lines before others and of normal legs before reverse ones; the next is the longest of
 * what is left, and so on. So one leg of each points goes straight on, and the other leaves aslant.
 */
final class Lines {
  private static final int REVERSE = 60;

  private final Map<Node, List<Piece>> leaving = new HashMap<>();
  private final Set<Piece> free;
  private final Map<Piece, Integer> weights = new HashMap<>();

  private Lines(Plan plan) {
    free = new HashSet<>(plan.pieces);
    plan.pieces.forEach(p -> leaving.computeIfAbsent(p.left(), n -> new ArrayList<>()).add(p));
  }

  /** All lines, each node told which is its own. */
  static List<Line> of(Plan plan) {
    Lines lines = new Lines(plan);
    List<Line> found = new ArrayList<>();
    while (!lines.free.isEmpty()) {
      lines.weights.clear();
      Piece first =
          lines.free.stream()
              .max(
                  Comparator.comparing((Piece p) -> lines.weight(p))
                      .thenComparing(Piece::index, Comparator.reverseOrder()))
              .orElseThrow();
      found.add(lines.take(first));
    }
    for (Line line : found) {
      for (Side side : Side.values()) {
        if (line.end(side).line == null) {
          line.end(side).line = line;
        }
      }
    }
    return Kinks.in(plan, found);
  }

  /** The weight of the heaviest way that begins with a piece. */
  private int weight(Piece piece) {
    Integer known = weights.get(piece);
    if (known != null) {
      return known;
    }
    int own =
        10
            + (piece.passenger() ? 6 : 0)
            + straightOn(piece.left(), piece.leftPort())
            + straightOn(piece.right(), piece.rightPort());
    Piece next = next(piece);
    int weight = own + (next == null ? 0 : weight(next));
    weights.put(piece, weight);
    return weight;
  }

  /** A way over a crossover is not the main line, though it may pass most tracks. */
  private static int straightOn(Node node, String port) {
    boolean past = node.kind == Node.Kind.POINTS && node.line == null && !node.thing.has("trap");
    return past && port.equals("reverse") ? -REVERSE : 0;
  }

  private Piece next(Piece piece) {
    Piece best = null;
    for (Piece onwards : leaving.getOrDefault(piece.right(), List.of())) {
      if (free.contains(onwards)
          && leads(piece, onwards)
          && (best == null || weight(onwards) > weight(best))) {
        best = onwards;
      }
    }
    return best;
  }

  private static boolean leads(Piece piece, Piece onwards) {
    Node node = piece.right();
    return switch (node.kind) {
      case JOINT -> true;
      case POINTS ->
          node.line == null && piece.rightPort().equals("toe") != onwards.leftPort().equals("toe");
      case CROSSING -> node.line == null && piece.rightPort().equals(onwards.leftPort());
      default -> false;
    };
  }

  private Line take(Piece first) {
    Line line = new Line();
    for (Piece piece = first; piece != null; piece = next(piece)) {
      line.pieces.add(piece);
    }
    for (Piece piece : line.pieces) {
      free.remove(piece);
      for (Node node : List.of(piece.left(), piece.right())) {
        boolean inside = piece.left() != node || line.pieces.get(0) != piece;
        boolean through = inside && !(node == line.end(Side.RIGHT));
        if (node.line == null && (through || node.ends() || node.kind == Node.Kind.JOINT)) {
          node.line = line;
        }
      }
    }
    return line;
  }
}
