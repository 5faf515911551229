package lockwright.railway;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Crossing;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.SprungWays;
import lockwright.railway.layout.Track;
import lockwright.railway.layout.TrackEnd;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problem;
import lockwright.spec.Problems;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Joins up the railway of a plan; `docs/meaning.md` 1. */
final class LayoutBuilder {
  private final PlanFile plan;
  private final Problems problems;
  private final TrackEnds ends;

  private LayoutBuilder(PlanFile plan, Problems problems) {
    this.plan = plan;
    this.problems = problems;
    this.ends = new TrackEnds(plan.tracks(), problems);
  }

  /**
   * The layout; none, and told why, if the spec has problems so far or in the plan. Open ends and
   * places of signals are looked for only where nothing that would attach a track is missing.
   */
  static Optional<Layout> build(PlanFile plan, SpecFolder spec, Problems problems) {
    LayoutBuilder builder = new LayoutBuilder(plan, problems);
    builder.attach();
    builder.checkNames();
    if (!spec.isWhole(SpecFolder.PLAN)) {
      return Optional.empty();
    }
    boolean sectionsGood = new SectionTracks(builder.ends, problems).attach(spec);
    if (sectionsGood && !builder.ends.missed()) {
      builder.ends.refuseOpenEnds(plan.tracks());
    }
    Map<String, TrackEnd> stands = builder.signalPlaces();
    Set<TrackEnd> limitsOfShunt = builder.limitsOfShunt();
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    Layout layout = builder.layout(stands, limitsOfShunt);
    builder.refuseBarred(layout);
    return Optional.of(OverlapsBuilder.build(plan, layout, problems));
  }

  /** Tracks to which an arm is said to lead, and only could over sprung points facing. */
  private void refuseBarred(Layout layout) {
    for (PlanFile.Signal signal : plan.signals()) {
      for (Written way : signal.ways()) {
        SprungWays.barring(layout, layout.signal(text(signal.id())), way.text())
            .ifPresent(
                points ->
                    problems.add(
                        Message.WAY_BARRED_BY_SPRING,
                        way.at(),
                        "signal "
                            + signal.id().quoted()
                            + " is for track "
                            + way.quoted()
                            + ", and would lead there over points "
                            + Problem.quote(points)
                            + ", which are sprung and cannot be passed facing to reverse",
                        "take the track out of 'for', or 'worked: by spring' away"));
      }
    }
  }

  private void attach() {
    plan.joints().forEach(ends::join);
    for (PlanFile.Points points : plan.points()) {
      List<Optional<Written>> legs = List.of(points.toe(), points.normal(), points.reverse());
      long traps = legs.stream().flatMap(Optional::stream).filter(LayoutBuilder::isTrap).count();
      if (traps > 1 || points.toe().filter(LayoutBuilder::isTrap).isPresent()) {
        problems.add(
            Message.POINTS_ALL_TRAP,
            points.id().at(),
            "points " + points.id().quoted() + " have the word trap at their toe or at both legs",
            "write trap for one leg alone");
      }
      if (points.sprung() && points.reverse().filter(LayoutBuilder::isTrap).isPresent()) {
        problems.add(
            Message.SPRUNG_OFF_THE_TRAP,
            points.id().at(),
            "the spring of points " + points.id().quoted() + " never lets them lie for their trap",
            "write the track at 'reverse', and 'normal: trap', if the spring holds them for the"
                + " trap; or take 'worked: by spring' away");
      }
      for (Leg leg : Leg.values()) {
        legs.get(leg.ordinal())
            .filter(track -> !isTrap(track))
            .ifPresent(t -> ends.attach(t, new Attachment.AtPoints(points.id().text(), leg)));
      }
    }
    for (PlanFile.Crossing crossing : plan.crossings()) {
      crossing.first().ifPresent(way -> ends.cross(crossing.id().text(), way));
      crossing.second().ifPresent(way -> ends.cross(crossing.id().text(), way));
    }
    for (PlanFile.Limit limit : plan.limits()) {
      Attachment.Limit kind =
          List.of(Attachment.Limit.values()).stream()
              .filter(k -> limit.kind().filter(w -> w.text().equals(k.words())).isPresent())
              .findFirst()
              .orElse(Attachment.Limit.PLAN);
      ends.attach(limit.track(), new Attachment.AtLimit(kind));
    }
  }

