package lockwright.encode;

import java.util.List;
import lockwright.railway.frame.Position;

/** The two ways to work levers, and what goes with each; `docs/meaning.md` 3.2 and 6. */
enum Strokes {
  /** Half-strokes; of entries with conditions only those marked hold their levers: for safety. */
  PARTED(
      List.of(
          new Stroke(Position.N, Position.M),
          new Stroke(Position.M, Position.R),
          new Stroke(Position.R, Position.M),
          new Stroke(Position.M, Position.N))),

  /** Whole strokes; all entries with conditions hold their levers: for possibility. */
  WHOLE(List.of(new Stroke(Position.N, Position.R), new Stroke(Position.R, Position.N)));

  /** A movement of a lever, or of points of a ground frame. */
  record Stroke(Position from, Position to) {
    /** The positions that it passes or ends in. */
    List<Position> through() {
      return from == Position.M || to == Position.M ? List.of(to) : List.of(Position.M, to);
    }
  }

  private final List<Stroke> all;

  Strokes(List<Stroke> all) {
    this.all = all;
  }

  List<Stroke> all() {
    return all;
  }
}
