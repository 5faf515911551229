package lockwright.report.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import lockwright.spec.Message;
import lockwright.spec.Problem;
import lockwright.spec.Problems;
import lockwright.spec.Span;

/** Tells where the places that the author gives leave no room. */
final class Room {
  private Room() {}

  static List<Problem> problems(List<Tight> tight) {
    Problems problems = new Problems();
    tight.forEach(t -> problems.add(Message.DRAWING_NO_ROOM, later(t), what(t), fix(t)));
    return problems.sorted();
  }

  private static String what(Tight tight) {
    String first = tight.first().what();
    String second = tight.second().what();
    if (wrongWayRound(tight)) {
      return second
          + " comes after "
          + first
          + " from left to right, and is given a place before it";
    } else if (tight.least() == 0) {
      return first + " and " + second + " are given one height where one lies above the other";
    }
    return "there is no room between "
        + first
        + " and "
        + second
        + " for what stands there"
        + (tight.along() ? "" : " above and below them");
  }

  private static String fix(Tight tight) {
    if (wrongWayRound(tight)) {
      return "give one of the two another place, or leave it to the layout";
    } else if (tight.least() == 0) {
      return "give one of the two another height, or leave it to the layout";
    }
    BigDecimal least = BigDecimal.valueOf(tight.least()).setScale(2, RoundingMode.CEILING);
    return "give places that are further apart, by "
        + least.stripTrailingZeros().toPlainString()
        + (tight.along() ? " across" : " down")
        + " at least, or leave one to the layout";
  }

  private static boolean wrongWayRound(Tight tight) {
    return tight.along() && tight.second().across() <= tight.first().across();
  }

  private static Span later(Tight tight) {
    Span first = at(tight.first());
    Span second = at(tight.second());
    return first.compareTo(second) > 0 ? first : second;
  }

  private static Span at(Given given) {
    return new Span(
        given.at().get("file").asText(),
        given.at().get("line").asInt(),
        given.at().get("column").asInt());
  }
}
