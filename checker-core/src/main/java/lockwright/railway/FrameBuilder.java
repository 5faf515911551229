package lockwright.railway;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.spec.FrameFile;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.SectionsFile;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Makes the lever frame, and tells what it works wrongly, twice or not at all. */
final class FrameBuilder {
  private static final Comparator<Lever> BY_NUMBER =
      Comparator.comparingInt((Lever lever) -> number(lever.id())).thenComparing(Lever::id);

  private static final String GATES = "gates of level crossing";

  private final FrameFile file;
  private final SpecFolder spec;
  private final Problems problems;

  /** The names worked so far, by kind: the lever that works each. */
  private final Map<String, Map<String, Written>> worked = new HashMap<>();

  private FrameBuilder(FrameFile file, SpecFolder spec, Problems problems) {
    this.file = file;
    this.spec = spec;
    this.problems = problems;
  }

  /** The frame; only worth having if no problem was told. */
  static Frame build(FrameFile file, SpecFolder spec, Problems problems) {
    spec.plan().ifPresent(plan -> new FrameBuilder(file, spec, problems).check(plan));
    return problems.isEmpty()
        ? new Frame(
            file.levers().stream().map(FrameBuilder::lever).sorted(BY_NUMBER).toList(),
            ConnectionsBuilder.build(file))
        : new Frame(List.of());
  }

  private void check(PlanFile plan) {
    Map<String, PlanFile.Signal> signals = byId(plan.signals(), PlanFile.Signal::id);
    Map<String, PlanFile.Points> points = byId(plan.points(), PlanFile.Points::id);
    Map<String, PlanFile.GroundFrame> frames = byId(plan.groundFrames(), PlanFile.GroundFrame::id);
    Map<String, PlanFile.LevelCrossing> roads =
        byId(plan.levelCrossings(), PlanFile.LevelCrossing::id);
    Map<String, Written> byGroundFrame = new HashMap<>();
    Set<String> byTokens =
        spec.sections().map(SectionsFile::sections).orElse(List.of()).stream()
            .flatMap(s -> s.locks().stream())
            .map(l -> l.groundFrame().text())
            .collect(Collectors.toSet());
    plan.groundFrames().forEach(g -> g.points().forEach(p -> byGroundFrame.put(p.text(), g.id())));
    for (FrameFile.Lever lever : file.levers()) {
      FrameFile.Work work = lever.work().orElse(new FrameFile.Spare());
      if (work instanceof FrameFile.OfSignal of) {
        SeveralLevers several = new SeveralLevers(file.levers(), of.signal(), problems);
        if (several.agree()) {
          worked.computeIfAbsent("signal", k -> new HashMap<>()).remove(of.signal().text());
        }
        works(lever, "signal", of.signal(), signals.keySet());
        several.check(lever);
        refuseFixed(of.signal(), signals);
      } else if (work instanceof FrameFile.OfPoints of) {
        of.points().forEach(p -> works(lever, "points", p, points.keySet()));
        of.points().forEach(p -> refuseBoth(lever, p, byGroundFrame));
        of.points().forEach(p -> refuseByHand(lever, p, points));
        of.points().forEach(p -> refuseSprung(lever, p, points));
        of.economical().forEach(p -> economical(lever, of, p, points.keySet()));
      } else if (work instanceof FrameFile.OfBolt of) {
        of.points().forEach(p -> works(lever, "bolt of points", p, points.keySet()));
        of.points().forEach(p -> refuseBolt(p, byGroundFrame));
        of.points().forEach(p -> refuseBoltOfSprung(lever, p, points));
      } else if (work instanceof FrameFile.OfRelease of) {
        works(lever, "ground frame", of.groundFrame(), frames.keySet());
      } else if (work instanceof FrameFile.OfGates of) {
        works(lever, GATES, of.levelCrossing(), roads.keySet());
      } else if (work instanceof FrameFile.OfGateLock of) {
        works(lever, GATES, of.levelCrossing(), roads.keySet());
      } else if (work instanceof FrameFile.OfWickets of) {
        works(lever, "wickets of level crossing", of.levelCrossing(), roads.keySet());
      } else if (work instanceof FrameFile.OfClosing of) {
        of.signals().forEach(s -> closing(lever, s, signals));
      }
    }
    new ConnectionsBuilder(file, spec, problems).check(byGroundFrame, points.values());
    if (!spec.isWhole(SpecFolder.FRAME)) {
      return;
    }
    signals.values().forEach(this::needLever);
    points.values().stream()
        .filter(p -> !byGroundFrame.containsKey(p.id().text()) && p.worked().isEmpty())
        .forEach(this::needLever);
    frames.values().stream()
        .filter(f -> !byTokens.contains(f.id().text()))
        .forEach(this::needRelease);
    frames.values().stream()
        .filter(PlanFile.GroundFrame::byLeverAndToken)
        .filter(f -> isWorked("ground frame", f.id()) != byTokens.contains(f.id().text()))
        .forEach(this::needOther);
    roads.values().forEach(this::needGates);
  }

