package lockwright.report;

import java.util.List;
import lockwright.audit.EntryVerdict;

/**
 * What was found of each entry of the locking table, left out alone.
 *
 * @param notTried why none was; empty, if they were
 * @param verdicts one an entry, in the order of the table, if they were tried
 */
public record Entries(String notTried, List<EntryVerdict> verdicts) {
  public static final Entries NOT_ASKED_FOR = notTried("it was not asked for");

  /** Of a box that has faults, nothing could be said of its entries. */
  public static final Entries DOES_NOT_HOLD =
      notTried("not every requirement of the box is proved or shown");

  public Entries {
    verdicts = List.copyOf(verdicts);
    if (!notTried.isEmpty() && !verdicts.isEmpty()) {
      throw new IllegalArgumentException("not tried, and yet there are verdicts");
    }
  }

  private static Entries notTried(String why) {
    return new Entries(why, List.of());
  }

  /** The verdicts on all entries that were tried. */
  public static Entries of(List<EntryVerdict> verdicts) {
    return new Entries("", verdicts);
  }
}
