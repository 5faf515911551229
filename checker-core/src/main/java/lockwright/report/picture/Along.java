package lockwright.report.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Places the nodes from left to right: each as far from those on its left as the room between them
 * asks. Lines that go on beyond the plan reach its edge, sidings are short, and what has room on
 * both sides stands in the middle.
 */
final class Along {
  private static final double GAP = 24;
  private static final int SWEEPS = 20;

  private record Apart(Node left, Node right, double least, boolean track) {}

  private final Plan plan;
  private final List<Line> lines;
  private final List<Node> order;
  private final Map<Node, Integer> place = new HashMap<>();
  private final List<Apart> apart = new ArrayList<>();
  private final Map<Node, List<Apart>> into = new HashMap<>();
  private final Map<Node, List<Apart>> outOf = new HashMap<>();
  private final double usual;

  private Along(Plan plan, List<Line> lines, double usual) {
    this.usual = usual;
    this.plan = plan;
    this.lines = lines;
    order = new ArrayList<>(ordered(plan));
  }

  /**
   * With the room that pieces need by themselves.
   *
   * @param usual how wide the picture would be without places given; not needed if none are
   */
  static List<Tight> roughly(Plan plan, List<Line> lines, Spacing spacing, double usual) {
    Along along = new Along(plan, lines, usual);
    for (Piece piece : plan.pieces) {
      double aslant = 0;
      for (Side side : Side.values()) {
        boolean leaves = piece.at(side).line.pieces.stream().noneMatch(p -> p == piece);
        aslant += leaves ? Rows.ASLANT : 0;
      }
      along.keep(piece.left(), piece.right(), spacing.length(piece) + aslant, true);
    }
    return along.solve();
  }

  /** With all that the rows ask, in the order from left to right that they were sought in. */
  static List<Tight> exactly(Plan plan, List<Line> lines, Spacing spacing, double usual) {
    Along along = new Along(plan, lines, usual);
    along.order.sort(Comparator.comparingDouble(n -> n.x));
    for (int i = 0; i < along.order.size(); i++) {
      along.place.put(along.order.get(i), i);
    }
    for (Piece piece : plan.pieces) {
      along.keep(piece.left(), piece.right(), spacing.length(piece), true);
    }
    along.neighbours();
    along.slants(spacing);
    return along.solve();
  }

  static double beyond(Line line, Side side) {
    return GAP / 2 + EndMark.width(line.end(side));
  }

  private void neighbours() {
    for (Line a : lines) {
      for (Line b : lines) {
        if (a != b && a.row == b.row) {
          double marks = beyond(a, Side.RIGHT) + beyond(b, Side.LEFT);
          separate(a.end(Side.RIGHT), b.end(Side.LEFT), marks);
        }
      }
    }
  }

  /** A way aslant passes the rows between without touching a line there. */
  private void slants(Spacing spacing) {
    for (Line line : lines) {
      for (Side side : Side.values()) {
        Node node = line.end(side);
        if (!line.leaves(side)) {
          continue;
        }
        Piece last =
            side == Side.LEFT ? line.pieces.get(0) : line.pieces.get(line.pieces.size() - 1);
        double aslant = spacing.aslant(last, side);
        double right = side == Side.LEFT ? aslant : 0;
        double left = side == Side.RIGHT ? aslant : 0;
        for (Line passed : lines) {
          if (passed.row > Math.min(line.row, node.line.row)
              && passed.row < Math.max(line.row, node.line.row)) {
            separate(node, passed.end(Side.LEFT), right + beyond(passed, Side.LEFT));
            separate(passed.end(Side.RIGHT), node, left + beyond(passed, Side.RIGHT));
          }
        }
      }
    }
  }

  /**
   * Keeps two nodes apart if they were found in this order, so that no ring of demands comes about.
   */
  private void separate(Node left, Node right, double least) {
    if (place.get(left) < place.get(right)) {
      keep(left, right, least, false);
    }
  }

  private void keep(Node left, Node right, double least, boolean track) {
    Apart demand = new Apart(left, right, least, track);
    apart.add(demand);
    outOf.computeIfAbsent(left, n -> new ArrayList<>()).add(demand);
    into.computeIfAbsent(right, n -> new ArrayList<>()).add(demand);
  }

