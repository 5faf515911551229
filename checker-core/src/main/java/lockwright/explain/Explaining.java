package lockwright.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.Condition;
import lockwright.working.Hold;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;

/** How an explanation is come to. */
final class Explaining {
  private final Box box;
  private final Asked asked;
  private final Optional<State> from;
  private final int most;
  private final Working parted;
  private final Working whole;
  private final List<Movement> strokes = new ArrayList<>();

  /**
   * @param from where it is asked from; nothing: from all levers normal
   */
  Explaining(Box box, Asked asked, Optional<State> from, int most) {
    this.box = box;
    this.asked = asked;
    this.from = from;
    this.most = most;
    this.parted = Working.parted(box);
    this.whole = Working.whole(box);
    strokes.addAll(whole.movements());
    parted.movements().stream().filter(this::ofPartWayLever).forEach(strokes::add);
  }

  /** A half-stroke of a lever that is asked about part-way. */
  private boolean ofPartWayLever(Movement movement) {
    return movement.event() instanceof Event.LeverMoves e && asked.partWay().contains(e.lever());
  }

  Explanation explanation() {
    List<State> beginnings = from.map(List::of).orElseGet(() -> Walks.beginnings(box, whole, most));
    Map<String, String> placed = new HashMap<>(beginnings.get(0).values());
    box.frame().levers().forEach(l -> placed.put(Quantity.lever(l.id()).key(), "N"));
    asked.reversed().forEach(l -> placed.put(Quantity.lever(l).key(), "R"));
    asked.partWay().forEach(l -> placed.put(Quantity.lever(l).key(), "M"));
    box.frame()
        .levers()
        .forEach(
            l ->
                box.frame()
                    .answering(l.id())
                    .forEach(
                        p ->
                            placed.put(
                                Quantity.points(p).key(),
                                placed.get(Quantity.lever(l.id()).key()))));
    State asGiven = whole.state(placed);
    Arrival arrival = arrival(asGiven, beginnings);
    State state = asGiven;
    if (arrival instanceof Arrival.AsGiven a) {
      state = a.walk().to();
    } else if (arrival instanceof Arrival.Otherwise a) {
      state = a.walk().to();
    } else if (arrival instanceof Arrival.ByParts a) {
      state = a.walk().to();
    }
    Position stands = Position.valueOf(state.values().get(Quantity.lever(asked.lever()).key()));
    List<Way> ways = ways(state, stands);
    boolean cannotBe = arrival instanceof Arrival.Forbidden || arrival instanceof Arrival.Never;
    Optional<Outcome> freeing =
        cannotBe || stands == Position.M || ways.get(0).free() || collared(asked.lever())
            ? Optional.empty()
            : Optional.of(freeing(state, stands));
    return new Explanation(box, asked, arrival, state, stands, ways, freeing);
  }

  /**
   * An entry that forbids the state settles it. Else whole strokes are tried, first in the order
   * given; and if none serve, half-strokes with all that safety allows.
   */
  private Arrival arrival(State state, List<State> beginnings) {
    List<Entry> forbidding =
        box.locking().stream()
            .filter(e -> parted.forbidden(e).state().evaluate(state))
            .distinct()
            .toList();
    if (!forbidding.isEmpty()) {
      return new Arrival.Forbidden(forbidding);
    }
    List<Condition> goal = new ArrayList<>();
    box.frame().levers().forEach(l -> goal.add(stands(l.id(), state)));
    if (walks(inOrder(state)).shortest(beginnings, goal) instanceof Outcome.Found found) {
      return new Arrival.AsGiven(found.walk());
    }
    if (walks(strokes).shortest(beginnings, goal) instanceof Outcome.Found found) {
      return new Arrival.Otherwise(found.walk());
    }
    Outcome byParts = new Walks(box, parted, parted.movements(), most).shortest(beginnings, goal);
    if (byParts instanceof Outcome.Found found) {
      return new Arrival.ByParts(found.walk());
    } else if (byParts instanceof Outcome.NotWithin limit) {
      return new Arrival.NotWithin(limit.movements());
    }
    return beginnings.size() < most ? new Arrival.Never() : new Arrival.NotWithin(0);
  }

