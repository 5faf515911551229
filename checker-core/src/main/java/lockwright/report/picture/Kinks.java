package lockwright.report.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts a line where the author has it go from one height to another. The later part then leaves
 * the earlier aslant, at a joint between the two places given if there is one.
 */
final class Kinks {
  private final Plan plan;
  private final Line line;

  /** The places that are on the line itself, and not only where it leaves another. */
  private final List<Node> nodes = new ArrayList<>();

  /** A height given: at a node, an even index, or along a piece, an odd one. */
  private record Height(int index, Given given) {}

  private Kinks(Plan plan, Line line) {
    this.plan = plan;
    this.line = line;
    nodes.add(line.end(Side.LEFT));
    line.pieces.forEach(piece -> nodes.add(piece.right()));
  }

  static List<Line> in(Plan plan, List<Line> lines) {
    List<Line> parted = new ArrayList<>();
    lines.forEach(line -> parted.addAll(new Kinks(plan, line).parts()));
    return parted;
  }

  private List<Line> parts() {
    List<Height> heights = heights();
    if (heights.isEmpty()) {
      return List.of(line);
    }
    List<Line> parts = new ArrayList<>();
    int from = 0;
    boolean fromOwn = true;
    Given given = heights.get(0).given();
    for (int i = 1; i < heights.size(); i++) {
      Height before = heights.get(i - 1);
      Height after = heights.get(i);
      if (before.given().down() == after.given().down()) {
        continue;
      }
      int cut = cut(before, after, from);
      boolean cutOwn = 2 * cut != after.index();
      parts.add(part(from, fromOwn, cut, cutOwn, given));
      from = cut;
      fromOwn = !cutOwn;
      given = after.given();
    }
    parts.add(part(from, fromOwn, nodes.size() - 1, true, given));
    return parts;
  }

  private List<Height> heights() {
    List<Height> heights = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      Node node = nodes.get(i);
      if (node.line == line && node.given != null) {
        heights.add(new Height(2 * i, node.given));
      }
      if (i < line.pieces.size() && plan.levels.containsKey(line.pieces.get(i).id())) {
        heights.add(new Height(2 * i + 1, plan.levels.get(line.pieces.get(i).id())));
      }
    }
    return heights;
  }

  private int cut(Height before, Height after, int last) {
    int best = -1;
    int least = Integer.MAX_VALUE;
    for (int at = (before.index() + 1) / 2; at <= after.index() / 2; at++) {
      int cost = cost(at, 2 * at == after.index()) + (at == last ? 10 : 0);
      if (cost < least) {
        least = cost;
        best = at;
      }
    }
    return best;
  }

  /** At a joint, else at the legs of points, rather than at a toe, where a bolt may lie. */
  private int cost(int at, boolean slantsOnLeft) {
    Node node = nodes.get(at);
    if (node.kind == Node.Kind.JOINT) {
      return node.given == null ? 0 : 1;
    }
    if (node.kind == Node.Kind.POINTS) {
      boolean toeOnLeft =
          plan.pieces.stream().anyMatch(p -> p.right() == node && p.rightPort().equals("toe"));
      return toeOnLeft == slantsOnLeft ? 5 : 3;
    }
    return node.kind == Node.Kind.CROSSING ? 4 : 2;
  }

  /** The part between two nodes; each of them is on it unless it is on the one beside. */
  private Line part(int from, boolean fromOwn, int to, boolean toOwn, Given given) {
    Line part = from == to ? new Line(nodes.get(from)) : new Line();
    part.pieces.addAll(line.pieces.subList(from, to));
    part.given = given;
    for (int i = from; i <= to; i++) {
      boolean own = (i > from || fromOwn) && (i < to || toOwn);
      if (own && nodes.get(i).line == line) {
        nodes.get(i).line = part;
      }
    }
    return part;
  }
}
