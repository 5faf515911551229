package lockwright.railway.layout;

import java.util.List;
import lockwright.spec.Span;

/**
 * An overlap that the plan permits beyond a stop signal; `docs/meaning.md` 1.11.
 *
 * @param tracks those beyond the signal that must be clear too, in order
 */
public record Overlap(String signal, List<String> tracks, Span at) {
  public Overlap {
    tracks = List.copyOf(tracks);
    if (tracks.isEmpty()) {
      throw new IllegalArgumentException("an overlap beyond signal " + signal + " has no track");
    }
  }
}
