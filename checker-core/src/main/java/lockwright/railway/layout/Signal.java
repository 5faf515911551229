package lockwright.railway.layout;

import java.util.List;
import lockwright.spec.Span;

/**
 * A signal: one arm on a post; `docs/meaning.md` 1.2.
 *
 * @param stands the end of the track that a train leaves as it passes the signal
 * @param into the track that the arm reads into
 * @param ways the tracks named in {@code for}; empty: all ways
 * @param fixed a fixed distant, always on
 */
public record Signal(
    String id,
    String label,
    TrackEnd stands,
    String into,
    Arm arm,
    List<String> ways,
    boolean fixed,
    Span at) {
  public Signal {
    ways = List.copyOf(ways);
    if (fixed && arm != Arm.DISTANT) {
      throw new IllegalArgumentException("signal " + id + ": only a distant is fixed");
    }
  }
}
