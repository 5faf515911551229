package lockwright.report.testsheet;

import java.util.SortedMap;
import lockwright.testsheet.TestSheet;

/**
 * The papers of a box, each with the SHA-256 of the files that it was read from, by their names.
 * The same sheet gives the same characters.
 */
public final class Papers {
  private Papers() {}

  public static String text(TestSheet sheet, SortedMap<String, String> digests) {
    return new TextPaper(sheet, digests).text();
  }

  public static String csv(TestSheet sheet, SortedMap<String, String> digests) {
    return CsvPaper.of(sheet, digests);
  }

  /** One page of HTML that needs nothing else. */
  public static String page(TestSheet sheet, SortedMap<String, String> digests) {
    return new PrintPage(sheet, digests).page();
  }
}
