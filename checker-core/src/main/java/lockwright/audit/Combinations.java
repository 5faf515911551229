package lockwright.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import lockwright.working.Condition;

/**
 * All combinations of values of some quantities, counted through like a number: of each class of
 * values that need not be told apart, one.
 */
final class Combinations {
  private final int[] places;
  private final int[][] choices;
  private final ValueClasses classes;

  Combinations(ValueClasses classes, BitSet some) {
    this.classes = classes;
    places = some.stream().toArray();
    choices = some.stream().mapToObj(classes::representatives).toArray(int[][]::new);
  }

  /** Of each quantity all values of the class that it has a value of now. */
  Combinations(ValueClasses classes, BitSet some, int[] values) {
    this.classes = classes;
    places = some.stream().toArray();
    choices = new int[places.length][];
    for (int i = 0; i < places.length; i++) {
      int q = places[i];
      choices[i] = classes.members(q, classes.of(q, values[q]));
    }
  }

  /** How many there are; the greatest long, where there are more. */
  long count() {
    long count = 1;
    for (int[] some : choices) {
      count = times(count, some.length);
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
    return find(0, values, visitor);
  }

  private boolean find(int depth, int[] values, BooleanSupplier visitor) {
    if (depth == places.length) {
      return visitor.getAsBoolean();
    }
    for (int value : choices[depth]) {
      values[places[depth]] = value;
      if (find(depth + 1, values, visitor)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The number of the combination whose classes the values are of, in the order of {@link #find}.
   */
  int number(int[] values) {
    int number = 0;
    for (int i = 0; i < places.length; i++) {
      number = number * choices[i].length + classes.of(places[i], values[places[i]]);
    }
    return number;
  }

  /** Puts the combination of that number into the values. */
  void put(int number, int[] values) {
    int left = number;
    for (int i = places.length - 1; i >= 0; i--) {
      values[places[i]] = choices[i][left % choices[i].length];
      left /= choices[i].length;
    }
  }

  /**
   * The numbers of the combinations in which all clauses hold, which must not tell values of one
   * class apart. A clause is tried as soon as the quantities that it speaks of have values, so that
   * what it excludes is not counted through.
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
    for (int c = 0; c < choices[depth].length; c++) {
      values[places[depth]] = choices[depth][c];
      collect(depth + 1, number * choices[depth].length + c, values, ripe, numbers);
    }
  }
}
