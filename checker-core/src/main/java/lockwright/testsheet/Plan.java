package lockwright.testsheet;

import java.util.ArrayList;
import java.util.List;

/** A line that is to be: where the levers are to stand, and the trials that it serves. */
final class Plan {
  private final int[] state;
  private final boolean alone;
  private final List<Trial> trials = new ArrayList<>();

  /**
   * @param alone whether the entry of its first trial is to be the only thing that holds
   */
  Plan(int[] state, boolean alone) {
    this.state = state;
    this.alone = alone;
  }

  int[] state() {
    return state;
  }

  boolean alone() {
    return alone;
  }

  List<Trial> trials() {
    return trials;
  }

  Trial first() {
    return trials.get(0);
  }

  /** Whether it must come after this one: a rotation is kept only once it has been tried. */
  boolean waitsFor(Plan other) {
    return first().aspect() == Aspect.ROTATION_KEPT
        && other.first().aspect() == Aspect.ROTATION
        && other.first().entry().equals(first().entry());
  }
}
