package lockwright.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Predicate;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.FlankTrap;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/**
 * Entries that the end of a breach suggests, the likeliest first: under the lever of the signal,
 * that the points it needs reversed release it, that it locks those it needs normal, that it locks
 * them both ways. An entry that would bar another route of the arm is given conditions that tell
 * the routes apart, or left out.
 */
final class Candidates {
  private final Box box;
  private final SortedMap<String, String> end;
  private final Optional<Event> last;
  private final List<Entry> first = new ArrayList<>();
  private final List<Entry> then = new ArrayList<>();

  Candidates(Box box, Played breach) {
    this.box = box;
    int steps = breach.steps().size();
    this.end = steps == 0 ? breach.beginning() : breach.steps().get(steps - 1).after();
    this.last = steps == 0 ? Optional.empty() : Optional.of(breach.steps().get(steps - 1).event());
  }

  List<Entry> of(Requirement requirement) {
    if (requirement instanceof Requirement.PointsSet r) {
      byNearness(r.routes()).forEach(this::position);
    } else if (requirement instanceof Requirement.PointsBolted r) {
      byNearness(r.routes()).forEach(route -> bolt(route, r.points()));
    } else if (requirement instanceof Requirement.BoltAndPointsAgree r) {
      boltAgrees(r.points());
    } else if (requirement instanceof Requirement.RouteHeld r) {
      last.ifPresent(event -> held(r.route(), event));
    } else if (requirement instanceof Requirement.PointsHeldInRear r) {
      inRear(r.signal(), r.points());
    } else if (requirement instanceof Requirement.FlankProtected r) {
      byNearness(r.routes()).forEach(route -> flank(r, route));
    } else if (requirement instanceof Requirement.OverlapSet r) {
      r.permitted()
          .forEach(
              o ->
                  o.points().stream()
                      .filter(p -> !lies(p.points(), p.lie()))
                      .forEach(p -> points(List.of(r.route()), r.route(), p.points(), p.lie())));
    } else if (requirement instanceof Requirement.OverlapsApart r) {
      overlapsApart(r);
    } else if (requirement instanceof Requirement.NoConflict r) {
      noConflict(r);
    } else if (requirement instanceof Requirement.BoxClosed r) {
      r.signals().stream()
          .flatMap(s -> box.frame().giving(s).stream())
          .filter(l -> !"R".equals(end.get("lever " + l.id())))
          .forEach(
              l ->
                  first.add(
                      entry(
                          Entry.Kind.RELEASED_BY,
                          box.frame().lever(r.lever()),
                          List.of(l.id()),
                          List.of())));
    } else if (requirement instanceof Requirement.DistantFollows r) {
      distant(r);
    } else if (requirement instanceof Requirement.ReleaseHome r) {
      byNearness(r.routes()).forEach(route -> release(route, r.groundFrame()));
    } else if (requirement instanceof Requirement.RoadClosed r) {
      byNearness(r.routes()).forEach(route -> gates(route, r.levelCrossing()));
    } else if (requirement instanceof Requirement.SectionSignalsApart r) {
      signals(r.first(), r.second(), List.of());
    } else if (requirement instanceof Requirement.PointsToPoints r) {
      pointsToPoints(r);
    }
    List<Entry> all = new ArrayList<>(first);
    all.addAll(then);
    all.removeIf(c -> !sensible(c) || box.locking().stream().anyMatch(e -> stands(e, c)));
    return all;
  }

  private static boolean stands(Entry e, Entry c) {
    return e.kind() == c.kind()
        && e.lever().equals(c.lever())
        && e.others().equals(c.others())
        && e.when().equals(c.when());
  }

  /** Not a lock on itself, nor a condition on a lever that it locks. */
  private static boolean sensible(Entry c) {
    return !c.others().contains(c.lever())
        && Lever.otherWay(c.lever()).filter(c.others()::contains).isEmpty()
        && c.when().stream()
            .noneMatch(w -> w.lever().equals(c.lever()) || c.others().contains(w.lever()));
  }

