package lockwright.report.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps room for all that stands beside the lines, so that nothing lies on anything else: on each
 * side of a piece stand, from each of its ends, the things at that end one after another, and the
 * name of the track between them. A row is as high as its highest things.
 */
final class Spacing {
  static final double NAME_SIZE = 11;
  static final double LEADING = 12;

  /** How far a line that leaves aslant goes along for each step that it goes up or down. */
  static final double SLOPE = 0.7;

  static final double TRAP = 30;
  private static final double BOLT = 16;
  private static final double NAME_WIDTH = 92;
  static final double GAP = 10;
  private static final double LEAST_LENGTH = 34;
  static final double LEAST_HEIGHT = 16;

  /** How many times as large as without places given a picture may be made for their sake. */
  static final double MOST = 3;

  final List<Spot> spots = new ArrayList<>();
  final double[] above;
  final double[] below;
  final double[] y;

  private final Plan plan;
  private final List<Line> lines;
  private final Map<Piece, Line> lineOf = new HashMap<>();
  private final Map<Piece, double[]> used = new HashMap<>();
  private final Map<Piece, Boolean> nameAbove = new HashMap<>();

  private final Heights heights;

  /** How heights given are drawn; null if none is. */
  Scale scale;

  /** Only for the rows that the lines have now, and for where they begin and end. */
  Spacing(Plan plan, List<Line> lines) {
    this(plan, lines, 0);
  }

  /**
   * The same, with rows at the heights given.
   *
   * @param usual how high the picture would be without; 0 if none are looked for
   */
  Spacing(Plan plan, List<Line> lines, double usual) {
    this.plan = plan;
    this.lines = lines;
    int rows = 1 + (int) lines.stream().mapToDouble(l -> l.row).max().orElse(0);
    above = new double[rows];
    below = new double[rows];
    y = new double[rows];
    heights = new Heights(lines, rows);
    lines.forEach(l -> l.pieces.forEach(p -> lineOf.put(p, l)));
    put();
    boolean given = usual > 0 && lines.stream().anyMatch(line -> line.given != null);
    if (given) {
      scale = heights.place(y, usual, MOST);
    } else {
      heights();
    }
    put();
  }

  double rowOf(Piece piece) {
    return y[(int) lineOf.get(piece).row];
  }

  double yOf(Node node) {
    return y[(int) node.line.row];
  }

  /** How far a piece goes along while it goes aslant to a node. */
  double aslant(Piece piece, Side side) {
    return SLOPE * Math.abs(rowOf(piece) - yOf(piece.at(side)));
  }

  /** The least distance of the nodes of a piece. */
  double length(Piece piece) {
    double most = 0;
    for (boolean up : new boolean[] {true, false}) {
      double name = nameAbove.get(piece) == up ? nameWidth(piece) : 0;
      double both = used(piece, up, Side.LEFT) + used(piece, up, Side.RIGHT);
      most = Math.max(most, both + name);
    }
    return aslant(piece, Side.LEFT) + Math.max(LEAST_LENGTH, most + 4) + aslant(piece, Side.RIGHT);
  }

  /** How far the things at an end of a piece reach along it. */
  double used(Piece piece, boolean up, Side side) {
    return used.get(piece)[index(up, side)];
  }

  boolean nameAbove(Piece piece) {
    return nameAbove.get(piece);
  }

  static List<String> name(Piece piece) {
    return piece.named() ? Text.wrapped(piece.id(), NAME_SIZE, NAME_WIDTH) : List.of();
  }

  private static double nameWidth(Piece piece) {
    return piece.named() ? Text.width(name(piece), NAME_SIZE) + GAP : 0;
  }

  /** Which way, up or down, the other leg leaves points; a trap leg leaves as its line has come. */
  boolean leavesUp(Node node) {
    for (Line line : lines) {
      for (Side side : Side.values()) {
        if (line.end(side) == node && line.leaves(side)) {
          return line.row < node.line.row;
        }
      }
    }
    for (Side side : Side.values()) {
      if (node.line.leaves(side)) {
        return node.line.row < node.line.end(side).line.row;
      }
    }
    return false;
  }

  /** How far over the toe the words at points stand; not at all unless both legs leave aslant. */
  double wordsOverToe(Node node) {
    Side legs = legs(node);
    boolean up = false;
    boolean down = false;
    for (Line line : lines) {
      if (line.end(legs.other()) == node && line.leaves(legs.other())) {
        up |= line.row < node.line.row;
        down |= line.row > node.line.row;
      }
    }
    return up && down ? half(node) + 4 : 0;
  }

  private double half(Node node) {
    return PointsLabel.width(node.thing, plan.groundFrame(node.thing)) / 2 + 4;
  }

  /** Which side of points their legs are on. */
  Side legs(Node node) {
    return plan.pieces.stream().anyMatch(p -> p.left() == node && p.leftPort().equals("toe"))
        ? Side.LEFT
        : Side.RIGHT;
  }

  private static int index(boolean up, Side side) {
    return (up ? 0 : 2) + side.ordinal();
  }

