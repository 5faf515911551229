package lockwright.working;

import java.util.List;
import lockwright.railway.frame.Position;

/** How strokes are made: in halves, so that anything may be left part-way, or whole. */
enum Strokes {
  PARTED(
      List.of(
          new Stroke(Position.N, Position.M),
          new Stroke(Position.M, Position.R),
          new Stroke(Position.R, Position.M),
          new Stroke(Position.M, Position.N))),
  WHOLE(List.of(new Stroke(Position.N, Position.R), new Stroke(Position.R, Position.N)));

  private final List<Stroke> all;

  Strokes(List<Stroke> all) {
    this.all = all;
  }

  /** In the order of 7 in {@code docs/meaning.md}. */
  List<Stroke> all() {
    return all;
  }

  /** One movement of a lever or of points. */
  record Stroke(Position from, Position to) {
    /** The positions come to, in turn: a whole stroke passes part-way. */
    List<Position> through() {
      return from == Position.M || to == Position.M ? List.of(to) : List.of(Position.M, to);
    }
  }
}
