package lockwright.report.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;

/**
 * Gives each line its row, so that no two lines on one row overlap and few cross. Each line in turn
 * is put where it costs least, on a row that there is or on a new one between two; then each is
 * taken out and put again until nothing gets better. While that leaves lines that cross, the same
 * is tried in other orders, always the same ones. In the end all of it may be turned over.
 */
final class Rows {
  private static final double OVERLAP = 1000;
  private static final double CROSSING = 60;
  private static final double SAME_SIDE = 200;
  private static final double NEW_ROW = 2;
  private static final double DISTANCE = 3;
  private static final double WRONG_SIDE = 0.5;
  private static final int PASSES = 6;
  private static final int ORDERS = 12;

  /** How far a line that leaves aslant goes along for each row that it goes up or down. */
  static final double ASLANT = 70;

  private final List<Line> lines;

  /** Where each line begins and ends, with its marks. */
  private final Map<Line, double[]> spans = new HashMap<>();

  private final List<Line> placed = new ArrayList<>();

  private Rows(List<Line> lines, Widths widths) {
    this.lines = lines;
    for (Line line : lines) {
      double left = line.end(Side.LEFT).x - widths.beyond(line, Side.LEFT);
      double right = line.end(Side.RIGHT).x + widths.beyond(line, Side.RIGHT);
      spans.put(line, new double[] {left, right});
    }
  }

  /** Sets the rows, from 0, by the places of the nodes from left to right. */
  static void place(List<Line> lines, Widths widths) {
    Rows rows = new Rows(lines, widths);
    double least = rows.inOrder(lines);
    Map<Line, Double> best = rows.found();
    Random random = new Random(ORDERS);
    for (int order = 1; order < ORDERS && rows.spoilt() > 0; order++) {
      List<Line> shuffled = new ArrayList<>(lines.subList(1, lines.size()));
      Collections.shuffle(shuffled, random);
      shuffled.add(0, lines.get(0));
      double cost = rows.inOrder(shuffled);
      if (cost < least) {
        least = cost;
        best = rows.found();
      }
    }
    best.forEach((line, row) -> line.row = row);
    if (lines.stream().allMatch(line -> line.given == null)) {
      turnOver(lines);
    }
  }

  /** Places all lines anew, one after another, and says what that costs. */
  private double inOrder(List<Line> order) {
    placed.clear();
    given();
    for (Line line : order) {
      if (line.given == null) {
        line.row = 0;
        placed.add(line);
        best(line);
      }
    }
    for (int pass = 0; pass < PASSES; pass++) {
      double before = cost();
      for (Line line : order) {
        best(line);
      }
      for (Line one : order) {
        through(one);
      }
      if (cost() >= before) {
        break;
      }
    }
    return cost();
  }

  /** Lines with a height given have their rows in that order; others go on these or between. */
  private void given() {
    List<Double> heights =
        lines.stream()
            .filter(line -> line.given != null)
            .map(line -> line.given.down())
            .distinct()
            .sorted()
            .toList();
    for (Line line : lines) {
      if (line.given != null) {
        line.row = heights.indexOf(line.given.down());
        placed.add(line);
      }
    }
  }

  /** The line of the track that is written first stands in the upper half. */
  private static void turnOver(List<Line> lines) {
    Comparator<Line> byFirstTrack =
        Comparator.comparing(
            line -> line.pieces.stream().mapToInt(Piece::index).min().orElseThrow());
    double first = lines.stream().min(byFirstTrack).orElseThrow().row;
    double most = lines.stream().mapToDouble(l -> l.row).max().orElseThrow();
    if (first > most / 2) {
      lines.forEach(line -> line.row = most - line.row);
    }
  }

  private Map<Line, Double> found() {
    Map<Line, Double> found = new LinkedHashMap<>();
    placed.forEach(line -> found.put(line, line.row));
    return found;
  }

  /** The room that a line takes on its row, to the left and the right of its ends. */
  interface Widths {
    double beyond(Line line, Side side);
  }

  /** A way aslant from a node to the row of a line. */
  private record Slant(Node node, int sign, double from, double to) {
    double x(double row) {
      return node.x + sign * ASLANT * Math.abs(row - from);
    }

    boolean between(double row) {
      return row > Math.min(from, to) && row < Math.max(from, to);
    }
  }

  /** Puts two lines anew together that meet at a crossing, since neither can change side alone. */
  private void through(Line one) {
    Node node = one.end(Side.RIGHT);
    if (node.kind != Node.Kind.CROSSING || !one.leaves(Side.RIGHT)) {
      return;
    }
    for (Line other : lines) {
      if (other.end(Side.LEFT) == node && other.leaves(Side.LEFT)) {
        List<Double> bestRows = rows();
        double least = cost();
        List<Double> before = bestRows;
        for (double candidate : candidates(one)) {
          restore(before);
          one.row = candidate;
          renumber();
          best(other);
          if (cost() < least) {
            least = cost();
            bestRows = rows();
          }
        }
        restore(bestRows);
      }
    }
  }

