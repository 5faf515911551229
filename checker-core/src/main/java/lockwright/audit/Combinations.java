package lockwright.audit;

import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import lockwright.railway.words.Quantity;

/** All combinations of values of some quantities, counted through like a number. */
final class Combinations {
  private final int[] places;
  private final int[] sizes;

  Combinations(List<Quantity> all, BitSet some) {
    places = some.stream().toArray();
    sizes = some.stream().map(q -> all.get(q).values().size()).toArray();
  }

  /** How many there are; the greatest long, where there are more. */
  long count() {
    long count = 1;
    for (int size : sizes) {
      count = times(count, size);
    }
    return count;
  }

  static long times(long a, long b) {
    long high = Math.multiplyHigh(a, b);
    return high != 0 || a * b < 0 ? Long.MAX_VALUE : a * b;
  }

  static long plus(long a, long b) {
    return a + b < 0 ? Long.MAX_VALUE : a + b;
  }

  /**
   * Puts one combination after another into the values, until the visitor says that it has what it
   * wants; then that one is left there, and the answer is true.
   */
  boolean find(int[] values, BooleanSupplier visitor) {
    for (int place : places) {
      values[place] = 0;
    }
    while (true) {
      if (visitor.getAsBoolean()) {
        return true;
      }
      int i = places.length - 1;
      while (i >= 0 && ++values[places[i]] == sizes[i]) {
        values[places[i]] = 0;
        i--;
      }
      if (i < 0) {
        return false;
      }
    }
  }

  /** The number of the combination that is in the values, in the order of {@link #find}. */
  int number(int[] values) {
    int number = 0;
    for (int i = 0; i < places.length; i++) {
      number = number * sizes[i] + values[places[i]];
    }
    return number;
  }
}
