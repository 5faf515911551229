package lockwright.walk;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lockwright.working.Condition;
import lockwright.working.Effect;
import lockwright.working.Movement;
import lockwright.working.Need;

/**
 * A box of which only some quantities are looked at. A movement needs what it needs of these alone,
 * and changes these alone; so whatever the whole box can do, this can, and perhaps more.
 */
final class Projection {
  private final BitSet kept;
  private final List<Step> steps = new ArrayList<>();

  /**
   * A movement as far as it is looked at.
   *
   * @param needs each must hold
   */
  record Step(Movement movement, Condition[] needs, Effect[] effects) {
    boolean free(int[] values) {
      for (Condition need : needs) {
        if (!need.evaluate(values)) {
          return false;
        }
      }
      return true;
    }

    int[] after(int[] values) {
      int[] next = values.clone();
      for (Effect effect : effects) {
        next[effect.at()] = effect.after(values);
      }
      return next;
    }
  }

  Projection(List<Movement> movements, BitSet kept) {
    this.kept = (BitSet) kept.clone();
    for (Movement movement : movements) {
      Effect[] effects =
          movement.effects().stream().filter(e -> kept.get(e.at())).toArray(Effect[]::new);
      if (effects.length > 0) {
        List<Condition> needs = movement.requires().stream().map(Need::condition).toList();
        steps.add(new Step(movement, of(needs).toArray(Condition[]::new), effects));
      }
    }
  }

  List<Step> steps() {
    return steps;
  }

  /** Those that speak of nothing else. */
  List<Condition> of(List<Condition> conditions) {
    return conditions.stream().filter(c -> missing(c).isEmpty()).toList();
  }

  /** What a condition speaks of and this does not look at. */
  BitSet missing(Condition condition) {
    BitSet mentioned = new BitSet();
    condition.mentions(mentioned);
    mentioned.andNot(kept);
    return mentioned;
  }

  /** The values looked at; 0 for the others. */
  int[] of(int[] values) {
    int[] looked = new int[values.length];
    kept.stream().forEach(i -> looked[i] = values[i]);
    return looked;
  }
}
