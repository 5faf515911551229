package lockwright.report.testsheet;

import java.util.List;
import java.util.SortedMap;
import lockwright.report.Cautions;
import lockwright.report.Shown;
import lockwright.testsheet.PullingOrder;
import lockwright.testsheet.TestSheet;

/** The papers as text. */
final class TextPaper {
  private static final int WIDTH = 100;

  private final TestSheet sheet;
  private final SheetWords words;
  private final SheetRows rows;
  private final StringBuilder text = new StringBuilder();

  TextPaper(TestSheet sheet, SortedMap<String, String> digests) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet, digests);
    this.rows = new SheetRows(sheet);
  }

  String text() {
    heading("Locking test sheet and pulling orders of " + sheet.box().name(), '=');
    Cautions.ALL.forEach(c -> line("Caution: ", c));
    line("", "");
    SheetWords.RULES.forEach(r -> line("- ", r));
    heading("Of these files", '-');
    words.files().forEach(f -> line("- ", f));
    heading("Coverage", '-');
    words.coverage().forEach(c -> line("- ", c));
    words.notCovered().forEach(c -> line("- not covered: ", c));
    words.tokens().forEach(t -> line("- ", t));
    rows.groups().forEach(this::group);
    heading("Not tried, or not alone", '-');
    if (rows.notTried().isEmpty()) {
      line("", "nothing");
    }
    rows.notTried().forEach(n -> line("- ", n));
    heading("Pulling orders, from all levers normal", '-');
    sheet.orders().forEach(this::order);
    heading("Signature", '-');
    line("", "Blank until signed by a competent person who has read the cautions.");
    for (String what : List.of("Tried on the frame by", "Name and office", "Signed")) {
      text.append('\n').append(what).append(' ').append("_".repeat(40));
      text.append(" on ").append("_".repeat(20)).append('\n');
    }
    return text.toString();
  }

  private void group(String heading, List<SheetRows.Row> lines) {
    heading(heading, '-');
    for (SheetRows.Row line : lines) {
      String number = line.number() + ". ";
      String indent = " ".repeat(number.length());
      String start = number;
      for (String movement : line.setUp()) {
        line(start, "set up: " + movement);
        start = indent;
      }
      line(
          start,
          "[ ] "
              + (line.tried() ? "try to " : "")
              + line.deed()
              + ": "
              + line.expected()
              + "   (reversed: "
              + line.reversed()
              + ")");
      line.why().forEach(w -> line(indent + "    ", w));
    }
  }

  private void order(PullingOrder order) {
    line("", words.route(order));
    words.movements(order).forEach(m -> line("    ", m));
    if (!words.plate(order).isEmpty()) {
      line("    ", "plate of lever " + words.plate(order));
    }
  }

  private void heading(String heading, char under) {
    String shown = Shown.text(heading);
    text.append(text.isEmpty() ? "" : "\n").append(shown).append('\n');
    text.append(String.valueOf(under).repeat(Math.min(WIDTH, shown.length()))).append("\n\n");
  }

  /** Broken between words; what follows the first line stands as far in as it does. */
  private void line(String lead, String words) {
    StringBuilder line = new StringBuilder(lead);
    boolean fresh = true;
    for (String word : Shown.text(words).split(" ")) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line.setLength(0);
        line.append(" ".repeat(lead.length()));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }
}
