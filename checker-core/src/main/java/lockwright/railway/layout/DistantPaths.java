package lockwright.railway.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The undiverted path of each distant, and what it speaks for; `docs/meaning.md` 1.7. */
public final class DistantPaths {
  private DistantPaths() {}

  /** One for each distant, fixed ones too, in order of the plan. */
  public static List<DistantPath> of(Layout layout) {
    return layout.signals().stream()
        .filter(s -> s.arm() == Arm.DISTANT)
        .map(s -> of(layout, s))
        .toList();
  }

  private static DistantPath of(Layout layout, Signal distant) {
    List<Step> steps = undiverted(layout, distant);
    List<List<String>> posts = new ArrayList<>();
    List<List<String>> beyond = new ArrayList<>();
    int last = 0;
    for (int passed = 0; passed <= steps.size(); passed++) {
      if (!stopArms(layout, post(distant, steps, passed)).isEmpty()) {
        beyond.add(beyond(layout, steps, passed));
        posts.add(admitting(layout, distant, steps, passed));
        last = passed;
      }
    }
    List<PointsOnRoute> facing =
        steps.subList(0, last).stream()
            .map(Step::points)
            .flatMap(Optional::stream)
            .filter(PointsOnRoute::facing)
            .toList();
    return new DistantPath(distant.id(), posts, facing, beyond);
  }

  /** The steps of the path. The track that the distant stands on counts as passed. */
  private static List<Step> undiverted(Layout layout, Signal distant) {
    List<Step> steps = new ArrayList<>();
    Set<String> passed = new LinkedHashSet<>(List.of(distant.stands().track()));
    Optional<Step> next = ahead(layout, distant.stands(), distant.ways(), passed);
    while (next.isPresent() && passed.add(next.get().enters().track())) {
      steps.add(next.get());
      next = ahead(layout, next.get().enters().opposite(), distant.ways(), passed);
    }
    return steps;
  }

  /**
   * The step on: at a toe over the normal leg, unless the reverse leg leads to all the named tracks
   * that the normal leg leads to and to others besides. None where the normal leg is the trap.
   */
  private static Optional<Step> ahead(
      Layout layout, TrackEnd leaves, List<String> ways, Set<String> passed) {
    List<Step> steps = Step.ahead(layout, leaves);
    boolean toe = layout.at(leaves) instanceof Attachment.AtPoints at && at.leg() == Leg.TOE;
    if (!toe) {
      return steps.stream().findFirst();
    }
    Optional<Step> normal = leg(steps, Lie.NORMAL);
    Optional<Step> reverse = leg(steps, Lie.REVERSE);
    Set<String> byNormal = named(layout, normal, ways, passed);
    Set<String> byReverse = named(layout, reverse, ways, passed);
    boolean diverted = byReverse.containsAll(byNormal) && byReverse.size() > byNormal.size();
    return diverted ? reverse : normal;
  }

  private static Optional<Step> leg(List<Step> steps, Lie lie) {
    return steps.stream().filter(s -> s.points().orElseThrow().lie() == lie).findFirst();
  }

  /** Of the named tracks, those to which a step leads over tracks that are not passed yet. */
  private static Set<String> named(
      Layout layout, Optional<Step> step, List<String> ways, Set<String> passed) {
    Set<TrackEnd> come = new HashSet<>();
    Deque<TrackEnd> toGo = new ArrayDeque<>();
    step.ifPresent(s -> toGo.add(s.enters()));
    while (!toGo.isEmpty()) {
      TrackEnd enters = toGo.remove();
      if (!passed.contains(enters.track()) && come.add(enters)) {
        Step.ahead(layout, enters.opposite()).forEach(s -> toGo.add(s.enters()));
      }
    }
    Set<String> named = new TreeSet<>();
    come.stream().map(TrackEnd::track).filter(ways::contains).forEach(named::add);
    return named;
  }

  /** The stop arms that admit the path, on the post that is reached after so many steps. */
  private static List<String> admitting(
      Layout layout, Signal distant, List<Step> steps, int passed) {
    List<String> beyond = beyond(layout, steps, passed);
    return stopArms(layout, post(distant, steps, passed)).stream()
        .filter(s -> s.ways().isEmpty() || s.ways().stream().anyMatch(beyond::contains))
        .map(Signal::id)
        .toList();
  }

  /** The tracks passed beyond the post, no farther than the next with a stop arm. */
  private static List<String> beyond(Layout layout, List<Step> steps, int passed) {
    List<String> beyond = new ArrayList<>();
    for (int i = passed; i < steps.size(); i++) {
      beyond.add(steps.get(i).enters().track());
      if (!stopArms(layout, steps.get(i).enters().opposite()).isEmpty()) {
        break;
      }
    }
    return beyond;
  }

  /** Where a post may stand that is reached after so many steps. */
  private static TrackEnd post(Signal distant, List<Step> steps, int passed) {
    return passed == 0 ? distant.stands() : steps.get(passed - 1).enters().opposite();
  }

  private static List<Signal> stopArms(Layout layout, TrackEnd post) {
    return layout.post(post).stream().filter(s -> s.arm() == Arm.STOP).toList();
  }
}
