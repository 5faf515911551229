package lockwright.explain;

import java.util.List;
import lockwright.railway.locking.Entry;
import lockwright.walk.Walk;

/** Whether a state can be reached from all levers normal. */
public sealed interface Arrival {
  /** It can, with the levers pulled in the order that was given. */
  record AsGiven(Walk walk) implements Arrival {}

  /** It can, but not with the levers pulled in that order alone. */
  record Otherwise(Walk walk) implements Arrival {}

  /** It can, but with half-strokes only, or only as safety reads the table. */
  record ByParts(Walk walk) implements Arrival {}

  /** It cannot: each of these entries forbids it. */
  record Forbidden(List<Entry> by) implements Arrival {
    public Forbidden {
      by = List.copyOf(by);
    }
  }

  /** It cannot, though no entry forbids it in itself: no sequence of half-strokes leads there. */
  record Never() implements Arrival {}

  /**
   * A limit was met.
   *
   * @param movements no sequence of so many movements leads there
   */
  record NotWithin(int movements) implements Arrival {}
}
