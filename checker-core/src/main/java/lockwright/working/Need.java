package lockwright.working;

import java.util.Optional;
import lockwright.railway.locking.Entry;

/**
 * One thing that a movement needs, and what holds the movement where it is lacking.
 *
 * @param itself whether it is only that what moves stands where it moves from
 */
public record Need(Condition condition, Hold hold, boolean itself) {
  public static Need rule(Condition condition, String words) {
    return new Need(condition, new Hold(words, Optional.empty()), false);
  }

  static Need itself(Condition condition, String words) {
    return new Need(condition, new Hold(words, Optional.empty()), true);
  }

  static Need entry(Condition condition, Entry entry) {
    return new Need(condition, new Hold(entry.words(), Optional.of(entry)), false);
  }
}
