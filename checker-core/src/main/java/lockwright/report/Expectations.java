package lockwright.report;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lockwright.audit.Audited;
import lockwright.railway.requirement.Expectation;

/**
 * What the author expects and waives, and the date that the build was given; 7 of {@code
 * docs/meaning.md}. No clock is read.
 *
 * @param all each for another requirement
 * @param date there if anything is waived, and only then
 */
public record Expectations(List<Expectation> all, Optional<LocalDate> date) {
  static final Expectations NONE = new Expectations(List.of(), Optional.empty());

  /**
   * @param date not kept where nothing is waived
   * @throws IllegalArgumentException if a date is {@linkplain #needDate needed} and not given
   */
  public Expectations {
    all = List.copyOf(all);
    date = needDate(all) ? date : Optional.empty();
    Set<String> ids = new HashSet<>();
    if (!all.stream().allMatch(e -> ids.add(e.id())) || (needDate(all) && date.isEmpty())) {
      throw new IllegalArgumentException("one for each requirement, and a date for waivers");
    }
  }

  /** Whether any of these ends on a day. */
  public static boolean needDate(List<Expectation> all) {
    return all.stream().anyMatch(e -> e.waiver().isPresent());
  }

  Optional<Judgement> judge(Audited audited) {
    return all.stream()
        .filter(e -> e.id().equals(audited.requirement().id()))
        .findFirst()
        .map(e -> new Judgement(e, state(e, Failing.of(audited))));
  }

  private Judgement.State state(Expectation expectation, Optional<Expectation.Verdict> verdict) {
    if (!verdict.equals(Optional.of(expectation.verdict()))) {
      return Judgement.State.NO_LONGER_BITES;
    }
    return expectation.waiver().filter(w -> date.orElseThrow().isAfter(w.until())).isPresent()
        ? Judgement.State.PAST_ITS_DATE
        : Judgement.State.HOLDS;
  }
}
