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
import java.util.stream.IntStream;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.Restoring;
import lockwright.railway.Box;
import lockwright.railway.control.Controls;
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
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * The two readings of random boxes, state by state: each may begin in the same states, makes the
 * same movements from there, comes to the same states, and calls the same states and movements
 * breaches or goals, these also in states that the box never comes to. So a difference is seen
 * where it is, also where no verdict shows it.
 */
@Tag("long")
class ReadingsAgreeProperties {
  private static final int STATES = 150;

  /** Of a box made for what random boxes seldom have. */
  private static final int MANY_STATES = 2_000;

  private static final int WAYS = 2;
  private static final Map<Entry.Kind, Integer> BOXES_WITH = new TreeMap<>();
  private static final Map<String, Integer> BOXES_WITH_CONTROLS = new TreeMap<>();
  private static final Map<String, Integer> CONNECTIONS = new TreeMap<>();

  @Property(tries = 300, seed = "1894", shrinking = ShrinkingMode.OFF)
  void each_says_the_same_of_each_state(@ForAll long seed) {
    Random random = new Random(seed);
    Box box = RandomBox.of(random);
    Readings.of(Working.parted(box), Encoder.parted(box)).compare(box, random);
    Encoded encoded = Encoder.whole(box);
    Readings whole = Readings.of(Working.whole(box), encoded);
    whole.restoring(new Restoring(box, encoded), whole.compare(box, random), random);
    box.locking().stream()
        .map(Entry::kind)
        .distinct()
        .forEach(k -> BOXES_WITH.merge(k, 1, Integer::sum));
    Controls controls = box.controls();
    count("lever locks", !controls.leverLocks().isEmpty());
    count("arm controls", !controls.armControls().isEmpty());
    count("arms proved", controls.proveArms());
    List<Event> events = encoded.names().events();
    count("signals that go off by control", events.stream().distinct().count() < events.size());
    RandomConnections.count(box, CONNECTIONS);
  }

  private static void count(String what, boolean has) {
    BOXES_WITH_CONTROLS.merge(what, has ? 1 : 0, Integer::sum);
  }

  /** Two tokens and two locks, of which one lets go; random boxes have one of each, or two. */
  @Example
  void each_says_the_same_of_two_tokens_and_two_locks() {
    Route route = HandBox.route("1", "A1N", new Route.End.InSection("line"));
    Box box =
        new HandBox()
            .signal("1", Arm.STOP)
            .groundFrame("a", "A1")
            .release("9", "b", true, "B1")
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
    Readings.of(Working.parted(box), Encoder.parted(box)).compareMany(box, random);
    Readings.of(Working.whole(box), Encoder.whole(box)).compareMany(box, random);
  }

  /** Overlaps over points that the other arm's route does not pass; in random boxes it does. */
  @Example
  void each_says_the_same_of_overlaps_over_points_ahead() {
    for (String folder : List.of("overlap-over-points-ahead", "overlap-beyond-the-home")) {
      Box box = Boxes.test(folder);
      Readings.of(Working.parted(box), Encoder.parted(box)).compareMany(box, new Random(3));
    }
  }

