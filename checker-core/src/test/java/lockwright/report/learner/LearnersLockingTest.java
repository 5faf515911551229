package lockwright.report.learner;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Connections;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.spec.Span;
import lockwright.working.Hold;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The locking in the page's script, a third reading of {@code docs/meaning.md}, against {@code
 * working}: 10,000 random sequences in all; in each state every movement is tried in both, and each
 * movement made leads both to the same state.
 */
@Tag("long")
class LearnersLockingTest {
  /** Of most sequences, and of each fortieth: many short ones, and some that come far. */
  private static final int SHORT = 2;

  private static final int LONG = 12;

  /** Entries that hold nothing in any sequence of a box, since they stand deep in the table. */
  private static final int MOST_NEVER_HELD = 3;

  /** The number of sequences of each box. */
  @ParameterizedTest
  @CsvSource({
    "../examples/proved/quillby/box, 2500",
    "../examples/proved/brindlewick/box, 2500",
    "../examples/proved/corlhaven/box, 2500",
    "src/test/resources/boxes/every-form, 2300",
    "src/test/resources/boxes/arm-with-two-levers, 200",
    "src/test/resources/boxes/two-levers-detected-and-controlled, 300",
    "src/test/resources/boxes/broken-rod, 300",
    "src/test/resources/boxes/points-worked-electrically, 300",
    "src/test/resources/boxes/points-worked-by-hand, 50",
    "src/test/resources/boxes/sprung-points, 50",
    "src/test/resources/boxes/siding-by-lever-and-token, 100"
  })
  void in_every_state_the_script_frees_and_holds_what_working_does(String folder, int sequences) {
    Box box = BoxBuilder.read(Path.of(folder)).box().orElseThrow();
    Working working = Working.parted(box);
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      Compared compared = new Compared(box, working, script);
      Random random = new Random(1905);
      List<State> beginnings = some(working.beginnings(), 20);
      State first = compared.state(script.beginning());
      assertThat(working.beginning().evaluate(first)).isTrue();
      for (int i = 0; i < sequences; i++) {
        State state = i == 0 ? first : beginnings.get(random.nextInt(beginnings.size()));
        for (int step = 0; step < (i % 40 == 0 ? LONG : SHORT); step++) {
          List<Event> free = compared.free(state);
          if (free.isEmpty()) {
            break;
          }
          state = compared.make(state, chosen(free, random));
        }
      }
      assertThat(compared.neverHeld()).hasSizeLessThanOrEqualTo(MOST_NEVER_HELD);
    }
  }

  /**
   * 3.4: lever 4 stands at R as 3 starts, which counts as having been R. Only that rule is left.
   */
  @Test
  void a_lever_that_stands_reversed_as_the_other_starts_has_been_pulled() {
    Box whole = BoxBuilder.read(Path.of("src/test/resources/boxes/every-form")).box().orElseThrow();
    Box box =
        whole
            .withControls(Controls.NONE)
            .withLocking(
                whole.locking().stream()
                    .filter(e -> e.kind() == Entry.Kind.NOT_AGAIN_BEFORE)
                    .toList())
            .withConnections(Connections.PLAIN);
    Working working = Working.parted(box);
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      Compared compared = new Compared(box, working, script);
      Map<String, String> released = new TreeMap<>(compared.state(script.beginning()).values());
      released.replaceAll((key, value) -> key.endsWith(": release") ? "given" : value);
      State state = working.state(released);
      List<String> turns = new ArrayList<>();
      for (String key : List.of("4 N>M", "4 M>R", "3 N>M", "4 R>M", "4 M>N", "3 M>N", "3 N>M")) {
        Event event =
            compared.free(state).stream()
                .filter(e -> e.key().equals("lever " + key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("not free: " + key));
        state = compared.make(state, event);
        turns.add(state.values().get("turn of 3 after 4").substring(0, 4));
      }
      assertThat(turns).containsExactly("come", "come", "pull", "retu", "come", "come", "pull");
    }
  }

  /**
   * 4.4: every movement tried, whatever kind of token is in the lock and however the points lie.
   */
  @Test
  void the_script_locks_a_siding_by_token_as_working_does() {
    Box box =
        BoxBuilder.read(Path.of("src/test/resources/boxes/token-siding-without-consent"))
            .box()
            .orElseThrow();
    Working working = Working.parted(box);
    Set<String> met = new TreeSet<>();
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      Compared compared = new Compared(box, working, script);
      Random random = new Random(1898);
      State first = compared.state(script.beginning());
      for (int i = 0; i < 20; i++) {
        State state = first;
        for (int step = 0; step < 40; step++) {
          List<Event> free = compared.free(state);
          state = compared.make(state, free.get(random.nextInt(free.size())));
          Map<String, String> values = state.values();
          met.add(values.get("section Marl to Holm: lock of Pit") + " " + values.get("points P1"));
        }
      }
    }
    assertThat(met)
        .containsExactly(
            "empty N", "fresh M", "fresh N", "fresh R", "other M", "other N", "other R");
  }

  /** 4.3: signals with a control go off by their levers, and by what controls them. */
  @Test
  void the_script_sees_controlled_signals_go_off_as_working_does() {
    Span here = new Span("test", 1, 1);
    Box box =
        BoxBuilder.read(Path.of("src/test/resources/boxes/calling-on-proved"))
            .box()
            .orElseThrow()
            .withLocking(List.of())
            .withControls(
                new Controls(
                    List.of(
                        new OutsideCondition(
                            "Given", OutsideCondition.Kind.SLOT, List.of("Holm"), false, here)),
                    List.of(),
                    List.of(
                        new ArmControl("1", List.of(new Contact.Outside("Given")), here),
                        new ArmControl("2", List.of(new Contact.ArmAtDanger("1")), here))));
    Working working = Working.parted(box);
    String fresh = "section Tarn to Holm: fresh tokens";
    Set<String> usedUp = new TreeSet<>();
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      Compared compared = new Compared(box, working, script);
      Random random = new Random(1913);
      State state = compared.state(script.beginning());
      for (int step = 0; step < 1500; step++) {
        Event event = chosen(compared.free(state), random);
        State next = compared.make(state, event);
        if (!state.values().get(fresh).equals("0")
            && next.values().get(fresh).equals("0")
            && !(event instanceof Event.AtInstrument)) {
          usedUp.add(event.key());
        }
        state = next;
      }
    }
    assertThat(usedUp).contains("lever 1 N>M", "lever 2 N>M", "condition Given: becomes met");
  }

  /** Levers more often than what is done at instruments, of which there are many. */
  private static Event chosen(List<Event> free, Random random) {
    List<Event> levers = free.stream().filter(e -> e instanceof Event.LeverMoves).toList();
    List<Event> of = levers.isEmpty() || random.nextInt(4) == 0 ? free : levers;
    return of.get(random.nextInt(of.size()));
  }

  private static List<State> some(Iterable<State> all, int most) {
    List<State> some = new ArrayList<>();
    for (Iterator<State> i = all.iterator(); i.hasNext() && some.size() < most; ) {
      some.add(i.next());
    }
    return some;
  }

  /** Both readings of a box; what has been compared once is not compared again. */
  record Compared(
      Box box,
      Working working,
      Scripted script,
      Map<State, List<Event>> seen,
      Map<State, Map<Event, State>> made,
      Set<Entry> held) {
    Compared(Box box, Working working, Scripted script) {
      this(box, working, script, new HashMap<>(), new HashMap<>(), new HashSet<>());
    }

    State state(List<String> values) {
      Map<String, String> named = new TreeMap<>();
      for (int i = 0; i < values.size(); i++) {
        named.put(working.quantities().get(i).key(), values.get(i));
      }
      return working.state(named);
    }

    private List<String> values(State state) {
      List<String> values = new ArrayList<>();
      for (int i = 0; i < working.quantities().size(); i++) {
        values.add(state.value(i));
      }
      return values;
    }

    List<Event> free(State state) {
      return seen.computeIfAbsent(state, this::compare);
    }

    private List<Event> compare(State state) {
      SortedMap<String, Scripted.Tried> tried = script.tried(values(state));
      Map<String, String> values = state.values();
      List<Event> free = new ArrayList<>();
      int stands = 0;
      for (Movement movement : working.movements()) {
        String key = movement.event().key();
        if (!stands(values, movement.event())) {
          continue;
        }
        stands++;
        List<Hold> holds = holds(movement, state);
        List<Entry> entries = holds.stream().flatMap(h -> h.entry().stream()).toList();
        Scripted.Tried said = tried.get(key);
        if (said == null
            || (said.holds() == 0) != holds.isEmpty()
            || !said.entries().stream().map(box.locking()::get).toList().equals(entries)) {
          throw new AssertionError(key + " in " + state + ": " + said + ", not " + holds);
        }
        if (holds.isEmpty()) {
          free.add(movement.event());
        }
        held.addAll(entries);
      }
      assertThat(tried).hasSize(stands);
      return free;
    }

    private static List<Hold> holds(Movement movement, State state) {
      List<Hold> holds = new ArrayList<>();
      for (Need need : movement.requires()) {
        if (!need.condition().evaluate(state)) {
          holds.add(need.hold());
        }
      }
      return holds;
    }

    /** What moves stands where the stroke begins; what is done at an instrument can be tried. */
    private static boolean stands(Map<String, String> values, Event event) {
      if (event instanceof Event.LeverMoves e) {
        return values.get(Quantity.lever(e.lever()).key()).equals(e.from().name());
      } else if (event instanceof Event.PointsMove e) {
        return values.get(Quantity.points(e.points()).key()).equals(e.from().name());
      } else if (event instanceof Event.GatesMove e) {
        return values.get(Quantity.gates(e.levelCrossing()).key()).equals(e.from().name());
      }
      return true;
    }

    State make(State state, Event event) {
      return made.computeIfAbsent(state, s -> new HashMap<>())
          .computeIfAbsent(
              event,
              e -> {
                State next = working.make(state, e);
                assertThat(state(script.made(values(state), e.key())))
                    .as("after %s in %s", e.key(), state)
                    .isEqualTo(next);
                return next;
              });
    }

    /** Entries that held nothing in any of the sequences: of them nothing was compared. */
    List<String> neverHeld() {
      return box.locking().stream().filter(e -> !held.contains(e)).map(Entry::words).toList();
    }
  }
}
