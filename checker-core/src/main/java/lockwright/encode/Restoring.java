package lockwright.encode;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lockwright.encode.names.Names;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;

/**
 * Restoring the frame to all levers N, asked in four ways; {@code frame can be restored} in
 * `docs/meaning.md` 6.
 *
 * @param whole the box by whole strokes
 */
public record Restoring(Box box, Encoded whole) {
  /** The target of each. */
  public static final String TARGET = "restoring";

  /**
   * Whether the frame is ever stuck.
   *
   * @param ways ways back, besides the single strokes to N
   */
  public Encoded stuck(List<List<Event>> ways) {
    List<Term> stuck = new ArrayList<>(List.of(Term.not(allNormal())));
    for (Event event : new LinkedHashSet<>(whole.names().events())) {
      if (ofFrame(event) && Position.N.equals(to(event))) {
        stuck.add(Term.not(free(List.of(event))));
      }
    }
    ways.forEach(way -> stuck.add(Term.not(free(way))));
    TransitionSystem s = whole.system();
    return encoded(s.initial(), e -> true, Term.and(stuck));
  }

  /**
   * Whether from a state strokes alone lead to one in which the levers that were N are so, and
   * others too.
   *
   * @param state the value of each quantity, by its key
   */
  public Encoded back(Map<String, String> state) {
    List<Term> stay = new ArrayList<>();
    List<Term> come = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      Quantity quantity = Quantity.lever(lever.id());
      boolean normal = state.get(quantity.key()).equals(Position.N.name());
      (normal ? stay : come).add(is(quantity, Position.N.name()));
    }
    stay.add(Term.or(come));
    return encoded(stands(state), Restoring::ofFrame, Term.and(stay));
  }

  /**
   * Whether from a state strokes alone lead to all levers N.
   *
   * @param state the value of each quantity, by its key
   */
  public Encoded normal(Map<String, String> state) {
    return encoded(stands(state), Restoring::ofFrame, allNormal());
  }

  /**
   * Whether from a state all movements together, those at instruments too, lead to all levers N.
   *
   * @param state the value of each quantity, by its key
   */
  public Encoded helped(Map<String, String> state) {
    return encoded(stands(state), e -> true, allNormal());
  }

  private static boolean ofFrame(Event event) {
    return !(event instanceof Event.AtInstrument
        || event instanceof Event.AtLock
        || event instanceof Event.ConditionChanges);
  }

  private static Position to(Event event) {
    if (event instanceof Event.LeverMoves e) {
      return e.to();
    } else if (event instanceof Event.PointsMove e) {
      return e.to();
    }
    return ((Event.GatesMove) event).to();
  }

  private Term allNormal() {
    return Term.and(
        box.frame().levers().stream()
            .map(l -> is(Quantity.lever(l.id()), Position.N.name()))
            .toList());
  }

  private Term stands(Map<String, String> state) {
    return Term.and(
        whole.names().quantities().stream().map(q -> is(q, state.get(q.key()))).toList());
  }

  private Term is(Quantity quantity, String value) {
    return Term.is(whole.names().quantities().indexOf(quantity), quantity.values().indexOf(value));
  }

  /** Each movement can be made in turn. */
  private Term free(List<Event> way) {
    Term free = Term.TRUE;
    for (int i = way.size() - 1; i >= 0; i--) {
      free = free(way.get(i), free);
    }
    return free;
  }

  /** One of the transitions of the event can be made, and then this holds. */
  private Term free(Event event, Term then) {
    List<Term> ways = new ArrayList<>();
    for (int i = 0; i < whole.names().events().size(); i++) {
      if (whole.names().events().get(i).equals(event)) {
        Transition transition = whole.system().transitions().get(i);
        ways.add(Term.and(transition.guard(), transition.before(then)));
      }
    }
    return Term.or(ways);
  }

  /** The system with another beginning and target, and with some of its movements. */
  private Encoded encoded(Term initial, Predicate<Event> which, Term target) {
    TransitionSystem s = whole.system();
    List<Event> events = whole.names().events();
    int[] kept = IntStream.range(0, events.size()).filter(i -> which.test(events.get(i))).toArray();
    return new Encoded(
        new TransitionSystem(
            s.variables(),
            initial,
            IntStream.of(kept).mapToObj(s.transitions()::get).toList(),
            List.of(new Target(TARGET, target, List.of(), true)),
            s.candidates().stream().filter(this::ofFrame).toList()),
        new Names(whole.names().quantities(), IntStream.of(kept).mapToObj(events::get).toList()));
  }

  /** A clause about what nothing done at an instrument changes: others are seldom of use. */
  private boolean ofFrame(Clause clause) {
    List<Event> events = whole.names().events();
    return IntStream.range(0, events.size())
        .filter(i -> !ofFrame(events.get(i)))
        .mapToObj(whole.system().transitions()::get)
        .noneMatch(t -> clause.among().stream().anyMatch(a -> t.touches(a.variable())));
  }
}
