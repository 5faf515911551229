package lockwright.report.json;

import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.layout.Beyond;

/** An overlap permitted beyond a route, with the points that must lie for it. */
record OverlapPart(
    String route, List<String> tracks, List<RoutePart.Passed> points, List<String> crossings) {
  static List<OverlapPart> of(Box box) {
    return box.routes().stream()
        .flatMap(r -> Beyond.of(box.layout(), r).stream().map(b -> of(r.name(), b)))
        .toList();
  }

  private static OverlapPart of(String route, Beyond beyond) {
    return new OverlapPart(
        route, beyond.tracks(), RoutePart.Passed.all(beyond.points()), beyond.crossings());
  }
}
