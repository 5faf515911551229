package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import lockwright.railway.words.Quantity;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What must hold before effects is what holds after them; a condition speaks of what it says. */
class ConditionProperties {
  private static final List<Quantity> THREE =
      List.of(Quantity.lever("1"), Quantity.lever("2"), Quantity.lever("3"));

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void a_condition_before_effects_is_the_condition_after_them(@ForAll long seed) {
    Random random = new Random(seed);
    Condition condition = condition(random, 4);
    List<Effect> effects = new ArrayList<>();
    for (int q = 0; q < 3; q++) {
      if (random.nextBoolean()) {
        effects.add(new Effect(q, IntStream.range(0, 3).mapToObj(v -> random.nextInt(3)).toList()));
      }
    }
    Movement movement = new Movement(null, List.of(), effects);
    Condition before = condition.before(effects);
    for (int n = 0; n < 27; n++) {
      int[] values = {n / 9, n / 3 % 3, n % 3};
      assertThat(before.evaluate(values)).isEqualTo(condition.evaluate(movement.after(values)));
    }
  }

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void only_what_a_condition_mentions_makes_a_difference(@ForAll long seed) {
    Random random = new Random(seed);
    Condition condition = condition(random, 4);
    BitSet mentioned = new BitSet();
    condition.mentions(mentioned);
    for (int n = 0; n < 27; n++) {
      int[] values = {n / 9, n / 3 % 3, n % 3};
      boolean holds = condition.evaluate(values);
      assertThat(Condition.not(condition).evaluate(values)).isEqualTo(!holds);
      for (int q = 0; q < 3; q++) {
        values[q] = mentioned.get(q) ? values[q] : random.nextInt(3);
      }
      assertThat(condition.evaluate(values)).isEqualTo(holds);
    }
  }

  /** Made of the records themselves too, so that nothing is simplified away. */
  private static Condition condition(Random random, int deep) {
    int kind = deep == 0 ? 0 : random.nextInt(4);
    if (kind == 0) {
      int q = random.nextInt(3);
      return Condition.oneOf(q, THREE.get(q), BitSet.valueOf(new long[] {random.nextInt(8)}));
    } else if (kind == 1) {
      Condition part = condition(random, deep - 1);
      return random.nextBoolean() ? Condition.not(part) : new Condition.Not(part);
    }
    List<Condition> parts =
        IntStream.range(0, random.nextInt(4)).mapToObj(i -> condition(random, deep - 1)).toList();
    if (random.nextBoolean()) {
      return kind == 2 ? Condition.all(parts) : Condition.any(parts);
    }
    return kind == 2 ? new Condition.All(parts) : new Condition.Any(parts);
  }
}
