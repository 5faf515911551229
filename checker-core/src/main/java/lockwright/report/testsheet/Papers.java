package lockwright.report.testsheet;

import lockwright.testsheet.TestSheet;

/** The papers of a box. The same sheet gives the same characters. */
public final class Papers {
  private Papers() {}

  public static String text(TestSheet sheet) {
    return new TextPaper(sheet).text();
  }

  public static String csv(TestSheet sheet) {
    return CsvPaper.of(sheet);
  }

  /** One page of HTML that needs nothing else. */
  public static String page(TestSheet sheet) {
    return new PrintPage(sheet).page();
  }
}
