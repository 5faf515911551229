package lockwright.proof.pdr;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;

/**
 * What the solver has said of steps into cubes, so that it is not asked again. A layer may lose
 * states and gains none, and lies within the next: so what no state of a layer does, none of an
 * earlier one does, then or later. Of each, the latest are kept.
 */
final class Remembered {
  private static final int STATES = 32;
  private static final int STEPS = 12;

  /** A state of a layer, and the transitions whose guards hold in it. */
  private record Found(int[] state, int layer, int[] enabled) {}

  /**
   * A transition leads into a cube from no state of a layer; or from none outside another cube,
   * unless that is null.
   */
  private record NoStep(Cube cube, int layer, Cube outside) {}

  private final List<Transition> transitions;
  private final Deque<Found> found = new ArrayDeque<>();
  private final List<Deque<NoStep>> none = new ArrayList<>();

  Remembered(TransitionSystem system) {
    transitions = system.transitions();
    transitions.forEach(t -> none.add(new ArrayDeque<>()));
  }

  void state(int[] state, int layer) {
    int[] enabled =
        IntStream.range(0, transitions.size())
            .filter(t -> transitions.get(t).guard().holds(state))
            .toArray();
    keep(found, new Found(state, layer, enabled), STATES);
  }

  void noStep(int transition, Cube into, int layer, Cube outside) {
    keep(none.get(transition), new NoStep(into, layer, outside), STEPS);
  }

  private static <T> void keep(Deque<T> kept, T latest, int most) {
    kept.addFirst(latest);
    if (kept.size() > most) {
      kept.removeLast();
    }
  }

  /**
   * A state of a layer outside a cube from which a transition leads into it, or null if none is
   * remembered.
   *
   * @param stillThere whether a state that was found in the layer has not left it since
   */
  Layers.Predecessor predecessor(Cube cube, int layer, Predicate<int[]> stillThere) {
    for (Found one : found) {
      if (one.layer() > layer || cube.has(one.state())) {
        continue;
      }
      for (int t : one.enabled()) {
        if (cube.mayFollow(one.state(), transitions.get(t)) && stillThere.test(one.state())) {
          return new Layers.Predecessor(one.state(), t);
        }
      }
    }
    return null;
  }

  /**
   * Whether it is remembered that a transition leads into a cube from no state of a layer outside
   * it.
   *
   * @param needed the indices of the parts that this rests on are added
   */
  boolean noStep(int transition, Cube cube, int layer, BitSet needed) {
    for (NoStep step : none.get(transition)) {
      if (layer <= step.layer()
          && step.cube().contains(cube)
          && (step.outside() == null || cube.contains(step.outside()))) {
        needed.or(cube.partsOf(step.cube()));
        return true;
      }
    }
    return false;
  }
}
