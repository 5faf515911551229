package lockwright.report;

/** A cell of a table of commas, as RFC 4180 has it, for people who open it as a spreadsheet. */
public final class CsvCell {
  private CsvCell() {}

  /** The text, inert in a spreadsheet, and quoted if it holds a comma or a quote. */
  public static String of(String text) {
    String inert = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" : "";
    String shown = inert + Shown.text(text);
    return shown.contains(",") || shown.contains("\"")
        ? "\"" + shown.replace("\"", "\"\"") + "\""
        : shown;
  }
}
