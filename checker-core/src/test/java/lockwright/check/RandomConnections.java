package lockwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lockwright.railway.Box;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Detection;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.locking.Entry;
import lockwright.spec.Span;

/** What lies between lever and ground in a share of the random boxes. */
final class RandomConnections {
  private static final Span HERE = new Span("random", 1, 1);

  private RandomConnections() {}

  /**
   * The same box, in some cases with detection, rods that may break or points worked electrically,
   * which depends on its locking table.
   */
  static Box of(Box box) {
    Random random = new Random(box.locking().stream().map(Entry::words).toList().hashCode());
    List<Detection> detections = new ArrayList<>();
    boolean detected = random.nextInt(4) == 0;
    for (Lever lever : box.frame().levers()) {
      if (detected && lever.work() instanceof Work.OfSignal works) {
        List<String> passed =
            box.routesOf(works.signal()).stream()
                .flatMap(r -> r.needed().stream())
                .map(PointsOnRoute::points)
                .distinct()
                .filter(p -> random.nextInt(3) > 0)
                .toList();
        if (!passed.isEmpty()) {
          detections.add(new Detection(lever.id(), passed, HERE));
        }
      }
    }
    List<String> electric = electric(box, random);
    return box.withConnections(
        new Connections(detections, brokenRods(box, random, detected, electric), electric));
  }

  private static List<String> electric(Box box, Random random) {
    return box.frame().levers().stream()
        .filter(l -> l.work() instanceof Work.OfPoints)
        .map(Lever::id)
        .filter(l -> random.nextInt(10) == 0)
        .toList();
  }

  /** Mostly where there is detection, or all would be broken. */
  private static List<String> brokenRods(
      Box box, Random random, boolean detected, List<String> electric) {
    boolean breaks = box.sections().isEmpty() && random.nextInt(detected ? 2 : 12) == 0;
    return box.layout().points().stream()
        .map(Points::id)
        .filter(p -> box.frame().ofPoints(p).filter(l -> !electric.contains(l.id())).isPresent())
        .filter(p -> breaks && random.nextInt(4) > 0)
        .toList();
  }

  /** Adds what is there to the counts. */
  static void count(Box box, Map<String, Integer> counts) {
    Connections has = box.frame().connections();
    count(!has.detections().isEmpty(), "detection", counts);
    count(!has.brokenRods().isEmpty(), "rods that may break", counts);
    count(!has.detections().isEmpty() && !has.brokenRods().isEmpty(), "both", counts);
    count(!has.electric().isEmpty(), "points worked electrically", counts);
  }

  private static void count(boolean has, String what, Map<String, Integer> counts) {
    if (has) {
      counts.merge(what, 1, Integer::sum);
    }
  }
}