  private List<Double> rows() {
    return placed.stream().map(l -> l.row).toList();
  }

  private List<Double> candidates(Line line) {
    if (line.given != null) {
      return List.of(line.row);
    }
    TreeSet<Double> taken = new TreeSet<>();
    placed.stream().filter(l -> l != line).forEach(l -> taken.add(l.row));
    List<Double> candidates = new ArrayList<>(taken);
    if (taken.isEmpty()) {
      candidates.add(0.0);
    } else {
      taken.forEach(r -> candidates.add(r + 0.5));
      candidates.add(taken.first() - 0.5);
    }
    return candidates;
  }

  private void best(Line line) {
    List<Double> candidates = candidates(line);
    List<Double> rows = rows();
    double least = Double.MAX_VALUE;
    List<Double> bestRows = rows;
    for (double candidate : candidates) {
      restore(rows);
      line.row = candidate;
      renumber();
      double cost = cost(least);
      if (cost < least) {
        least = cost;
        bestRows = rows();
      }
    }
    restore(bestRows);
  }

  private void restore(List<Double> rows) {
    for (int i = 0; i < rows.size(); i++) {
      placed.get(i).row = rows.get(i);
    }
  }

  private void renumber() {
    List<Double> rows = new ArrayList<>(new TreeSet<>(placed.stream().map(l -> l.row).toList()));
    placed.forEach(l -> l.row = rows.indexOf(l.row));
  }

  private double cost() {
    return cost(Double.MAX_VALUE);
  }

  /** What it costs, or if that is so much or more, at least so much: then it is not worked out. */
  private double cost(double limit) {
    double cost = 0;
    double most = 0;
    for (Line line : placed) {
      most = Math.max(most, line.row);
      for (Side side : Side.values()) {
        Node node = line.end(side);
        if (line.leaves(side) && placed.contains(node.line)) {
          cost += DISTANCE * Math.abs(node.line.row - line.row);
        }
      }
      double fromMain = line.row - lines.get(0).row;
      boolean wrong = line.passenger() ? fromMain < 0 : fromMain > 0;
      cost += wrong ? WRONG_SIDE : 0;
    }
    cost += NEW_ROW * most;
    return cost + spoilt(limit - cost);
  }

  /** What of the cost makes a diagram hard to read: lines that cross, meet or overlap. */
  private double spoilt() {
    return spoilt(Double.MAX_VALUE);
  }

  /** The same; if it is so much or more, at least so much. */
  private double spoilt(double limit) {
    double cost = 0;
    List<Slant> slants = slants();
    for (int i = 0; i < placed.size() && cost < limit; i++) {
      for (int j = 0; j < i; j++) {
        cost += overlap(placed.get(i), placed.get(j)) ? OVERLAP : 0;
      }
    }
    for (int i = 0; i < slants.size() && cost < limit; i++) {
      Slant slant = slants.get(i);
      for (Line line : placed) {
        cost += crosses(slant, line) ? CROSSING : 0;
      }
      for (int j = 0; j < i; j++) {
        cost += between(slant, slants.get(j));
      }
    }
    return cost;
  }

  private List<Slant> slants() {
    List<Slant> slants = new ArrayList<>();
    for (Line line : placed) {
      for (Side side : Side.values()) {
        Node node = line.end(side);
        if (line.leaves(side) && placed.contains(node.line)) {
          slants.add(new Slant(node, -side.sign(), node.line.row, line.row));
        }
      }
    }
    return slants;
  }

  private double left(Line line) {
    return spans.get(line)[0];
  }

  private double right(Line line) {
    return spans.get(line)[1];
  }

  private boolean overlap(Line a, Line b) {
    return a.row == b.row && left(a) < right(b) && left(b) < right(a);
  }

  private boolean crosses(Slant slant, Line line) {
    double x = slant.x(line.row);
    return slant.between(line.row)
        && x > left(line) + aslant(line, Side.LEFT)
        && x < right(line) - aslant(line, Side.RIGHT);
  }

  /** How far a line goes along before it reaches its row, or after it has left it. */
  private static double aslant(Line line, Side side) {
    return line.leaves(side) ? ASLANT * Math.abs(line.row - line.end(side).line.row) : 0;
  }

  private static double between(Slant a, Slant b) {
    if (a.node() == b.node()) {
      boolean sameWay = (a.to() > a.from()) == (b.to() > b.from());
      return sameWay ? SAME_SIDE : 0;
    }
    double top = Math.max(Math.min(a.from(), a.to()), Math.min(b.from(), b.to()));
    double foot = Math.min(Math.max(a.from(), a.to()), Math.max(b.from(), b.to()));
    if (top >= foot) {
      return 0;
    }
    return (a.x(top) - b.x(top)) * (a.x(foot) - b.x(foot)) < 0 ? CROSSING : 0;
  }
}
