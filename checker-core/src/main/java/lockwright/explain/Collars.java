package lockwright.explain;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.Movement;
import lockwright.working.Working;

/**
 * What can still be cleared while collars hold levers where they stand; {@code docs/meaning.md}
 * 2.7. By whole strokes, from the state that was asked about.
 *
 * @param routes every route of the box, in order, with the fewest movements that clear it; none, if
 *     the state cannot be
 */
public record Collars(List<Cleared> routes) {
  public Collars {
    routes = List.copyOf(routes);
  }

  /** A route, and how it is cleared, or that it is not. */
  public record Cleared(Route route, Outcome outcome) {}

  /**
   * Looks for each route.
   *
   * @param explanation of a question with collars
   * @param most how many states each search may look at
   */
  public static Collars of(Explanation explanation, int most) {
    Working whole = Working.whole(explanation.box());
    Arrival arrival = explanation.arrival();
    if (arrival instanceof Arrival.Forbidden || arrival instanceof Arrival.Never) {
      return new Collars(List.of());
    }
    List<Movement> strokes = new ArrayList<>(whole.movements());
    Working.parted(explanation.box()).movements().stream()
        .filter(m -> ofPartWayLever(m, explanation.asked()))
        .forEach(strokes::add);
    List<Movement> free = uncollared(strokes, explanation.asked());
    Walks walks = new Walks(explanation.box(), whole, free, most);
    List<Cleared> routes = new ArrayList<>();
    for (Route route : explanation.box().routes()) {
      Requirement cleared = new Requirement.RouteCanBeCleared(route);
      routes.add(
          new Cleared(
              route, walks.shortest(List.of(explanation.state()), List.of(whole.goal(cleared)))));
    }
    return new Collars(routes);
  }

  /** What is left of the stroke of a lever that is asked about part-way. */
  private static boolean ofPartWayLever(Movement movement, Asked asked) {
    return movement.event() instanceof Event.LeverMoves e && asked.partWay().contains(e.lever());
  }

  /** The movements but those of levers with a collar on. */
  static List<Movement> uncollared(List<Movement> movements, Asked asked) {
    return movements.stream()
        .filter(
            m -> !(m.event() instanceof Event.LeverMoves e && asked.collars().contains(e.lever())))
        .toList();
  }
}
