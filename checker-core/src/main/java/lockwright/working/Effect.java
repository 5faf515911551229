package lockwright.working;

import java.util.List;

/**
 * What a movement does to one quantity.
 *
 * @param at the index of the quantity in {@link Working#quantities()}
 * @param becomes for each value, by index, the index of the value that it becomes
 */
public record Effect(int at, List<Integer> becomes) {
  public Effect {
    becomes = List.copyOf(becomes);
  }
}
