package lockwright.spec;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lockwright.spec.form.LockingForm;

/** Reads the form of `locking.yaml` or `locking.csv`; `docs/spec.md`. */
final class LockingReader {
  private final Problems problems;
  private final Shape shape;
  private final LockingCells cells;

  private LockingReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
    this.cells = new LockingCells(problems);
  }

  /** The table in either form, by the name of its file. */
  static Optional<LockingFile> read(String file, String text, Problems problems) {
    return file.equals(SpecFolder.LOCKING_CSV)
        ? readCsv(file, text, problems)
        : YamlReader.read(file, text, problems).flatMap(root -> readYaml(root, problems));
  }

  static Optional<LockingFile> readYaml(Node root, Problems problems) {
    LockingReader reader = new LockingReader(problems);
    return reader
        .shape
        .fields(root, "the locking", LockingForm.LOCKING)
        .flatMap(fields -> fields.need("locking"))
        .map(node -> new LockingFile(root.at(), reader.yamlRows(node)));
  }

  static Optional<LockingFile> readCsv(String file, String text, Problems problems) {
    return CsvReader.read(file, text, problems)
        .flatMap(rows -> new LockingReader(problems).csvRows(rows))
        .map(rows -> new LockingFile(new Span(file, 1, 1), rows));
  }

  private List<LockingFile.Row> yamlRows(Node node) {
    List<LockingFile.Row> rows = new ArrayList<>();
    for (Node item : shape.list(node, "'locking'")) {
      shape
          .fields(item, "a row of the locking", LockingForm.ROW)
          .map(this::yamlRow)
          .ifPresent(rows::addAll);
    }
    return List.copyOf(rows);
  }

  private List<LockingFile.Row> yamlRow(Fields fields) {
    Map<String, List<Written>> row = new HashMap<>();
    for (String column : LockingCells.COLUMNS) {
      row.put(
          column,
          LockingCells.LOCKS.contains(column)
              ? fields.texts(column)
              : fields.text(column).map(List::of).orElse(List.of()));
    }
    fields.need(LockingCells.LEVER);
    return row(row);
  }

  private Optional<List<LockingFile.Row>> csvRows(List<List<Written>> table) {
    List<Written> heading = table.get(0).stream().map(Written::trimmed).toList();
    if (!headingIsGood(heading)) {
      return Optional.empty();
    }
    List<LockingFile.Row> rows = new ArrayList<>();
    for (List<Written> cellsOfRow : table.subList(1, table.size())) {
      rows.addAll(csvRow(heading, cellsOfRow));
    }
    return Optional.of(List.copyOf(rows));
  }

  private boolean headingIsGood(List<Written> heading) {
    List<Written> named = heading.stream().filter(name -> !name.text().isEmpty()).toList();
    Set<String> seen = new HashSet<>();
    boolean good = true;
    for (Written name : named) {
      if (!LockingCells.COLUMNS.contains(name.text())) {
        good = false;
        problems.add(
            Message.CSV_UNKNOWN_COLUMN,
            name.at(),
            name.quoted() + " is not a heading of a locking table",
            Problems.didYouMean(
                name.text(),
                LockingCells.COLUMNS,
                "use only these: " + String.join(", ", LockingCells.COLUMNS)));
      } else if (!seen.add(name.text())) {
        good = false;
        problems.add(
            Message.CSV_COLUMN_TWICE,
            name.at(),
            "two columns are headed " + name.quoted(),
            "put both into one column; levers in one cell have commas between them");
      }
    }
    if (!seen.contains(LockingCells.LEVER)) {
      good = false;
      problems.add(
          Message.CSV_NO_LEVER_COLUMN,
          heading.get(0).at(),
          "no column is headed 'lever'",
          "write the headings in the first row: lever;released by;locks");
    }
    return good;
  }

  private List<LockingFile.Row> csvRow(List<Written> heading, List<Written> written) {
    if (written.size() != heading.size()) {
      problems.add(
          Message.CSV_CELL_COUNT,
          written.get(0).at(),
          "the row has " + written.size() + " cells under " + heading.size() + " headings",
          "give it as many cells as there are headings; a cell that itself holds the separator needs"
              + " double quotes: \"3, 4\"");
      return List.of();
    }
    Map<String, List<Written>> row = new HashMap<>();
    for (int i = 0; i < heading.size(); i++) {
      Written cell = written.get(i);
      if (cell.text().isBlank()) {
        continue;
      }
      if (heading.get(i).text().isEmpty()) {
        problems.add(
            Message.CSV_UNKNOWN_COLUMN,
            cell.trimmed().at(),
            "the cell stands in a column without a heading",
            "write a heading: " + String.join(", ", LockingCells.COLUMNS));
      }
      row.put(heading.get(i).text(), List.of(cell));
      if (heading.get(i).text().equals(LockingCells.NOTE)) {
        String note = cell.text().replace("\"\"", "\"");
        row.put(LockingCells.NOTE, List.of(new Written(note, cell.at(), false)));
      }
    }
    if (!row.containsKey(LockingCells.LEVER)) {
      problems.add(
          Message.LOCK_CELL,
          written.get(0).at(),
          "the row names no lever",
          "write in each row the lever that it stands under");
    }
    return row(row);
  }

  /** A row as written, once for each of the sets of conditions that "or" joins. */
  private List<LockingFile.Row> row(Map<String, List<Written>> row) {
    List<LockingFile.Lock> locks = new ArrayList<>();
    for (String column : LockingCells.LOCKS) {
      row.getOrDefault(column, List.of()).forEach(c -> locks.addAll(cells.locks(column, c)));
    }
    Optional<Written> lever = one(row, LockingCells.LEVER).flatMap(cells::lever);
    List<List<LockingFile.Condition>> when =
        one(row, LockingCells.WHEN).map(cells::when).orElse(List.of(List.of()));
    Optional<Written> holds = one(row, LockingCells.HOLDS);
    boolean held = holds.map(cells::holds).orElse(false);
    if (held && one(row, LockingCells.WHEN).isEmpty()) {
      problems.add(
          Message.HOLDS_WITHOUT_WHEN,
          holds.get().trimmed().at(),
          "'holds: yes' stands in a row without conditions",
          "write the conditions under 'when', or take 'holds' away: only a piece with conditions"
              + " holds its levers");
    }
    if (lever.isPresent()
        && LockingCells.LOCKS.stream().allMatch(c -> row.getOrDefault(c, List.of()).isEmpty())) {
      problems.add(
          Message.ROW_WITHOUT_LOCK,
          lever.get().at(),
          "the row of lever " + lever.get() + " has no lock",
          "name a lever under one of: "
              + String.join(", ", LockingCells.LOCKS)
              + "; or take the row away");
    }
    String note = one(row, LockingCells.NOTE).map(n -> n.trimmed().text()).orElse("");
    return lever.stream()
        .flatMap(
            l -> when.stream().map(w -> new LockingFile.Row(l, List.copyOf(locks), w, held, note)))
        .toList();
  }

  private static Optional<Written> one(Map<String, List<Written>> row, String column) {
    return row.getOrDefault(column, List.of()).stream().findFirst();
  }
}
