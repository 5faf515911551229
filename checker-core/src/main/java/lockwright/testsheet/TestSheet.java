package lockwright.testsheet;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.working.State;

/**
 * The locking test sheet of a box, and its pulling orders.
 *
 * @param beginning where the first line begins: all levers normal
 * @param lines in order; each begins where the one before it ended
 * @param notTried what could not be tried, or not alone
 * @param rules what follows: what holds levers besides the table, and arms
 * @param all whether all that the levers can come to was looked at; else a limit was met
 */
public record TestSheet(
    Box box,
    State beginning,
    List<Line> lines,
    List<NotTried> notTried,
    RuleLines rules,
    List<PullingOrder> orders,
    boolean all) {
  public TestSheet {
    lines = List.copyOf(lines);
    notTried = List.copyOf(notTried);
    orders = List.copyOf(orders);
  }

  /**
   * Makes the sheet.
   *
   * @param most how many states each search may look at
   * @param progress told what is being done, often
   */
  public static TestSheet of(Box box, int most, Consumer<String> progress) {
    return new Writer(box, most, progress).sheet();
  }

  /** Whether a line finds the entry missing: it alone is to hold. */
  public boolean coversHeld(Entry entry) {
    return lines.stream().anyMatch(l -> l.catches(entry));
  }

  /** Whether in a line its levers stand as the entry wants, and the lever that is tried is free. */
  public boolean coversFree(Entry entry) {
    return lines.stream()
        .anyMatch(l -> l.free() && l.covers().stream().anyMatch(t -> t.entry().equals(entry)));
  }

  /** The entries that are covered both ways. */
  public List<Entry> covered() {
    return box.locking().stream().filter(e -> coversHeld(e) && coversFree(e)).toList();
  }

  /** How many trials show what they are to show; the others are not tried, or not alone. */
  public int shown() {
    Set<Trial> not = notTried.stream().map(NotTried::trial).collect(Collectors.toSet());
    return (int)
        lines.stream().flatMap(l -> l.covers().stream()).filter(t -> !not.contains(t)).count();
  }

  /** Movements of the whole sheet: those of the set-ups, and the levers that are tried and free. */
  public int movements() {
    return lines.stream().mapToInt(l -> l.setUp().size() + (l.free() ? 1 : 0)).sum()
        + rules.movements();
  }
}
