package lockwright.railway.frame;

import java.util.List;

/**
 * What lies between levers and what they work, where it is more than a rod or a wire in order;
 * `docs/meaning.md` 2.8.
 *
 * @param detections what a lever detects, in one or several
 * @param brokenRods points whose rod may break, in the order written; each is worked by a lever
 * @param electric levers that work their points electrically, and are checked until these answer
 */
public record Connections(
    List<Detection> detections, List<String> brokenRods, List<String> electric) {
  /** A rod or a wire in order to everything. */
  public static final Connections PLAIN = new Connections(List.of(), List.of(), List.of());

  public Connections {
    detections = List.copyOf(detections);
    brokenRods = List.copyOf(brokenRods);
    electric = List.copyOf(electric);
  }

  /** The points that the wire of an arm's lever detects; mostly none. */
  public List<String> detected(String lever) {
    return detections.stream()
        .filter(d -> d.lever().equals(lever))
        .flatMap(d -> d.points().stream())
        .toList();
  }
}
