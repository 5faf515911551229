package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Crossing;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Overlap;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;
import lockwright.spec.Span;

/** Draws a layout, piece by piece. A track named where an end is wanted gives its next free end. */
public final class Drawing {
  /** Where nothing is written. */
  public static final Span NOWHERE = new Span("drawn.yaml", 1, 1);

  private final List<Track> tracks = new ArrayList<>();
  private final List<Points> points = new ArrayList<>();
  private final List<Crossing> crossings = new ArrayList<>();
  private final List<Signal> signals = new ArrayList<>();
  private final List<GroundFrame> groundFrames = new ArrayList<>();
  private final List<LevelCrossing> levelCrossings = new ArrayList<>();
  private final Map<TrackEnd, Attachment> attachments = new HashMap<>();
  private final Set<TrackEnd> limitsOfShunt = new HashSet<>();
  private final List<Overlap> overlaps = new ArrayList<>();

  /** Tracks of a passenger line. */
  public Drawing tracks(String... ids) {
    for (String id : ids) {
      track(id, true);
    }
    return this;
  }

  public Drawing track(String id, boolean passenger) {
    tracks.add(new Track(id, id, passenger, NOWHERE));
    return this;
  }

  public Drawing joint(String one, String other) {
    TrackEnd first = free(one);
    attachments.put(first, new Attachment.AtLimit(Attachment.Limit.PLAN));
    return joint(first, free(other));
  }

  Drawing joint(TrackEnd one, TrackEnd other) {
    attachments.put(one, new Attachment.Joint(other));
    attachments.put(other, new Attachment.Joint(one));
    return this;
  }

  /** Points; the word `trap` in place of a leg makes them trap points. */
  public Drawing points(String id, String toe, String normal, String reverse) {
    attachments.put(free(toe), new Attachment.AtPoints(id, Leg.TOE));
    leg(id, normal, Leg.NORMAL);
    leg(id, reverse, Leg.REVERSE);
    return record(id, toe, normal, reverse);
  }

  Drawing points(String id, TrackEnd toe, Optional<TrackEnd> normal, Optional<TrackEnd> reverse) {
    attachments.put(toe, new Attachment.AtPoints(id, Leg.TOE));
    normal.ifPresent(end -> attachments.put(end, new Attachment.AtPoints(id, Leg.NORMAL)));
    reverse.ifPresent(end -> attachments.put(end, new Attachment.AtPoints(id, Leg.REVERSE)));
    String normalTrack = normal.map(TrackEnd::track).orElse("trap");
    return record(id, toe.track(), normalTrack, reverse.map(TrackEnd::track).orElse("trap"));
  }

  private void leg(String id, String track, Leg leg) {
    if (!track.equals("trap")) {
      attachments.put(free(track), new Attachment.AtPoints(id, leg));
    }
  }

  private Drawing record(String id, String toe, String normal, String reverse) {
    Optional<Lie> trap =
        normal.equals("trap")
            ? Optional.of(Lie.NORMAL)
            : reverse.equals("trap") ? Optional.of(Lie.REVERSE) : Optional.empty();
    Optional<String> normalTrack = Optional.of(normal).filter(t -> !t.equals("trap"));
    Optional<String> reverseTrack = Optional.of(reverse).filter(t -> !t.equals("trap"));
    points.add(new Points(id, id, toe, normalTrack, reverseTrack, trap, false, NOWHERE));
    return this;
  }

  /** Holds points normal by a spring, where that can be. */
  public Drawing sprung(String id) {
    points.replaceAll(
        p ->
            p.id().equals(id) && !p.trap().equals(Optional.of(Lie.REVERSE))
                ? new Points(
                    p.id(),
                    p.label(),
                    p.toe(),
                    p.normal(),
                    p.reverse(),
                    p.trap(),
                    false,
                    true,
                    p.at())
                : p);
    return this;
  }

  /** A crossing of the way from a to b and the way from c to d. */
  public Drawing crossing(String id, String a, String b, String c, String d) {
    return crossing(id, free(a), free(b), free(c), free(d));
  }

  Drawing crossing(String id, TrackEnd a, TrackEnd b, TrackEnd c, TrackEnd d) {
    attachments.put(a, new Attachment.AtCrossing(id, b));
    attachments.put(b, new Attachment.AtCrossing(id, a));
    attachments.put(c, new Attachment.AtCrossing(id, d));
    attachments.put(d, new Attachment.AtCrossing(id, c));
    List<String> first = List.of(a.track(), b.track());
    crossings.add(new Crossing(id, id, first, List.of(c.track(), d.track()), NOWHERE));
    return this;
  }

  public Drawing limit(Attachment.Limit limit, String... ids) {
    for (String id : ids) {
      limit(limit, free(id));
    }
    return this;
  }

  Drawing limit(Attachment.Limit limit, TrackEnd end) {
    attachments.put(end, new Attachment.AtLimit(limit));
    return this;
  }

  public Drawing section(String name, String track) {
    return section(name, free(track));
  }

  Drawing section(String name, TrackEnd end) {
    attachments.put(end, new Attachment.InSection(name));
    return this;
  }

  /** A limit of shunt where a train would leave the first track for the second. */
  public Drawing limitOfShunt(String from, String into) {
    return limitOfShunt(meeting(from, into));
  }

  Drawing limitOfShunt(TrackEnd end) {
    limitsOfShunt.add(end);
    return this;
  }

  /** An arm at the place where it reads from a track into another; to be drawn after the tracks. */
  public Drawing signal(String id, Arm arm, String from, String into, String... ways) {
    return signal(id, arm, meeting(from, into), into, List.of(ways), false);
  }

  Drawing signal(
      String id, Arm arm, TrackEnd stands, String into, List<String> ways, boolean fixed) {
    signals.add(new Signal(id, id, stands, into, arm, ways, fixed, NOWHERE));
    return this;
  }

  public Drawing groundFrame(String id, String... worked) {
    groundFrames.add(new GroundFrame(id, id, List.of(worked), NOWHERE));
    return this;
  }

  public Drawing levelCrossing(String id, String... over) {
    levelCrossings.add(new LevelCrossing(id, id, List.of(over), NOWHERE));
    return this;
  }

  public Layout layout() {
    return new Layout(
        tracks,
        points,
        crossings,
        signals,
        groundFrames,
        levelCrossings,
        attachments,
        limitsOfShunt,
        overlaps);
  }

  public Drawing overlap(String signal, String... along) {
    overlaps.add(new Overlap(signal, List.of(along), NOWHERE));
    return this;
  }

  private TrackEnd free(String track) {
    for (int end = 0; end < 2; end++) {
      TrackEnd one = new TrackEnd(track, end);
      if (!attachments.containsKey(one)) {
        return one;
      }
    }
    throw new IllegalArgumentException("both ends of " + track + " are taken");
  }

  private TrackEnd meeting(String from, String into) {
    for (int end = 0; end < 2; end++) {
      TrackEnd one = new TrackEnd(from, end);
      Attachment at = attachments.get(one);
      if (at instanceof Attachment.Joint joint && joint.other().track().equals(into)
          || at instanceof Attachment.AtCrossing over && over.across().track().equals(into)
          || at instanceof Attachment.AtPoints p
              && p.leg() != Leg.TOE
              && toe(p.points()).equals(into)) {
        return one;
      }
    }
    throw new IllegalArgumentException("no signal stands at " + from + " > " + into);
  }

  private String toe(String id) {
    return points.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow().toe();
  }
}
