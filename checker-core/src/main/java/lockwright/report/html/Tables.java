package lockwright.report.html;

import java.util.List;

/** Tables of plain text, each cell under the name of its column where the screen is narrow. */
public final class Tables {
  private Tables() {}

  public static void head(Markup m, List<String> columns) {
    m.open("table").open("thead").open("tr");
    columns.forEach(c -> m.element("th", c, "scope", "col"));
    m.close().close().open("tbody");
  }

  public static void end(Markup m) {
    m.close().close();
  }

  public static void cell(Markup m, String column, String text) {
    m.element("td", text, "data-label", column);
  }

  public static void write(Markup m, List<String> columns, List<List<String>> rows) {
    head(m, columns);
    for (List<String> row : rows) {
      m.open("tr");
      for (int i = 0; i < columns.size(); i++) {
        cell(m, columns.get(i), row.get(i));
      }
      m.close();
    }
    end(m);
  }
}
