package lockwright.railway.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which routes of different arms conflict, and why; `docs/meaning.md` 1.4. */
public final class Conflicts {
  private Conflicts() {}

  /** All conflicts between these routes, in their order. */
  public static List<Conflict> between(Layout layout, List<Route> routes) {
    List<Conflict> conflicts = new ArrayList<>();
    for (int i = 0; i < routes.size(); i++) {
      for (int j = i + 1; j < routes.size(); j++) {
        Route first = routes.get(i);
        Route second = routes.get(j);
        List<String> shared = shared(layout, first, second);
        if (!first.signal().equals(second.signal()) && !shared.isEmpty()) {
          String reason = String.join(", ", shared);
          boolean possible = canLieTogether(first, second);
          boolean opposed = possible && byOneLeg(first, second) && opposed(layout, first, second);
          conflicts.add(new Conflict(first, second, reason, possible, opposed));
        }
      }
    }
    return conflicts;
  }

  /**
   * What two routes share, in words, in the order in which the first passes it. Two arms that stand
   * at one joint and read the opposite ways over it share the joint, though no track.
   */
  private static List<String> shared(Layout layout, Route first, Route second) {
    List<String> shared = new ArrayList<>();
    TrackEnd begins = layout.signal(first.signal()).stands();
    TrackEnd other = layout.signal(second.signal()).stands();
    if (layout.at(begins).equals(new Attachment.Joint(other))) {
      shared.add("joint " + begins.track() + " + " + other.track() + " (opposed)");
    }
    first.tracks().stream()
        .filter(second.tracks()::contains)
        .forEach(t -> shared.add("track " + t));
    for (PointsOnRoute one : first.points()) {
      second.points().stream()
          .filter(p -> p.points().equals(one.points()))
          .forEach(p -> shared.add("points " + one.points() + positions(one, p)));
    }
    first.crossings().stream()
        .distinct()
        .filter(second.crossings()::contains)
        .forEach(c -> shared.add("crossing " + c));
    return shared;
  }

  private static boolean canLieTogether(Route first, Route second) {
    return first.needed().stream()
        .allMatch(
            p ->
                second.needed().stream()
                    .noneMatch(q -> q.points().equals(p.points()) && q.lie() != p.lie()));
  }

  /** Whether both pass the same leg of whatever points both pass; sprung ones may differ. */
  private static boolean byOneLeg(Route first, Route second) {
    return first.points().stream()
        .allMatch(
            p ->
                second.points().stream()
                    .noneMatch(q -> q.points().equals(p.points()) && q.lie() != p.lie()));
  }

  /**
   * Whether two routes that can lie at once pass all that they share in opposite directions, and
   * share no crossing. Points passed the same way lead onto one track at the same end.
   */
  private static boolean opposed(Layout layout, Route first, Route second) {
    Map<String, TrackEnd> one = entered(layout, first);
    Map<String, TrackEnd> other = entered(layout, second);
    return first.crossings().stream().noneMatch(second.crossings()::contains)
        && one.entrySet().stream().noneMatch(e -> e.getValue().equals(other.get(e.getKey())));
  }

  /** The end at which a route enters each track that it passes. */
  private static Map<String, TrackEnd> entered(Layout layout, Route route) {
    Map<String, TrackEnd> entered = new HashMap<>();
    TrackEnd leaves = layout.signal(route.signal()).stands();
    for (String track : route.tracks()) {
      TrackEnd enters =
          Step.outOf(layout, leaves).stream()
              .filter(s -> s.points().isEmpty() || route.points().contains(s.points().get()))
              .map(Step::enters)
              .filter(end -> end.track().equals(track))
              .findFirst()
              .orElseThrow(
                  () -> new IllegalStateException(route.name() + " leads not to " + track));
      entered.put(track, enters);
      leaves = enters.opposite();
    }
    return entered;
  }

  private static String positions(PointsOnRoute one, PointsOnRoute other) {
    if (one.lie() == other.lie()) {
      return "";
    }
    if (one.sprung()) {
      return " (sprung; by both legs)";
    }
    return one.lie() == Lie.NORMAL ? " (N and R)" : " (R and N)";
  }
}
