package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.FlankPaths;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Route;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.Track;

/** The instances of `flank protected`, in order of the signals, then of the tracks of the plan. */
final class FlankInstances {
  private FlankInstances() {}

  static List<Requirement> of(Layout layout, List<Route> routes) {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      List<Requirement.FlankProtected.Flank> flanks =
          routes.stream()
              .filter(r -> r.signal().equals(signal.id()))
              .map(r -> new Requirement.FlankProtected.Flank(r, FlankPaths.of(layout, r, routes)))
              .toList();
      for (Track track : layout.tracks()) {
        List<Requirement.FlankProtected.Flank> here =
            flanks.stream()
                .map(f -> from(f, track.id()))
                .filter(f -> !f.paths().isEmpty())
                .toList();
        if (!here.isEmpty()) {
          found.add(new Requirement.FlankProtected(signal.id(), track.id(), here));
        }
      }
    }
    return found;
  }

  private static Requirement.FlankProtected.Flank from(
      Requirement.FlankProtected.Flank flank, String track) {
    List<FlankPath> paths = flank.paths().stream().filter(p -> p.from().equals(track)).toList();
    return new Requirement.FlankProtected.Flank(flank.route(), paths);
  }
}