  /** Detection and a control of an arm of two levers; random boxes seldom have them together. */
  @Example
  void each_says_the_same_of_an_arm_of_two_levers_that_is_detected_and_controlled() {
    Box box = Boxes.test("two-levers-detected-and-controlled");
    Readings.of(Working.parted(box), Encoder.parted(box)).compareMany(box, new Random(4));
    Readings.of(Working.whole(box), Encoder.whole(box)).compareMany(box, new Random(4));
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

  @AfterContainer
  static void levers_were_locked_and_arms_controlled_from_outside() {
    System.out.println("boxes with controls: " + BOXES_WITH_CONTROLS);
    assertThat(BOXES_WITH_CONTROLS.values()).allMatch(n -> n >= 10);
  }

  /**
   * A box in both readings.
   *
   * @param places where in the quantities of the one each variable of the other is
   * @param cases for each movement of the one, the transitions of the other that are its cases
   */
  private record Readings(
      Working working, TransitionSystem system, int[] places, Map<Event, int[]> cases) {
    static Readings of(Working working, Encoded encoded) {
      TransitionSystem system = encoded.system();
      List<Event> events = encoded.names().events();
      List<String> keys = working.quantities().stream().map(Quantity::key).toList();
      List<String> names = system.variables().stream().map(Variable::name).toList();
      assertThat(names).containsExactlyInAnyOrderElementsOf(keys);
      assertThat(events.stream().distinct())
          .containsExactlyElementsOf(working.movements().stream().map(Movement::event).toList());
      Map<Event, int[]> cases = new HashMap<>();
      for (Movement movement : working.movements()) {
        cases.put(
            movement.event(),
            IntStream.range(0, events.size())
                .filter(t -> events.get(t).equals(movement.event()))
                .toArray());
      }
      return new Readings(working, system, names.stream().mapToInt(keys::indexOf).toArray(), cases);
    }

    /** And returns the states that it comes to. */
    BruteForce compare(Box box, Random random) {
      return compare(box, random, STATES);
    }

    /** The same of many more states. */
    void compareMany(Box box, Random random) {
      compare(box, random, MANY_STATES);
    }

    private BruteForce compare(Box box, Random random, int most) {
      working.beginnings().forEach(b -> assertThat(system.initial().holds(in(b))).isTrue());
      Map<Target, Breach> targets = new LinkedHashMap<>();
      for (Requirement requirement : box.checked()) {
        system.targets().stream()
            .filter(t -> t.name().equals(requirement.id()))
            .forEach(t -> targets.put(t, breach(requirement)));
      }
      BruteForce reached = BruteForce.of(working);
      int every = Math.max(1, reached.states() / most);
      reached.forEach(
          random.nextInt(every),
          every,
          state -> {
            movements(state);
            targets.forEach((target, breach) -> breaches(target, breach, state));
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
              .filter(
                  e ->
                      !(e instanceof Event.AtInstrument
                          || e instanceof Event.AtLock
                          || e instanceof Event.ConditionChanges))
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
        reached.forEach(
            0, every, state -> same("stuck", state, stuck.states().holds(in(state)), condition));
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
      for (Movement movement : working.movements()) {
        List<Transition> free =
            IntStream.of(cases.get(movement.event()))
                .mapToObj(system.transitions()::get)
                .filter(t -> t.guard().holds(values))
                .toList();
        same(movement.event().key(), state, !free.isEmpty(), movement.needs());
        assertThat(free).as(movement.event().key()).hasSizeLessThanOrEqualTo(1);
        for (Transition transition : free) {
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
      if (target.makings().isEmpty() && breach.movements().isEmpty()) {
        return;
      }
      BitSet made = new BitSet();
      target.makings().stream()
          .filter(m -> m.when().holds(values))
          .forEach(m -> made.set(m.transition()));
      for (Movement movement : working.movements()) {
        Event event = movement.event();
        Condition condition = breach.movements().get(event);
        int[] its = cases.get(event);
        boolean several = its.length > 1;
        if (several && free(its, values) != movement.needs().evaluate(state)) {
          continue; // Locks broken already: the box never comes here, see movements().
        }
        boolean isMade =
            IntStream.of(its)
                .anyMatch(
                    t ->
                        made.get(t)
                            && (!several || system.transitions().get(t).guard().holds(values)));
        if (isMade || condition != null) {
          Condition forbidden = condition == null ? Condition.FALSE : condition;
          same(
              target.name() + " by " + event.key(),
              state,
              isMade,
              several ? Condition.all(forbidden, movement.needs()) : forbidden);
        }
      }
    }

    private boolean free(int[] its, int[] values) {
      return IntStream.of(its).anyMatch(t -> system.transitions().get(t).guard().holds(values));
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
