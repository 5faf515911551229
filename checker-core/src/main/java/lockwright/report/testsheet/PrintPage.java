package lockwright.report.testsheet;

import java.util.List;
import java.util.SortedMap;
import lockwright.report.Cautions;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.testsheet.PullingOrder;
import lockwright.testsheet.TestSheet;

/** The papers as one page, to be printed and ticked by hand. */
final class PrintPage {
  private static final List<String> COLUMNS =
      List.of("line", "set up", "reversed", "do", "expect", "what is tried", "done");
  private static final List<String> ORDERS = List.of("route", "movements, in order", "lever plate");
  private static final String BOX = "\u2610";

  private final TestSheet sheet;
  private final SheetWords words;
  private final SheetRows rows;
  private final Markup m;
  private final Sheet page;

  PrintPage(TestSheet sheet, SortedMap<String, String> digests) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet, digests);
    this.rows = new SheetRows(sheet);
    this.page = Sheet.of("Locking test sheet: " + sheet.box().name());
    this.m = page.markup();
  }

  String page() {
    m.element("h1", "Locking test sheet and pulling orders: " + sheet.box().name());
    Sheet.cautions(m, Cautions.ALL);
    list("How to use it", "rules", SheetWords.RULES);
    list("Of these files", "files", words.files());
    list("Coverage", "coverage", words.coverage());
    if (!words.notCovered().isEmpty()) {
      list("Entries not covered", "not-covered", words.notCovered());
    }
    if (!words.tokens().isEmpty()) {
      list("Tokens", "tokens", words.tokens());
    }
    m.open("section", "aria-labelledby", "lines").element("h2", "Lines", "id", "lines");
    rows.groups().forEach(this::group);
    m.close();
    List<String> not = rows.notTried();
    list("Not tried, or not alone", "not-tried", not.isEmpty() ? List.of("nothing") : not);
    orders();
    signature();
    return page.finish();
  }

  private void list(String heading, String anchor, List<String> items) {
    m.open("section", "aria-labelledby", anchor).element("h2", heading, "id", anchor).open("ul");
    items.forEach(i -> m.element("li", i));
    m.close().close();
  }

  private void group(String heading, List<SheetRows.Row> lines) {
    m.element("h3", heading);
    Tables.head(m, COLUMNS);
    for (SheetRows.Row line : lines) {
      m.open("tr");
      Tables.cell(m, COLUMNS.get(0), line.number());
      cell(COLUMNS.get(1), line.setUp());
      Tables.cell(m, COLUMNS.get(2), line.reversed());
      Tables.cell(m, COLUMNS.get(3), (line.tried() ? "try to " : "") + line.deed());
      Tables.cell(m, COLUMNS.get(4), line.expected());
      cell(COLUMNS.get(5), line.why());
      Tables.cell(m, COLUMNS.get(6), BOX);
      m.close();
    }
    Tables.end(m);
  }

  private void orders() {
    m.open("section", "aria-labelledby", "orders");
    m.element("h2", "Pulling orders", "id", "orders");
    m.element(
        "p",
        "How each route is cleared from all levers normal, with fewest movements. The plate of the"
            + " lever names those to be pulled before it.");
    Tables.head(m, ORDERS);
    for (PullingOrder order : sheet.orders()) {
      m.open("tr");
      Tables.cell(m, ORDERS.get(0), order.route().name());
      cell(ORDERS.get(1), words.movements(order));
      Tables.cell(m, ORDERS.get(2), words.plate(order));
      m.close();
    }
    Tables.end(m);
    m.close();
  }

  private void cell(String column, List<String> parts) {
    m.open("td", "data-label", column);
    parts.forEach(p -> m.element("p", p));
    m.close();
  }

  private void signature() {
    m.open("section", "class", "signature", "aria-labelledby", "signature");
    m.element("h2", "Signature", "id", "signature");
    m.element("p", "Read with the cautions above. Blank until signed by a competent person.");
    for (String what : List.of("Tried on the frame by", "Name and office", "Signed")) {
      m.open("p", "class", "line").text(what + " ");
      m.element("span", "", "class", "blank").text(" on ").element("span", "", "class", "date");
      m.close();
    }
    m.close();
  }
}
