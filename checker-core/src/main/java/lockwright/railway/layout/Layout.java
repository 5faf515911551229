package lockwright.railway.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.Function;

/**
 * The railway as `plan.yaml` gives it, checked and joined up: every end of every track is attached.
 * All lists keep the order of the file. Look-ups throw {@link NoSuchElementException} for an
 * unknown id, which is a fault of the caller.
 *
 * @param attachments what each of the two ends of each track is attached to
 * @param limitsOfShunt the ends at which a limit of shunt stands, for trains leaving the track
 *     there
 * @param overlaps those permitted beyond stop signals
 */
public record Layout(
    List<Track> tracks,
    List<Points> points,
    List<Crossing> crossings,
    List<Signal> signals,
    List<GroundFrame> groundFrames,
    List<LevelCrossing> levelCrossings,
    Map<TrackEnd, Attachment> attachments,
    Set<TrackEnd> limitsOfShunt,
    List<Overlap> overlaps) {
  public Layout {
    overlaps = List.copyOf(overlaps);
    tracks = List.copyOf(tracks);
    points = List.copyOf(points);
    crossings = List.copyOf(crossings);
    signals = List.copyOf(signals);
    groundFrames = List.copyOf(groundFrames);
    levelCrossings = List.copyOf(levelCrossings);
    attachments = Map.copyOf(attachments);
    limitsOfShunt = Set.copyOf(limitsOfShunt);
    for (Track track : tracks) {
      for (int end = 0; end < 2; end++) {
        if (!attachments.containsKey(new TrackEnd(track.id(), end))) {
          throw new IllegalArgumentException(
              "an end of track " + track.id() + " is attached to nothing");
        }
      }
    }
  }

  /** A layout without overlaps. */
  public Layout(
      List<Track> tracks,
      List<Points> points,
      List<Crossing> crossings,
      List<Signal> signals,
      List<GroundFrame> groundFrames,
      List<LevelCrossing> levelCrossings,
      Map<TrackEnd, Attachment> attachments,
      Set<TrackEnd> limitsOfShunt) {
    this(
        tracks,
        points,
        crossings,
        signals,
        groundFrames,
        levelCrossings,
        attachments,
        limitsOfShunt,
        List.of());
  }

  /** The same layout with overlaps. */
  public Layout withOverlaps(List<Overlap> others) {
    return new Layout(
        tracks,
        points,
        crossings,
        signals,
        groundFrames,
        levelCrossings,
        attachments,
        limitsOfShunt,
        others);
  }

  public Track track(String id) {
    return find(tracks, Track::id, id);
  }

  public Points points(String id) {
    return find(points, Points::id, id);
  }

  public Signal signal(String id) {
    return find(signals, Signal::id, id);
  }

  public GroundFrame groundFrame(String id) {
    return find(groundFrames, GroundFrame::id, id);
  }

  public LevelCrossing levelCrossing(String id) {
    return find(levelCrossings, LevelCrossing::id, id);
  }

  public Attachment at(TrackEnd end) {
    return attachments.get(end);
  }

  /** The end of a track that is attached to points at the given leg. */
  public TrackEnd endAt(String pointsId, Leg leg) {
    return attachments.entrySet().stream()
        .filter(e -> e.getValue().equals(new Attachment.AtPoints(pointsId, leg)))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("points " + pointsId + ", " + leg));
  }

  /**
   * The signals on the post at an end, reading out of the track there, in the order of the file.
   */
  public List<Signal> post(TrackEnd end) {
    return signals.stream().filter(s -> s.stands().equals(end)).toList();
  }

  /** Whether a spring holds the points normal. */
  public boolean sprung(String points) {
    return points(points).sprung();
  }

  /** Whether whoever stands there works the points. */
  public boolean byHand(String points) {
    return points(points).byHand();
  }

  /**
   * Points that move by themselves, not with a lever of the box: those of ground frames and those
   * worked by hand, in the order of the file.
   */
  public List<String> pointsBesideLevers() {
    Map<String, GroundFrame> released = pointsOfGroundFrames();
    return points.stream()
        .filter(p -> p.byHand() || released.containsKey(p.id()))
        .map(Points::id)
        .toList();
  }

  private static <T> T find(List<T> all, Function<T, String> key, String id) {
    for (T one : all) {
      if (key.apply(one).equals(id)) {
        return one;
      }
    }
    throw new NoSuchElementException(id);
  }

  /** Points by the ground frame that works them; points worked by levers are not in it. */
  public Map<String, GroundFrame> pointsOfGroundFrames() {
    Map<String, GroundFrame> byPoints = new LinkedHashMap<>();
    groundFrames.forEach(g -> g.points().forEach(p -> byPoints.put(p, g)));
    return byPoints;
  }
}
