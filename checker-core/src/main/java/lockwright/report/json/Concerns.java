package lockwright.report.json;

import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;

/** What a requirement instance speaks of, by ids and names. */
record Concerns(
    List<String> signals,
    List<String> routes,
    List<String> points,
    List<String> levers,
    List<String> groundFrames,
    List<String> levelCrossings,
    List<String> sections) {

  private static final List<String> NONE = List.of();

  static Concerns of(Requirement requirement) {
    if (requirement instanceof Requirement.PointsSet r) {
      List<String> levers = r.lever().stream().toList();
      return new Concerns(List.of(r.signal()), names(r.routes()), NONE, levers, NONE, NONE, NONE);
    } else if (requirement instanceof Requirement.PointsBolted r) {
      return of(List.of(r.signal()), names(r.routes()), List.of(r.points()));
    } else if (requirement instanceof Requirement.BoltAndPointsAgree r) {
      return of(NONE, NONE, List.of(r.points()));
    } else if (requirement instanceof Requirement.RouteHeld r) {
      return of(r.route());
    } else if (requirement instanceof Requirement.PointsHeldInRear r) {
      return of(List.of(r.signal()), NONE, List.of(r.points()));
    } else if (requirement instanceof Requirement.FlankProtected r) {
      return of(List.of(r.signal()), names(r.routes()), NONE);
    } else if (requirement instanceof Requirement.NoConflict r) {
      Stream<Route> routes =
          r.conflicts().stream().flatMap(c -> Stream.of(c.first(), c.second())).distinct();
      return new Concerns(
          List.of(r.first(), r.second()),
          names(routes.toList()),
          NONE,
          r.closing().stream().toList(),
          NONE,
          NONE,
          NONE);
    } else if (requirement instanceof Requirement.OverlapSet r) {
      return of(r.route());
    } else if (requirement instanceof Requirement.OverlapsApart r) {
      Stream<Route> routes =
          r.pairs().stream().flatMap(p -> Stream.of(p.first(), p.second())).distinct();
      return of(List.of(r.first(), r.second()), names(routes.toList()), NONE);
    } else if (requirement instanceof Requirement.DistantFollows r) {
      Stream<String> arms = r.path().posts().stream().flatMap(List::stream);
      return of(
          Stream.concat(Stream.of(r.path().distant()), arms).distinct().toList(),
          NONE,
          r.path().facing().stream().map(PointsOnRoute::points).toList());
    } else if (requirement instanceof Requirement.ReleaseHome r) {
      return new Concerns(
          List.of(r.signal()), names(r.routes()), NONE, NONE, List.of(r.groundFrame()), NONE, NONE);
    } else if (requirement instanceof Requirement.RoadClosed r) {
      return new Concerns(
          List.of(r.signal()),
          names(r.routes()),
          NONE,
          NONE,
          NONE,
          List.of(r.levelCrossing()),
          NONE);
    } else if (requirement instanceof Requirement.BoxClosed r) {
      return new Concerns(r.signals(), NONE, NONE, List.of(r.lever()), NONE, NONE, NONE);
    } else if (requirement instanceof Requirement.OneTokenOut r) {
      return ofSection(r.section(), NONE);
    } else if (requirement instanceof Requirement.SectionSignalEarned r) {
      return ofSection(r.section(), List.of(r.signal()));
    } else if (requirement instanceof Requirement.SectionSignalsApart r) {
      return ofSection(r.section(), List.of(r.first(), r.second()));
    } else if (requirement instanceof Requirement.SidingLocked r) {
      return new Concerns(
          NONE, NONE, NONE, NONE, List.of(r.groundFrame()), NONE, List.of(r.section()));
    } else if (requirement instanceof Requirement.PointsToPoints r) {
      Stream<Route> routes =
          r.meetings().stream().flatMap(c -> Stream.of(c.first(), c.second())).distinct();
      return of(
          NONE,
          names(routes.toList()),
          Stream.concat(r.first().stream(), r.second().stream()).toList());
    } else if (requirement instanceof Requirement.RouteCanBeCleared r) {
      return of(r.route());
    } else if (requirement instanceof Requirement.FrameCanBeRestored r) {
      return ofLevers(r.levers());
    }
    String lever = ((Requirement.LeverCanBeMoved) requirement).lever();
    return ofLevers(List.of(lever));
  }

  private static Concerns ofLevers(List<String> levers) {
    return new Concerns(NONE, NONE, NONE, levers, NONE, NONE, NONE);
  }

  private static Concerns of(List<String> signals, List<String> routes, List<String> points) {
    return new Concerns(signals, routes, points, NONE, NONE, NONE, NONE);
  }

  private static Concerns of(Route route) {
    return of(List.of(route.signal()), List.of(route.name()), NONE);
  }

  private static Concerns ofSection(String section, List<String> signals) {
    return new Concerns(signals, NONE, NONE, NONE, NONE, NONE, List.of(section));
  }

  private static List<String> names(List<Route> routes) {
    return routes.stream().map(Route::name).toList();
  }
}
