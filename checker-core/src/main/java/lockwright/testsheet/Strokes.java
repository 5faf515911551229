package lockwright.testsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.walk.Reach;
import lockwright.working.Hold;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.Working;

/**
 * What holds each stroke, in the states of a reach. A lever is surely held if the first half of its
 * stroke is held as safety reads the table, and surely free if the whole of it is free as
 * possibility reads it; in between it is not said, since it hangs on pieces that are not marked.
 */
final class Strokes {
  private final Working parted;
  private final Working whole;
  private final Reach reach;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<Event, List<Need>> looked = new HashMap<>();

  Strokes(Box box, Working parted, Working whole, Reach reach) {
    this.parted = parted;
    this.whole = whole;
    this.reach = reach;
    List<Quantity> all = whole.quantities();
    box.frame().levers().forEach(l -> places.put(l.id(), all.indexOf(Quantity.lever(l.id()))));
  }

  /** What there is to be said of a trial in one state. */
  enum Sight {
    /** Its levers stand otherwise. */
    OTHERWISE,
    /** As it is to be; if held, by this entry alone. */
    SHOWS,
    /** Held by this entry, and by pieces that are not marked, if they hold. */
    PERHAPS_ALONE,
    /** Held by the entry and by others. */
    WITH_OTHERS,
    /** Not as it is to be. */
    AGAINST
  }

  Sight sight(Trial trial, int[] values) {
    for (Map.Entry<String, Position> stands : trial.stand().entrySet()) {
      if (values[places.get(stands.getKey())] != stands.getValue().ordinal()) {
        return Sight.OTHERWISE;
      }
    }
    if (!trial.aspect().held()) {
      return wholeNeeds(trial).allMatch(n -> n.condition().evaluate(values))
          ? Sight.SHOWS
          : Sight.AGAINST;
    }
    List<Entry> surely = entries(partedNeeds(trial), values);
    if (!surely.contains(trial.entry())) {
      return Sight.AGAINST;
    }
    List<Entry> perhaps = entries(wholeNeeds(trial), values);
    if (surely.size() > 1) {
      return Sight.WITH_OTHERS;
    }
    return perhaps.size() == 1 ? Sight.SHOWS : Sight.PERHAPS_ALONE;
  }

  /** What holds the lever of a trial, as possibility reads the table. */
  List<Hold> holding(Trial trial, int[] values) {
    return holds(wholeNeeds(trial), values);
  }

  /** What surely holds the lever of a trial. */
  List<Hold> surelyHolding(Trial trial, int[] values) {
    return holds(partedNeeds(trial), values);
  }

  private static List<Hold> holds(Stream<Need> needs, int[] values) {
    return needs.filter(n -> !n.condition().evaluate(values)).map(Need::hold).toList();
  }

  private static List<Entry> entries(Stream<Need> needs, int[] values) {
    return holds(needs, values).stream().flatMap(h -> h.entry().stream()).toList();
  }

  private Stream<Need> partedNeeds(Trial trial) {
    return needs(parted, new Event.LeverMoves(trial.lever(), trial.from(), Position.M));
  }

  private Stream<Need> wholeNeeds(Trial trial) {
    return needs(whole, whole(trial.lever(), trial.from()));
  }

  static Event.LeverMoves whole(String lever, Position from) {
    return new Event.LeverMoves(lever, from, from == Position.N ? Position.R : Position.N);
  }

  private Stream<Need> needs(Working working, Event event) {
    return looked
        .computeIfAbsent(
            event,
            e ->
                working.movement(e).map(Movement::requires).orElseThrow().stream()
                    .filter(n -> reach.looksAt(n.condition()))
                    .toList())
        .stream();
  }

  /** The other needs of a trial's stroke, which hide nothing if they are met. */
  List<Need> besides(Trial trial) {
    List<Need> besides = new ArrayList<>();
    Stream.concat(
            parted
                .movement(new Event.LeverMoves(trial.lever(), trial.from(), Position.M))
                .orElseThrow()
                .requires()
                .stream(),
            whole.movement(whole(trial.lever(), trial.from())).orElseThrow().requires().stream())
        .filter(
            n -> !trial.aspect().held() || n.hold().entry().filter(trial.entry()::equals).isEmpty())
        .forEach(besides::add);
    return besides;
  }
}