  /** The routes, those first that lack the fewest points. */
  private List<Route> byNearness(List<Route> routes) {
    return routes.stream()
        .sorted(
            Comparator.comparingLong(
                r -> r.points().stream().filter(p -> !lies(p.points(), p.lie())).count()))
        .toList();
  }

  private boolean lies(String points, Lie lie) {
    String there = lie == Lie.NORMAL ? "N" : "R";
    if (box.layout().sprung(points)) {
      return true; // Nothing is asked of their lie, or that they lie for their trap.
    }
    String rod = end.getOrDefault(Quantity.rod(points).key(), "whole");
    if (!rod.equals("whole")) {
      return rod.endsWith(there);
    }
    return there.equals(
        end.getOrDefault(Quantity.points(points).key(), end.get(mover(points).key())));
  }

  private Quantity mover(String points) {
    return box.frame()
        .ofPoints(points)
        .map(l -> Quantity.lever(l.id()))
        .orElse(Quantity.points(points));
  }

  private void position(Route route) {
    for (PointsOnRoute p : route.points()) {
      if (!lies(p.points(), p.lie())) {
        points(route, p.points(), p.lie());
      }
    }
    for (FlankTrap t : route.flankTraps()) {
      if (!lies(t.points(), t.lie())) {
        points(route, t.points(), t.lie());
      }
    }
  }

  /** The signal of the route needs the points so. */
  private void points(Route route, String points, Lie lie) {
    GroundFrame groundFrame = box.layout().pointsOfGroundFrames().get(points);
    if (groundFrame != null) {
      release(route, groundFrame.id());
      return;
    }
    if (box.layout().byHand(points)) {
      bolt(route, points);
      return;
    }
    Optional<Lever> lever = box.frame().ofPoints(points);
    if (lever.isEmpty()) {
      return;
    }
    String b = lever.get().id();
    Entry.Kind kind = lie == Lie.REVERSE ? Entry.Kind.RELEASED_BY : Entry.Kind.LOCKS;
    unlessBarring(route, o -> needs(o, points, lie), b)
        .ifPresent(when -> add(first, kind, under(route), List.of(b), when));
    unlessBarring(route, o -> needs(o, points, lie) || needs(o, points, lie.other()), b)
        .ifPresent(when -> add(then, Entry.Kind.LOCKS_BOTH_WAYS, under(route), List.of(b), when));
  }

  private static boolean needs(Route route, String points, Lie lie) {
    return route.points().stream().anyMatch(p -> p.points().equals(points) && p.lie() == lie)
        || route.flankTraps().contains(new FlankTrap(points, lie));
  }

  private void bolt(Route route, String points) {
    box.frame()
        .ofBolt(points)
        .ifPresent(
            bolt ->
                unlessBarring(
                        route,
                        o -> o.points().stream().anyMatch(p -> p.points().equals(points)),
                        bolt.id())
                    .ifPresent(when -> bolt(under(route), bolt, when)));
  }

  /** The signal needs the bolt in. */
  private void bolt(List<Lever> under, Lever bolt, List<Entry.Condition> when) {
    boolean in = ((Work.OfBolt) bolt.work()).normallyIn();
    Entry.Kind kind = in ? Entry.Kind.LOCKS : Entry.Kind.RELEASED_BY;
    add(first, kind, under, List.of(bolt.id()), when);
    add(then, Entry.Kind.LOCKS_BOTH_WAYS, under, List.of(bolt.id()), when);
  }

  private void boltAgrees(String points) {
    Optional<Lever> bolt = box.frame().ofBolt(points);
    Optional<Lever> lever = box.frame().ofPoints(points);
    if (bolt.isPresent() && lever.isPresent()) {
      Entry.Kind kind =
          ((Work.OfBolt) bolt.get().work()).normallyIn()
              ? Entry.Kind.WHILE_NORMAL_LOCKS_BOTH_WAYS
              : Entry.Kind.LOCKS_BOTH_WAYS;
      first.add(entry(kind, bolt.get(), List.of(lever.get().id()), List.of()));
    }
  }

