package lockwright.report.text;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Exemption;
import lockwright.report.Assumption;
import lockwright.report.Cautions;
import lockwright.report.Findings;
import lockwright.report.Shown;

/** Every verdict on a box, with the sequences of breaches and of possibilities. */
public final class FullLog {
  private FullLog() {}

  /** Lines ended by a line feed; the same findings give the same characters. */
  public static String of(Findings findings) {
    List<String> text = new ArrayList<>();
    text.add("Check of " + findings.box().name());
    text.addAll(Cautions.ALL);
    text.add("");
    text.add("Assumptions:");
    Assumption.of(findings.box()).forEach(a -> text.add(assumption(a)));
    text.add("");
    findings.digests().forEach((file, digest) -> text.add(digest + "  " + file));
    text.add("");
    text.add(Summary.count(findings));
    text.add("");
    List<String> known = KnownFailures.text(findings);
    if (!known.isEmpty()) {
      text.addAll(known);
      text.add("");
    }
    if (!findings.box().exempted().isEmpty()) {
      text.add("Exempted by name, and not checked:");
      for (Exemption e : findings.box().exempted()) {
        text.add("  exempted: " + e.requirement().id());
        text.add("    reason: " + e.reason());
      }
      text.add("");
    }
    if (!findings.box().asked().isEmpty()) {
      text.add("Asked for by name, which would be advice otherwise:");
      for (Asked a : findings.box().asked()) {
        text.add("  asked: " + a.requirement().id());
        text.add("    reason: " + a.reason());
      }
      text.add("");
    }
    Finding finding = new Finding(findings);
    findings.audited().forEach(a -> text.addAll(finding.text(a)));
    List<String> advice = new AdviceLines(findings).text();
    if (!advice.isEmpty()) {
      text.add("");
      text.addAll(advice);
    }
    text.add("");
    text.addAll(new EntryLines(findings.box()).text(findings.entries()));
    return String.join("\n", Shown.lines(text)) + "\n";
  }

  private static String assumption(Assumption assumption) {
    String section = assumption.section() == null ? "" : "section " + assumption.section() + ": ";
    return "  " + section + assumption.words() + " (" + assumption.source() + ")";
  }
}
