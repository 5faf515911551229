package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.FlankPaths;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;

/** The instances of `points to points`, in order of the plan; `docs/meaning.md` 6.2. */
record PointsToPointsInstances(
    Layout layout, Frame frame, List<Route> routes, List<Conflict> conflicts) {

  /**
   * The points of one lever, lying alike.
   *
   * @param points in order of the plan
   * @param over the routes that pass some of them so
   * @param need those, and the routes that need some of them so beside them
   */
  private record Lot(
      Lever lever, List<String> points, Lie lie, List<Route> over, List<Route> need) {}

  private record Pair(Lot one, Lot other, List<Conflict> meetings) {}

  List<Requirement> all() {
    List<Pair> pairs = pairs();
    return pairs.stream()
        .filter(p -> pairs.stream().noneMatch(q -> tooMuch(p, q)))
        .<Requirement>map(
            p ->
                new Requirement.PointsToPoints(
                    p.one().points(),
                    p.one().lie(),
                    p.other().points(),
                    p.other().lie(),
                    p.meetings()))
        .toList();
  }

  private List<Pair> pairs() {
    List<Lot> lots = lots();
    List<Pair> pairs = new ArrayList<>();
    for (Lot one : lots) {
      for (Lot other : lots.subList(lots.indexOf(one) + 1, lots.size())) {
        List<Conflict> meetings = conflicts.stream().filter(c -> meet(c, one, other)).toList();
        boolean atNormal = one.lie() == Lie.NORMAL && other.lie() == Lie.NORMAL;
        if (!atNormal && !ofOneLever(one, other) && !meetings.isEmpty() && apart(one, other)) {
          pairs.add(new Pair(one, other, meetings));
        }
      }
    }
    return pairs;
  }

  private List<Lot> lots() {
    return layout.points().stream()
        .flatMap(p -> frame.ofPoints(p.id()).stream())
        .distinct()
        .flatMap(l -> Stream.of(Lie.values()).map(lie -> lot(l, lie)))
        .toList();
  }

  private Lot lot(Lever lever, Lie lie) {
    List<String> its = ((Work.OfPoints) lever.work()).points();
    List<String> points = layout.points().stream().map(Points::id).filter(its::contains).toList();
    return new Lot(
        lever,
        points,
        lie,
        routes.stream().filter(r -> passes(r.points(), points, lie)).toList(),
        routes.stream().filter(r -> needs(r, points, lie)).toList());
  }

  private static boolean passes(List<PointsOnRoute> passed, List<String> points, Lie lie) {
    return passed.stream().anyMatch(p -> p.lie() == lie && points.contains(p.points()));
  }

  /** Passes them so, or cannot do without them so: traps, overlaps, all that protects a flank. */
  private boolean needs(Route route, List<String> points, Lie lie) {
    List<Beyond> overlaps = Beyond.of(layout, route);
    return passes(route.points(), points, lie)
        || route.flankTraps().stream()
            .anyMatch(t -> t.lie() == lie && points.contains(t.points()))
        || !overlaps.isEmpty()
            && overlaps.stream().allMatch(o -> passes(o.points(), points, lie))
        || FlankPaths.of(layout, route, routes).stream()
            .filter(f -> f.guards().isEmpty() && !f.away().isEmpty())
            .anyMatch(
                f ->
                    f.away().stream()
                        .allMatch(p -> p.lie() == lie && points.contains(p.points())));
  }

  private static boolean meet(Conflict c, Lot one, Lot other) {
    return c.possible()
        && (one.over().contains(c.first()) && other.over().contains(c.second())
            || one.over().contains(c.second()) && other.over().contains(c.first()));
  }

  /** Whether they never lie so together: the ends of a lever, or its two ways. */
  private static boolean ofOneLever(Lot one, Lot other) {
    Optional<String> way = one.lever().otherWay();
    boolean bothOver = one.lie() == Lie.REVERSE && other.lie() == Lie.REVERSE;
    return one.lever().equals(other.lever())
        || bothOver && way.equals(Optional.of(other.lever().id()));
  }

  /** Whether no routes that may be signalled together, and no route alone, need both. */
  private boolean apart(Lot one, Lot other) {
    return one.need().stream()
        .allMatch(r -> other.need().stream().allMatch(s -> neverSignalledTogether(r, s)));
  }

  private boolean neverSignalledTogether(Route one, Route other) {
    return !one.equals(other)
        && (one.signal().equals(other.signal())
            || conflicts.stream().anyMatch(c -> isBetween(c, one, other) && !switchedOut(c)));
  }

  private static boolean isBetween(Conflict c, Route one, Route other) {
    return c.first().equals(one) && c.second().equals(other)
        || c.first().equals(other) && c.second().equals(one);
  }

  private boolean switchedOut(Conflict c) {
    return c.opposed() && frame.closing(c.first().signal(), c.second().signal()).isPresent();
  }

  /**
   * Whether two pairs would lock one lever both ways, and by points that may have to lie so
   * together.
   */
  private boolean tooMuch(Pair one, Pair other) {
    return squeeze(one.one(), other.one(), one.other(), other.other())
        || squeeze(one.one(), other.other(), one.other(), other.one())
        || squeeze(one.other(), other.one(), one.one(), other.other())
        || squeeze(one.other(), other.other(), one.one(), other.one());
  }

  private boolean squeeze(Lot held, Lot too, Lot by, Lot and) {
    return held.lever().equals(too.lever())
        && held.lie() != too.lie()
        && (by.lever().equals(and.lever()) ? by.lie() == and.lie() : !apart(by, and));
  }
}
