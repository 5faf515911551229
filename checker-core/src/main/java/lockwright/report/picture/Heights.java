package lockwright.report.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How far down each row is where the author gives heights: there, in one scale, and between these
 * what is not given. Rows keep clear of each other only where lines of theirs lie above each other.
 */
final class Heights {
  private static final double EDGE = 8;
  private static final int SWEEPS = 20;

  private final List<Line> lines;
  private final Map<Line, double[]> reach = new HashMap<>();
  private final double[] given;

  /**
   * @param rows how many rows there are
   */
  Heights(List<Line> lines, int rows) {
    this.lines = lines;
    given = new double[rows];
    Arrays.fill(given, Double.NaN);
    for (Line line : lines) {
      reach.put(line, new double[] {Spacing.LEAST_HEIGHT, Spacing.LEAST_HEIGHT});
      if (line.given != null) {
        given[(int) line.row] = line.given.down();
      }
    }
  }

  void reaches(Line line, boolean up, double height) {
    double[] sides = reach.get(line);
    sides[up ? 0 : 1] = Math.max(sides[up ? 0 : 1], height);
  }

  /**
   * Sets the rows.
   *
   * @param usual how high the picture would be without heights given
   */
  Scale place(double[] y, double usual, double most) {
    double[] first = new double[y.length];
    List<Scale.Demand> demands = new ArrayList<>();
    for (int i = 0; i < y.length; i++) {
      for (Line line : onRow(i)) {
        first[i] = Math.max(first[i], EDGE + reach.get(line)[0]);
      }
      for (int j = 0; j < i; j++) {
        demands.add(new Scale.Demand(j, i, apart(j, i)));
      }
    }
    Scale scale = Scale.of(given, first, demands, usual, most);
    for (int i = 0; i < y.length; i++) {
      y[i] = Double.isNaN(given[i]) ? Math.max(first[i], low(y, i, demands)) : scale.of(given[i]);
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      for (int i = 0; i < y.length; i++) {
        double low = Math.max(first[i], low(y, i, demands));
        double high = high(y, i, demands);
        if (Double.isNaN(given[i]) && high < Double.MAX_VALUE) {
          y[i] = Math.max(low, (low + high) / 2);
        }
      }
    }
    return scale;
  }

  /** The line of a row whose height is given. */
  Given given(int row) {
    return onRow(row).stream()
        .filter(line -> line.given != null)
        .map(line -> line.given)
        .findFirst()
        .orElseThrow();
  }

  double height(double[] y) {
    double height = 0;
    for (Line line : lines) {
      height = Math.max(height, y[(int) line.row] + reach.get(line)[1] + EDGE);
    }
    return height;
  }

  private List<Line> onRow(int row) {
    return lines.stream().filter(line -> (int) line.row == row).toList();
  }

  private double apart(int upper, int lower) {
    double apart = 0;
    for (Line above : onRow(upper)) {
      for (Line below : onRow(lower)) {
        if (left(above) + 1 < right(below) && left(below) + 1 < right(above)) {
          double both = reach.get(above)[1] + Spacing.GAP + reach.get(below)[0];
          apart = Math.max(apart, both);
        }
      }
    }
    return apart;
  }

  private static double left(Line line) {
    return line.end(Side.LEFT).x - (line.leaves(Side.LEFT) ? 0 : Along.beyond(line, Side.LEFT));
  }

  private static double right(Line line) {
    return line.end(Side.RIGHT).x + (line.leaves(Side.RIGHT) ? 0 : Along.beyond(line, Side.RIGHT));
  }

  private static double low(double[] y, int row, List<Scale.Demand> demands) {
    return demands.stream()
        .filter(d -> d.second() == row)
        .mapToDouble(d -> y[d.first()] + d.least())
        .max()
        .orElse(0);
  }

  private static double high(double[] y, int row, List<Scale.Demand> demands) {
    return demands.stream()
        .filter(d -> d.first() == row)
        .mapToDouble(d -> y[d.second()] - d.least())
        .min()
        .orElse(Double.MAX_VALUE);
  }
}
