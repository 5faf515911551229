package lockwright.railway.layout;

import java.util.List;

/**
 * Where an arm can lead; `docs/meaning.md` 1.3.
 *
 * @param name stable and unique in a layout: "2 to up-loop", with " by 5 R, 6 N" where the arm has
 *     several routes to that track
 * @param signal the arm's id
 * @param tracks the tracks passed, in order; the last is where the route ends
 * @param crossings the crossings passed, in order
 * @param end what the route ends at
 * @param flankTraps trap points that must protect it, in order of the plan
 */
public record Route(
    String name,
    String signal,
    List<String> tracks,
    List<PointsOnRoute> points,
    List<String> crossings,
    End end,
    List<FlankTrap> flankTraps) {
  public Route {
    tracks = List.copyOf(tracks);
    points = List.copyOf(points);
    crossings = List.copyOf(crossings);
    flankTraps = List.copyOf(flankTraps);
    if (tracks.isEmpty()) {
      throw new IllegalArgumentException("route " + name + " passes no track");
    }
  }

  /** The points passed that have to lie for it: all but the sprung ones. */
  public List<PointsOnRoute> needed() {
    return points.stream().filter(p -> !p.sprung()).toList();
  }

  /** What a route ends at. */
  public sealed interface End {
    /** The post at the end of the last track, by the ids of the arms on it that end the route. */
    record AtSignals(List<String> signals) implements End {}

    record AtLimitOfShunt() implements End {}

    record AtLimit(Attachment.Limit limit) implements End {}

    record InSection(String section) implements End {}
  }
}
