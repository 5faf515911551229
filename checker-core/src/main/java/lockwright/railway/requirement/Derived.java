package lockwright.railway.requirement;

import java.util.List;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.NotSignalled;
import lockwright.railway.layout.Route;

/**
 * What follows from a layout, for {@link lockwright.railway.Box}; orders as there.
 *
 * @param advice what is advice unless the author asks for it
 */
public record Derived(
    List<Route> routes,
    List<NotSignalled> notSignalled,
    List<Conflict> conflicts,
    List<DistantPath> distantPaths,
    List<Requirement> requirements,
    List<Requirement> advice) {
  public Derived {
    routes = List.copyOf(routes);
    notSignalled = List.copyOf(notSignalled);
    conflicts = List.copyOf(conflicts);
    distantPaths = List.copyOf(distantPaths);
    requirements = List.copyOf(requirements);
    advice = List.copyOf(advice);
  }
}
