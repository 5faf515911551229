package lockwright.railway;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.TrackEnd;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.Span;
import lockwright.spec.Written;

/** Gives out the two ends of each track, in the order in which the plan attaches them. */
final class TrackEnds {
  private final Map<String, List<Span>> attachedAt = new LinkedHashMap<>();
  private final Map<TrackEnd, Attachment> attachments = new HashMap<>();
  private final Problems problems;
  private boolean missed;

  TrackEnds(List<PlanFile.Track> tracks, Problems problems) {
    this.problems = problems;
    tracks.forEach(t -> attachedAt.putIfAbsent(t.id().text(), new ArrayList<>()));
  }

  boolean isTrack(String id) {
    return attachedAt.containsKey(id);
  }

  /** Whether a track of this name exists; if not, that is told, unless there are none at all. */
  boolean known(Written track) {
    if (!isTrack(track.text()) && !attachedAt.isEmpty()) {
      problems.add(
          Message.PLAN_UNKNOWN_TRACK,
          track.at(),
          "there is no track " + track.quoted(),
          Problems.didYouMean(
              track.text(), attachedAt.keySet(), "add it to the tracks of plan.yaml"));
    }
    return isTrack(track.text());
  }

  /** How many ends of a track are attached so far. */
  int attached(String track) {
    return attachedAt.get(track).size();
  }

  /** The next free end of a track; none, and told, if there is no such track or no free end. */
  Optional<TrackEnd> next(Written track) {
    if (!known(track)) {
      missed = true;
      return Optional.empty();
    }
    List<Span> places = attachedAt.get(track.text());
    places.add(track.at());
    if (places.size() > 2) {
      problems.add(
          Message.TRACK_ATTACHED_TOO_OFTEN,
          track.at(),
          "track "
              + track.quoted()
              + " is attached to something a third time; its two ends are"
              + " attached in lines "
              + places.get(0).line()
              + " and "
              + places.get(1).line(),
          "take one of these places away, or divide the track in two");
      return Optional.empty();
    }
    return Optional.of(new TrackEnd(track.text(), places.size() - 1));
  }

  /** Attaches the next end of a track to something that is no other track. */
  void attach(Written track, Attachment to) {
    next(track).ifPresent(end -> attachments.put(end, to));
  }

  /** Joins the next ends of two tracks at a plain joint. */
  void join(PlanFile.Pair pair) {
    Optional<TrackEnd> first = next(pair.first());
    Optional<TrackEnd> second = next(pair.second());
    if (first.isPresent() && second.isPresent()) {
      attachments.put(first.get(), new Attachment.Joint(second.get()));
      attachments.put(second.get(), new Attachment.Joint(first.get()));
    }
  }

  /** Attaches the next ends of two tracks to the two ends of a way of a crossing. */
  void cross(String crossing, PlanFile.Pair pair) {
    Optional<TrackEnd> first = next(pair.first());
    Optional<TrackEnd> second = next(pair.second());
    if (first.isPresent() && second.isPresent()) {
      attachments.put(first.get(), new Attachment.AtCrossing(crossing, second.get()));
      attachments.put(second.get(), new Attachment.AtCrossing(crossing, first.get()));
    }
  }

  /** Whether some end was meant for a track that does not exist. */
  boolean missed() {
    return missed;
  }

  /** Tells each track with an open end. */
  void refuseOpenEnds(List<PlanFile.Track> tracks) {
    for (PlanFile.Track track : tracks) {
      List<Span> places = attachedAt.get(track.id().text());
      if (places.size() < 2) {
        problems.add(
            Message.TRACK_END_OPEN,
            track.id().at(),
            places.isEmpty()
                ? "both ends of track " + track.id().quoted() + " are open"
                : "one end of track "
                    + track.id().quoted()
                    + " is open; the other is attached in"
                    + " line "
                    + places.get(0).line(),
            "name the track in joints, points or crossings; or under limits (block, buffer stop,"
                + " limit of plan); or as the track of a section");
      }
    }
  }

  Map<TrackEnd, Attachment> attachments() {
    return attachments;
  }
}
