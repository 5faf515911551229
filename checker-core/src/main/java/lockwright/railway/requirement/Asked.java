package lockwright.railway.requirement;

import lockwright.spec.Span;

/**
 * An instance that is advice, and that the author asks for by name, so that it is a requirement
 * like any other; `docs/meaning.md` 6.2.
 *
 * @param reason why this box must keep it: text of the author's
 * @param at where that is written
 */
public record Asked(Requirement requirement, String reason, Span at) {
  public Asked {
    if (!advice(requirement)) {
      throw new IllegalArgumentException(requirement.id() + " is no advice");
    }
  }

  /** Whether instances of its kind are advice unless they are asked for. */
  public static boolean advice(Requirement requirement) {
    return requirement instanceof Requirement.PointsToPoints;
  }
}