  private void put() {
    spots.clear();
    used.clear();
    plan.pieces.forEach(p -> used.put(p, new double[4]));
    plan.nodes().forEach(this::node);
    Posts.of(plan).forEach(this::posts);
    plan.levelCrossings.forEach(this::levelCrossing);
    for (Piece piece : plan.pieces) {
      nameAbove.computeIfAbsent(
          piece,
          p ->
              used(p, true, Side.LEFT) + used(p, true, Side.RIGHT)
                  <= used(p, false, Side.LEFT) + used(p, false, Side.RIGHT));
      height(piece, nameAbove.get(piece), 12 + LEADING * name(piece).size());
    }
  }

  private void node(Node node) {
    int row = (int) node.line.row;
    if (node.ends()) {
      above[row] = Math.max(above[row], EndMark.height(node));
      below[row] = Math.max(below[row], EndMark.height(node));
      heights.reaches(node.line, true, EndMark.height(node));
      heights.reaches(node.line, false, EndMark.height(node));
      return;
    }
    if (node.kind == Node.Kind.JOINT) {
      return;
    }
    boolean up = leavesUp(node);
    double aslant = SLOPE * (up ? above[row] : below[row]) + GAP;
    if (node.kind == Node.Kind.POINTS) {
      double half = half(node);
      Side legs = legs(node);
      for (Piece piece : straight(node)) {
        Side near = piece.left() == node ? Side.LEFT : Side.RIGHT;
        boolean leg = (near == Side.LEFT) == (legs == Side.RIGHT);
        keep(piece, !up, near, half + (leg ? 0 : wordsOverToe(node)), leg ? null : node);
        height(piece, !up, PointsLabel.height(node.thing));
        if (leg) {
          keep(piece, up, near, node.thing.has("trap") ? TRAP : aslant, null);
          height(piece, up, node.thing.has("trap") ? TRAP : 0);
        } else if (node.thing.has("boltLever")) {
          keep(piece, up, near, BOLT, null);
        }
      }
      return;
    }
    double label = Text.width(node.name, NAME_SIZE) + GAP;
    for (Piece piece : straight(node)) {
      Side near = piece.left() == node ? Side.LEFT : Side.RIGHT;
      boolean sideUp = otherWayUp(node, near);
      keep(piece, sideUp, near, SLOPE * (sideUp ? above[row] : below[row]) + GAP, null);
      if (near == Side.LEFT) {
        keep(piece, !sideUp, near, label, node);
        height(piece, !sideUp, 20);
      }
    }
  }

  /**
   * Whether the way that is not straight leaves a crossing upwards, where its end is on this side.
   */
  private boolean otherWayUp(Node node, Side side) {
    for (Line line : lines) {
      if (line.end(side) == node && line.leaves(side)) {
        return line.row < node.line.row;
      }
    }
    return !leavesUp(node);
  }

  private List<Piece> straight(Node node) {
    return node.line.pieces.stream().filter(p -> p.left() == node || p.right() == node).toList();
  }

  /** What stands at a plain joint stands over the track ahead, else over its own. */
  private void posts(Posts posts) {
    Piece own = plan.pieceAt.get(posts.end());
    Side side = plan.side(posts.end());
    Node node = own.at(side);
    boolean up = side == Side.RIGHT;
    Piece over = own;
    Side near = side;
    if (node.kind == Node.Kind.JOINT) {
      for (Piece ahead : plan.pieces) {
        if (ahead.at(side.other()) == node) {
          over = ahead;
          near = side.other();
        }
      }
    }
    keep(over, up, near, posts.width() + 4, posts);
    height(over, up, posts.arms().isEmpty() ? 36 : Posts.HEIGHT);
  }

  /** A level crossing keeps both sides of each of its tracks. */
  private void levelCrossing(LevelCrossing crossing) {
    for (Piece piece : plan.pieces) {
      if (piece.named() && crossing.over(piece.id())) {
        double from = Math.max(used(piece, true, Side.LEFT), used(piece, false, Side.LEFT));
        used.get(piece)[index(true, Side.LEFT)] = from;
        used.get(piece)[index(false, Side.LEFT)] = from;
        keep(piece, true, Side.LEFT, crossing.width(), null);
        keep(piece, false, Side.LEFT, crossing.width(), crossing);
        height(piece, true, LevelCrossing.ROAD + 2);
        height(piece, false, crossing.height());
      }
    }
  }

  private void keep(Piece piece, boolean up, Side near, double width, Object what) {
    double from = used(piece, up, near);
    if (what != null) {
      spots.add(new Spot(piece, up, near, from, width, what));
    }
    used.get(piece)[index(up, near)] = from + width;
  }

  private void height(Piece piece, boolean up, double height) {
    double[] side = up ? above : below;
    int row = (int) lineOf.get(piece).row;
    side[row] = Math.max(side[row], height);
    heights.reaches(lineOf.get(piece), up, height);
  }

  private void heights() {
    double at = 8;
    for (int row = 0; row < y.length; row++) {
      above[row] = Math.max(above[row], LEAST_HEIGHT);
      below[row] = Math.max(below[row], LEAST_HEIGHT);
      y[row] = at + above[row];
      at = y[row] + below[row] + GAP;
    }
  }

  /** The height given of a row that has one. */
  Given given(int row) {
    return heights.given(row);
  }

  /** The height of the whole. */
  double height() {
    if (scale != null) {
      return heights.height(y);
    }
    return y[y.length - 1] + below[y.length - 1] + 8;
  }
}
