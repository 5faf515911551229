package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.FlankPaths;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;

/** The instances of `points to points`, in order of the plan; {@code docs/meaning.md} 6.2. */
final class PointsToPointsInstances {
  private final Layout layout;
  private final Frame frame;
  private final List<Route> routes;

  /**
   * The conflicts that levers do not keep from coming about, and all by the names of the routes.
   */
  private final List<Conflict> comeAbout;

  private final Map<Set<String>, Conflict> between = new HashMap<>();
  private final Map<String, List<Route>> needing = new HashMap<>();
  private final Map<String, List<FlankPath>> unguarded = new HashMap<>();

  /**
   * The points of one lever, lying alike.
   *
   * @param points in order of the plan
   * @param over the routes that pass some of them so, by name
   */
  private record Lot(Lever lever, List<String> points, Lie lie, Set<String> over) {}

  private record Pair(Lot one, Lot other, List<Conflict> meetings) {}

  PointsToPointsInstances(
      Layout layout, Frame frame, List<Route> routes, List<Conflict> conflicts) {
    this.layout = layout;
    this.frame = frame;
    this.routes = routes;
    this.comeAbout = conflicts.stream().filter(c -> c.possible() && byLevers(c)).toList();
    conflicts.forEach(c -> between.put(Set.of(c.first().name(), c.second().name()), c));
  }

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
        List<Conflict> meetings = comeAbout.stream().filter(c -> meet(c, one, other)).toList();
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
        routes.stream()
            .filter(r -> passes(r.points(), points, lie))
            .map(Route::name)
            .collect(Collectors.toSet()));
  }

  private static boolean passes(List<PointsOnRoute> passed, List<String> points, Lie lie) {
    return passed.stream().anyMatch(p -> p.lie() == lie && points.contains(p.points()));
  }

  private List<Route> needing(Lot lot) {
    return needing.computeIfAbsent(
        lot.lever().id() + lot.lie(),
        l -> routes.stream().filter(r -> needs(r, lot.points(), lot.lie())).toList());
  }

  /** Passes them so, or cannot do without them so: traps, overlaps, all that protects a flank. */
  private boolean needs(Route route, List<String> points, Lie lie) {
    List<Beyond> overlaps = Beyond.of(layout, route);
    return passes(route.points(), points, lie)
        || route.flankTraps().stream().anyMatch(t -> t.lie() == lie && points.contains(t.points()))
        || !overlaps.isEmpty() && overlaps.stream().allMatch(o -> passes(o.points(), points, lie))
        || unguarded(route).stream()
            .anyMatch(
                f ->
                    f.away().stream().allMatch(p -> p.lie() == lie && points.contains(p.points())));
  }

  /** The flank paths that points alone can protect. */
  private List<FlankPath> unguarded(Route route) {
    return unguarded.computeIfAbsent(
        route.name(),
        name ->
            FlankPaths.of(layout, route, routes).stream()
                .filter(f -> f.guards().isEmpty() && !f.away().isEmpty())
                .toList());
  }

  private static boolean meet(Conflict c, Lot one, Lot other) {
    String first = c.first().name();
    String second = c.second().name();
    return one.over().contains(first) && other.over().contains(second)
        || one.over().contains(second) && other.over().contains(first);
  }

  /** Whether no lever has to work points of the one route one way, and of the other the other. */
  private boolean byLevers(Conflict c) {
    return c.first().points().stream()
        .allMatch(
            p ->
                c.second().points().stream()
                    .noneMatch(
                        q ->
                            p.lie() != q.lie()
                                && frame.ofPoints(p.points()).isPresent()
                                && frame.ofPoints(p.points()).equals(frame.ofPoints(q.points()))));
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
    return needing(one).stream()
        .allMatch(r -> needing(other).stream().allMatch(s -> neverSignalledTogether(r, s)));
  }

  private boolean neverSignalledTogether(Route one, Route other) {
    if (one.equals(other)) {
      return false;
    }
    Conflict conflict = between.get(Set.of(one.name(), other.name()));
    return one.signal().equals(other.signal()) || conflict != null && !switchedOut(conflict);
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
