package lockwright.audit;

import java.util.Map;
import lockwright.encode.names.Claim;

/**
 * What the search says. A missing claim is taken as undecided.
 *
 * @param safety by the ids of requirements of safety, with parted strokes
 * @param subjects by the ids of subjects, with parted strokes
 * @param possibilities by the ids of possibilities, with whole strokes
 */
public record Claims(
    Map<String, Claim> safety, Map<String, Claim> subjects, Map<String, Claim> possibilities) {
  public Claims {
    safety = Map.copyOf(safety);
    subjects = Map.copyOf(subjects);
    possibilities = Map.copyOf(possibilities);
  }
}
