package lockwright.railway.requirement;

import java.util.List;
import lockwright.railway.frame.Frame;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.Conflicts;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.DistantPaths;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Route;
import lockwright.railway.layout.Routes;
import lockwright.railway.section.Section;

/** Derives from a layout all that follows from it, and the instances of every requirement. */
public final class Derivation {
  private Derivation() {}

  /**
   * Of the frame only these facts are used: which points have a bolt, which a lever works together,
   * which levers are spare, what a closing lever names, and for which routes each of several levers
   * gives an arm.
   *
   * @param sections in order of their names
   */
  public static Derived derive(Layout layout, Frame frame, List<Section> sections) {
    List<Route> routes = Routes.of(layout);
    List<Conflict> conflicts = Conflicts.between(layout, routes);
    List<DistantPath> distantPaths = DistantPaths.of(layout);
    return new Derived(
        routes,
        Routes.missing(layout),
        conflicts,
        distantPaths,
        new Instances(layout, frame, sections, routes, conflicts, distantPaths).all(),
        new PointsToPointsInstances(layout, frame, routes, conflicts).all());
  }
}
