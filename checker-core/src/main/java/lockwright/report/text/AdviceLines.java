package lockwright.report.text;

import java.util.ArrayList;
import java.util.List;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.layout.Conflict;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Advised;
import lockwright.report.Findings;
import lockwright.report.Sequence;

/** The advice, which fails nothing, and what was found of each. */
record AdviceLines(Findings findings) {
  private static final int MEETINGS = 3;

  /** "1 kept, 2 not kept"; empty if there is no advice. */
  static String count(Findings findings) {
    List<String> counts = new ArrayList<>();
    for (Advised word : Advised.values()) {
      int number = findings.advice(word).size();
      if (number > 0) {
        counts.add(number + " " + word);
      }
    }
    return String.join(", ", counts);
  }

  /** The line of what of it is not kept, or not known to be; none if all is kept. */
  static List<String> told(Findings findings) {
    return findings.advice(Advised.KEPT).size() == findings.advice().size()
        ? List.of()
        : List.of(
            findings.box().name()
                + ": advice, which fails nothing: "
                + count(findings)
                + " (each is in check.txt)");
  }

  /** A heading, and each with what was found; none if there is no advice. */
  List<String> text() {
    if (findings.advice().isEmpty()) {
      return List.of();
    }
    List<String> text = new ArrayList<>();
    text.add("Advice: " + count(findings));
    text.add("It is no requirement unless waivers.yaml asks for it, and fails nothing.");
    for (Audited audited : findings.advice()) {
      text.add(Advised.of(audited) + ": " + audited.requirement().id());
      text.addAll(meetings(audited.requirement()));
      text.addAll(found(audited));
    }
    return text;
  }

  /** Which routes meet, and where. */
  static List<String> meetings(Requirement requirement) {
    if (!(requirement instanceof Requirement.PointsToPoints r)) {
      return List.of();
    }
    List<String> text = new ArrayList<>();
    for (Conflict c : r.meetings().subList(0, Math.min(MEETINGS, r.meetings().size()))) {
      text.add(
          "  for these meet: "
              + c.first().name()
              + " and "
              + c.second().name()
              + ", "
              + c.reason());
    }
    if (r.meetings().size() > MEETINGS) {
      int more = r.meetings().size() - MEETINGS;
      text.add("  and " + more + (more == 1 ? " pair of routes more" : " pairs of routes more"));
    }
    return text;
  }

  private List<String> found(Audited audited) {
    return switch (Advised.of(audited)) {
      case KEPT -> List.of();
      case EMPTY ->
          ((Audited.Empty) audited)
              .never().stream().map(n -> "  never: " + n.subject().id()).toList();
      case UNDECIDED -> List.of("  reason: " + ((Audited.Undecided) audited).reason());
      case NOT_KEPT -> notKept((Audited.Broken) audited);
    };
  }

  private List<String> notKept(Audited.Broken found) {
    Sequence sequence = Sequence.of(findings.box(), found.played());
    List<String> text = new ArrayList<>(sequence.text());
    text.add(
        found.shortest()
            ? "  then they lie so together; no sequence of fewer half-strokes and events leads there"
            : "  then they lie so together; perhaps a shorter sequence leads there too");
    MissingEntry.draft(findings.box(), found.requirement(), found.played())
        .ifPresent(missing -> text.addAll(Finding.missing(missing, sequence)));
    return text;
  }
}
