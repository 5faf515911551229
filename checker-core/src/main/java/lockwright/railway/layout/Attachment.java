package lockwright.railway.layout;

/** What an end of a track is attached to; `docs/meaning.md` 1.1. */
public sealed interface Attachment {
  /** A plain joint with the end of another (or the same) track. */
  record Joint(TrackEnd other) implements Attachment {}

  /** The toe or a leg of points. */
  record AtPoints(String points, Leg leg) implements Attachment {}

  /** One end of a way of a crossing; {@code across} is the end straight over. */
  record AtCrossing(String crossing, TrackEnd across) implements Attachment {}

  /** A limit of the layout. */
  record AtLimit(Limit limit) implements Attachment {}

  /** The end in a single-line section, by the section's name. */
  record InSection(String section) implements Attachment {}

  /** Limits as `plan.yaml` names them. */
  enum Limit {
    BLOCK("block"),
    BUFFER_STOP("buffer stop"),
    PLAN("limit of plan");

    private final String words;

    Limit(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
