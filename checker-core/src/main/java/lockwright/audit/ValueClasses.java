package lockwright.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import lockwright.working.Effect;

/**
 * The values of each quantity, in classes of such as some conditions cannot tell apart. A condition
 * sees a quantity through sets of values alone: two values that lie in the same of these sets can
 * be exchanged without making a difference to it.
 */
final class ValueClasses {
  private final int[][] classes;
  private final int[] numbers;

  /** Of each quantity, the values of each class; null where not asked for since it was split. */
  private final int[][][] members;

  /** Nothing is told apart. */
  ValueClasses(List<Quantity> quantities) {
    classes = new int[quantities.size()][];
    numbers = new int[classes.length];
    members = new int[classes.length][][];
    for (int q = 0; q < classes.length; q++) {
      classes[q] = new int[quantities.get(q).values().size()];
      numbers[q] = 1;
    }
  }

  /** Tells all apart that the condition does. */
  void tellApart(Condition condition) {
    for (Condition.OneOf one : sets(condition)) {
      split(one.at(), one.values());
    }
  }

  /** Tells apart what leads, by an effect, to values that the condition tells apart. */
  void tellApart(Condition condition, Effect effect) {
    for (Condition.OneOf one : sets(condition)) {
      if (one.at() == effect.at()) {
        BitSet values = one.values();
        BitSet before = new BitSet();
        for (int v = 0; v < effect.becomes().size(); v++) {
          before.set(v, values.get(effect.becomes().get(v)));
        }
        split(one.at(), before);
      }
    }
  }

  /** Whether the condition tells no two values of one class apart. */
  boolean tell(Condition condition) {
    for (Condition.OneOf one : sets(condition)) {
      BitSet values = one.values();
      Boolean[] within = new Boolean[numbers[one.at()]];
      for (int v = 0; v < classes[one.at()].length; v++) {
        int own = classes[one.at()][v];
        if (within[own] != null && within[own] != values.get(v)) {
          return false;
        }
        within[own] = values.get(v);
      }
    }
    return true;
  }

  /** The class of a value, from 0; classes are numbered as their first values come. */
  int of(int quantity, int value) {
    return classes[quantity][value];
  }

  /** The values of one class; not to be changed. */
  int[] members(int quantity, int number) {
    return members(quantity)[number];
  }

  /** How many values the largest class has. */
  int largest(int quantity) {
    return Arrays.stream(members(quantity)).mapToInt(some -> some.length).max().orElse(0);
  }

  private int[][] members(int quantity) {
    if (members[quantity] == null) {
      int[] own = classes[quantity];
      members[quantity] =
          IntStream.range(0, numbers[quantity])
              .mapToObj(c -> IntStream.range(0, own.length).filter(v -> own[v] == c).toArray())
              .toArray(int[][]::new);
    }
    return members[quantity];
  }

  /** One value of each class. */
  int[] representatives(int quantity) {
    int[] first = new int[numbers[quantity]];
    for (int v = classes[quantity].length - 1; v >= 0; v--) {
      first[classes[quantity][v]] = v;
    }
    return first;
  }

  private void split(int quantity, BitSet values) {
    int[] own = classes[quantity];
    int[] renumbered = new int[2 * numbers[quantity]];
    Arrays.fill(renumbered, -1);
    int count = 0;
    for (int v = 0; v < own.length; v++) {
      int part = 2 * own[v] + (values.get(v) ? 1 : 0);
      if (renumbered[part] < 0) {
        renumbered[part] = count++;
      }
      own[v] = renumbered[part];
    }
    numbers[quantity] = count;
    members[quantity] = null;
  }

  private static List<Condition.OneOf> sets(Condition condition) {
    List<Condition.OneOf> sets = new ArrayList<>();
    collect(condition, sets);
    return sets;
  }

  private static void collect(Condition condition, List<Condition.OneOf> sets) {
    if (condition instanceof Condition.OneOf one) {
      sets.add(one);
    } else if (condition instanceof Condition.Not not) {
      collect(not.part(), sets);
    } else if (condition instanceof Condition.All all) {
      all.parts().forEach(p -> collect(p, sets));
    } else if (condition instanceof Condition.Any any) {
      any.parts().forEach(p -> collect(p, sets));
    } else if (!(condition instanceof Condition.Known)) {
      throw new IllegalArgumentException("a condition of no known kind: " + condition);
    }
  }
}