  /** What moved last must be held while the route is signalled. */
  private void held(Route route, Event event) {
    if (event instanceof Event.PointsMove move) {
      GroundFrame groundFrame = box.layout().pointsOfGroundFrames().get(move.points());
      if (groundFrame != null) {
        release(route, groundFrame.id());
      } else {
        moved(route, List.of(move.points()));
      }
      return;
    }
    if (event instanceof Event.GatesMove move) {
      gates(route, move.levelCrossing());
      return;
    }
    if (!(event instanceof Event.LeverMoves lever)) {
      return; // A token at a lock, which no entry holds.
    }
    Work work = box.frame().lever(lever.lever()).work();
    if (work instanceof Work.OfPoints moved) {
      moved(route, moved.points());
    } else if (work instanceof Work.OfBolt moved) {
      route.points().stream()
          .map(PointsOnRoute::points)
          .filter(moved.points()::contains)
          .forEach(p -> bolt(route, p));
    } else if (work instanceof Work.OfRelease moved) {
      release(route, moved.groundFrame());
    } else if (work instanceof Work.OfGates moved) {
      gates(route, moved.levelCrossing());
    } else if (work instanceof Work.OfGateLock moved) {
      gates(route, moved.levelCrossing());
    }
  }

  /** Those of the points that are of the route are to be held. */
  private void moved(Route route, List<String> moved) {
    for (PointsOnRoute p : route.points()) {
      if (moved.contains(p.points())) {
        points(route, p.points(), p.lie());
      }
    }
    for (FlankTrap t : route.flankTraps()) {
      if (moved.contains(t.points())) {
        points(route, t.points(), t.lie());
      }
    }
  }

  /** The signal of the route needs the release home. */
  private void release(Route route, String groundFrame) {
    List<String> its = box.layout().groundFrame(groundFrame).points();
    Optional<String> release = box.frame().ofRelease(groundFrame).map(Lever::id);
    if (release.isEmpty()) {
      return; // A token releases it, and no entry locks a token.
    }
    List<String> locked = List.of(release.get());
    unlessBarring(
            route, o -> o.points().stream().anyMatch(p -> its.contains(p.points())), release.get())
        .ifPresent(when -> add(first, Entry.Kind.LOCKS, under(route), locked, when));
  }

  /** The signal of the route needs the gates locked across the road. */
  private void gates(Route route, String levelCrossing) {
    Lever lever = box.frame().ofLevelCrossing(levelCrossing);
    boolean atNormal =
        lever.work() instanceof Work.OfGates gates
            ? gates.normallyAcrossRoad()
            : ((Work.OfGateLock) lever.work()).normallyIn();
    Entry.Kind kind = atNormal ? Entry.Kind.LOCKS : Entry.Kind.RELEASED_BY;
    unlessBarring(route, box.layout().levelCrossing(levelCrossing)::isOn, lever.id())
        .ifPresent(when -> add(first, kind, under(route), List.of(lever.id()), when));
  }

  /** The arm holds the points as they lie, or the release of their ground frame at home. */
  private void inRear(String signal, String points) {
    GroundFrame ground = box.layout().pointsOfGroundFrames().get(points);
    if (ground != null) {
      box.frame()
          .ofRelease(ground.id())
          .ifPresent(l -> add(first, Entry.Kind.LOCKS, under(signal), List.of(l.id()), List.of()));
    } else if (box.layout().byHand(points)) {
      box.frame().ofBolt(points).ifPresent(b -> bolt(under(signal), b, List.of()));
    } else {
      box.frame()
          .ofPoints(points)
          .ifPresent(
              l ->
                  add(
                      first,
                      Entry.Kind.LOCKS_BOTH_WAYS,
                      under(signal),
                      List.of(l.id()),
                      List.of()));
    }
  }

