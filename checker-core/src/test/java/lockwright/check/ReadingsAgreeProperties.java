package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.Restoring;
import lockwright.railway.Box;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.system.Target;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;
import lockwright.working.Breach;
import lockwright.working.BruteForce;
import lockwright.working.Condition;
import lockwright.working.HandBox;
import lockwright.working.Movement;
import lockwright.working.Sections;
import lockwright.working.State;
import lockwright.working.Working;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * The two readings of random boxes, state by state: each may begin in the same states, makes the
 * same movements from there, comes to the same states, and calls the same states and movements
 * breaches or goals, these also in states that the box never comes to. So a difference is seen
 * where it is, also where no verdict shows it.
 */
class ReadingsAgreeProperties {
  private static final int STATES = 150;
  private static final int WAYS = 2;
  private static final Map<Entry.Kind, Integer> BOXES_WITH = new TreeMap<>();
  private static final Map<String, Integer> CONNECTIONS = new TreeMap<>();

  @Property(tries = 300, seed = "1894", shrinking = ShrinkingMode.OFF)
  void each_says_the_same_of_each_state(@ForAll long seed) {
    Random random = new Random(seed);
    Box box = RandomBox.of(random);
    Readings.of(Working.parted(box), Encoder.parted(box).system()).compare(box, random);
    Encoded encoded = Encoder.whole(box);
    Readings whole = Readings.of(Working.whole(box), encoded.system());
    whole.restoring(new Restoring(box, encoded), whole.compare(box, random), random);
    box.locking().stream()
        .map(Entry::kind)
        .distinct()
        .forEach(k -> BOXES_WITH.merge(k, 1, Integer::sum));
    RandomConnections.count(box, CONNECTIONS);
  }

  /** Two tokens and two locks, of which one lets go; random boxes have one of each, or two. */
  @Example
  void each_says_the_same_of_two_tokens_and_two_locks() {
    Route route = HandBox.route("1", "A1N", new Route.End.InSection("line"));
    Box box =
        new HandBox()
            .signal("1", Arm.STOP)
            .groundFrame("a", "A1")
            .groundFrame("b", "B1")
            .section(
                Sections.pair(2)
                    .instruments(
                        new Instrument("Here", true, List.of()),
                        new Instrument("There", false, List.of()))
                    .irregular(Irregular.ANY)
                    .lock("a", true)
                    .lock("b", false))
            .routes(route)
            .requirements(
                new Requirement.SectionSignalEarned("line", "1"),
                new Requirement.RouteHeld(route),
                new Requirement.ReleaseHome("1", "a", List.of(route)),
                new Requirement.SidingLocked("line", "a"),
                new Requirement.SidingLocked("line", "b"))
            .box();
    Random random = new Random(2);
    Readings.of(Working.parted(box), Encoder.parted(box).system()).every(box, random);
    Readings.of(Working.whole(box), Encoder.whole(box).system()).every(box, random);
  }

  @AfterContainer
  static void every_kind_of_entry_was_there() {
    System.out.println("boxes with each kind of entry: " + BOXES_WITH);
    assertThat(BOXES_WITH).containsOnlyKeys(Entry.Kind.values());
    assertThat(BOXES_WITH.values()).allMatch(n -> n >= 20);
    System.out.println("boxes with more than rods and wires in order: " + CONNECTIONS);
    assertThat(CONNECTIONS).hasSize(4);
    assertThat(CONNECTIONS.values()).allMatch(n -> n >= 5);
  }

  /**
   * A box in both readings.
   *
   * @param places where in the quantities of the one each variable of the other is
   */
  private record Readings(Working working, TransitionSystem system, int[] places) {
    static Readings of(Working working, TransitionSystem system) {
      List<String> keys = working.quantities().stream().map(Quantity::key).toList();
      List<String> names = system.variables().stream().map(Variable::name).toList();
      assertThat(names).containsExactlyInAnyOrderElementsOf(keys);
      assertThat(system.transitions().stream().map(Transition::name))
          .containsExactlyElementsOf(
              working.movements().stream().map(m -> m.event().key()).toList());
      return new Readings(working, system, names.stream().mapToInt(keys::indexOf).toArray());
    }

    /** And returns the states that it comes to. */
    BruteForce compare(Box box, Random random) {
      return compare(box, random, STATES);
    }

    /** The same of every state that is reached. */
    void every(Box box, Random random) {
      compare(box, random, Integer.MAX_VALUE);
    }

