package lockwright.railway.layout;

import java.util.List;
import lockwright.spec.Span;

/** A level crossing and the tracks that the road crosses; `docs/meaning.md` 2.4. */
public record LevelCrossing(String id, String label, List<String> tracks, Span at) {
  public LevelCrossing {
    tracks = List.copyOf(tracks);
  }

  /** Whether a route passes one of its tracks. */
  public boolean isOn(Route route) {
    return route.tracks().stream().anyMatch(tracks::contains);
  }
}
