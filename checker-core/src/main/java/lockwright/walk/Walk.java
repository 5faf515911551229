package lockwright.walk;

import java.util.List;
import lockwright.railway.words.Event;
import lockwright.working.State;

/** Movements that were played, each free in its turn, from one state to another. */
public record Walk(State from, List<Event> events, State to) {
  public Walk {
    events = List.copyOf(events);
  }
}