    private BruteForce compare(Box box, Random random, int most) {
      working.beginnings().forEach(b -> assertThat(system.initial().holds(in(b))).isTrue());
      Map<Target, Breach> targets = new LinkedHashMap<>();
      for (Requirement requirement : box.requirements()) {
        system.targets().stream()
            .filter(t -> t.name().equals(requirement.id()))
            .forEach(t -> targets.put(t, breach(requirement)));
      }
      BruteForce reached = BruteForce.of(working);
      int every = Math.max(1, reached.states() / most);
      int[] number = {random.nextInt(every)};
      reached.forEach(
          state -> {
            if (number[0]++ % every == 0) {
              movements(state);
              targets.forEach((target, breach) -> breaches(target, breach, state));
            }
          });
      for (int i = 0; i < STATES; i++) {
        State state = any(random);
        targets.forEach((target, breach) -> breaches(target, breach, state));
      }
      return reached;
    }

    /**
     * Where the frame is stuck, with a way back: one stroke away, another back, and the first back.
     */
    void restoring(Restoring restoring, BruteForce reached, Random random) {
      List<Event> strokes =
          working.movements().stream()
              .map(Movement::event)
              .filter(e -> !(e instanceof Event.AtInstrument || e instanceof Event.AtLock))
              .toList();
      for (int i = 0; i < WAYS; i++) {
        int there = random.nextInt(strokes.size() / 2) * 2; // N to R; the next is R to N
        int other = random.nextInt(strokes.size() / 2) * 2;
        List<Event> way =
            List.of(strokes.get(there), strokes.get(other + 1), strokes.get(there + 1));
        boolean levers =
            strokes.get(there) instanceof Event.LeverMoves
                == strokes.get(other) instanceof Event.LeverMoves;
        if (other == there || !levers) {
          continue;
        }
        Target stuck = restoring.stuck(List.of(way)).system().targets().get(0);
        Condition condition = working.stuck(List.of(way));
        int every = Math.max(1, reached.states() / STATES);
        int[] number = {0};
        reached.forEach(
            state -> {
              if (number[0]++ % every == 0) {
                same("stuck", state, stuck.states().holds(in(state)), condition);
              }
            });
        for (int n = 0; n < STATES; n++) {
          State state = any(random);
          same("stuck", state, stuck.states().holds(in(state)), condition);
        }
      }
    }

    /** Any state, be it that the box never comes to it. */
    private State any(Random random) {
      Map<String, String> values = new HashMap<>();
      working
          .quantities()
          .forEach(q -> values.put(q.key(), q.values().get(random.nextInt(q.values().size()))));
      return working.state(values);
    }

    private void movements(State state) {
      int[] values = in(state);
      same("may begin", state, system.initial().holds(values), working.beginning());
      for (int t = 0; t < system.transitions().size(); t++) {
        Transition transition = system.transitions().get(t);
        Movement movement = working.movements().get(t);
        same(transition.name(), state, transition.guard().holds(values), movement.needs());
        if (transition.guard().holds(values)) {
          assertThat(transition.after(values))
              .as("%s from %s", transition.name(), state)
              .isEqualTo(in(working.make(state, movement.event())));
        }
      }
    }

    private Breach breach(Requirement requirement) {
      return requirement.possibility()
          ? new Breach(working.goal(requirement), Map.of())
          : working.breach(requirement);
    }

    private void breaches(Target target, Breach breach, State state) {
      int[] values = in(state);
      same(target.name(), state, target.states().holds(values), breach.state());
      BitSet made = new BitSet();
      target.makings().stream()
          .filter(m -> m.when().holds(values))
          .forEach(m -> made.set(m.transition()));
      for (int t = 0; t < system.transitions().size(); t++) {
        Event event = working.movements().get(t).event();
        Condition condition = breach.movements().get(event);
        if (made.get(t) || condition != null) {
          same(
              target.name() + " by " + event.key(),
              state,
              made.get(t),
              condition == null ? Condition.FALSE : condition);
        }
      }
    }

    private static void same(String what, State state, boolean holds, Condition condition) {
      if (holds != condition.evaluate(state)) {
        throw new AssertionError(what + " is " + holds + " by the encoding alone: " + state);
      }
    }

    /** The state in the numbers of the system. */
    private int[] in(State state) {
      int[] indices = state.indices();
      return Arrays.stream(places).map(place -> indices[place]).toArray();
    }
  }
}