  private void works(FrameFile.Lever lever, String kind, Written thing, Collection<String> known) {
    if (!known.contains(thing.text()) && spec.isWhole(SpecFolder.PLAN)) {
      problems.add(
          Message.FRAME_UNKNOWN_THING,
          thing.at(),
          "lever "
              + lever.id().quoted()
              + " works "
              + kind
              + " "
              + thing.quoted()
              + ", which is not in plan.yaml",
          Problems.didYouMean(thing.text(), known, "add it to plan.yaml"));
      return;
    }
    Written earlier =
        worked.computeIfAbsent(kind, k -> new HashMap<>()).putIfAbsent(thing.text(), lever.id());
    if (earlier != null && !earlier.equals(lever.id())) {
      problems.add(
          Message.WORKED_TWICE,
          thing.at(),
          kind + " " + thing.quoted() + ": lever " + earlier.quoted() + " works it already",
          kind.equals("signal")
              ? "let one lever work it; or write for each of its levers which tracks of its routes it"
                  + " is for, 'for: TRACK', or that it is slotted, 'slotted: yes'"
              : "let one lever work it");
    }
  }

  /** An economical lock is a bolt worked by the lever of its points. */
  private void economical(
      FrameFile.Lever lever, FrameFile.OfPoints work, Written lock, Collection<String> known) {
    works(lever, "bolt of points", lock, known);
    if (work.points().stream().noneMatch(p -> p.text().equals(lock.text()))) {
      problems.add(
          Message.ECONOMICAL_LOCK_ELSEWHERE,
          lock.at(),
          "lever "
              + lever.id().quoted()
              + " has an economical lock on points "
              + lock.quoted()
              + ", which it does not work",
          "name points of this lever; for a bolt on a lever of its own write {bolt: "
              + lock.text()
              + ", normal: out}, or in");
    }
  }

  /** The signals of through lines: running arms that can be off. */
  private void closing(
      FrameFile.Lever lever, Written signal, Map<String, PlanFile.Signal> signals) {
    works(lever, "through signal", signal, signals.keySet());
    PlanFile.Signal named = signals.get(signal.text());
    if (named != null && (named.isFixed() || isSubsidiary(named))) {
      problems.add(
          Message.CLOSING_SIGNAL,
          signal.at(),
          "closing lever "
              + lever.id().quoted()
              + " names signal "
              + signal.quoted()
              + ", which "
              + (named.isFixed() ? "is fixed and never off" : "is a subsidiary arm"),
          "name the stop and distant arms of the through lines that are off while the box is"
              + " switched out");
    }
  }

  private static boolean isSubsidiary(PlanFile.Signal signal) {
    return signal
        .arm()
        .filter(a -> !a.text().equals("stop") && !a.text().equals("distant"))
        .isPresent();
  }

  private boolean isWorked(String kind, Written thing) {
    return worked.getOrDefault(kind, Map.of()).containsKey(thing.text());
  }

