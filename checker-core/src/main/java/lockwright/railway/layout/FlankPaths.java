package lockwright.railway.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The flank paths of a route; `docs/meaning.md` 1.10. The walk goes away from the route, against
 * the way a vehicle would come, each way for itself.
 */
public final class FlankPaths {
  private final Layout layout;
  private final Route route;
  private final Set<String> runOut;
  private final List<FlankPath> found = new ArrayList<>();

  private FlankPaths(Layout layout, Route route, Set<String> runOut) {
    this.layout = layout;
    this.route = route;
    this.runOut = runOut;
  }

  /** Those of a route, in the order in which it passes what they join, each once. */
  public static List<FlankPath> of(Layout layout, Route route, List<Route> routes) {
    Set<String> runOut = new HashSet<>();
    for (Route other : routes) {
      if (other.end() instanceof Route.End.AtLimit) {
        runOut.add(other.tracks().get(other.tracks().size() - 1));
      }
    }
    FlankPaths paths = new FlankPaths(layout, route, runOut);
    for (Step step : paths.steps()) {
      Join join = paths.join(step);
      step.beside().forEach(end -> paths.walk(end, join, Set.of(), List.of(), false));
    }
    return paths.found.stream().distinct().toList();
  }

  /**
   * Where paths join the route.
   *
   * @param passenger whether that is on a passenger line, and the route may be for a passenger
   *     train
   */
  private record Join(String name, boolean passenger) {}

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    TrackEnd leaves = layout.signal(route.signal()).stands();
    for (String track : route.tracks()) {
      Step step =
          Step.outOf(layout, leaves).stream()
              .filter(s -> s.points().isEmpty() || route.points().contains(s.points().get()))
              .filter(s -> s.enters().track().equals(track))
              .findFirst()
              .orElseThrow();
      steps.add(step);
      leaves = step.enters().opposite();
    }
    return steps;
  }

  private Join join(Step step) {
    if (step.points().isPresent()) {
      String points = step.points().get().points();
      return new Join("points " + points, forPassengers(layout.points(points).toe()));
    }
    return new Join(
        step.crossing().map(c -> "crossing " + c).orElse("nothing"),
        forPassengers(step.enters().track()));
  }

  private boolean forPassengers(String track) {
    return layout.signal(route.signal()).arm().running() && passenger(track);
  }

  private boolean passenger(String track) {
    return layout.track(track).passenger();
  }

  /**
   * @param overSpring whether a vehicle would pass sprung points facing to their reverse leg
   */
  private void walk(
      TrackEnd towards, Join join, Set<TrackEnd> been, List<FlankPoints> away, boolean overSpring) {
    boolean behindIt = towards.equals(layout.signal(route.signal()).stands());
    if (behindIt || route.tracks().contains(towards.track()) || been.contains(towards)) {
      return;
    }
    boolean sideLine = join.passenger() && !passenger(towards.track());
    List<String> arms =
        layout.post(towards).stream().filter(s -> s.arm() != Arm.DISTANT).map(Signal::id).toList();
    if (!arms.isEmpty() && !sideLine && overSpring) {
      return; // What they send passes the sprung points normal.
    }
    if (!arms.isEmpty()) {
      found.add(
          new FlankPath(
              towards.track(),
              join.name(),
              away,
              sideLine ? List.of() : arms,
              sideLine ? arms : List.of()));
      return;
    }
    Attachment at = layout.at(towards.opposite());
    if (startsAt(at, towards.track(), sideLine)) {
      found.add(new FlankPath(towards.track(), join.name(), away, List.of(), List.of()));
      return;
    }
    List<FlankPoints> more = new ArrayList<>(away);
    if (at instanceof Attachment.AtPoints points && points.leg() != Leg.TOE) {
      Lie leads = points.leg() == Leg.NORMAL ? Lie.NORMAL : Lie.REVERSE;
      Optional<Lie> needed = needed(points.points());
      if (route.flankTraps().stream().anyMatch(t -> t.points().equals(points.points()))) {
        return;
      }
      if (needed.isPresent() && needed.get() != leads) {
        return;
      }
      if (layout.sprung(points.points()) && layout.points(points.points()).trap().isPresent()) {
        return;
      }
      if (!layout.sprung(points.points()) && needed.isEmpty()) {
        more.add(new FlankPoints(points.points(), leads.other()));
      }
    }
    boolean spring =
        overSpring
            || at instanceof Attachment.AtPoints p
                && p.leg() == Leg.REVERSE
                && layout.sprung(p.points());
    Set<TrackEnd> passed = new HashSet<>(been);
    passed.add(towards);
    Step.outOf(layout, towards.opposite())
        .forEach(s -> walk(s.enters(), join, passed, List.copyOf(more), spring));
  }

  /** Whether vehicles may come from what a track ends at, or stand there. */
  private boolean startsAt(Attachment at, String track, boolean sideLine) {
    if (at instanceof Attachment.AtLimit limit) {
      return limit.limit() == Attachment.Limit.BUFFER_STOP || sideLine || !runOut.contains(track);
    }
    return at instanceof Attachment.InSection;
  }

  /** How the route needs points, if it passes them. */
  private Optional<Lie> needed(String points) {
    return route.needed().stream()
        .filter(p -> p.points().equals(points))
        .map(PointsOnRoute::lie)
        .findFirst();
  }
}
