package lockwright.railway;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.TrackEnd;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.Written;

/** Finds the end of a track at which `a > b` stands; `docs/meaning.md` 1.2. */
final class SignalPlaces {
  private final TrackEnds ends;
  private final Map<String, PlanFile.Points> points;
  private final Problems problems;

  SignalPlaces(TrackEnds ends, Map<String, PlanFile.Points> points, Problems problems) {
    this.ends = ends;
    this.points = points;
    this.problems = problems;
  }

  /** The end; none, and told, if there is no one such place. */
  Optional<TrackEnd> of(PlanFile.Pair at, String thing) {
    if (!ends.known(at.first()) | !ends.known(at.second())) {
      return Optional.empty();
    }
    String from = at.first().text();
    String into = at.second().text();
    List<TrackEnd> places = new ArrayList<>();
    List<String> toes = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      TrackEnd end = new TrackEnd(from, i);
      Attachment attachment = ends.attachments().get(end);
      if (meets(attachment, into)) {
        places.add(end);
      } else if (attachment instanceof Attachment.AtPoints toe
          && toe.leg() == Leg.TOE
          && isLeg(points.get(toe.points()), into)) {
        toes.add(toe.points());
      }
    }
    if (places.size() == 1 && toes.isEmpty()) {
      return Optional.of(places.get(0));
    }
    tell(at, thing, places, toes);
    return Optional.empty();
  }

  private boolean meets(Attachment attachment, String into) {
    if (attachment instanceof Attachment.Joint joint) {
      return joint.other().track().equals(into);
    }
    if (attachment instanceof Attachment.AtCrossing crossing) {
      return crossing.across().track().equals(into);
    }
    return attachment instanceof Attachment.AtPoints leg
        && leg.leg() != Leg.TOE
        && points.get(leg.points()).toe().filter(toe -> toe.text().equals(into)).isPresent();
  }

  private static boolean isLeg(PlanFile.Points points, String track) {
    return Stream.of(points.normal(), points.reverse())
        .flatMap(Optional::stream)
        .map(Written::text)
        .anyMatch(track::equals);
  }

  private void tell(PlanFile.Pair at, String thing, List<TrackEnd> places, List<String> toes) {
    String from = at.first().quoted();
    String into = at.second().quoted();
    if (places.size() + toes.size() > 1) {
      problems.add(
          Message.SIGNAL_AT_TWO_PLACES,
          at.first().at(),
          from + " meets " + into + " at both ends, so the place of " + thing + " is not clear",
          "divide one of the two tracks with a joint, and name the part that is meant");
    } else if (toes.isEmpty()) {
      problems.add(
          Message.SIGNAL_NOT_AT_A_MEETING,
          at.first().at(),
          thing
              + " cannot stand where "
              + from
              + " meets "
              + into
              + ": they do not meet end to end",
          "name two tracks that meet at a joint or a crossing, or a leg of points and then their"
              + " toe");
    } else {
      problems.add(
          Message.SIGNAL_AT_TOE,
          at.first().at(),
          thing
              + " stands at the toe of points "
              + toes.get(0)
              + ", where "
              + from
              + " leads to two tracks",
          "add a track between the signal and the points: a joint "
              + at.first().text()
              + " + new,"
              + " new at the toe, and the signal at "
              + at.first().text()
              + " > new");
    }
  }
}
