package lockwright.report.testsheet;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.report.Cautions;
import lockwright.report.CsvCell;
import lockwright.testsheet.PullingOrder;
import lockwright.testsheet.TestSheet;

/** The papers as a table; the last column is left empty for who tries the frame. */
final class CsvPaper {
  private CsvPaper() {}

  static String of(TestSheet sheet, SortedMap<String, String> digests) {
    SheetWords words = new SheetWords(sheet, digests);
    SheetRows rows = new SheetRows(sheet);
    StringBuilder csv =
        new StringBuilder(
            row("kind", "number", "under", "set up", "reversed", "do", "expect", "why", "done"));
    Cautions.ALL.forEach(c -> csv.append(said("caution", c)));
    csv.append(said("tried on the frame by", ""));
    csv.append(said("signed", ""));
    SheetWords.RULES.forEach(r -> csv.append(said("rule", r)));
    words.files().forEach(f -> csv.append(said("file", f)));
    words.coverage().forEach(c -> csv.append(said("coverage", c)));
    words.notCovered().forEach(c -> csv.append(said("not covered", c)));
    words.tokens().forEach(t -> csv.append(said("tokens", t)));
    for (SheetRows.Row line : rows.groups().values().stream().flatMap(List::stream).toList()) {
      csv.append(
          row(
              "line",
              line.number(),
              line.under(),
              joined(line.setUp()),
              line.reversed(),
              line.deed(),
              line.expected(),
              joined(line.why()),
              ""));
    }
    rows.notTried().forEach(n -> csv.append(said("not tried, or not alone", n)));
    for (PullingOrder order : sheet.orders()) {
      csv.append(
          row(
              "pulling order",
              "",
              words.route(order),
              "",
              "none",
              joined(words.movements(order)),
              "",
              words.plate(order).isEmpty() ? "" : "plate of lever " + words.plate(order),
              ""));
    }
    return csv.toString();
  }

  private static String joined(List<String> parts) {
    return String.join("; ", parts);
  }

  private static String said(String kind, String words) {
    return row(kind, "", "", "", "", "", "", words, "");
  }

  private static String row(String... cells) {
    return Stream.of(cells).map(CsvCell::of).collect(Collectors.joining(",", "", "\r\n"));
  }
}