  private void refuseFixed(Written signal, Map<String, PlanFile.Signal> signals) {
    if (signals.containsKey(signal.text()) && signals.get(signal.text()).isFixed()) {
      problems.add(
          Message.FIXED_SIGNAL_WITH_LEVER,
          signal.at(),
          "signal " + signal.quoted() + " is fixed in plan.yaml, but a lever works it",
          "make the lever spare, or take 'fixed' away");
    }
  }

  private void refuseBoth(FrameFile.Lever lever, Written points, Map<String, Written> frames) {
    if (frames.containsKey(points.text())) {
      problems.add(
          Message.POINTS_WORKED_BY_BOTH,
          points.at(),
          "points "
              + points.quoted()
              + " are worked by lever "
              + lever.id().quoted()
              + " and by ground frame "
              + frames.get(points.text()).quoted(),
          "name them in one of the two");
    }
  }

  private void refuseByHand(
      FrameFile.Lever lever, Written named, Map<String, PlanFile.Points> points) {
    if (points.containsKey(named.text()) && points.get(named.text()).byHand()) {
      problems.add(
          Message.LEVER_OF_HAND_POINTS,
          named.at(),
          "points "
              + named.quoted()
              + " are worked by hand in plan.yaml, but lever "
              + lever.id().quoted()
              + " works them",
          "take 'worked: by hand' away, or the lever; a lever may work a bolt of them: {bolt: "
              + named.text()
              + ", normal: out}, or in");
    }
  }

  private void refuseSprung(
      FrameFile.Lever lever, Written named, Map<String, PlanFile.Points> points) {
    if (points.containsKey(named.text()) && points.get(named.text()).sprung()) {
      problems.add(
          Message.LEVER_OF_SPRUNG_POINTS,
          named.at(),
          "points "
              + named.quoted()
              + " are held normal by a spring in plan.yaml, but lever "
              + lever.id().quoted()
              + " works them",
          "take 'worked: by spring' away, or the lever");
    }
  }

  /** With a bolt in, a train that trails through the reverse leg would break it. */
  private void refuseBoltOfSprung(
      FrameFile.Lever lever, Written named, Map<String, PlanFile.Points> points) {
    if (points.containsKey(named.text()) && points.get(named.text()).sprung()) {
      problems.add(
          Message.BOLT_OF_SPRUNG_POINTS,
          named.at(),
          "lever "
              + lever.id().quoted()
              + " bolts points "
              + named.quoted()
              + ", which a spring holds: that no train trails through them while they are bolted is"
              + " not looked at in this version",
          "take them out of the bolt; where they are passed facing on a passenger line, exempt"
              + " 'points bolted' by name in waivers.yaml, with the reason");
    }
  }

  private void refuseBolt(Written points, Map<String, Written> frames) {
    if (frames.containsKey(points.text())) {
      problems.add(
          Message.BOLT_OF_GROUND_FRAME,
          points.at(),
          "points "
              + points.quoted()
              + " of ground frame "
              + frames.get(points.text()).quoted()
              + " cannot have a bolt worked by a lever in this version",
          "take them out of the bolt; the release of the ground frame stands for it");
    }
  }

  private void needLever(PlanFile.Signal signal) {
    if (!signal.isFixed() && !isWorked("signal", signal.id())) {
      problems.add(
          Message.SIGNAL_WITHOUT_LEVER,
          signal.id().at(),
          "no lever works signal " + signal.id().quoted(),
          "add the lever to frame.yaml, or, for a distant that never moves, write 'fixed: yes'");
    }
  }

  private void needLever(PlanFile.Points points) {
    if (!isWorked("points", points.id())) {
      problems.add(
          Message.POINTS_NOT_WORKED,
          points.id().at(),
          "no lever and no ground frame works points " + points.id().quoted(),
          "add the lever to frame.yaml, or name them in a ground frame; of points that whoever stands"
              + " there works write in plan.yaml 'worked: by hand', of sprung ones 'worked: by"
              + " spring'");
    }
  }

