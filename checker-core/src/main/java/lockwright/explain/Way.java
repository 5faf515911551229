package lockwright.explain;

import java.util.List;
import lockwright.railway.frame.Position;

/**
 * A stroke that the lever could make from where it stands.
 *
 * @param from N or R, or M for what is left of a stroke
 * @param to the end
 * @param heldBy why it cannot; nothing, or what is unmarked only, if it is free
 * @param backLocked whether an entry forbids the lever at that end, and not only on the way there
 */
public record Way(Position from, Position to, List<Held> heldBy, boolean backLocked) {
  public Way {
    heldBy = List.copyOf(heldBy);
  }

  /** Whether the lever can make it, as safety reads the table. */
  public boolean free() {
    return heldBy.stream().allMatch(Held::unmarked);
  }

  /** Whether the lever can make it only as safety reads the table, and not as possibility does. */
  public boolean doubtful() {
    return free() && !heldBy.isEmpty();
  }

  /** In the trade's words. */
  public String words() {
    if (free()) {
      return "free";
    }
    if (from == Position.R) {
      return backLocked ? "back-locked" : "locked reversed";
    }
    return from == Position.N ? "locked" : "held part-way";
  }
}
