package lockwright.report.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;

/**
 * Tracks with what lies at their ends, points, crossings and ground frames, as the plan gives them.
 */
final class PlanItems {
  private static final String SPRING =
      "a spring: always N, pressed over by what trails through from R, never passed facing to R";

  private PlanItems() {}

  static List<Item> of(Box box) {
    Layout layout = box.layout();
    List<Item> items = new ArrayList<>();
    for (Track track : layout.tracks()) {
      String passenger = track.passenger() ? "passenger line; " : "";
      String ends = end(layout, track, 0) + "; " + end(layout, track, 1);
      items.add(
          new Item("tracks", "", track.id(), passenger + ends + label(track.id(), track.label())));
    }
    for (Points points : layout.points()) {
      items.add(
          new Item(
              "points", "", points.id(), legs(box, points) + label(points.id(), points.label())));
    }
    layout
        .crossings()
        .forEach(
            c ->
                items.add(
                    new Item(
                        "crossings",
                        "",
                        c.id(),
                        String.join(" - ", c.firstWay())
                            + " crosses "
                            + String.join(" - ", c.secondWay())
                            + label(c.id(), c.label()))));
    layout
        .groundFrames()
        .forEach(
            g ->
                items.add(
                    new Item(
                        "ground frames",
                        "",
                        g.id(),
                        "works points "
                            + Words.list(g.points())
                            + "; released by "
                            + releasedBy(box, g.id())
                            + label(g.id(), g.label()))));
    layout
        .levelCrossings()
        .forEach(
            c ->
                items.add(
                    new Item(
                        "level crossings",
                        "",
                        c.id(),
                        "over "
                            + Words.list(c.tracks())
                            + "; gates by lever "
                            + box.frame().ofLevelCrossing(c.id()).id()
                            + label(c.id(), c.label()))));
    return items;
  }

  private static String releasedBy(Box box, String groundFrame) {
    Optional<String> lever = box.frame().ofRelease(groundFrame).map(l -> "lever " + l.id());
    Optional<String> tokens =
        box.releasing(groundFrame).map(s -> "the tokens of section " + s.name());
    return lever.isPresent() && tokens.isPresent()
        ? lever.get() + " and " + tokens.get() + ", both needed"
        : lever.or(() -> tokens).orElse("NOTHING");
  }

  /** A label in words, where it says more than the id. */
  static String label(String id, String label) {
    return label.equals(id) || label.isEmpty() ? "" : "; label \"" + label + "\"";
  }

  private static String end(Layout layout, Track track, int end) {
    TrackEnd at = new TrackEnd(track.id(), end);
    String shunt = layout.limitsOfShunt().contains(at) ? ", limit of shunt" : "";
    return attachment(layout.at(at)) + shunt;
  }

  private static String attachment(Attachment at) {
    if (at instanceof Attachment.Joint joint) {
      return "joint with " + joint.other().track();
    }
    if (at instanceof Attachment.AtPoints points) {
      String leg =
          points.leg() == Leg.TOE
              ? "toe"
              : points.leg() == Leg.NORMAL ? "normal leg" : "reverse leg";
      return leg + " of points " + points.points();
    }
    if (at instanceof Attachment.AtCrossing crossing) {
      return "crossing " + crossing.crossing() + " to " + crossing.across().track();
    }
    if (at instanceof Attachment.InSection section) {
      return "section " + section.section();
    }
    return ((Attachment.AtLimit) at).limit().words();
  }

  private static String legs(Box box, Points points) {
    return "toe "
        + points.toe()
        + ", normal "
        + points.track(Lie.NORMAL).orElse("trap")
        + ", reverse "
        + points.track(Lie.REVERSE).orElse("trap")
        + (box.layout().track(points.toe()).passenger() ? "; on a passenger line" : "")
        + "; worked by "
        + worker(box, points.id())
        + bolt(box, points.id());
  }

  private static String bolt(Box box, String points) {
    return box.frame()
        .ofBolt(points)
        .map(l -> ", bolt by lever " + l.id())
        .or(() -> box.frame().ofEconomicalLock(points).map(l -> ", economical lock"))
        .orElse(", no bolt");
  }

  private static String worker(Box box, String points) {
    Optional<Lever> lever = box.frame().ofPoints(points);
    Optional<GroundFrame> ground =
        Optional.ofNullable(box.layout().pointsOfGroundFrames().get(points));
    return lever
        .map(l -> "lever " + l.id())
        .or(() -> ground.map(g -> "ground frame " + g.id()))
        .or(() -> Optional.of("hand").filter(h -> box.layout().byHand(points)))
        .or(() -> Optional.of(SPRING).filter(s -> box.layout().sprung(points)))
        .orElse("NOTHING");
  }
}
