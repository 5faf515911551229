package lockwright.report.text;

import java.util.ArrayList;
import java.util.List;
import lockwright.report.Findings;

/** Every verdict on a box, with the sequences of breaches and of possibilities. */
public final class FullLog {
  private FullLog() {}

  /** Lines ended by a line feed; the same findings give the same characters. */
  public static String of(Findings findings) {
    List<String> text = new ArrayList<>();
    text.add("Check of " + findings.box().name());
    text.add(
        "An aid for checking written rules; not locking data. 'Proved' means within the model,");
    text.add(
        "the listed files and the listed assumptions, and only as far as someone has compared");
    text.add(
        "the files with the plan and the frame with the table. No substitute for competent and");
    text.add("licensed people, the rule book, local instructions, testing on site or approval.");
    text.add("");
    findings.digests().forEach((file, digest) -> text.add(digest + "  " + file));
    text.add("");
    text.add(Summary.count(findings.tally()));
    text.add("");
    Finding finding = new Finding(findings.box());
    findings.audited().forEach(a -> text.addAll(finding.text(a)));
    return String.join("\n", Shown.lines(text)) + "\n";
  }
}
