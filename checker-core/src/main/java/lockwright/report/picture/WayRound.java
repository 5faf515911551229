package lockwright.report.picture;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which parts of a plan have left and right the other way round than most places given. */
final class WayRound {
  private final List<Piece> pieces;

  private WayRound(List<Piece> pieces) {
    this.pieces = pieces;
  }

  /** Each part with all its nodes; no track joins two parts. */
  static List<Set<Node>> wrong(List<Piece> pieces, Collection<Node> nodes) {
    WayRound wayRound = new WayRound(pieces);
    Set<Node> seen = new HashSet<>();
    List<Set<Node>> wrong = new ArrayList<>();
    for (Node start : nodes) {
      Set<Node> part = seen.contains(start) ? Set.of() : wayRound.reached(start, true);
      seen.addAll(part);
      if (wayRound.votes(part) < 0) {
        wrong.add(part);
      }
    }
    return wrong;
  }

  /** All that ways to the right lead to, or ways to the left too. */
  private Set<Node> reached(Node start, boolean both) {
    Set<Node> reached = new LinkedHashSet<>(List.of(start));
    Deque<Node> waiting = new ArrayDeque<>(reached);
    while (!waiting.isEmpty()) {
      Node node = waiting.remove();
      for (Piece piece : pieces) {
        if (piece.left() == node && reached.add(piece.right())) {
          waiting.add(piece.right());
        } else if (both && piece.right() == node && reached.add(piece.left())) {
          waiting.add(piece.left());
        }
      }
    }
    return reached;
  }

  /** How many more pairs of places stand as the plan has them than the other way. */
  private int votes(Set<Node> part) {
    int votes = 0;
    for (Node from : part) {
      if (from.given == null) {
        continue;
      }
      for (Node to : reached(from, false)) {
        if (to.given != null) {
          votes += (int) Math.signum(to.given.across() - from.given.across());
        }
      }
    }
    return votes;
  }
}