  /** The signal of the route needs points on a path away, or an arm that guards it at danger. */
  private void flank(Requirement.FlankProtected r, Route route) {
    for (Requirement.FlankProtected.Flank flank : r.flanks()) {
      if (flank.route().equals(route)) {
        for (FlankPath path : flank.paths()) {
          path.away().forEach(p -> points(r.routes(), route, p.points(), p.lie()));
          path.guards().stream()
              .filter(this::off)
              .forEach(
                  s ->
                      unlessBarring(route, r.routes()::contains, "")
                          .ifPresent(when -> signals(route.signal(), s, when)));
        }
      }
    }
  }

  /** The signal of the route needs points beside or beyond it so, for these routes alone. */
  private void points(List<Route> routes, Route route, String points, Lie lie) {
    GroundFrame ground = box.layout().pointsOfGroundFrames().get(points);
    Optional<Lever> lever =
        ground == null ? box.frame().ofPoints(points) : box.frame().ofRelease(ground.id());
    Entry.Kind kind =
        ground == null && lie == Lie.REVERSE ? Entry.Kind.RELEASED_BY : Entry.Kind.LOCKS;
    lever.ifPresent(
        l ->
            unlessBarring(route, routes::contains, l.id())
                .ifPresent(when -> add(first, kind, under(route), List.of(l.id()), when)));
  }

  private void overlapsApart(Requirement.OverlapsApart r) {
    for (Requirement.OverlapsApart.Pair pair : r.pairs()) {
      Optional<List<Entry.Condition>> when =
          unlessBarring(
              pair.first(), o -> r.pairs().stream().anyMatch(p -> p.first().equals(o)), "");
      when.ifPresent(w -> signals(r.first(), r.second(), w));
    }
  }

  private boolean off(String signal) {
    return !over(box.frame().giving(signal)).isEmpty();
  }

  private void noConflict(Requirement.NoConflict r) {
    List<Entry.Condition> open =
        r.closing().map(l -> new Entry.Condition(l, Position.N)).stream().toList();
    if (r.always()) {
      signals(r.first(), r.second(), open);
      return;
    }
    for (Conflict c : r.conflicts()) {
      if (c.first().points().stream().allMatch(p -> lies(p.points(), p.lie()))
          && c.second().points().stream().allMatch(p -> lies(p.points(), p.lie()))) {
        Optional<List<Entry.Condition>> when =
            unlessBarring(c.first(), o -> conflict(r, o, c.second()), "");
        Optional<List<Entry.Condition>> and =
            unlessBarring(c.second(), o -> conflict(r, c.first(), o), "");
        if (when.isPresent() && and.isPresent()) {
          List<Entry.Condition> all = new ArrayList<>(c.opposed() ? open : List.of());
          when.get().stream().filter(w -> !all.contains(w)).forEach(all::add);
          and.get().stream().filter(w -> !all.contains(w)).forEach(all::add);
          signals(r.first(), r.second(), all);
        }
      }
    }
  }

  private static boolean conflict(Requirement.NoConflict r, Route first, Route second) {
    return r.conflicts().stream()
        .anyMatch(c -> c.first().equals(first) && c.second().equals(second));
  }

  private void signals(String signal, String other, List<Entry.Condition> when) {
    box.frame()
        .giving(other)
        .forEach(b -> add(first, Entry.Kind.LOCKS, under(signal), List.of(b.id()), when));
  }

  /** Reversed, the one is released by the other where that should then be reversed too. */
  private void pointsToPoints(Requirement.PointsToPoints r) {
    Lever one = box.frame().ofPoints(r.first().get(0)).orElseThrow();
    Lever other = box.frame().ofPoints(r.second().get(0)).orElseThrow();
    boolean swap = r.firstLie() == Lie.NORMAL;
    boolean both = r.firstLie() == r.secondLie();
    first.add(
        entry(
            both ? Entry.Kind.LOCKS : Entry.Kind.RELEASED_BY,
            swap ? other : one,
            List.of(swap ? one.id() : other.id()),
            List.of()));
  }

