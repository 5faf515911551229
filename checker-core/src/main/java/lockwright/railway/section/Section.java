package lockwright.railway.section;

import java.util.List;
import java.util.Optional;
import lockwright.spec.Span;

/**
 * A single-line section worked by electric token, tablet or staff; `docs/meaning.md` 4.
 *
 * @param track the track of the plan whose outer end lies in the section
 * @param token what the men call it: token, tablet or staff
 * @param tokens how many there are, 1 or more
 * @param instruments in the order written; one of them is at this box
 * @param here the name of the instrument at this box
 * @param release the release of levers that a withdrawal here gives, if any
 * @param locks those of the ground frames that its tokens release
 */
public record Section(
    String name,
    String track,
    Token token,
    int tokens,
    List<Instrument> instruments,
    String here,
    boolean plungeWhileWithdrawing,
    boolean phaseReversesAtStart,
    Irregular irregular,
    Optional<Release> release,
    List<Lock> locks,
    Span at) {
  public Section {
    instruments = List.copyOf(instruments);
    locks = List.copyOf(locks);
    if (tokens < 1) {
      throw new IllegalArgumentException(
          "section " + name + " has " + tokens + " tokens; 1 or more");
    }
    if (instruments.size() < 2 || instruments.stream().noneMatch(i -> i.name().equals(here))) {
      throw new IllegalArgumentException("section " + name + ": two instruments or more, one here");
    }
  }

  /** The same section with another release. */
  public Section withRelease(Release other) {
    return with(Optional.of(other), locks);
  }

  /** The same section with other locks of ground frames. */
  public Section withLocks(List<Lock> other) {
    return with(release, other);
  }

  private Section with(Optional<Release> otherRelease, List<Lock> otherLocks) {
    return new Section(
        name,
        track,
        token,
        tokens,
        instruments,
        here,
        plungeWhileWithdrawing,
        phaseReversesAtStart,
        irregular,
        otherRelease,
        otherLocks,
        at);
  }

  /** An instrument, whether it is attended, and the instruments whose consent it needs. */
  public record Instrument(String name, boolean attended, List<String> needsConsentOf) {
    public Instrument {
      needsConsentOf = List.copyOf(needsConsentOf);
    }
  }

  /**
   * The lock of a ground frame, which a token of the section opens.
   *
   * @param heldWhileOpen whether the token is held in it until all points lie normal
   */
  public record Lock(String groundFrame, boolean heldWhileOpen) {}

  /** A release for one pull, shared by the levers that it frees. */
  public record Release(List<String> levers, Lasts lasts, Begins begins) {
    public Release {
      levers = List.copyOf(levers);
    }
  }

  /** What the tokens are called. */
  public enum Token {
    TOKEN,
    TABLET,
    STAFF
  }

  /** How long a release lasts. */
  public enum Lasts {
    UNTIL_USED,
    UNTIL_PUT_IN_HERE,
    UNTIL_PUT_IN
  }

  /** How a release stands in the beginning. */
  public enum Begins {
    LOCKED,
    GIVEN,
    EITHER
  }

  /** Whether an instrument may let a token go against the rules. */
  public enum Irregular {
    NEVER,
    ONCE,
    ANY
  }
}