  /** References that attach nothing. */
  private void checkNames() {
    plan.signals().forEach(s -> s.ways().forEach(ends::known));
    plan.passenger().forEach(ends::known);
    plan.levelCrossings().forEach(c -> c.tracks().forEach(ends::known));
    Map<String, Written> workedBy = new HashMap<>();
    Map<String, PlanFile.Points> points = new LinkedHashMap<>();
    plan.points().forEach(p -> points.put(p.id().text(), p));
    for (PlanFile.GroundFrame frame : plan.groundFrames()) {
      for (Written one : frame.points()) {
        Written earlier = workedBy.putIfAbsent(one.text(), frame.id());
        if (!points.containsKey(one.text())) {
          problems.add(
              Message.PLAN_UNKNOWN_POINTS,
              one.at(),
              "there are no points " + one.quoted(),
              Problems.didYouMean(
                  one.text(), points.keySet(), "add them to the points of plan.yaml"));
        } else if (earlier != null && !earlier.equals(frame.id())) {
          problems.add(
              Message.POINTS_OF_TWO_GROUND_FRAMES,
              one.at(),
              "points "
                  + one.quoted()
                  + " are worked by ground frame "
                  + earlier.quoted()
                  + " already",
              "name each points in one ground frame");
        } else if (points.get(one.text()).byHand()) {
          problems.add(
              Message.HAND_POINTS_OF_GROUND_FRAME,
              one.at(),
              "points "
                  + one.quoted()
                  + " are worked by hand, and by ground frame "
                  + frame.id().quoted(),
              "take 'worked: by hand' away, or take them out of the ground frame");
        } else if (points.get(one.text()).sprung()) {
          problems.add(
              Message.SPRUNG_POINTS_OF_GROUND_FRAME,
              one.at(),
              "points "
                  + one.quoted()
                  + " are held normal by a spring, and worked by ground frame "
                  + frame.id().quoted(),
              "take 'worked: by spring' away, or take them out of the ground frame");
        }
      }
    }
    for (PlanFile.Signal signal : plan.signals()) {
      signal
          .fixed()
          .filter(w -> signal.arm().filter(arm -> !arm.text().equals("distant")).isPresent())
          .ifPresent(
              fixed ->
                  problems.add(
                      Message.FIXED_NOT_DISTANT,
                      fixed.at(),
                      "signal " + signal.id().quoted() + " is fixed but no distant",
                      "take 'fixed' away, or write 'arm: distant'"));
    }
  }

  private Map<String, TrackEnd> signalPlaces() {
    SignalPlaces places = places();
    Map<String, TrackEnd> stands = new HashMap<>();
    for (PlanFile.Signal signal : plan.signals()) {
      signal
          .at()
          .flatMap(at -> places.of(at, "signal " + signal.id().quoted()))
          .ifPresent(end -> stands.put(signal.id().text(), end));
    }
    return stands;
  }

  private Set<TrackEnd> limitsOfShunt() {
    SignalPlaces places = places();
    Set<TrackEnd> limits = new HashSet<>();
    plan.limitsOfShunt().forEach(at -> places.of(at, "a limit of shunt").ifPresent(limits::add));
    return limits;
  }

  private SignalPlaces places() {
    Map<String, PlanFile.Points> byId = new HashMap<>();
    plan.points().forEach(p -> byId.putIfAbsent(p.id().text(), p));
    return new SignalPlaces(ends, byId, problems);
  }

  private Layout layout(Map<String, TrackEnd> stands, Set<TrackEnd> limitsOfShunt) {
    Set<String> passenger =
        plan.passenger().stream().map(Written::text).collect(Collectors.toSet());
    return new Layout(
        plan.tracks().stream()
            .map(
                t ->
                    new Track(
                        text(t.id()), t.label(), passenger.contains(text(t.id())), t.id().at()))
            .toList(),
        plan.points().stream().map(LayoutBuilder::points).toList(),
        plan.crossings().stream().map(LayoutBuilder::crossing).toList(),
        plan.signals().stream().map(s -> signal(s, stands.get(text(s.id())))).toList(),
        plan.groundFrames().stream()
            .map(g -> new GroundFrame(text(g.id()), g.label(), texts(g.points()), g.id().at()))
            .toList(),
        plan.levelCrossings().stream()
            .map(c -> new LevelCrossing(text(c.id()), c.label(), texts(c.tracks()), c.id().at()))
            .toList(),
        ends.attachments(),
        limitsOfShunt);
  }

  private static Points points(PlanFile.Points points) {
    Written normal = points.normal().orElseThrow();
    Written reverse = points.reverse().orElseThrow();
    Optional<Lie> trap =
        isTrap(normal)
            ? Optional.of(Lie.NORMAL)
            : isTrap(reverse) ? Optional.of(Lie.REVERSE) : Optional.empty();
    return new Points(
        text(points.id()),
        points.label(),
        text(points.toe().orElseThrow()),
        Optional.of(normal).filter(t -> !isTrap(t)).map(Written::text),
        Optional.of(reverse).filter(t -> !isTrap(t)).map(Written::text),
        trap,
        points.byHand(),
        points.sprung(),
        points.id().at());
  }

  private static Crossing crossing(PlanFile.Crossing crossing) {
    PlanFile.Pair first = crossing.first().orElseThrow();
    PlanFile.Pair second = crossing.second().orElseThrow();
    return new Crossing(
        text(crossing.id()),
        "",
        List.of(text(first.first()), text(first.second())),
        List.of(text(second.first()), text(second.second())),
        crossing.id().at());
  }

  private static Signal signal(PlanFile.Signal signal, TrackEnd stands) {
    String arm = text(signal.arm().orElseThrow()).toUpperCase(Locale.ROOT).replace('-', '_');
    return new Signal(
        text(signal.id()),
        signal.label(),
        stands,
        text(signal.at().orElseThrow().second()),
        Arm.valueOf(arm),
        texts(signal.ways()),
        signal.isFixed(),
        signal.id().at());
  }

  private static boolean isTrap(Written leg) {
    return leg.text().equals(PlanFile.TRAP);
  }

  private static String text(Written written) {
    return written.text();
  }

  private static List<String> texts(List<Written> written) {
    return written.stream().map(Written::text).toList();
  }
}
