package lockwright.report;

import lockwright.audit.Audited;

/**
 * What was found of an advice. None of these words is that of a failure, and none fails a build.
 */
public enum Advised implements Audited.Cases<Advised> {
  KEPT("kept"),
  NOT_KEPT("not kept"),
  /** It is kept, but only since one of the lies never comes about. */
  EMPTY("empty"),
  UNDECIDED("undecided");

  private final String words;

  Advised(String words) {
    this.words = words;
  }

  /**
   * The word for a verdict.
   *
   * @throws IllegalArgumentException if it is one on a possibility, which is no advice
   */
  public static Advised of(Audited audited) {
    return audited.fold(UNDECIDED);
  }

  @Override
  public Advised proved(Audited.Proved proved) {
    return KEPT;
  }

  @Override
  public Advised empty(Audited.Empty empty) {
    return EMPTY;
  }

  @Override
  public Advised broken(Audited.Broken broken) {
    return NOT_KEPT;
  }

  @Override
  public Advised undecided(Audited.Undecided undecided) {
    return UNDECIDED;
  }

  @Override
  public Advised shown(Audited.Shown shown) {
    throw possibility(shown);
  }

  @Override
  public Advised impossible(Audited.Impossible impossible) {
    throw possibility(impossible);
  }

  @Override
  public Advised restorable(Audited.Restorable restorable) {
    throw possibility(restorable);
  }

  @Override
  public Advised stranded(Audited.Stranded stranded) {
    throw possibility(stranded);
  }

  private static IllegalArgumentException possibility(Audited audited) {
    return new IllegalArgumentException(audited.requirement().id() + " is no advice");
  }

  /** "not kept". */
  @Override
  public String toString() {
    return words;
  }
}
