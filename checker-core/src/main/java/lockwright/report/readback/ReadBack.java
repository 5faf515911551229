package lockwright.report.readback;

import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.Box;

/** The read-back of a box. Pure: the same box gives the same characters. */
public final class ReadBack {
  private ReadBack() {}

  /** Plain text, 100 columns wide where no single word is longer; lines end in a line feed. */
  public static String text(Box box) {
    return TextSheet.of(box, items(box));
  }

  /**
   * A table with a head, by RFC 4180, its lines ending in carriage return and line feed. A cell
   * that a spreadsheet would take for a formula begins with an apostrophe.
   */
  public static String csv(Box box) {
    return CsvSheet.of(box, items(box));
  }

  private static List<Item> items(Box box) {
    return Stream.of(
            PlanItems.of(box),
            SignalItems.of(box),
            ConflictItems.of(box),
            AdviceItems.of(box),
            FlankItems.of(box),
            LeverItems.of(box),
            SectionItems.of(box),
            ControlItems.of(box),
            Remarks.notChecked())
        .flatMap(List::stream)
        .toList();
  }
}
