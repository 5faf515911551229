package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lockwright.railway.locking.Entry;
import lockwright.spec.LockingFile;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.Written;

/**
 * Compares the converses that a locking table writes with its entries. They lock nothing: they say
 * how an entry is seen from the other lever, as many tables print it.
 */
final class Converses {
  private static final Map<String, Entry.Kind> KINDS =
      Map.of(
          LockingFile.RELEASES, Entry.Kind.RELEASED_BY,
          LockingFile.LOCKED_BY, Entry.Kind.LOCKS);

  /** A lever, and another that it stands under. */
  private record Pair(String lever, String other) {}

  private Converses() {}

  /** Tells each that no entry gives; and, of a column that is used, each that is not written. */
  static void compare(LockingFile table, List<Entry> entries, Problems problems) {
    for (String column : new String[] {LockingFile.RELEASES, LockingFile.LOCKED_BY}) {
      Map<Pair, Written> written = written(table, column);
      List<Entry> forward = entries.stream().filter(e -> e.kind() == KINDS.get(column)).toList();
      Set<Pair> given =
          forward.stream().flatMap(e -> pairs(e).stream()).collect(Collectors.toSet());
      written.forEach(
          (pair, place) -> {
            if (!given.contains(pair)) {
              tellWithoutEntry(column, pair, place, problems);
            }
          });
      for (Entry entry : written.isEmpty() ? List.<Entry>of() : forward) {
        for (Pair pair : pairs(entry)) {
          if (!written.containsKey(pair)) {
            tellNotWritten(column, pair, entry, problems);
          }
        }
      }
    }
  }

  private static Map<Pair, Written> written(LockingFile table, String column) {
    Map<Pair, Written> written = new LinkedHashMap<>();
    for (LockingFile.Row row : table.rows()) {
      for (LockingFile.Lock lock : row.locks()) {
        if (lock.column().equals(column)) {
          Written other = lock.others().get(0);
          written.putIfAbsent(new Pair(row.lever().text(), other.text()), other);
        }
      }
    }
    return written;
  }

  /** How an entry is seen from each of its other levers. */
  private static List<Pair> pairs(Entry entry) {
    List<Pair> pairs = new ArrayList<>();
    entry.others().forEach(other -> pairs.add(new Pair(other, entry.lever())));
    return pairs;
  }

  private static void tellWithoutEntry(String column, Pair pair, Written place, Problems problems) {
    String entry = pair.other() + " " + KINDS.get(column).words() + " " + pair.lever();
    problems.add(
        Message.CONVERSE_WITHOUT_ENTRY,
        place.at(),
        "'"
            + pair.lever()
            + " "
            + column
            + " "
            + pair.other()
            + "' is written, but no '"
            + entry
            + "'",
        "write that entry under lever "
            + pair.other()
            + ", or take the converse away; a converse alone locks nothing");
  }

  private static void tellNotWritten(String column, Pair pair, Entry entry, Problems problems) {
    problems.add(
        Message.CONVERSE_NOT_WRITTEN,
        entry.at(),
        "'"
            + entry.words()
            + "' has no converse, and others have: '"
            + pair.lever()
            + " "
            + column
            + " "
            + pair.other()
            + "' is not written",
        "write it under lever "
            + pair.lever()
            + ", or take the entry away if it is the one that is wrong; a table without '"
            + column
            + "' is not compared");
  }
}
