package lockwright.report.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.audit.Audited;
import lockwright.railway.requirement.Expectation;
import lockwright.report.Findings;
import lockwright.report.Judgement;

/** What the author expects and waives, and what became of it. */
final class KnownFailures {
  private KnownFailures() {}

  /** All, with the counts; empty if nothing is expected or waived. */
  static List<String> text(Findings findings) {
    List<Judgement> all = findings.judgements();
    if (all.isEmpty()) {
      return List.of();
    }
    List<String> counts = new ArrayList<>();
    for (Judgement.State state : Judgement.State.values()) {
      int number = count(findings, state);
      if (number > 0) {
        counts.add(number + " " + words(state, number));
      }
    }
    List<String> text = new ArrayList<>();
    text.add(
        "Expected and waived: "
            + String.join(", ", counts)
            + findings.expectations().date().map(d -> " (on " + d + ")").orElse(""));
    for (Audited audited : findings.audited()) {
      findings
          .judgement(audited)
          .ifPresent(j -> text.addAll(lines(VerdictLine.of(findings, audited), j)));
    }
    return text;
  }

  /** Those that fail the build, each with what to do. */
  static List<String> failing(Findings findings) {
    List<String> text = new ArrayList<>();
    for (Audited audited : findings.failing()) {
      findings
          .judgement(audited)
          .ifPresent(
              j -> {
                text.add(VerdictLine.of(findings, audited));
                text.add("  " + fix(j));
              });
    }
    return text;
  }

  static int count(Findings findings, Judgement.State state) {
    return (int) findings.judgements().stream().filter(j -> j.state() == state).count();
  }

  /** Those that hold, by verdict: "1 broken as expected", "2 undecided as waived". */
  static List<String> held(Findings findings) {
    Map<String, Integer> held = new LinkedHashMap<>();
    for (Judgement judgement : findings.judgements()) {
      if (judgement.holds()) {
        Expectation e = judgement.expectation();
        held.merge(e.verdict() + " as " + e.kind(), 1, Integer::sum);
      }
    }
    return held.entrySet().stream().map(e -> e.getValue() + " " + e.getKey()).toList();
  }

  private static List<String> lines(String verdict, Judgement judgement) {
    List<String> lines = new ArrayList<>();
    lines.add("  " + verdict);
    judgement
        .expectation()
        .waiver()
        .ifPresent(w -> lines.add("    by: " + w.role() + ", until " + w.until()));
    lines.add("    reason: " + judgement.expectation().reason());
    if (!judgement.holds()) {
      lines.add("    " + fix(judgement));
    }
    return lines;
  }

  private static String fix(Judgement judgement) {
    String at = judgement.expectation().at().toString();
    return judgement.state() == Judgement.State.NO_LONGER_BITES
        ? "it no longer bites: take it out at " + at + ", or write the verdict that is so"
        : "it is past its date: mend what fails, or have it waived anew at " + at;
  }

  private static String words(Judgement.State state, int number) {
    return switch (state) {
      case HOLDS -> number == 1 ? "holds" : "hold";
      case NO_LONGER_BITES -> number == 1 ? "no longer bites" : "no longer bite";
      case PAST_ITS_DATE -> number == 1 ? "past its date" : "past their dates";
    };
  }
}
