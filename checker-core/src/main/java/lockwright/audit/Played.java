package lockwright.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import lockwright.encode.names.Run;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * A run, played movement by movement on a working, with the full state before and after each. A
 * movement that is not free is not made: the state stays as it is.
 */
public final class Played {
  private final boolean begins;
  private final List<State> states;
  private final List<Step> steps;

  private Played(boolean begins, List<State> states, List<Step> steps) {
    this.begins = begins;
    this.states = List.copyOf(states);
    this.steps = List.copyOf(steps);
  }

  /**
   * Plays a run, whether or not it follows the rules.
   *
   * @throws IllegalArgumentException if its beginning does not give each quantity of the working
   *     one of its values, or gives others
   */
  public static Played of(Working working, Run run) {
    State state = working.state(run.beginning());
    boolean begins = working.beginning().evaluate(state);
    List<State> states = new ArrayList<>(List.of(state));
    List<Step> steps = new ArrayList<>();
    for (Event event : run.events()) {
      List<Held> held =
          working.holds(state, event).stream().map(h -> new Held(h.words(), h.entry())).toList();
      State next = held.isEmpty() ? working.make(state, event) : state;
      steps.add(new Step(event, state.values(), next.values(), held));
      states.add(next);
      state = next;
    }
    return new Played(begins, states, steps);
  }

  /** The same of a run that is given by its beginning and its events. */
  public static Played of(Working working, Map<String, String> beginning, List<Event> events) {
    return of(working, new Run(beginning, events));
  }

  /** Whether it begins as a run may begin. */
  public boolean begins() {
    return begins;
  }

  /** Whether it begins so and each movement is free. */
  public boolean followsRules() {
    return begins && steps.stream().allMatch(Step::followsRules);
  }

  /** The value of each quantity in the beginning, by its key. */
  public SortedMap<String, String> beginning() {
    return states.get(0).values();
  }

  public List<Step> steps() {
    return steps;
  }

  /** The run that was played. */
  public Run run() {
    return new Run(beginning(), steps.stream().map(Step::event).toList());
  }

  /** The states passed: the beginning, and the state after each movement. */
  List<State> states() {
    return states;
  }

  /** The state at the end. */
  State last() {
    return states.get(states.size() - 1);
  }

  /** The first movement that is not free, if any. */
  Optional<Step> firstHeld() {
    return steps.stream().filter(s -> !s.followsRules()).findFirst();
  }

  /** The play in words, a line a movement. */
  String text() {
    StringBuilder text = new StringBuilder("beginning " + beginning() + "\n");
    for (Step step : steps) {
      text.append(step.event().key());
      step.heldBy().forEach(h -> text.append("; held: ").append(h.words()));
      text.append('\n');
    }
    return text.toString();
  }

  /**
   * One movement.
   *
   * @param before the value of each quantity, by its key
   * @param heldBy why it is not free; empty if it follows the rules
   */
  public record Step(
      Event event,
      SortedMap<String, String> before,
      SortedMap<String, String> after,
      List<Held> heldBy) {
    public Step {
      heldBy = List.copyOf(heldBy);
    }

    public boolean followsRules() {
      return heldBy.isEmpty();
    }
  }

  /** Why a movement is not free: in words, and by which entry if by the locking. */
  public record Held(String words, Optional<Entry> entry) {}
}
