package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.FlankPoints;
import lockwright.railway.requirement.Requirement;

/** 1.10 and 6 of {@code docs/meaning.md}: a vehicle could come into a signalled route. */
final class Flanks {
  private final Apparatus apparatus;

  Flanks(Apparatus apparatus) {
    this.apparatus = apparatus;
  }

  Condition broken(Requirement.FlankProtected r) {
    List<Condition> routes = new ArrayList<>();
    for (Requirement.FlankProtected.Flank flank : r.flanks()) {
      routes.add(
          Condition.all(
              apparatus.lies(flank.route()),
              Condition.any(flank.paths().stream().map(this::letsThrough).toList())));
    }
    return Condition.all(apparatus.off(r.signal()), Condition.any(routes));
  }

  /**
   * No points on the path surely lie away, and an arm that guards it may be off, if there is any.
   */
  private Condition letsThrough(FlankPath path) {
    List<Condition> all = new ArrayList<>();
    for (FlankPoints points : path.away()) {
      all.add(Condition.not(apparatus.lies(points.points(), points.lie())));
    }
    if (!path.guards().isEmpty()) {
      all.add(Condition.any(path.guards().stream().map(apparatus::off).toList()));
    }
    return Condition.all(all);
  }
}
