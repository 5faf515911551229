package lockwright.system;

import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;

/** That a variable (by index) has one of some values. */
public record Among(int variable, SortedSet<Integer> values) {
  public Among(int variable, Collection<Integer> values) {
    this(variable, (SortedSet<Integer>) new TreeSet<>(values));
  }

  public boolean holds(int[] state) {
    return values.contains(state[variable]);
  }

  /** That it has none of them, for a variable of that many values. */
  public Among complement(int size) {
    TreeSet<Integer> others = new TreeSet<>();
    for (int value = 0; value < size; value++) {
      if (!values.contains(value)) {
        others.add(value);
      }
    }
    return new Among(variable, others);
  }
}
