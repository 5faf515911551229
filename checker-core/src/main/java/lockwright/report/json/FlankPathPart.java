package lockwright.report.json;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.requirement.Requirement;

/**
 * A way by which a vehicle could come into a route from the side.
 *
 * @param requirement the instance that asks for its protection, by its id
 * @param joins the points or the crossing where it comes into the route, in words
 * @param notEnough arms at its start that do not guard it, since a siding or goods line joins a
 *     passenger line
 */
record FlankPathPart(
    String requirement,
    String route,
    String from,
    String joins,
    List<RoutePart.Trap> away,
    List<String> guards,
    List<String> notEnough) {

  static List<FlankPathPart> of(Box box) {
    List<FlankPathPart> all = new ArrayList<>();
    List<Requirement> requirements = new ArrayList<>(box.requirements());
    box.exempted().forEach(e -> requirements.add(e.requirement()));
    for (Requirement requirement : requirements) {
      if (requirement instanceof Requirement.FlankProtected r) {
        r.flanks().stream()
            .flatMap(f -> f.paths().stream().map(p -> of(r, f.route().name(), p)))
            .forEach(all::add);
      }
    }
    return all;
  }

  private static FlankPathPart of(Requirement r, String route, FlankPath path) {
    return new FlankPathPart(
        r.id(),
        route,
        path.from(),
        path.joins(),
        path.away().stream().map(p -> new RoutePart.Trap(p.points(), Words.of(p.lie()))).toList(),
        path.guards(),
        path.notEnough());
  }
}
