package lockwright.spec;

import java.util.List;

/**
 * The locking table as written, row by row, whichever of the two files holds it.
 *
 * @param at where it begins
 */
public record LockingFile(Span at, List<Row> rows) {
  /** The converse of released by: it adds nothing, and is compared. */
  public static final String RELEASES = "releases";

  /** The converse of locks: it adds nothing, and is compared. */
  public static final String LOCKED_BY = "locked by";

  /** A row: what stands under one lever, for one set of conditions. */
  public record Row(
      Written lever, List<Lock> locks, List<Condition> when, boolean holds, String note) {}

  /**
   * One lock.
   *
   * @param column the heading that it stands under: released by, locks, locks both ways, ...
   * @param others the levers named; several, joined by "or", only under released by
   */
  public record Lock(String column, List<Written> others) {
    /** Whether it only says of an entry under another lever how it is seen from this one. */
    public boolean isConverse() {
      return column.equals(RELEASES) || column.equals(LOCKED_BY);
    }
  }

  /** A lever and N or R. */
  public record Condition(Written lever, char position) {}
}
