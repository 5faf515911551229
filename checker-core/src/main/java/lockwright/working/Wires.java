package lockwright.working;

import static java.util.Collections.disjoint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Route;

/** What detectors do to the wires of arms: 2.8 of {@code docs/meaning.md}. */
final class Wires {
  private final Box box;
  private final Apparatus apparatus;
  private final Strokes strokes;

  Wires(Box box, Apparatus apparatus, Strokes strokes) {
    this.box = box;
    this.apparatus = apparatus;
    this.strokes = strokes;
  }

  /** What a lever needs, besides all else, to leave N. */
  List<Need> needs(Lever lever) {
    List<Need> needs = new ArrayList<>();
    if (lever.work() instanceof Work.OfSignal works) {
      List<Route> routes =
          box.routesOf(works.signal()).stream()
              .filter(r -> works.ways().isEmpty() || !disjoint(r.tracks(), works.ways()))
              .toList();
      for (String points : box.frame().connections().detected(lever.id())) {
        needs.add(
            Need.rule(
                strokes == Strokes.PARTED ? lets(points, routes) : home(points),
                "the detector of points " + points + " bars the wire of signal " + works.signal()));
      }
      if (strokes == Strokes.WHOLE && !needs.isEmpty()) {
        needs.add(
            Need.rule(
                apparatus.oneLies(routes),
                "the detectors bar the wire of signal "
                    + works.signal()
                    + ": no route of it lies"));
      }
    }
    return needs;
  }

  /** By what allows most: as some route needs them and bolted, or another route lies. */
  private Condition lets(String points, List<Route> routes) {
    List<Condition> one = new ArrayList<>();
    for (Lie lie : Lie.values()) {
      if (routes.stream().anyMatch(r -> passes(r, points, lie))) {
        one.add(Condition.all(apparatus.lies(points, lie), boltNotMissing(points)));
      }
    }
    routes.stream()
        .filter(r -> Stream.of(Lie.values()).noneMatch(l -> passes(r, points, l)))
        .forEach(r -> one.add(apparatus.lies(r)));
    return Condition.any(one);
  }

  private static boolean passes(Route route, String points, Lie lie) {
    return route.points().stream().anyMatch(p -> p.points().equals(points) && p.lie() == lie);
  }

  /** By what allows least: at one of their ends, and bolted. */
  private Condition home(String points) {
    return Condition.all(
        Condition.any(apparatus.lies(points, Lie.NORMAL), apparatus.lies(points, Lie.REVERSE)),
        boltNotMissing(points));
  }

  private Condition boltNotMissing(String points) {
    boolean none =
        box.frame().ofBolt(points).isEmpty() && box.frame().ofEconomicalLock(points).isEmpty();
    return none ? Condition.TRUE : apparatus.bolted(points);
  }
}
