package lockwright.report.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.report.LeverWords;
import lockwright.working.Hold;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Whether a lever can be moved in one state of a box.
 *
 * @param stands N, M or R
 * @param ways each way that it could go from there: one from N or R, two from part-way
 */
record LeverNow(Lever lever, String stands, List<Way> ways) {

  /**
   * @param does "pull" or "replace", or what {@link LeverWords} says of a push-pull lever
   * @param heldBy why not; nothing, if it is free
   */
  record Way(String does, List<String> heldBy) {
    boolean free() {
      return heldBy.isEmpty();
    }
  }

  /** Whether it can be moved at all. */
  boolean free() {
    return ways.stream().anyMatch(Way::free);
  }

  /**
   * Every lever of the frame that has a movement.
   *
   * @throws IllegalArgumentException if the values are none of a state of this working
   */
  static List<LeverNow> all(Box box, Working working, Map<String, String> values) {
    State state = working.state(values);
    List<LeverNow> all = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      String stands = values.get(Quantity.lever(lever.id()).key());
      List<Way> ways = new ArrayList<>();
      for (Movement movement : working.movements()) {
        if (movement.event() instanceof Event.LeverMoves e
            && e.lever().equals(lever.id())
            && e.from() == Position.valueOf(stands)) {
          boolean pull = e.from().compareTo(e.to()) < 0;
          List<String> held = working.holds(state, e).stream().map(Hold::words).toList();
          ways.add(new Way(LeverWords.verb(lever.id(), pull), held));
        }
      }
      if (!ways.isEmpty()) {
        all.add(new LeverNow(lever, stands, List.copyOf(ways)));
      }
    }
    return all;
  }
}
