package lockwright.report.json;

import lockwright.railway.requirement.Expectation;
import lockwright.report.Judgement;

/**
 * What the author says of an instance that fails, and what became of it.
 *
 * @param kind "expected" or "waived"
 * @param verdict the one written, which need not be that of the instance
 * @param role for a waiver
 * @param until for a waiver, the last day
 * @param state "holds", "no longer bites" or "past its date"
 */
record ExpectationPart(
    String kind, String verdict, String reason, String role, String until, String state, Place at) {
  static ExpectationPart of(Judgement judgement) {
    Expectation e = judgement.expectation();
    return new ExpectationPart(
        e.kind(),
        e.verdict().toString(),
        e.reason(),
        e.waiver().map(Expectation.Waiver::role).orElse(null),
        e.waiver().map(w -> w.until().toString()).orElse(null),
        judgement.state().toString(),
        Place.of(e.at()));
  }
}
