package lockwright.railway.requirement;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import lockwright.spec.Span;

/**
 * What the author says of an instance that fails: that it is right so (expected), or that somebody
 * answers for it until a day (waived). It changes the outcome of a build, never a verdict.
 *
 * @param id of the requirement
 * @param reason text of the author's
 * @param waiver if it is waived
 * @param at the place of the id in the file
 */
public record Expectation(
    String id, Verdict verdict, String reason, Optional<Waiver> waiver, Span at) {
  /** The verdicts that fail a build. */
  public enum Verdict {
    BROKEN,
    EMPTY,
    IMPOSSIBLE,
    UNDECIDED;

    /** Whether a requirement of this kind can have it. */
    public boolean fits(Requirement requirement) {
      return switch (this) {
        case BROKEN -> !requirement.possibility() || restores(requirement);
        case EMPTY -> !requirement.possibility();
        case IMPOSSIBLE -> requirement.possibility() && !restores(requirement);
        case UNDECIDED -> true;
      };
    }

    /** The one possibility that is broken by a sequence. */
    private static boolean restores(Requirement requirement) {
      return requirement instanceof Requirement.FrameCanBeRestored;
    }

    /** The word, as in the file. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Who answers for it, by role, and the last day.
   *
   * @param role text of the author's
   */
  public record Waiver(String role, LocalDate until) {}

  /** "expected" or "waived". */
  public String kind() {
    return waiver.isPresent() ? "waived" : "expected";
  }
}
