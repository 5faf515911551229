package lockwright.working;

import java.util.Map;
import lockwright.railway.words.Event;

/**
 * When a requirement of safety is broken: in any state of this kind, or as one of these events,
 * being free, is made from a state of its kind.
 */
public record Breach(Condition state, Map<Event, Condition> movements) {
  public Breach {
    movements = Map.copyOf(movements);
  }
}
