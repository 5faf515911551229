package lockwright.working;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import lockwright.railway.Box;
import lockwright.railway.control.Contact;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/**
 * How a signal box can be worked: what can be said of it at one moment, how it begins, which
 * movements it allows and what each does, and what each requirement forbids; {@code
 * docs/meaning.md} 2 to 7. A box whose records name things that it has not is refused with {@link
 * IllegalArgumentException} or {@link java.util.NoSuchElementException}, a fault of the caller.
 * Does not change.
 */
public final class Working {
  private final Quantities quantities;
  private final Condition beginning;
  private final Iterable<State> beginnings;
  private final List<Movement> movements;
  private final Map<Event, Movement> byEvent = new LinkedHashMap<>();
  private final Breaches breaches;
  private final Locking locking;
  private final FrameMovements frame;
  private final WaysBack waysBack;
  private final Apparatus apparatus;

  private Working(Box box, Strokes strokes, Optional<Entry> leftOut) {
    quantities = new Quantities(box);
    Beginnings normal = new Beginnings(box, quantities);
    beginning = normal.condition();
    beginnings = normal;
    apparatus = new Apparatus(box, quantities);
    locking = new Locking(box, apparatus, strokes == Strokes.WHOLE, leftOut);
    frame = new FrameMovements(box, quantities, apparatus, locking, strokes);
    List<Movement> all = new ArrayList<>(frame.all());
    box.sections()
        .forEach(s -> all.addAll(new SectionMovements(s, quantities, apparatus, strokes).all()));
    all.addAll(new OutsideConditions(box, quantities, apparatus).all());
    all.replaceAll(new GoingOff(box, quantities, apparatus)::with);
    movements = List.copyOf(all);
    movements.forEach(m -> byEvent.put(m.event(), m));
    breaches = new Breaches(box, quantities, apparatus, movements);
    waysBack = new WaysBack(box, apparatus, byEvent);
  }

  /** The same worked from one state, by movements of the frame alone. */
  private Working(Working whole, State from) {
    quantities = whole.quantities;
    beginning = whole.quantities.stand(from);
    beginnings = List.of(from);
    movements = whole.movements.stream().filter(m -> WaysBack.ofFrame(m.event())).toList();
    movements.forEach(m -> byEvent.put(m.event(), m));
    breaches = whole.breaches;
    locking = whole.locking;
    frame = whole.frame;
    waysBack = whole.waysBack;
    apparatus = whole.apparatus;
  }

  /**
   * The working that allows most, for safety: half-strokes, any levers part-way, and only the
   * pieces marked so hold.
   */
  public static Working parted(Box box) {
    return new Working(box, Strokes.PARTED, Optional.empty());
  }

  /**
   * The working that allows most of a box without one entry of its locking table.
   *
   * @throws IllegalArgumentException if the table has no such entry
   */
  public static Working parted(Box box, Entry leftOut) {
    return new Working(box, Strokes.PARTED, Optional.of(leftOut));
  }

  /**
   * The working that allows least, for possibility: whole strokes of levers and of ground frames'
   * points, every piece with conditions holds, and no withdrawal is irregular.
   */
  public static Working whole(Box box) {
    return new Working(box, Strokes.WHOLE, Optional.empty());
  }

  /**
   * The working of {@link #whole} with that state as its only beginning, and with no movement but
   * those of levers, points of ground frames or worked by hand, and gates: what can be done to
   * restore the frame.
   */
  public static Working restoring(Box box, State from) {
    return new Working(whole(box), from);
  }

  /**
   * Levers, points of ground frames, then for each section what 4.1 names, in its order, then the
   * conditions of 2.9.
   */
  public List<Quantity> quantities() {
    return quantities.all();
  }

  /** All movements, in the order of 7. */
  public List<Movement> movements() {
    return movements;
  }

  /** The movement of an event; empty if this box, so worked, has none. */
  public Optional<Movement> movement(Event event) {
    return Optional.ofNullable(byEvent.get(event));
  }

  /** Holds in the beginnings, and nowhere else. */
  public Condition beginning() {
    return beginning;
  }

  /** The beginnings one by one, in order of the quantities and their values; made as asked for. */
  public Iterable<State> beginnings() {
    return beginnings;
  }

  /** When a requirement of safety is broken. */
  public Breach breach(Requirement requirement) {
    return breaches.of(requirement);
  }

