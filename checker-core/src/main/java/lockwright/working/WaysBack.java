package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;

/** Restoring the frame to all levers N: {@code frame can be restored} in 6 of the page. */
final class WaysBack {
  private final Condition allNormal;
  private final Map<Event, Movement> movements;

  WaysBack(Box box, Apparatus apparatus, Map<Event, Movement> movements) {
    this.allNormal =
        Condition.all(
            box.frame().levers().stream()
                .map(Lever::id)
                .map(l -> apparatus.lever(l, Position.N.name()))
                .toList());
    this.movements = movements;
  }

  Condition allNormal() {
    return allNormal;
  }

  /** A movement of levers, points of ground frames or gates: not at an instrument, or outside. */
  static boolean ofFrame(Event event) {
    return !(event instanceof Event.AtInstrument
        || event instanceof Event.AtLock
        || event instanceof Event.ConditionChanges);
  }

  Condition stuck(List<List<Event>> ways) {
    List<Condition> stuck = new ArrayList<>(List.of(Condition.not(allNormal)));
    for (Event event : movements.keySet()) {
      if (ofFrame(event) && change(event) < 0) {
        stuck.add(Condition.not(free(List.of(event))));
      }
    }
    for (List<Event> way : ways) {
      if (!leadsBack(way)) {
        throw new IllegalArgumentException("no way back: " + way.stream().map(Event::key).toList());
      }
      stuck.add(Condition.not(free(way)));
    }
    return Condition.all(stuck);
  }

  /** Fewer levers are away from N after it, or as many and fewer points and gates. */
  private boolean leadsBack(List<Event> way) {
    int levers = 0;
    int others = 0;
    for (Event event : way) {
      if (!ofFrame(event) || !movements.containsKey(event)) {
        return false;
      }
      if (event instanceof Event.LeverMoves) {
        levers += change(event);
      } else {
        others += change(event);
      }
    }
    return levers < 0 || (levers == 0 && others < 0);
  }

  /** By how much more is away from N after a movement of the frame. */
  private static int change(Event event) {
    if (event instanceof Event.LeverMoves e) {
      return change(e.from(), e.to());
    } else if (event instanceof Event.PointsMove e) {
      return change(e.from(), e.to());
    } else if (event instanceof Event.GatesMove e) {
      return change(e.from(), e.to());
    }
    throw new IllegalArgumentException("no movement of the frame: " + event.key());
  }

  private static int change(Position from, Position to) {
    return (to == Position.N ? 0 : 1) - (from == Position.N ? 0 : 1);
  }

  /** Each movement is free in turn, with what those before it have done. */
  private Condition free(List<Event> way) {
    Condition free = Condition.TRUE;
    for (int i = way.size() - 1; i >= 0; i--) {
      Movement movement = movements.get(way.get(i));
      free = Condition.all(movement.needs(), free.before(movement.effects()));
    }
    return free;
  }
}
