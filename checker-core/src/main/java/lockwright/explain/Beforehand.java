package lockwright.explain;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.words.Event;
import lockwright.walk.Outcome;
import lockwright.walk.Walk;
import lockwright.walk.Walks;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Whole strokes of levers made one after another from all levers normal, each as soon as it can be:
 * with the fewest movements that free it in between.
 *
 * @param walk all that was done; so far, if it stopped
 * @param made how many of the strokes asked for are in it
 * @param stopped why the next one is not: what came of looking for it; else {@code Found}
 */
public record Beforehand(Walk walk, int made, Outcome stopped) {
  /**
   * Makes them.
   *
   * @param strokes one at least, of levers that move
   * @param most how many states each search may look at
   */
  public static Beforehand of(Box box, List<Event.LeverMoves> strokes, int most) {
    Working whole = Working.whole(box);
    Walks walks = new Walks(box, whole, whole.movements(), most);
    List<State> from = Walks.beginnings(box, whole, most);
    State first = from.get(0);
    List<Event> events = new ArrayList<>();
    for (int i = 0; i < strokes.size(); i++) {
      Movement stroke = whole.movement(strokes.get(i)).orElseThrow();
      Outcome outcome =
          walks.shortest(from, stroke.requires().stream().map(Need::condition).toList());
      if (!(outcome instanceof Outcome.Found found)) {
        return new Beforehand(new Walk(first, events, from.get(0)), i, outcome);
      }
      if (i == 0) {
        first = found.walk().from();
      }
      events.addAll(found.walk().events());
      events.add(stroke.event());
      from = List.of(whole.make(found.walk().to(), stroke.event()));
    }
    Walk all = new Walk(first, events, from.get(0));
    return new Beforehand(all, strokes.size(), new Outcome.Found(all));
  }

  /** Whether all were made. */
  public boolean whole() {
    return stopped instanceof Outcome.Found;
  }
}
