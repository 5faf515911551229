package lockwright.report.readback;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.report.Cautions;
import lockwright.report.CsvCell;

/** The read-back as a table of five columns; the last is left empty for the person who compares. */
final class CsvSheet {
  private CsvSheet() {}

  static String of(Box box, List<Item> items) {
    StringBuilder sheet = new StringBuilder(row("kind", "name", "what", "value", "compared"));
    sheet.append(row("box", box.name(), "compared with the plan by", "", ""));
    sheet.append(row("box", box.name(), "compared with the plan on", "", ""));
    Cautions.ALL.forEach(c -> sheet.append(row("caution", "", "", c, "")));
    items.forEach(i -> sheet.append(row(i.kind(), i.name(), i.what(), i.value(), "")));
    return sheet.toString();
  }

  private static String row(String... cells) {
    return Stream.of(cells).map(CsvSheet::cell).collect(Collectors.joining(",", "", "\r\n"));
  }

  /** A cell: inert in a spreadsheet, and quoted if it holds a comma, a quote or a line end. */
  static String cell(String text) {
    return CsvCell.of(text);
  }
}