  private static List<Node> ordered(Plan plan) {
    Map<Node, List<Node>> next = new HashMap<>();
    Map<Node, Integer> waiting = new HashMap<>();
    for (Piece piece : plan.pieces) {
      next.computeIfAbsent(piece.left(), n -> new ArrayList<>()).add(piece.right());
      waiting.merge(piece.right(), 1, Integer::sum);
    }
    List<Node> order = new ArrayList<>();
    plan.nodes().stream().filter(n -> !waiting.containsKey(n)).forEach(order::add);
    for (int i = 0; i < order.size(); i++) {
      for (Node node : next.getOrDefault(order.get(i), List.of())) {
        if (waiting.merge(node, -1, Integer::sum) == 0) {
          order.add(node);
        }
      }
    }
    return order;
  }

  private List<Tight> solve() {
    double edge = 8;
    for (Node node : order) {
      boolean first = !into.containsKey(node) && !fixed(node);
      edge = Math.max(edge, first ? 8 + EndMark.width(node) : 0);
    }
    List<Tight> tight = fix(edge);
    for (Node node : order) {
      if (!fixed(node)) {
        node.x = Math.max(node.ends() ? edge : 0, low(node));
      }
    }
    double far = order.stream().mapToDouble(n -> n.x).max().orElse(0);
    for (Node node : order) {
      if (node.goesOn() && !outOf.containsKey(node) && !fixed(node)) {
        node.x = far;
      }
    }
    shorten();
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      for (Node node : order) {
        boolean between = outOf.containsKey(node) && into.containsKey(node);
        if (!node.ends() && between && !fixed(node)) {
          node.x = Math.max(low(node), (low(node) + high(node)) / 2);
        }
      }
    }
    return tight;
  }

  private static boolean fixed(Node node) {
    return node.given != null;
  }

  /** Puts what has a place given there, and says where that leaves no room. */
  private List<Tight> fix(double edge) {
    if (order.stream().noneMatch(Along::fixed)) {
      return List.of();
    }
    Map<Node, Integer> index = new HashMap<>();
    double[] given = new double[order.size()];
    double[] first = new double[order.size()];
    for (int i = 0; i < order.size(); i++) {
      Node node = order.get(i);
      index.put(node, i);
      given[i] = fixed(node) ? node.given.across() : Double.NaN;
      double mark = into.containsKey(node) ? 0 : EndMark.width(node);
      first[i] = fixed(node) ? 8 + mark : node.ends() ? edge : 0;
    }
    List<Scale.Demand> demands =
        apart.stream()
            .map(a -> new Scale.Demand(index.get(a.left()), index.get(a.right()), a.least()))
            .toList();
    Scale scale = Scale.of(given, first, demands, usual, Spacing.MOST);
    order.stream().filter(Along::fixed).forEach(n -> n.x = scale.of(n.given.across()));
    return scale.tight().stream()
        .map(
            pair ->
                new Tight(
                    order.get(pair.first()).given,
                    order.get(pair.second()).given,
                    true,
                    pair.least()))
        .toList();
  }

  /** Draws what hangs on its right only, as a siding, up to where it hangs. */
  private void shorten() {
    Map<Node, Boolean> loose = new HashMap<>();
    for (Node node : order) {
      boolean free = !node.goesOn() && !fixed(node);
      for (Apart demand : into.getOrDefault(node, List.of())) {
        free &= !demand.track() || loose.getOrDefault(demand.left(), false);
      }
      loose.put(node, free);
    }
    for (int i = order.size() - 1; i >= 0; i--) {
      Node node = order.get(i);
      if (loose.get(node) && outOf.containsKey(node) && !fixed(node)) {
        node.x = Math.max(node.x, high(node));
      }
    }
  }

  private double low(Node node) {
    return into.getOrDefault(node, List.of()).stream()
        .mapToDouble(d -> d.left().x + d.least())
        .max()
        .orElse(0);
  }

  private double high(Node node) {
    return outOf.getOrDefault(node, List.of()).stream()
        .mapToDouble(d -> d.right().x - d.least())
        .min()
        .orElse(node.x);
  }

  /** The width of the whole. */
  static double width(Plan plan) {
    return 8 + plan.nodes().stream().mapToDouble(n -> n.x + EndMark.width(n)).max().orElse(0);
  }
}