  private void distant(Requirement.DistantFollows r) {
    String signal = r.path().distant();
    for (int i = 0; i < r.path().posts().size(); i++) {
      List<String> levers = admitting(r.path().posts().get(i), r.path().beyond().get(i));
      if (!levers.isEmpty() && levers.stream().noneMatch(this::reversed)) {
        add(first, Entry.Kind.RELEASED_BY, under(signal), levers, List.of());
      }
    }
    for (PointsOnRoute p : r.path().facing()) {
      if (!lies(p.points(), p.lie())) {
        Entry.Kind kind = p.lie() == Lie.REVERSE ? Entry.Kind.RELEASED_BY : Entry.Kind.LOCKS;
        box.frame()
            .ofPoints(p.points())
            .ifPresent(b -> add(first, kind, under(signal), List.of(b.id()), List.of()));
      }
    }
    for (String points : r.passenger()) {
      box.frame().ofBolt(points).ifPresent(b -> bolt(under(signal), b, List.of()));
    }
  }

  /**
   * Conditions under which an entry for this route bars no other route of its arm: on points that
   * the other needs the other way. None are needed where the entry suits all routes; empty where
   * nothing tells a route apart.
   */
  private Optional<List<Entry.Condition>> unlessBarring(
      Route route, Predicate<Route> suits, String notLever) {
    List<Entry.Condition> when = new ArrayList<>();
    for (Route other : box.routesOf(route.signal())) {
      if (!suits.test(other) && box.giving(other).stream().anyMatch(box.giving(route)::contains)) {
        Optional<Entry.Condition> apart = apart(route, other, notLever);
        if (apart.isEmpty()) {
          return Optional.empty();
        }
        if (!when.contains(apart.get())) {
          when.add(apart.get());
        }
      }
    }
    return Optional.of(when);
  }

  private Optional<Entry.Condition> apart(Route route, Route other, String notLever) {
    for (PointsOnRoute p : route.points()) {
      Optional<Lever> lever = box.frame().ofPoints(p.points());
      if (needs(other, p.points(), p.lie().other())
          && lever.isPresent()
          && !lever.get().id().equals(notLever)) {
        Position position = p.lie() == Lie.NORMAL ? Position.N : Position.R;
        return Optional.of(new Entry.Condition(lever.get().id(), position));
      }
    }
    return Optional.empty();
  }

  private void add(
      List<Entry> to,
      Entry.Kind kind,
      List<Lever> under,
      List<String> others,
      List<Entry.Condition> when) {
    for (Lever a : under) {
      Entry entry = entry(kind, a, others, when);
      if (!to.contains(entry)) {
        to.add(entry);
      }
    }
  }

  /** The lever of the arm; of several those that are over. */
  private List<Lever> under(String signal) {
    List<Lever> giving = box.frame().giving(signal);
    return giving.size() == 1 ? giving : over(giving);
  }

  /** The same, those that are for the route if there are any. */
  private List<Lever> under(Route route) {
    List<Lever> its = over(box.giving(route));
    return its.isEmpty() ? under(route.signal()) : its;
  }

  private List<Lever> over(List<Lever> levers) {
    return levers.stream().filter(l -> !"N".equals(end.get(Quantity.lever(l.id()).key()))).toList();
  }

  /** The levers that are to be over for a post to be off along a path: of slotted ones, one. */
  private List<String> admitting(List<String> post, List<String> beyond) {
    List<String> levers = new ArrayList<>();
    for (String signal : post) {
      List<String> its =
          box.frame().giving(signal).stream()
              .filter(l -> l.work() instanceof Work.OfSignal w && w.isFor(beyond))
              .map(Lever::id)
              .toList();
      boolean slotted = box.frame().slotted(signal);
      levers.addAll(slotted ? its.stream().filter(l -> !reversed(l)).limit(1).toList() : its);
    }
    return levers;
  }

  private boolean reversed(String lever) {
    return "R".equals(end.get(Quantity.lever(lever).key()));
  }

  private static Entry entry(
      Entry.Kind kind, Lever a, List<String> others, List<Entry.Condition> when) {
    return new Entry(kind, a.id(), others, when, false, "", a.at());
  }
}
