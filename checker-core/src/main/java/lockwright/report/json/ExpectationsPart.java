package lockwright.report.json;

import java.time.LocalDate;
import java.util.List;
import lockwright.report.Findings;
import lockwright.report.Judgement;

/**
 * How many instances are expected or waived to fail, and what became of that.
 *
 * @param date the day that the build was given; null if nothing is waived
 */
record ExpectationsPart(
    String date, int expected, int waived, int hold, int noLongerBite, int pastTheirDate) {
  /** Null if nothing is expected or waived. */
  static ExpectationsPart of(Findings findings) {
    List<Judgement> all = findings.judgements();
    if (all.isEmpty()) {
      return null;
    }
    int waived = (int) all.stream().filter(j -> j.expectation().waiver().isPresent()).count();
    return new ExpectationsPart(
        findings.expectations().date().map(LocalDate::toString).orElse(null),
        all.size() - waived,
        waived,
        count(all, Judgement.State.HOLDS),
        count(all, Judgement.State.NO_LONGER_BITES),
        count(all, Judgement.State.PAST_ITS_DATE));
  }

  private static int count(List<Judgement> all, Judgement.State state) {
    return (int) all.stream().filter(j -> j.state() == state).count();
  }
}
