package lockwright.report.text;

import lockwright.audit.Audited;
import lockwright.railway.requirement.Expectation;
import lockwright.report.Findings;
import lockwright.report.Judgement;

/** The word of a verdict, what is expected in place of it, and what it is the verdict on. */
final class VerdictLine {
  private VerdictLine() {}

  /** "broken: points set: signal 1", "broken, waived: points set: signal 1". */
  static String of(Findings findings, Audited audited) {
    return Word.of(audited)
        + findings.judgement(audited).map(VerdictLine::words).orElse("")
        + ": "
        + audited.requirement().id();
  }

  private static String words(Judgement judgement) {
    Expectation expectation = judgement.expectation();
    return switch (judgement.state()) {
      case HOLDS -> ", " + expectation.kind();
      case NO_LONGER_BITES -> ", and not " + expectation.verdict() + " as " + expectation.kind();
      case PAST_ITS_DATE -> ", waived only until " + expectation.waiver().orElseThrow().until();
    };
  }
}
