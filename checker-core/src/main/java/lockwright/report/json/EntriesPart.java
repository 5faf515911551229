package lockwright.report.json;

import java.util.Collection;
import java.util.List;
import lockwright.audit.CheckedBy;
import lockwright.audit.EntryVerdict;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Entries;

/**
 * What was found of each entry of the locking table, left out alone.
 *
 * @param notTried why none was; null, if they were
 * @param verdicts in the order of the table; null, if they were not tried
 */
record EntriesPart(String notTried, List<Verdict> verdicts) {

  /**
   * What does not go with the verdict is null, and not written.
   *
   * @param breaks for the verdict needed, one or more
   * @param advice for the verdict needed by advice, one or more, and for needed, if any is not kept
   * @param open for the verdict needed: the ids of requirements of which nothing is known
   * @param proof for the verdict implied
   * @param allows for the verdict not needed: the run to what the entry forbids
   * @param kept for the verdicts needed by advice and not needed, one for each requirement of
   *     safety; for not needed, and one for each advice
   * @param reasons for the verdict undecided, one or more
   */
  record Verdict(
      String entry,
      Place at,
      String verdict,
      List<Break> breaks,
      List<Break> advice,
      List<String> open,
      Proof proof,
      Allowed allows,
      List<Kept> kept,
      List<String> reasons) {}

  /**
   * @param breaksBy "state", or "movement" if the last movement is the forbidden one
   */
  record Break(String requirement, String run, boolean shortest, String breaksBy, int heldAt) {}

  /**
   * @param heldAt the movement that the entry would hold, from 1
   */
  record Allowed(String run, boolean shortest, int heldAt) {}

  record Proof(String certificate, List<String> checkedBy) {}

  record Kept(String requirement, String certificate, List<String> checkedBy) {}

  static EntriesPart of(Entries entries, Runs runs, Certificates certificates) {
    if (!entries.notTried().isEmpty()) {
      return new EntriesPart(entries.notTried(), null);
    }
    Writer writer = new Writer(runs, certificates);
    return new EntriesPart(null, entries.verdicts().stream().map(v -> v.fold(writer)).toList());
  }

  private record Writer(Runs runs, Certificates certificates)
      implements EntryVerdict.Cases<Verdict> {

    @Override
    public Verdict needed(EntryVerdict.Needed v) {
      List<Break> breaks = v.breaks().stream().map(this::broken).toList();
      List<Break> advice = v.advice().stream().map(this::broken).toList();
      List<String> open = v.open().stream().map(Requirement::id).toList();
      return new Verdict(
          v.entry().words(),
          at(v),
          "needed",
          breaks,
          advice.isEmpty() ? null : advice,
          open,
          null,
          null,
          null,
          null);
    }

    @Override
    public Verdict neededByAdvice(EntryVerdict.NeededByAdvice v) {
      List<Break> advice = v.advice().stream().map(this::broken).toList();
      List<Kept> kept = v.kept().stream().map(this::kept).toList();
      return new Verdict(
          v.entry().words(), at(v), "needed by advice", null, advice, null, null, null, kept, null);
    }

    private Break broken(EntryVerdict.Break b) {
      EntryVerdict.Allowed run = b.run();
      return new Break(
          b.requirement().id(),
          runs.half(run.played()),
          run.shortest(),
          Instances.breaksBy(b.requirement()),
          run.heldAt());
    }

    @Override
    public Verdict implied(EntryVerdict.Implied v) {
      Proof proof = new Proof(digest(v.never()), words(v.never().checkedBy()));
      return new Verdict(
          v.entry().words(), at(v), "implied by others", null, null, null, proof, null, null, null);
    }

    @Override
    public Verdict notNeeded(EntryVerdict.NotNeeded v) {
      EntryVerdict.Allowed run = v.allows();
      Allowed allows = new Allowed(runs.half(run.played()), run.shortest(), run.heldAt());
      List<Kept> kept = v.kept().stream().map(this::kept).toList();
      return new Verdict(
          v.entry().words(), at(v), "not needed", null, null, null, null, allows, kept, null);
    }

    private Kept kept(EntryVerdict.Kept k) {
      return new Kept(k.requirement().id(), digest(k.never()), words(k.never().checkedBy()));
    }

    @Override
    public Verdict undecided(EntryVerdict.Undecided v) {
      return new Verdict(
          v.entry().words(), at(v), "undecided", null, null, null, null, null, null, v.reasons());
    }

    private static Place at(EntryVerdict v) {
      return Place.of(v.entry().at());
    }

    private String digest(EntryVerdict.Never never) {
      return certificates.digest(never.certificate());
    }

    private static List<String> words(Collection<CheckedBy> by) {
      return by.stream().sorted().map(CheckedBy::words).toList();
    }
  }
}