  private void needRelease(PlanFile.GroundFrame frame) {
    boolean sectionsRead = !spec.has(SpecFolder.SECTIONS) || spec.isWhole(SpecFolder.SECTIONS);
    if (sectionsRead && !isWorked("ground frame", frame.id())) {
      problems.add(
          Message.GROUND_FRAME_NOT_RELEASED,
          frame.id().at(),
          "no lever and no token releases ground frame " + frame.id().quoted(),
          "add to frame.yaml: {release: "
              + frame.id().text()
              + ", held while open: yes}, or no; or name it under 'ground frames' of the section"
              + " whose tokens release it");
    }
  }

  /** One that lever and token release together has one of them only. */
  private void needOther(PlanFile.GroundFrame frame) {
    boolean lever = isWorked("ground frame", frame.id());
    boolean sectionsRead = !spec.has(SpecFolder.SECTIONS) || spec.isWhole(SpecFolder.SECTIONS);
    if (sectionsRead) {
      problems.add(
          Message.RELEASED_BY_ONE_ONLY,
          frame.id().at(),
          "ground frame "
              + frame.id().quoted()
              + " is released by lever and token, but no "
              + (lever ? "token" : "lever")
              + " releases it",
          lever
              ? "name it under 'ground frames' of the section whose tokens it needs, or take"
                  + " 'released by' away"
              : "add the lever to frame.yaml: {release: "
                  + frame.id().text()
                  + ", held while open: yes}, or no; or take 'released by' away");
    }
  }

  private void needGates(PlanFile.LevelCrossing crossing) {
    if (!isWorked(GATES, crossing.id())) {
      problems.add(
          Message.GATES_NOT_WORKED,
          crossing.id().at(),
          "no lever works or locks the gates of level crossing " + crossing.id().quoted(),
          "add to frame.yaml: {gate lock: "
              + crossing.id().text()
              + ", normal: out}, or {gates: "
              + crossing.id().text()
              + ", normal: across the road}");
    }
  }

  private static Lever lever(FrameFile.Lever lever) {
    return new Lever(
        lever.id().text(), lever.label(), work(lever.work().orElseThrow()), lever.id().at());
  }

  private static Work work(FrameFile.Work work) {
    if (work instanceof FrameFile.OfSignal of) {
      return new Work.OfSignal(of.signal().text(), texts(of.ways()), of.slotted());
    }
    if (work instanceof FrameFile.OfPoints of) {
      return new Work.OfPoints(texts(of.points()), texts(of.economical()));
    }
    if (work instanceof FrameFile.OfBolt of) {
      return new Work.OfBolt(texts(of.points()), of.normallyIn());
    }
    if (work instanceof FrameFile.OfRelease of) {
      return new Work.OfRelease(of.groundFrame().text(), of.heldWhileOpen());
    }
    if (work instanceof FrameFile.OfGates of) {
      return new Work.OfGates(of.levelCrossing().text(), of.normallyAcrossRoad());
    }
    if (work instanceof FrameFile.OfGateLock of) {
      return new Work.OfGateLock(of.levelCrossing().text(), of.normallyIn());
    }
    if (work instanceof FrameFile.OfWickets of) {
      return new Work.OfWickets(of.levelCrossing().text());
    }
    if (work instanceof FrameFile.OfClosing of) {
      return new Work.OfClosing(texts(of.signals()));
    }
    if (work instanceof FrameFile.OutOfUse of) {
      return new Work.OutOfUse(of.was());
    }
    return new Work.Spare();
  }

  private static List<String> texts(List<Written> written) {
    return written.stream().map(Written::text).toList();
  }

  private static int number(String lever) {
    return Integer.parseInt(Lever.number(lever).replaceAll("[A-Z]$", ""));
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, Written> id) {
    return all.stream()
        .collect(
            Collectors.toMap(t -> id.apply(t).text(), t -> t, (a, b) -> a, LinkedHashMap::new));
  }
}
