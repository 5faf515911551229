package lockwright.railway.layout;

import java.util.List;
import lockwright.spec.Span;

/** A ground frame and the points that it works. */
public record GroundFrame(String id, String label, List<String> points, Span at) {
  public GroundFrame {
    points = List.copyOf(points);
  }
}
