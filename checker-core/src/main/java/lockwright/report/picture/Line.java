package lockwright.report.picture;

import java.util.ArrayList;
import java.util.List;

/** Pieces that are drawn straight on, from left to right, on one row. */
final class Line {
  final List<Piece> pieces = new ArrayList<>();

  /** The row, from the top; what is between two rows while they are sought. */
  double row;

  /** What it consists of where it has no piece. */
  private final Node only;

  /** How high the author wants it; null if he does not say. */
  Given given;

  Line() {
    this(null);
  }

  /** A line without pieces: a place that stands higher or lower than the track that leads there. */
  Line(Node only) {
    this.only = only;
  }

  Node end(Side side) {
    if (pieces.isEmpty()) {
      return only;
    }
    return side == Side.LEFT ? pieces.get(0).left() : pieces.get(pieces.size() - 1).right();
  }

  /** Whether it leaves another line at this end, aslant. */
  boolean leaves(Side side) {
    return end(side).line != this;
  }

  boolean passenger() {
    return pieces.stream().anyMatch(Piece::passenger);
  }
}
