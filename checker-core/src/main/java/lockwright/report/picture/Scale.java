package lockwright.report.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How the author's units are drawn, across or down: the smallest scale at which there is room
 * between all places given, for what stands between them too. A pair of places that would make the
 * picture larger than it may be, or that stand the wrong way round, has no part in it.
 *
 * @param scale of the picture's units to one of the author's
 * @param start where his nought is
 */
record Scale(double scale, double start, List<Pair> tight) {
  /** The second stands at least so far after the first; in the picture's units. */
  record Demand(int first, int second, double least) {}

  /**
   * Two places without room between them.
   *
   * @param least how far apart they should be in the author's units
   */
  record Pair(int first, int second, double least) {}

  double of(double given) {
    return start + scale * given;
  }

  /**
   * Finds it; only where something is given.
   *
   * @param given the places, not a number where none is given; demands lead from lower to higher
   *     indices, others are passed over
   * @param first the least that each may be, in the picture's units
   * @param usual how large the picture would be without places given
   * @param most how many times as large it may be
   */
  static Scale of(double[] given, double[] first, List<Demand> demands, double usual, double most) {
    List<List<Demand>> from = new ArrayList<>();
    for (int i = 0; i < given.length; i++) {
      from.add(new ArrayList<>());
    }
    demands.stream().filter(d -> d.first() < d.second()).forEach(d -> from.get(d.first()).add(d));
    double[] known = Arrays.stream(given).filter(g -> !Double.isNaN(g)).toArray();
    double range = Arrays.stream(known).max().orElse(0) - Arrays.stream(known).min().orElse(0);
    double limit = range > 0 ? most * usual / range : usual;
    double scale = 0;
    List<Pair> tight = new ArrayList<>();
    for (int i = 0; i < given.length; i++) {
      if (Double.isNaN(given[i])) {
        continue;
      }
      double[] after = new double[given.length];
      Arrays.fill(after, Double.NEGATIVE_INFINITY);
      after[i] = 0;
      spread(given, after, from, i);
      for (int j = i + 1; j < given.length; j++) {
        if (Double.isNaN(given[j]) || after[j] <= 0) {
          continue;
        }
        double apart = given[j] - given[i];
        if (apart * limit < after[j]) {
          tight.add(new Pair(i, j, after[j] / limit));
        } else {
          scale = Math.max(scale, after[j] / apart);
        }
      }
    }
    scale = scale > 0 ? scale : range > 0 ? usual / range : 1;
    double[] alone = first.clone();
    spread(given, alone, from, -1);
    double start = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < given.length; i++) {
      start = Double.isNaN(given[i]) ? start : Math.max(start, alone[i] - scale * given[i]);
    }
    return new Scale(scale, start, tight);
  }

  /** Follows the demands from one, or from all if it is none, through what is not given. */
  private static void spread(double[] given, double[] least, List<List<Demand>> from, int start) {
    for (int i = Math.max(0, start); i < given.length; i++) {
      if (i == start || Double.isNaN(given[i])) {
        for (Demand demand : from.get(i)) {
          int j = demand.second();
          least[j] = Math.max(least[j], least[i] + demand.least());
        }
      }
    }
  }
}
