package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Splits a CSV file into cells with places: comma or semicolon (as in its heading), cells in double
 * quotes with quotes doubled and line breaks inside, any kind of line end. Blank rows are left out.
 * The text of a quoted cell keeps its doubled quotes, so that the places in it stay right.
 */
final class CsvReader {
  private final String file;
  private final String text;
  private final Problems problems;
  private final char separator;
  private int at;
  private int line = 1;
  private int column = 1;

  private CsvReader(String file, String text, char separator, Problems problems) {
    this.file = file;
    this.text = text;
    this.separator = separator;
    this.problems = problems;
  }

  /** The rows that are not blank; empty, with problems, if the file cannot be split. */
  static Optional<List<List<Written>>> read(String file, String text, Problems problems) {
    String heading = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
    boolean commas = heading.indexOf(',') >= 0;
    if (heading.isEmpty()) {
      problems.add(
          Message.CSV_NO_LEVER_COLUMN,
          new Span(file, 1, 1),
          "nothing is written in the file",
          "write the headings in the first row: lever;released by;locks");
      return Optional.empty();
    }
    if (commas == heading.indexOf(';') >= 0) {
      problems.add(
          Message.CSV_SEPARATOR,
          new Span(file, 1, 1),
          "the headings have "
              + (commas ? "both commas and semicolons" : "no comma and no semicolon")
              + " between them",
          "save the table with commas, or with semicolons, between the cells");
      return Optional.empty();
    }
    return new CsvReader(file, text, commas ? ',' : ';', problems).rows();
  }

  private Optional<List<List<Written>>> rows() {
    List<List<Written>> rows = new ArrayList<>();
    while (at < text.length()) {
      List<Written> row = new ArrayList<>();
      boolean more = true;
      while (more) {
        Optional<Written> cell = here() == '"' ? quoted() : plain();
        if (cell.isEmpty()) {
          return Optional.empty();
        }
        row.add(cell.get());
        if (!rows.isEmpty()) {
          refuseSpaceAfterComma(cell.get());
        }
        more = here() == separator;
        if (more) {
          step();
        }
      }
      lineEnd();
      if (row.stream().anyMatch(c -> !c.text().isBlank())) {
        rows.add(List.copyOf(row));
      }
    }
    return Optional.of(List.copyOf(rows));
  }

  private Optional<Written> plain() {
    Span place = place();
    int from = at;
    while (here() != separator && !endOfLine()) {
      if (here() == '"') {
        quotes(place(), "a double quote stands inside a cell that does not begin with one");
        return Optional.empty();
      }
      step();
    }
    return Optional.of(new Written(text.substring(from, at), place, true));
  }

  private Optional<Written> quoted() {
    Span opened = place();
    step();
    Span place = place();
    int from = at;
    while (here() != '"' || after() == '"') {
      if (at == text.length()) {
        quotes(opened, "the double quote that opens here is never closed");
        return Optional.empty();
      }
      if (here() == '"') {
        step();
      }
      step();
    }
    Written cell = new Written(text.substring(from, at), place, true);
    step();
    if (here() != separator && !endOfLine()) {
      quotes(place(), "something stands between the end of a quoted cell and the next cell");
      return Optional.empty();
    }
    return Optional.of(cell);
  }

  /** {@code 2,3, 4}: most likely levers 3 and 4 in one cell, but CSV makes two cells of it. */
  private void refuseSpaceAfterComma(Written cell) {
    boolean plain = text.charAt(Math.max(0, at - 1)) != '"';
    if (separator == ',' && plain && cell.text().startsWith(" ") && !cell.text().isBlank()) {
      problems.add(
          Message.CSV_SPACE_AFTER_COMMA,
          cell.at(),
          "a space follows the comma, so that this looks like a list; but it begins a new cell",
          "put a cell with several levers in double quotes: \"3, 4\"; else take the space away");
    }
  }

  private void quotes(Span place, String what) {
    problems.add(
        Message.CSV_QUOTES,
        place,
        what,
        "put the whole cell in double quotes, and write each double quote inside it twice");
  }

  /** The character here; 0, which no file may hold, at the end. */
  private char here() {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private char after() {
    return at + 1 < text.length() ? text.charAt(at + 1) : 0;
  }

  private boolean endOfLine() {
    return at == text.length() || here() == '\n' || here() == '\r';
  }

  private void lineEnd() {
    if (here() == '\r' && after() == '\n') {
      step();
    }
    if (at < text.length()) {
      step();
    }
  }

  private void step() {
    char c = here();
    if (c == '\n' || (c == '\r' && after() != '\n')) {
      line++;
      column = 1;
    } else if (c != '\r' && !Character.isLowSurrogate(c)) {
      column++;
    }
    at++;
  }

  private Span place() {
    return new Span(file, line, column);
  }
}
