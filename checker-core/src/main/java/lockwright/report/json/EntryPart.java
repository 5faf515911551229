package lockwright.report.json;

import java.util.List;
import lockwright.railway.locking.Entry;

/**
 * An entry of the locking table.
 *
 * @param text the entry in words
 * @param at where it is written; none for a draft
 */
record EntryPart(
    String text,
    String kind,
    String lever,
    List<String> others,
    List<Condition> when,
    boolean holds,
    String note,
    Place at) {

  record Condition(String lever, String position) {}

  static EntryPart of(Entry entry) {
    return of(entry, Place.of(entry.at()));
  }

  static EntryPart ofDraft(Entry entry) {
    return of(entry, null);
  }

  private static EntryPart of(Entry entry, Place at) {
    return new EntryPart(
        entry.words(),
        entry.kind().words(),
        entry.lever(),
        entry.others(),
        entry.when().stream().map(c -> new Condition(c.lever(), c.position().name())).toList(),
        entry.holds(),
        entry.note(),
        at);
  }
}
