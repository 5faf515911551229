package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.frame.Detection;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Term;

/** The detectors in the wires of arms; `docs/meaning.md` 2.8. */
record Detectors(Apparatus apparatus, Strokes strokes) {
  /** That the wire of a lever is free; always, where nothing is detected. */
  Term free(String lever) {
    List<String> detected = apparatus.box().frame().connections().detected(lever);
    if (detected.isEmpty()) {
      return Term.TRUE;
    }
    List<Route> routes = routes(lever);
    if (strokes == Strokes.PARTED) {
      return Term.and(detected.stream().map(p -> clears(p, routes)).toList());
    }
    List<Term> all = new ArrayList<>();
    all.add(Term.or(routes.stream().map(apparatus::lies).toList()));
    for (String points : detected) {
      all.add(Term.or(apparatus.lie(points, Lie.NORMAL), apparatus.lie(points, Lie.REVERSE)));
      all.add(boltIn(points));
    }
    return Term.and(all);
  }

  private List<Route> routes(String lever) {
    Lever one = apparatus.box().frame().lever(lever);
    return one.work() instanceof Work.OfSignal works
        ? apparatus.box().routesOf(works.signal()).stream()
            .filter(r -> apparatus.box().giving(r).contains(one))
            .toList()
        : List.of();
  }

  /** One detector by itself. */
  private Term clears(String points, List<Route> routes) {
    List<Term> lies = new ArrayList<>();
    List<Term> others = new ArrayList<>();
    for (Route route : routes) {
      Optional<Lie> needed = needed(route, points);
      if (needed.isPresent()) {
        lies.add(apparatus.lie(points, needed.get()));
      } else {
        others.add(apparatus.lies(route));
      }
    }
    return Term.or(Term.and(Term.or(lies), boltIn(points)), Term.or(others));
  }

  /**
   * That points with a position of their own, and on every route of the arm, stay as the arm needs
   * them while its lever is not N: the locking has to see to the rest.
   */
  List<Clause> clauses() {
    Vocabulary words = apparatus.words();
    List<Clause> clauses = new ArrayList<>();
    for (Detection detection : apparatus.box().frame().connections().detections()) {
      List<Route> routes = routes(detection.lever());
      for (String points : detection.points()) {
        List<Lie> lies = routes.stream().flatMap(r -> needed(r, points).stream()).toList();
        if (lies.size() == routes.size()) {
          Among normal = words.among(Quantity.lever(detection.lever()), Position.N.name());
          apparatus
              .ownLie(points, lies)
              .ifPresent(l -> clauses.add(new Clause(List.of(normal, l))));
        }
      }
    }
    return clauses;
  }

  private static Optional<Lie> needed(Route route, String points) {
    return route.points().stream()
        .filter(p -> p.points().equals(points))
        .map(PointsOnRoute::lie)
        .findFirst();
  }

  private Term boltIn(String points) {
    boolean has =
        apparatus.box().frame().ofBolt(points).isPresent()
            || apparatus.box().frame().ofEconomicalLock(points).isPresent();
    return has ? apparatus.bolted(points) : Term.TRUE;
  }
}
