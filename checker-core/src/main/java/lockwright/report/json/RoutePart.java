package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import java.util.List;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;

/** A route, by its name. */
record RoutePart(
    String name,
    String signal,
    List<String> tracks,
    List<Passed> points,
    List<String> crossings,
    End end,
    List<Trap> flankTraps) {

  /**
   * Points passed; how they must lie: "normal" or "reverse".
   *
   * @param sprung true, where they are sprung, and the lie is only the leg passed; or null
   */
  record Passed(String points, String lie, boolean facing, Boolean sprung) {
    static List<Passed> all(List<PointsOnRoute> points) {
      return points.stream()
          .map(p -> new Passed(p.points(), Words.of(p.lie()), p.facing(), p.sprung() ? true : null))
          .toList();
    }
  }

  record Trap(String points, String lie) {}

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  sealed interface End {}

  @JsonTypeName("signals")
  record AtSignals(List<String> signals) implements End {}

  @JsonTypeName("limit of shunt")
  record AtLimitOfShunt() implements End {}

  @JsonTypeName("limit")
  record AtLimit(String limit) implements End {}

  @JsonTypeName("section")
  record InSection(String section) implements End {}

  static RoutePart of(Route route) {
    return new RoutePart(
        route.name(),
        route.signal(),
        route.tracks(),
        Passed.all(route.points()),
        route.crossings(),
        end(route.end()),
        route.flankTraps().stream().map(t -> new Trap(t.points(), Words.of(t.lie()))).toList());
  }

  private static End end(Route.End end) {
    if (end instanceof Route.End.AtSignals e) {
      return new AtSignals(e.signals());
    } else if (end instanceof Route.End.AtLimit e) {
      return new AtLimit(e.limit().words());
    } else if (end instanceof Route.End.InSection e) {
      return new InSection(e.section());
    }
    return new AtLimitOfShunt();
  }
}
