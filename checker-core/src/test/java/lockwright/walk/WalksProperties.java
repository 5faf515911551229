package lockwright.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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
    Walks walks = new Walks(box, working, working.movements(), ALL);
    for (Movement movement : working.movements()) {
      List<Condition> goal = new ArrayList<>();
      movement.requires().stream().map(Need::condition).forEach(goal::add);
      OptionalInt shortest = all.shortest(movement.needs());
      Outcome outcome = walks.shortest(beginnings, goal);
      if (shortest.isEmpty()) {
        assertThat(outcome).as(movement.event().key()).isInstanceOf(Outcome.Never.class);
      } else {
        Walk walk = ((Outcome.Found) outcome).walk();
        assertThat(walk.events()).as(movement.event().key()).hasSize(shortest.getAsInt());
        assertThat(working.free(play(working, walk), movement.event())).isTrue();
      }
      COUNTED.merge(shortest.isEmpty() ? "never" : "found", 1, Integer::sum);
      assertLimit(walks(box, working), beginnings, goal, shortest);
    }
  }

  /** Few states allowed: what is said not to be there is not there. */
  private static Walks walks(Box box, Working working) {
    return new Walks(box, working, working.movements(), 20);
  }

  private static void assertLimit(
      Walks walks, List<State> beginnings, List<Condition> goal, OptionalInt shortest) {
    Outcome outcome = walks.shortest(beginnings, goal);
    if (outcome instanceof Outcome.NotWithin limit) {
      assertThat(shortest.orElse(Integer.MAX_VALUE)).isGreaterThan(limit.movements());
      COUNTED.merge("limit met", 1, Integer::sum);
    } else if (outcome instanceof Outcome.Never) {
      assertThat(shortest).isEmpty();
    } else {
      assertThat(((Outcome.Found) outcome).walk().events()).hasSize(shortest.orElseThrow());
    }
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
