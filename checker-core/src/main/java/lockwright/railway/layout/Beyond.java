package lockwright.railway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a train would pass that overran the end of a route: a permitted overlap, walked;
 * `docs/meaning.md` 1.11.
 *
 * @param points the points passed, in order, with the lie that leads over these tracks
 */
public record Beyond(List<String> tracks, List<PointsOnRoute> points, List<String> crossings) {
  public Beyond {
    tracks = List.copyOf(tracks);
    points = List.copyOf(points);
    crossings = List.copyOf(crossings);
  }

  /** The points passed that have to lie for it: all but the sprung ones. */
  public List<PointsOnRoute> needed() {
    return points.stream().filter(p -> !p.sprung()).toList();
  }

  /** The overlaps permitted beyond the end of a route; none where it needs none. */
  public static List<Beyond> of(Layout layout, Route route) {
    if (!(route.end() instanceof Route.End.AtSignals end)
        || layout.signal(route.signal()).arm() != Arm.STOP) {
      return List.of();
    }
    return layout.overlaps().stream()
        .filter(o -> end.signals().contains(o.signal()))
        .map(o -> walk(layout, o).orElseThrow())
        .toList();
  }

  /** Walks an overlap; empty if its tracks do not follow one another from the signal on. */
  public static Optional<Beyond> walk(Layout layout, Overlap overlap) {
    return walk(layout, overlap, false);
  }

  /** Whether it cannot be walked since it would face sprung points into their reverse leg. */
  public static boolean barred(Layout layout, Overlap overlap) {
    return walk(layout, overlap).isEmpty() && walk(layout, overlap, true).isPresent();
  }

  private static Optional<Beyond> walk(Layout layout, Overlap overlap, boolean overSprings) {
    List<PointsOnRoute> points = new ArrayList<>();
    List<String> crossings = new ArrayList<>();
    TrackEnd leaves = layout.signal(overlap.signal()).stands();
    for (String track : overlap.tracks()) {
      Optional<Step> step =
          Step.outOf(layout, leaves).stream()
              .filter(s -> overSprings || s.points().filter(PointsOnRoute::barred).isEmpty())
              .filter(s -> s.enters().track().equals(track))
              .findFirst();
      if (step.isEmpty()) {
        return Optional.empty();
      }
      step.get().points().ifPresent(points::add);
      step.get().crossing().ifPresent(crossings::add);
      leaves = step.get().enters().opposite();
    }
    return Optional.of(new Beyond(overlap.tracks(), points, crossings));
  }
}
