package lockwright.railway.layout;

import java.util.List;

/**
 * A way by which a vehicle could come into a route from the side; `docs/meaning.md` 1.10.
 *
 * @param from the track that it starts from
 * @param joins the points or the crossing where it comes into the route: "points 5"
 * @param away the points on it that can lie away from the route, with that lie, from the route on
 * @param guards the arms of the post where it starts, if they guard it
 * @param notEnough those arms, if a siding or goods line joins a passenger line, so that they do
 *     not
 */
public record FlankPath(
    String from,
    String joins,
    List<FlankPoints> away,
    List<String> guards,
    List<String> notEnough) {
  public FlankPath {
    away = List.copyOf(away);
    guards = List.copyOf(guards);
    notEnough = List.copyOf(notEnough);
  }

  /** Whether nothing that could protect the route is on it. */
  public boolean open() {
    return away.isEmpty() && guards.isEmpty();
  }
}
