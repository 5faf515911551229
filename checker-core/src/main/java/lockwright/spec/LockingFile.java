package lockwright.spec;

import java.util.List;

/**
 * The locking table as written, row by row, whichever of the two files holds it.
 *
 * @param at where it begins
 */
public record LockingFile(Span at, List<Row> rows) {
  /** A row: what stands under one lever, for one set of conditions. */
  public record Row(
      Written lever, List<Lock> locks, List<Condition> when, boolean holds, String note) {}

  /**
   * One lock.
   *
   * @param column the heading that it stands under: released by, locks, locks both ways, or while
   *     normal locks both ways
   * @param others the levers named; several, joined by "or", only under released by
   */
  public record Lock(String column, List<Written> others) {}

  /** A lever and N or R. */
  public record Condition(Written lever, char position) {}
}
