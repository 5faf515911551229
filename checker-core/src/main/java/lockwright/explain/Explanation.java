package lockwright.explain;

import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.walk.Outcome;
import lockwright.working.State;

/**
 * Whether a lever is free in a state, and why not.
 *
 * @param state the state asked about: the levers as given; all else as it is when the state is
 *     reached, or as in a beginning if it cannot be
 * @param stands where the lever stands
 * @param ways one from an end; from part-way two
 * @param freeing if the lever is held at an end, in a state that can be or may be: the fewest whole
 *     strokes and events after which it can make its stroke
 */
public record Explanation(
    Box box,
    Asked asked,
    Arrival arrival,
    State state,
    Position stands,
    List<Way> ways,
    Optional<Outcome> freeing) {
  public Explanation {
    ways = List.copyOf(ways);
  }

  /**
   * Explains.
   *
   * @param asked without {@linkplain Asked#faults faults}
   * @param most how many states each search may look at
   */
  public static Explanation of(Box box, Asked asked, int most) {
    return new Explaining(box, asked, Optional.empty(), most).explanation();
  }

  /**
   * Explains a state that is come to from another.
   *
   * @param asked without {@linkplain Asked#faults faults}
   * @param from a state of the working by whole strokes, in which no lever is part-way
   * @param most how many states each search may look at
   */
  public static Explanation from(State from, Box box, Asked asked, int most) {
    return new Explaining(box, asked, Optional.of(from), most).explanation();
  }
}
