package lockwright.railway;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lockwright.railway.drawing.Drawing;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Crossing;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;
import lockwright.spec.DrawingFile;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.Written;

/** Looks up what `drawing.yaml` names; nothing else is made of it. */
final class DrawingBuilder {
  private final Layout layout;
  private final Problems problems;
  private final Set<String> tracks = new LinkedHashSet<>();
  private final Set<String> points = new LinkedHashSet<>();
  private final Set<String> crossings = new LinkedHashSet<>();
  private final Map<Drawing.Thing, Written> named = new HashMap<>();
  private final Map<List<Double>, Written> taken = new HashMap<>();
  private final List<Drawing.Spot> spots = new ArrayList<>();

  private DrawingBuilder(Layout layout, Problems problems) {
    this.layout = layout;
    this.problems = problems;
    layout.tracks().stream().map(Track::id).forEach(tracks::add);
    layout.points().stream().map(Points::id).forEach(points::add);
    layout.crossings().stream().map(Crossing::id).forEach(crossings::add);
  }

  /** Only worth having if no problem was told. */
  static Drawing build(DrawingFile file, Layout layout, Problems problems) {
    DrawingBuilder builder = new DrawingBuilder(layout, problems);
    for (DrawingFile.Spot spot : file.points()) {
      if (builder.known("points", spot.name(), builder.points)) {
        builder.add(new Drawing.OfPoints(spot.name().text()), spot.name(), spot.position());
      }
    }
    for (DrawingFile.Spot spot : file.crossings()) {
      if (builder.known("crossing", spot.name(), builder.crossings)) {
        builder.add(new Drawing.OfCrossing(spot.name().text()), spot.name(), spot.position());
      }
    }
    for (DrawingFile.JointSpot spot : file.joints()) {
      builder.joint(spot).ifPresent(end -> builder.add(end, spot.name(), spot.position()));
    }
    for (DrawingFile.Spot spot : file.ends()) {
      builder.end(spot.name()).ifPresent(end -> builder.add(end, spot.name(), spot.position()));
    }
    List<Drawing.Level> levels = new ArrayList<>();
    for (DrawingFile.Level level : file.tracks()) {
      builder.known("track", level.track(), builder.tracks);
      levels.add(new Drawing.Level(level.track().text(), level.down(), level.track().at()));
    }
    return new Drawing(builder.spots, levels);
  }

  private boolean known(String kind, Written name, Collection<String> all) {
    if (!all.contains(name.text())) {
      problems.add(
          Message.DRAWING_UNKNOWN_THING,
          name.at(),
          "plan.yaml has no " + kind + " " + name.quoted(),
          Problems.didYouMean(name.text(), all, "write a name just as plan.yaml has it"));
    }
    return all.contains(name.text());
  }

  private void add(Drawing.Thing thing, Written name, DrawingFile.Position position) {
    Written earlier = named.putIfAbsent(thing, name);
    if (earlier != null) {
      problems.add(
          Message.NAMED_TWICE,
          name.at(),
          name.quoted() + " has a place already, in line " + earlier.at().line(),
          "take one of the two away");
      return;
    }
    Written there = taken.putIfAbsent(List.of(position.across(), position.down()), name);
    if (there != null) {
      problems.add(
          Message.DRAWING_SAME_PLACE,
          position.at(),
          name.quoted() + " has the place of " + there.quoted() + " in line " + there.at().line(),
          "give one of the two another place, or take one away and leave it to the layout");
    }
    spots.add(new Drawing.Spot(thing, position.across(), position.down(), position.at()));
  }

  /** The end of the first track at the plain joint with the second. */
  private Optional<Drawing.Thing> joint(DrawingFile.JointSpot spot) {
    PlanFile.Pair pair = spot.tracks();
    boolean first = known("track", pair.first(), tracks);
    if (!known("track", pair.second(), tracks) || !first) {
      return Optional.empty();
    }
    List<TrackEnd> ends = new ArrayList<>();
    for (TrackEnd end : ends(pair.first().text())) {
      boolean other =
          layout.at(end) instanceof Attachment.Joint joint
              && joint.other().track().equals(pair.second().text())
              && !ends.contains(joint.other());
      if (other) {
        ends.add(end);
      }
    }
    return one(
        ends,
        spot.name(),
        "tracks " + pair.first().quoted() + " and " + pair.second().quoted() + " meet at ",
        "plain joint",
        "name two tracks that are joined in plan.yaml; points and crossings have names of their own");
  }

  private Optional<Drawing.Thing> end(Written track) {
    if (!known("track", track, tracks)) {
      return Optional.empty();
    }
    List<TrackEnd> ends = new ArrayList<>();
    for (TrackEnd end : ends(track.text())) {
      Attachment at = layout.at(end);
      if (at instanceof Attachment.AtLimit || at instanceof Attachment.InSection) {
        ends.add(end);
      }
    }
    return one(
        ends,
        track,
        "track " + track.quoted() + " has ",
        "end at a limit or in a section",
        "give the place of the points, the crossing or the joint where it ends");
  }

  private Optional<Drawing.Thing> one(
      List<TrackEnd> ends, Written name, String what, String kind, String otherwise) {
    if (ends.size() == 1) {
      TrackEnd end = ends.get(0);
      boolean later =
          layout.at(end) instanceof Attachment.Joint joint && before(joint.other(), end);
      return Optional.of(
          new Drawing.OfEnd(later ? ((Attachment.Joint) layout.at(end)).other() : end));
    }
    problems.add(
        ends.isEmpty() ? Message.DRAWING_NO_SUCH_END : Message.DRAWING_TWO_SUCH_ENDS,
        name.at(),
        what + (ends.isEmpty() ? "no " + kind : "two " + kind.replaceFirst("joint|end", "$0s")),
        ends.isEmpty()
            ? otherwise
            : "leave it to the layout, or divide a track in plan.yaml so that each has one");
    return Optional.empty();
  }

  private static boolean before(TrackEnd a, TrackEnd b) {
    int order = a.track().compareTo(b.track());
    return order == 0 ? a.end() < b.end() : order < 0;
  }

  private static List<TrackEnd> ends(String track) {
    return List.of(new TrackEnd(track, 0), new TrackEnd(track, 1));
  }
}
