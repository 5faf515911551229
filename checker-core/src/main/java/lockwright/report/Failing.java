package lockwright.report;

import java.util.Optional;
import lockwright.audit.Audited;
import lockwright.railway.requirement.Expectation;

/** The verdicts that fail a build, unless the author has written them beforehand. */
final class Failing implements Audited.Cases<Optional<Expectation.Verdict>> {
  private static final Failing CASES = new Failing();

  private Failing() {}

  /** Empty for those that do not. */
  static Optional<Expectation.Verdict> of(Audited audited) {
    return audited.fold(CASES);
  }

  @Override
  public Optional<Expectation.Verdict> proved(Audited.Proved proved) {
    return Optional.empty();
  }

  @Override
  public Optional<Expectation.Verdict> empty(Audited.Empty empty) {
    return Optional.of(Expectation.Verdict.EMPTY);
  }

  @Override
  public Optional<Expectation.Verdict> broken(Audited.Broken broken) {
    return Optional.of(Expectation.Verdict.BROKEN);
  }

  @Override
  public Optional<Expectation.Verdict> undecided(Audited.Undecided undecided) {
    return Optional.of(Expectation.Verdict.UNDECIDED);
  }

  @Override
  public Optional<Expectation.Verdict> shown(Audited.Shown shown) {
    return Optional.empty();
  }

  @Override
  public Optional<Expectation.Verdict> impossible(Audited.Impossible impossible) {
    return Optional.of(Expectation.Verdict.IMPOSSIBLE);
  }

  @Override
  public Optional<Expectation.Verdict> restorable(Audited.Restorable restorable) {
    return Optional.empty();
  }

  @Override
  public Optional<Expectation.Verdict> stranded(Audited.Stranded stranded) {
    return Optional.of(Expectation.Verdict.BROKEN);
  }
}
