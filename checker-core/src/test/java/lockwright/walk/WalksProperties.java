package lockwright.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import lockwright.check.RandomBox;
import lockwright.railway.Box;
import lockwright.railway.words.Event;
import lockwright.working.BruteForce;
import lockwright.working.Condition;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * Walks against brute force, which visits every state: when each movement of random boxes first
 * becomes free, in how many movements, or that it never does.
 */
class WalksProperties {
  private static final int ALL = 1_000_000;
  private static final Map<String, Integer> COUNTED = new TreeMap<>();

  @Property(tries = 60, seed = "1871", shrinking = ShrinkingMode.OFF)
  void no_walk_is_longer_than_the_shortest_and_none_is_missed(@ForAll long seed) {
    Box box = RandomBox.of(new Random(seed));
    Working working = Working.whole(box);
    BruteForce all = BruteForce.of(working);
    List<State> beginnings = Walks.beginnings(box, working, ALL);
    for (Movement movement : working.movements()) {
      List<Condition> goal = movement.requires().stream().map(Need::condition).toList();
      Walk walk = compare(box, working, beginnings, goal, all.shortest(movement.needs()));
      if (walk != null) {
        assertThat(working.free(play(working, walk), movement.event())).isTrue();
      }
    }
    List<State> reached = new ArrayList<>();
    all.forEach(reached::add);
    for (int i = 1; i <= 5; i++) {
      List<Condition> levers = levers(working, reached.get((reached.size() - 1) * i / 5));
      Walk walk = compare(box, working, beginnings, levers, all.shortest(Condition.all(levers)));
      assertThat(levers).allMatch(c -> c.evaluate(walk.to()));
    }
  }

  /** Every lever stands as it does there. */
  private static List<Condition> levers(Working working, State state) {
    List<Condition> levers = new ArrayList<>();
    for (int i = 0; i < working.quantities().size(); i++) {
      if (working.quantities().get(i).key().startsWith("lever ")) {
        BitSet there = new BitSet();
        there.set(state.indices()[i]);
        levers.add(Condition.oneOf(i, working.quantities().get(i), there));
      }
    }
    return levers;
  }

  /** The walk, if there is one: as short as brute force says, also where few states are allowed. */
  private static Walk compare(
      Box box,
      Working working,
      List<State> beginnings,
      List<Condition> goal,
      OptionalInt shortest) {
    Walk walk = null;
    for (int most : new int[] {2, 4, 8, 16, 32, 64, ALL}) {
      Outcome outcome =
          new Walks(box, working, working.movements(), most).shortest(beginnings, goal);
      if (outcome instanceof Outcome.NotWithin limit) {
        assertThat(most).isLessThan(ALL);
        assertThat(shortest.orElse(Integer.MAX_VALUE)).isGreaterThan(limit.movements());
        COUNTED.merge("limit met", 1, Integer::sum);
      } else if (outcome instanceof Outcome.Never) {
        assertThat(shortest).isEmpty();
        COUNTED.merge("never", 1, Integer::sum);
      } else {
        walk = ((Outcome.Found) outcome).walk();
        assertThat(walk.events()).hasSize(shortest.orElseThrow());
        COUNTED.merge("found", 1, Integer::sum);
      }
    }
    return walk;
  }

  private static State play(Working working, Walk walk) {
    State state = walk.from();
    for (Event event : walk.events()) {
      state = working.make(state, event);
    }
    assertThat(state).isEqualTo(walk.to());
    return state;
  }

  @AfterContainer
  static void each_outcome_was_there() {
    assertThat(COUNTED).containsKeys("never", "found", "limit met");
    assertThat(COUNTED.values()).allMatch(n -> n >= 20);
  }
}
