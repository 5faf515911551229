package lockwright.working;

import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.railway.words.Quantity;

/** How a box stands at one moment: the value of each quantity. Made by {@link Working}. */
public final class State {
  private final List<Quantity> quantities;
  private final int[] values;

  State(List<Quantity> quantities, int[] values) {
    this.quantities = quantities;
    this.values = values;
  }

  /** The value of a quantity, by its index in {@link Working#quantities()}. */
  public String value(int quantity) {
    return quantities.get(quantity).values().get(values[quantity]);
  }

  /** The values by the keys of the quantities. */
  public SortedMap<String, String> values() {
    SortedMap<String, String> all = new TreeMap<>();
    for (int i = 0; i < values.length; i++) {
      all.put(quantities.get(i).key(), value(i));
    }
    return all;
  }

  /** The index of the value of each quantity, in their order: a copy. */
  public int[] indices() {
    return values.clone();
  }

  int[] raw() {
    return values;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof State state && Arrays.equals(values, state.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return values().toString();
  }
}
