package lockwright.spec;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes a locking table anew, as CSV or as YAML; `docs/spec.md`. Rows and locks keep their order.
 * A row is parted only where its locks do not go into one cell, so that every table that can be
 * read can be written in either way.
 */
final class LockingWriter {
  private LockingWriter() {}

  /** With semicolons and the headings that are used; quoted as in RFC 4180, section 2. */
  static String csv(LockingFile table) {
    List<Map<String, List<String>>> rows = rows(table);
    List<String> headings =
        LockingCells.COLUMNS.stream()
            .filter(c -> needed(c) || rows.stream().anyMatch(row -> row.containsKey(c)))
            .toList();
    StringBuilder text = new StringBuilder(String.join(";", headings)).append('\n');
    for (Map<String, List<String>> row : rows) {
      text.append(
              headings.stream()
                  .map(heading -> csv(String.join(", ", row.getOrDefault(heading, List.of()))))
                  .collect(Collectors.joining(";")))
          .append('\n');
    }
    return text.toString();
  }

  static String yaml(LockingFile table) {
    List<Map<String, List<String>>> rows = rows(table);
    StringBuilder text = new StringBuilder(rows.isEmpty() ? "locking: []\n" : "locking:\n");
    for (Map<String, List<String>> row : rows) {
      text.append(
          row.entrySet().stream()
              .map(cell -> cell.getKey() + ": " + yaml(cell.getKey(), cell.getValue()))
              .collect(Collectors.joining(", ", "  - {", "}\n")));
    }
    return text.toString();
  }

  /** These are there even in a table without a row, for a heading needs a separator. */
  private static boolean needed(String column) {
    return column.equals(LockingCells.LEVER) || column.equals(LockingCells.RELEASED_BY);
  }

  /** The rows to be written: for each heading with a cell, in order, what stands in it. */
  private static List<Map<String, List<String>>> rows(LockingFile table) {
    List<Map<String, List<String>>> rows = new ArrayList<>();
    for (LockingFile.Row row : table.rows()) {
      for (Map<String, List<String>> locks : parted(row)) {
        Map<String, List<String>> cells = new LinkedHashMap<>();
        cells.put(LockingCells.LEVER, List.of(row.lever().text()));
        LockingCells.LOCKS.stream()
            .filter(locks::containsKey)
            .forEach(column -> cells.put(column, locks.get(column)));
        if (!row.when().isEmpty()) {
          cells.put(LockingCells.WHEN, List.of(conditions(row)));
        }
        if (row.holds()) {
          cells.put(LockingCells.HOLDS, List.of("yes"));
        }
        if (!row.note().isEmpty()) {
          cells.put(LockingCells.NOTE, List.of(row.note()));
        }
        rows.add(cells);
      }
    }
    return rows;
  }

  /** The locks of a row by column, in as many parts as are needed for each to fit into its cell. */
  private static List<Map<String, List<String>>> parted(LockingFile.Row row) {
    List<Map<String, List<String>>> parts = new ArrayList<>();
    Map<String, List<String>> part = Map.of();
    for (LockingFile.Lock lock : row.locks()) {
      String words = lock.others().stream().map(Written::text).collect(Collectors.joining(" or "));
      if (parts.isEmpty() || !fits(words, part.getOrDefault(lock.column(), List.of()))) {
        part = new LinkedHashMap<>();
        parts.add(part);
      }
      part.computeIfAbsent(lock.column(), c -> new ArrayList<>()).add(words);
    }
    return parts;
  }

  private static boolean fits(String words, List<String> cell) {
    String joined = String.join(", ", cell);
    return cell.isEmpty()
        || (!words.contains(" or ")
            && !joined.contains(" or ")
            && !cell.contains(words)
            && joined.length() + 2 + words.length() <= LockingCells.LONGEST);
  }

  private static String conditions(LockingFile.Row row) {
    return row.when().stream()
        .map(condition -> condition.lever() + " " + condition.position())
        .collect(Collectors.joining(" and "));
  }

  private static String csv(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ';' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  /** A note always in double quotes, so that nothing in it can be taken for YAML. */
  private static String yaml(String column, List<String> cell) {
    if (column.equals(LockingCells.NOTE)) {
      return '"'
          + cell.get(0)
              .replace("\\", "\\\\")
              .replace("\"", "\\\"")
              .replace("\n", "\\n")
              .replace("\r", "\\r")
              .replace("\t", "\\t")
          + '"';
    }
    return cell.size() == 1 ? cell.get(0) : "[" + String.join(", ", cell) + "]";
  }
}
