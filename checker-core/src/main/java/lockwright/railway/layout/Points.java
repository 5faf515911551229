package lockwright.railway.layout;

import java.util.Optional;
import lockwright.spec.Span;

/**
 * Points: the tracks at their toe and legs. Trap points have one leg without a track.
 *
 * @param trap the leg that leads off the road, if these are trap points
 * @param byHand whether whoever stands there works them, and no lever or ground frame
 * @param sprung whether a spring holds them normal, and nothing else works them; {@code
 *     docs/meaning.md} 2.3
 */
public record Points(
    String id,
    String label,
    String toe,
    Optional<String> normal,
    Optional<String> reverse,
    Optional<Lie> trap,
    boolean byHand,
    boolean sprung,
    Span at) {
  public Points {
    if (sprung && (byHand || trap.equals(Optional.of(Lie.REVERSE)))) {
      throw new IllegalArgumentException(
          "points " + id + ": a spring alone holds them, and never off the trap");
    }
    if (normal.isPresent() == trap.equals(Optional.of(Lie.NORMAL))
        || reverse.isPresent() == trap.equals(Optional.of(Lie.REVERSE))) {
      throw new IllegalArgumentException("points " + id + ": each leg has a track or is the trap");
    }
  }

  /** Points that are not sprung. */
  public Points(
      String id,
      String label,
      String toe,
      Optional<String> normal,
      Optional<String> reverse,
      Optional<Lie> trap,
      boolean byHand,
      Span at) {
    this(id, label, toe, normal, reverse, trap, byHand, false, at);
  }

  /** The track at a leg; empty for the trap. */
  public Optional<String> track(Lie leg) {
    return leg == Lie.NORMAL ? normal : reverse;
  }
}
