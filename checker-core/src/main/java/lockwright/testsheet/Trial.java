package lockwright.testsheet;

import java.util.Map;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;

/**
 * Something of an entry to be tried.
 *
 * @param lever the lever to be tried, from where it is to stand
 * @param stand where the levers of the entry are to stand, as far as it matters; N or R
 */
public record Trial(
    Entry entry, Aspect aspect, String lever, Position from, Map<String, Position> stand) {
  public Trial {
    stand = Map.copyOf(stand);
    if (stand.get(lever) != from || stand.containsValue(Position.M)) {
      throw new IllegalArgumentException("lever " + lever + " from " + from + " with " + stand);
    }
  }
}
