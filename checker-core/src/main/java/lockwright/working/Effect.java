package lockwright.working;

import java.util.List;

/**
 * What a movement does to one quantity.
 *
 * @param at the index of the quantity in {@link Working#quantities()}
 * @param becomes for each value, by index, the index of the value that it becomes
 * @param when where this is so, before the movement; else the quantity keeps its value
 */
public record Effect(int at, List<Integer> becomes, Condition when) {
  public Effect {
    becomes = List.copyOf(becomes);
  }

  /** What the movement does always. */
  public Effect(int at, List<Integer> becomes) {
    this(at, becomes, Condition.TRUE);
  }

  /** The value that the quantity has afterwards, given the values before. */
  public int after(int[] values) {
    return when.evaluate(values) ? becomes.get(values[at]) : values[at];
  }
}
