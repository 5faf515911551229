package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.PointsInRear;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.layout.Signal;
import lockwright.railway.section.Section;

/**
 * The instances of every requirement, in the order of the catalogue, then of the plan;
 * `docs/meaning.md` 6, one method a row. What follows from the layout must be derived from this
 * one.
 */
record Instances(
    Layout layout,
    Frame frame,
    List<Section> sections,
    List<Route> routes,
    List<Conflict> conflicts,
    List<DistantPath> distantPaths) {

  List<Requirement> all() {
    List<Requirement> noConflict = noConflict();
    return Stream.<List<? extends Requirement>>of(
            pointsSet(),
            pointsBolted(),
            boltAndPointsAgree(),
            routes.stream().map(Requirement.RouteHeld::new).toList(),
            pointsHeldInRear(),
            FlankInstances.of(layout, routes),
            noConflict,
            new OverlapInstances(layout, routes, conflicts).set(),
            new OverlapInstances(layout, routes, conflicts).apart(),
            distantFollows(),
            releaseHome(),
            roadClosed(),
            boxClosed(noConflict),
            sections.stream().map(s -> new Requirement.OneTokenOut(s.name())).toList(),
            sectionSignalEarned(),
            sectionSignalsApart(),
            sidingLocked(),
            routes.stream().map(Requirement.RouteCanBeCleared::new).toList(),
            worked().map(Requirement.LeverCanBeMoved::new).toList(),
            frameCanBeRestored())
        .<Requirement>flatMap(List::stream)
        .toList();
  }

  private List<Requirement> pointsSet() {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      if (signal.arm() == Arm.DISTANT) {
        continue;
      }
      if (!frame.dividedAmongLevers(signal.id())) {
        found.add(new Requirement.PointsSet(signal.id(), routesOf(signal, r -> true)));
        continue;
      }
      for (Lever lever : frame.giving(signal.id())) {
        Work.OfSignal work = (Work.OfSignal) lever.work();
        List<Route> its = routesOf(signal, r -> work.isFor(r.tracks()));
        found.add(new Requirement.PointsSet(signal.id(), its, Optional.of(lever.id())));
      }
    }
    return found;
  }

  private List<Requirement> pointsBolted() {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      for (Points points : layout.points()) {
        List<Route> facing = routesOf(signal, r -> passesFacing(r, points.id()));
        if (signal.arm().running() && !facing.isEmpty() && onPassengerLine(points.id())) {
          found.add(new Requirement.PointsBolted(signal.id(), points.id(), facing));
        }
      }
    }
    return found;
  }

  private List<Requirement> boltAndPointsAgree() {
    return layout.points().stream()
        .filter(p -> !p.byHand() && frame.ofBolt(p.id()).isPresent())
        .<Requirement>map(p -> new Requirement.BoltAndPointsAgree(p.id()))
        .toList();
  }

  private List<Requirement> pointsHeldInRear() {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      if (signal.arm() == Arm.STOP) {
        PointsInRear.of(layout, signal).stream()
            .filter(p -> !layout.sprung(p))
            .forEach(p -> found.add(new Requirement.PointsHeldInRear(signal.id(), p)));
      }
    }
    return found;
  }

  private List<Requirement> noConflict() {
    List<Requirement> found = new ArrayList<>();
    eachPair(
        layout.signals(),
        (first, second) -> {
          List<Conflict> between =
              conflicts.stream().filter(c -> isBetween(c, first.id(), second.id())).toList();
          int pairs = routesOf(first, r -> true).size() * routesOf(second, r -> true).size();
          boolean always = between.size() == pairs;
          if (!between.isEmpty() && (always || between.stream().anyMatch(Conflict::possible))) {
            Optional<String> closing =
                between.stream().anyMatch(Conflict::opposed)
                    ? frame.closing(first.id(), second.id()).map(Lever::id)
                    : Optional.empty();
            found.add(
                new Requirement.NoConflict(first.id(), second.id(), between, always, closing));
          }
        });
    return found;
  }

  private List<Requirement> boxClosed(List<Requirement> noConflict) {
    List<Requirement> found = new ArrayList<>();
    for (Lever lever : frame.levers()) {
      if (lever.work() instanceof Work.OfClosing closing
          && noConflict.stream().noneMatch(r -> excepts(r, lever.id()))) {
        found.add(new Requirement.BoxClosed(lever.id(), closing.signals()));
      }
    }
    return found;
  }

  private static boolean excepts(Requirement requirement, String closing) {
    return requirement instanceof Requirement.NoConflict r
        && r.closing().equals(Optional.of(closing));
  }

  private List<Requirement> distantFollows() {
    return distantPaths.stream()
        .filter(path -> !layout.signal(path.distant()).fixed())
        .<Requirement>map(
            path ->
                new Requirement.DistantFollows(
                    path,
                    path.facing().stream()
                        .filter(p -> !p.sprung())
                        .map(PointsOnRoute::points)
                        .filter(this::onPassengerLine)
                        .toList()))
        .toList();
  }

  private List<Requirement> releaseHome() {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      for (GroundFrame ground : layout.groundFrames()) {
        List<Route> over =
            routesOf(signal, r -> r.points().stream().anyMatch(p -> works(ground, p.points())));
        if (!over.isEmpty()) {
          found.add(new Requirement.ReleaseHome(signal.id(), ground.id(), over));
        }
      }
    }
    return found;
  }

  private List<Requirement> roadClosed() {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      for (LevelCrossing crossing : layout.levelCrossings()) {
        List<Route> over = routesOf(signal, crossing::isOn);
        if (!over.isEmpty()) {
          found.add(new Requirement.RoadClosed(signal.id(), crossing.id(), over));
        }
      }
    }
    return found;
  }

  private List<Requirement> sectionSignalEarned() {
    List<Requirement> found = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      for (Section section : sections) {
        if (isSectionSignal(signal, section)) {
          found.add(new Requirement.SectionSignalEarned(section.name(), signal.id()));
        }
      }
    }
    return found;
  }

  private List<Requirement> sectionSignalsApart() {
    List<Requirement> found = new ArrayList<>();
    for (Section section : sections) {
      eachPair(
          layout.signals().stream().filter(s -> isSectionSignal(s, section)).toList(),
          (first, second) ->
              found.add(
                  new Requirement.SectionSignalsApart(section.name(), first.id(), second.id())));
    }
    return found;
  }

  private List<Requirement> sidingLocked() {
    List<Requirement> found = new ArrayList<>();
    for (Section section : sections) {
      for (Section.Lock lock : section.locks()) {
        found.add(new Requirement.SidingLocked(section.name(), lock.groundFrame()));
      }
    }
    return found;
  }

  private List<Requirement> frameCanBeRestored() {
    return worked().findAny().isEmpty()
        ? List.of()
        : List.of(new Requirement.FrameCanBeRestored(worked().toList()));
  }

  /** The levers that are not spare or out of use. */
  private Stream<String> worked() {
    return frame.levers().stream().filter(l -> l.work().moves()).map(Lever::id);
  }

  private List<Route> routesOf(Signal signal, Predicate<Route> which) {
    return routes.stream().filter(r -> r.signal().equals(signal.id())).filter(which).toList();
  }

  private boolean isSectionSignal(Signal signal, Section section) {
    return signal.arm().running()
        && !routesOf(signal, r -> r.end().equals(new Route.End.InSection(section.name())))
            .isEmpty();
  }

  private boolean onPassengerLine(String points) {
    return layout.track(layout.points(points).toe()).passenger();
  }

  private static boolean passesFacing(Route route, String points) {
    return route.points().stream().anyMatch(p -> p.facing() && p.points().equals(points));
  }

  private static boolean works(GroundFrame ground, String points) {
    return ground.points().contains(points);
  }

  private static boolean isBetween(Conflict conflict, String first, String second) {
    return conflict.first().signal().equals(first) && conflict.second().signal().equals(second);
  }

  private interface PairOf<T> {
    void take(T first, T second);
  }

  private static <T> void eachPair(List<T> all, PairOf<T> each) {
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        each.take(all.get(i), all.get(j));
      }
    }
  }
}
