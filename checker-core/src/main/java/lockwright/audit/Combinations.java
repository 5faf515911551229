package lockwright.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;

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

  /** Puts the combination of that number into the values. */
  void put(int number, int[] values) {
    int left = number;
    for (int i = places.length - 1; i >= 0; i--) {
      values[places[i]] = left % sizes[i];
      left /= sizes[i];
    }
  }

  /**
   * The numbers of the combinations in which all clauses hold. A clause is tried as soon as the
   * quantities that it speaks of have values, so that what it excludes is not counted through.
   *
   * @param clauses what must hold; they speak of the quantities of these combinations only
   * @param quantities how many quantities there are in all
   */
  BitSet where(List<Condition> clauses, int quantities) {
    List<List<Condition>> ripe = new ArrayList<>();
    for (int i = 0; i <= places.length; i++) {
      ripe.add(new ArrayList<>());
    }
    for (Condition clause : clauses) {
      int last = Invariant.mentions(clause).length() - 1;
      ripe.get(last < 0 ? 0 : Arrays.binarySearch(places, last) + 1).add(clause);
    }
    BitSet numbers = new BitSet();
    collect(0, 0, new int[quantities], ripe, numbers);
    return numbers;
  }

  private void collect(
      int depth, int number, int[] values, List<List<Condition>> ripe, BitSet numbers) {
    for (Condition clause : ripe.get(depth)) {
      if (!clause.evaluate(values)) {
        return;
      }
    }
    if (depth == places.length) {
      numbers.set(number);
      return;
    }
    for (int value = 0; value < sizes[depth]; value++) {
      values[places[depth]] = value;
      collect(depth + 1, number * sizes[depth] + value, values, ripe, numbers);
    }
  }
}
