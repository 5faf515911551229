package lockwright.report.readback;

import java.util.List;
import java.util.Locale;
import lockwright.railway.Box;
import lockwright.report.Cautions;
import lockwright.report.Shown;

/** The read-back as text: a heading for each kind and each thing, the items aligned below it. */
final class TextSheet {
  private static final int WIDTH = 100;
  private static final int INDENT = 2;
  private static final int COLUMN = 24;

  private final StringBuilder text = new StringBuilder();

  private TextSheet() {}

  static String of(Box box, List<Item> items) {
    TextSheet sheet = new TextSheet();
    sheet.head(box);
    String kind = "";
    String name = "";
    for (Item item : items) {
      if (!item.kind().equals(kind) || !item.name().equals(name)) {
        sheet.heading(item);
      }
      kind = item.kind();
      name = item.name();
      sheet.line(" ".repeat(INDENT) + Shown.text(item.what()), Shown.text(item.value()), COLUMN);
    }
    return sheet.text.toString();
  }

  private void head(Box box) {
    String title = "Read-back of " + Shown.text(box.name());
    text.append(title).append('\n').append("=".repeat(title.length())).append("\n\n");
    line("", Remarks.PURPOSE, 0);
    text.append('\n');
    text.append("compared with the plan by ").append("_".repeat(40));
    text.append(" on ").append("_".repeat(20)).append("\n\n");
    Cautions.ALL.forEach(c -> line("Caution:", c, 9));
  }

  private void heading(Item item) {
    String kind = item.kind().substring(0, 1).toUpperCase(Locale.ROOT) + item.kind().substring(1);
    String heading = (kind + " " + Shown.text(item.name())).strip();
    text.append('\n').append(heading).append('\n');
    text.append("-".repeat(Math.min(WIDTH, heading.length()))).append('\n');
  }

  /** What, padded to a column, and the value from there on, broken between words. */
  private void line(String what, String value, int column) {
    StringBuilder line = new StringBuilder(what);
    boolean fresh = true;
    for (String word : value.split(" ")) {
      if (fresh) {
        line.append(" ".repeat(Math.max(column - line.length(), what.isEmpty() ? 0 : 1)));
      } else if (line.length() + 1 + word.length() > WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line.setLength(0);
        line.append(" ".repeat(column));
      } else {
        line.append(' ');
      }
      line.append(word);
      fresh = false;
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }
}
