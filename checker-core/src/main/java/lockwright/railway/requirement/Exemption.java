package lockwright.railway.requirement;

import lockwright.spec.Span;

/**
 * An instance that the author exempts by name, so that it is not asked for; `docs/meaning.md` 6.1.
 * It has no verdict, and is never counted as proved.
 *
 * @param at where the exemption is written
 */
public record Exemption(Requirement requirement, String reason, Span at) {
  public Exemption {
    if (!allowed(requirement)) {
      throw new IllegalArgumentException(requirement.id() + " cannot be exempted");
    }
  }

  /** Whether instances of its kind can be exempted. */
  public static boolean allowed(Requirement requirement) {
    return requirement instanceof Requirement.PointsBolted
        || requirement instanceof Requirement.PointsHeldInRear
        || requirement instanceof Requirement.FlankProtected;
  }
}
