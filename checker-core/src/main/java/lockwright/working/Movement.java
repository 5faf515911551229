package lockwright.working;

import java.util.BitSet;
import java.util.List;
import lockwright.railway.words.Event;

/**
 * A movement that the apparatus can make.
 *
 * @param requires all of them must be met in the state that it is made from
 * @param effects one at most for each quantity; the others keep their values
 */
public record Movement(Event event, List<Need> requires, List<Effect> effects) {
  public Movement {
    requires = List.copyOf(requires);
    effects = List.copyOf(effects);
    BitSet changed = new BitSet();
    for (Effect effect : effects) {
      if (changed.get(effect.at())) {
        throw new IllegalArgumentException(event.key() + " changes one quantity twice");
      }
      changed.set(effect.at());
    }
  }

  /** All that it needs, as one condition. */
  public Condition needs() {
    return Condition.all(requires.stream().map(Need::condition).toList());
  }

  /** The quantities that decide whether it is free, or which of its effects it has. */
  public BitSet dependsOn() {
    BitSet quantities = new BitSet();
    requires.forEach(n -> n.condition().mentions(quantities));
    effects.forEach(e -> e.when().mentions(quantities));
    return quantities;
  }

  /** The values after the movement, made from these whether it is free or not. */
  public int[] after(int[] values) {
    int[] next = values.clone();
    for (Effect effect : effects) {
      next[effect.at()] = effect.after(values);
    }
    return next;
  }
}