  /** What an entry forbids, whether or not it is left out: 10.1. */
  public Breach forbidden(Entry entry) {
    if (!entry.kind().ofMovement()) {
      return new Breach(locking.forbidden(entry), Map.of());
    }
    Map<Event, Condition> starts = new LinkedHashMap<>();
    for (Movement movement : movements) {
      if (movement.event() instanceof Event.LeverMoves e
          && e.lever().equals(entry.lever())
          && e.from() == Position.N) {
        starts.put(e, Condition.not(frame.lets(entry)));
      }
    }
    return new Breach(Condition.FALSE, starts);
  }

  /** Where a possibility is shown. */
  public Condition goal(Requirement requirement) {
    return breaches.goal(requirement);
  }

  /** All levers are N. */
  public Condition allNormal() {
    return waysBack.allNormal();
  }

  /**
   * A lever is not N, and neither a single stroke to N nor one of these ways back can be made, each
   * of its movements in turn.
   *
   * @throws IllegalArgumentException if one is no way back, after which less is away from N
   */
  public Condition stuck(List<List<Event>> ways) {
    return waysBack.stuck(ways);
  }

  /** What a lever lock or an arm control needs is so: 2.9. */
  public Condition met(Contact contact) {
    return apparatus.met(contact);
  }

  /** An arm is off, where off is the danger. */
  public Condition off(String signal) {
    return apparatus.off(signal);
  }

  /** An arm is off, where off is the goal. */
  public Condition surelyOff(String signal) {
    return apparatus.surelyOff(signal);
  }

  /** A lever stands there, fully. */
  public Condition stands(String lever, Position position) {
    return apparatus.lever(lever, position.name());
  }

  /** Where a subject comes about. */
  public Condition reaches(Subject subject) {
    return breaches.reaches(subject);
  }

  /**
   * The state in which the quantities, by their keys, have these values.
   *
   * @throws IllegalArgumentException naming the quantity, if one is missing, unknown, or without
   *     such a value
   */
  public State state(Map<String, String> values) {
    int[] indices = new int[quantities().size()];
    for (int i = 0; i < indices.length; i++) {
      Quantity quantity = quantities().get(i);
      String value = values.get(quantity.key());
      indices[i] = value == null ? -1 : quantity.values().indexOf(value);
      if (indices[i] < 0) {
        throw new IllegalArgumentException(
            quantity.key() + " is " + value + ", not one of " + quantity.values());
      }
    }
    List<String> unknown = new ArrayList<>(values.keySet());
    quantities().forEach(q -> unknown.remove(q.key()));
    if (!unknown.isEmpty()) {
      unknown.sort(Comparator.naturalOrder());
      throw new IllegalArgumentException("the box has no " + String.join(", ", unknown));
    }
    return new State(quantities(), indices);
  }

  /** Whether the movement can be made from the state. */
  public boolean free(State state, Event event) {
    Movement movement = byEvent.get(event);
    return movement != null
        && movement.requires().stream().allMatch(n -> n.condition().evaluate(state));
  }

  /** What holds the movement in the state, in the order of the rules; nothing, if it is free. */
  public List<Hold> holds(State state, Event event) {
    Movement movement = byEvent.get(event);
    if (movement == null) {
      return List.of(new Hold("the box has no movement '" + event.key() + "'", Optional.empty()));
    }
    return movement.requires().stream()
        .filter(n -> !n.condition().evaluate(state))
        .map(n -> withPositions(n.hold(), state))
        .toList();
  }

  /** An entry is quoted with where its levers stand. */
  private static Hold withPositions(Hold hold, State state) {
    if (hold.entry().isEmpty()) {
      return hold;
    }
    SortedMap<String, String> values = state.values();
    List<String> stand =
        Locking.leversOf(hold.entry().get()).stream()
            .map(l -> l + " stands at " + values.get(Quantity.lever(l).key()))
            .toList();
    return new Hold(hold.words() + ": " + String.join(", ", stand), hold.entry());
  }

  /**
   * The state after the movement.
   *
   * @throws IllegalStateException saying what holds it, if it is not free
   */
  public State make(State state, Event event) {
    if (!free(state, event)) {
      throw new IllegalStateException(
          event.key()
              + " is not free: "
              + String.join("; ", holds(state, event).stream().map(Hold::words).toList()));
    }
    return new State(quantities(), byEvent.get(event).after(state.raw()));
  }
}
