package lockwright.railway.control;

import java.util.List;
import lockwright.spec.Span;

/**
 * Something that is met or not, and that the frame does not make so.
 *
 * @param of what it is read off: the tracks of a track circuit, the box that gives a release or a
 *     slot, the track of a treadle, how long a time is
 * @param onePull whether it is used up as a lever that needs it leaves N; a release only
 */
public record OutsideCondition(String name, Kind kind, List<String> of, boolean onePull, Span at) {
  public OutsideCondition {
    of = List.copyOf(of);
    if (onePull && kind != Kind.RELEASE) {
      throw new IllegalArgumentException("only a release is for one pull");
    }
  }

  /** What it is; the meaning is the same for all. */
  public enum Kind {
    /** Met while no train is on its tracks, as far as it tells. */
    TRACK_CIRCUIT("track circuit"),
    /** Given by another box, for a lever. */
    RELEASE("release"),
    /** Given by another box, for an arm that both work. */
    SLOT("slot"),
    /** Met when a train has worked it. */
    TREADLE("treadle"),
    /** Met when it has run. */
    TIME("time");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
