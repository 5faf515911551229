package lockwright.report.picture;

import java.util.ArrayList;
import java.util.List;

/** Pieces that are drawn straight on, from left to right, on one row. */
final class Line {
  final List<Piece> pieces = new ArrayList<>();

  /** The row, from the top; what is between two rows while they are sought. */
  double row;

  Node end(Side side) {
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