  /** Each lever asked about moves once, after those named before it; levers part-way come last. */
  private List<Movement> inOrder(State state) {
    List<Movement> ordered = new ArrayList<>();
    for (Movement movement : strokes) {
      if (!(movement.event() instanceof Event.LeverMoves e)) {
        ordered.add(movement);
      } else if (e.from() == Position.N
          && e.to().name().equals(state.values().get(Quantity.lever(e.lever()).key()))) {
        List<Need> needs = new ArrayList<>(movement.requires());
        List<String> all = new ArrayList<>(asked.reversed());
        all.addAll(asked.partWay());
        for (String before : all.subList(0, all.indexOf(e.lever()))) {
          needs.add(Need.rule(stands(before, state), "pulled after " + before));
        }
        ordered.add(new Movement(e, needs, movement.effects()));
      }
    }
    return ordered;
  }

  private Walks walks(List<Movement> movements) {
    return new Walks(box, whole, movements, most);
  }

  private Condition stands(String lever, State state) {
    Quantity quantity = Quantity.lever(lever);
    int at = whole.quantities().indexOf(quantity);
    BitSet there = new BitSet();
    there.set(state.indices()[at]);
    return Condition.oneOf(at, quantity, there);
  }

  private List<Way> ways(State state, Position stands) {
    List<Way> ways = new ArrayList<>();
    if (stands == Position.M) {
      ways.add(way(state, Position.M, Position.R));
      ways.add(way(state, Position.M, Position.N));
    } else {
      ways.add(way(state, stands, stands == Position.N ? Position.R : Position.N));
    }
    return ways;
  }

  /** The holds of the first half-stroke; of a whole one, those too that possibility alone reads. */
  private Way way(State state, Position from, Position to) {
    Position first = from == Position.M ? to : Position.M;
    List<Hold> bySafety = parted.holds(state, new Event.LeverMoves(asked.lever(), from, first));
    List<Hold> all = new ArrayList<>(bySafety);
    if (from != Position.M) {
      whole.holds(state, new Event.LeverMoves(asked.lever(), from, to)).stream()
          .filter(h -> !bySafety.contains(h))
          .forEach(all::add);
    }
    int[] there = state.indices();
    int lever = whole.quantities().indexOf(Quantity.lever(asked.lever()));
    there[lever] = whole.quantities().get(lever).values().indexOf(to.name());
    Map<String, String> positions = new HashMap<>();
    box.frame()
        .levers()
        .forEach(l -> positions.put(l.id(), state.values().get(Quantity.lever(l.id()).key())));
    List<Held> held = new ArrayList<>();
    if (collared(asked.lever())) {
      held.add(new Held(Optional.empty(), "a collar on it", "", false));
    }
    boolean backLocked = false;
    for (Hold hold : all) {
      boolean unmarked = !bySafety.contains(hold);
      boolean end =
          hold.entry().filter(e -> parted.forbidden(e).state().evaluate(there)).isPresent();
      backLocked |= end && !unmarked;
      String seen =
          hold.entry().map(e -> new Seen(e, asked.lever(), positions).words(end)).orElse("");
      held.add(new Held(hold.entry(), hold.words(), seen, unmarked));
    }
    return new Way(from, to, held, backLocked);
  }

  /** The stroke, by whole strokes of the other levers; those part-way may be finished. */
  private Outcome freeing(State state, Position stands) {
    Position to = stands == Position.N ? Position.R : Position.N;
    Movement stroke = whole.movement(new Event.LeverMoves(asked.lever(), stands, to)).orElseThrow();
    List<Condition> goal = stroke.requires().stream().map(Need::condition).toList();
    return walks(Collars.uncollared(strokes, asked)).shortest(List.of(state), goal);
  }

  private boolean collared(String lever) {
    return asked.collars().contains(lever);
  }
}
