package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.TrackEnd;
import lockwright.railway.section.Section;

/** The layout, so that a diagram can be drawn of it. */
record LayoutPart(
    List<Track> tracks,
    List<Points> points,
    List<Crossing> crossings,
    List<Signal> signals,
    List<GroundFrame> groundFrames,
    List<LevelCrossing> levelCrossings) {

  record Track(String id, String label, boolean passenger, List<EndPart> ends, Place at) {}

  /**
   * @param trap the leg that is the trap, "normal" or "reverse"
   * @param rodMayBreak true, or null
   * @param workedElectrically true, or null
   * @param workedByHand true, or null
   * @param sprung true, or null
   */
  record Points(
      String id,
      String label,
      String toe,
      String normal,
      String reverse,
      String trap,
      String lever,
      String boltLever,
      String groundFrame,
      Boolean rodMayBreak,
      Boolean workedElectrically,
      Boolean workedByHand,
      Boolean sprung,
      Place at) {}

  record Crossing(String id, String label, List<List<String>> ways, Place at) {}

  /**
   * @param stands the track and its end that a train leaves as it passes the signal
   * @param lever the one lever that gives it
   * @param levers those that give it, where they are several
   */
  record Signal(
      String id,
      String label,
      String arm,
      EndPart.Name stands,
      String into,
      @JsonProperty("for") List<String> ways,
      boolean fixed,
      String lever,
      List<String> levers,
      Place at) {}

  /**
   * @param releaseLever none if tokens alone release it
   * @param releaseSection the section whose tokens release it; none if a lever alone does
   */
  record GroundFrame(
      String id,
      String label,
      List<String> points,
      String releaseLever,
      String releaseSection,
      Place at) {}

  /**
   * @param gateLever the lever that works the gates, or their lock
   */
  record LevelCrossing(String id, String label, List<String> tracks, String gateLever, Place at) {}

  static LayoutPart of(Box box) {
    Layout layout = box.layout();
    return new LayoutPart(
        layout.tracks().stream()
            .map(
                t ->
                    new Track(
                        t.id(),
                        t.label(),
                        t.passenger(),
                        List.of(
                            EndPart.of(layout, new TrackEnd(t.id(), 0)),
                            EndPart.of(layout, new TrackEnd(t.id(), 1))),
                        Place.of(t.at())))
            .toList(),
        layout.points().stream().map(p -> points(box, p)).toList(),
        layout.crossings().stream()
            .map(
                c ->
                    new Crossing(
                        c.id(), c.label(), List.of(c.firstWay(), c.secondWay()), Place.of(c.at())))
            .toList(),
        layout.signals().stream().map(s -> signal(box, s)).toList(),
        layout.groundFrames().stream()
            .map(
                g ->
                    new GroundFrame(
                        g.id(),
                        g.label(),
                        g.points(),
                        box.frame().ofRelease(g.id()).map(Lever::id).orElse(null),
                        box.releasing(g.id()).map(Section::name).orElse(null),
                        Place.of(g.at())))
            .toList(),
        layout.levelCrossings().stream()
            .map(
                c ->
                    new LevelCrossing(
                        c.id(),
                        c.label(),
                        c.tracks(),
                        box.frame().ofLevelCrossing(c.id()).id(),
                        Place.of(c.at())))
            .toList());
  }

  private static Points points(Box box, lockwright.railway.layout.Points p) {
    lockwright.railway.layout.GroundFrame by = box.layout().pointsOfGroundFrames().get(p.id());
    return new Points(
        p.id(),
        p.label(),
        p.toe(),
        p.normal().orElse(null),
        p.reverse().orElse(null),
        p.trap().map(Words::of).orElse(null),
        box.frame().ofPoints(p.id()).map(Lever::id).orElse(null),
        box.frame()
            .ofBolt(p.id())
            .or(() -> box.frame().ofEconomicalLock(p.id()))
            .map(Lever::id)
            .orElse(null),
        by == null ? null : by.id(),
        box.frame().connections().brokenRods().contains(p.id()) ? true : null,
        box.frame().electrically(p.id()) ? true : null,
        p.byHand() ? true : null,
        p.sprung() ? true : null,
        Place.of(p.at()));
  }

  private static Signal signal(Box box, lockwright.railway.layout.Signal s) {
    List<String> levers = box.frame().giving(s.id()).stream().map(Lever::id).toList();
    return new Signal(
        s.id(),
        s.label(),
        Words.arm(s.arm()),
        EndPart.Name.of(s.stands()),
        s.into(),
        s.ways(),
        s.fixed(),
        levers.size() == 1 ? levers.get(0) : null,
        levers.size() > 1 ? levers : null,
        Place.of(s.at()));
  }
}
