package lockwright.working;

import java.util.Optional;
import lockwright.railway.locking.Entry;

/** One thing that a movement needs, and what holds the movement where it is lacking. */
public record Need(Condition condition, Hold hold) {
  static Need rule(Condition condition, String words) {
    return new Need(condition, new Hold(words, Optional.empty()));
  }

  static Need entry(Condition condition, Entry entry) {
    return new Need(condition, new Hold(entry.words(), Optional.of(entry)));
  }
}
