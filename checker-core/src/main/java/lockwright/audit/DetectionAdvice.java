package lockwright.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Detection;
import lockwright.railway.frame.Lever;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.working.Working;

/** Which points an arm would have to detect to stop a sequence; tried by playing it again. */
final class DetectionAdvice {
  private DetectionAdvice() {}

  static Optional<MissingEntry> of(Box box, String signal, Played breach) {
    return box.frame().giving(signal).stream()
        .flatMap(l -> of(box, l, box.routesOf(signal), breach).stream())
        .findFirst();
  }

  private static Optional<MissingEntry> of(
      Box box, Lever lever, List<Route> routes, Played breach) {
    List<String> already = box.frame().connections().detected(lever.id());
    List<String> others =
        routes.stream()
            .filter(r -> box.giving(r).contains(lever))
            .flatMap(r -> r.needed().stream())
            .map(PointsOnRoute::points)
            .distinct()
            .filter(p -> !already.contains(p))
            .toList();
    for (String points : others) {
      Working with = Working.parted(detecting(box, lever, points));
      Played again = Played.of(with, breach.run());
      if (!again.followsRules()) {
        return Optional.of(
            new MissingEntry(
                Optional.empty(),
                "the wire of lever " + lever.id() + " detects points " + points,
                MissingEntry.stopsAt(again)));
      }
    }
    return Optional.empty();
  }

  private static Box detecting(Box box, Lever lever, String points) {
    Connections now = box.frame().connections();
    List<Detection> detections = new ArrayList<>(now.detections());
    detections.add(new Detection(lever.id(), List.of(points), lever.at()));
    return box.withConnections(new Connections(detections, now.brokenRods(), now.electric()));
  }
}
