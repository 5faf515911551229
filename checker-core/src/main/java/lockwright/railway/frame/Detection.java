package lockwright.railway.frame;

import java.util.List;
import lockwright.spec.Span;

/**
 * Detectors in the wire of an arm; `docs/meaning.md` 2.8.
 *
 * @param lever that of the arm
 * @param points those at which a detector stands, in the order written
 */
public record Detection(String lever, List<String> points, Span at) {
  public Detection {
    points = List.copyOf(points);
  }
}
