package lockwright.railway.layout;

import java.util.Optional;
import lockwright.spec.Span;

/**
 * Points: the tracks at their toe and legs. Trap points have one leg without a track.
 *
 * @param trap the leg that leads off the road, if these are trap points
 * @param byHand whether whoever stands there works them, and no lever or ground frame
 */
public record Points(
    String id,
    String label,
    String toe,
    Optional<String> normal,
    Optional<String> reverse,
    Optional<Lie> trap,
    boolean byHand,
    Span at) {
  public Points {
    if (normal.isPresent() == trap.equals(Optional.of(Lie.NORMAL))
        || reverse.isPresent() == trap.equals(Optional.of(Lie.REVERSE))) {
      throw new IllegalArgumentException("points " + id + ": each leg has a track or is the trap");
    }
  }

  /** The track at a leg; empty for the trap. */
  public Optional<String> track(Lie leg) {
    return leg == Lie.NORMAL ? normal : reverse;
  }
}
