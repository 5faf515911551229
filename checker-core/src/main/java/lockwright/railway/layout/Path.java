package lockwright.railway.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A path from a post to where an arm of one kind there would lead; `docs/meaning.md` 1.3.
 *
 * @param beside the ends of tracks at the points and crossings passed that the path does not use
 */
record Path(
    List<String> tracks,
    List<PointsOnRoute> points,
    List<String> crossings,
    List<TrackEnd> beside,
    Route.End end) {

  /**
   * All paths from a post for arms of a kind (not distant), in order of the points passed, normal
   * before reverse.
   */
  static List<Path> from(Layout layout, TrackEnd post, Arm kind) {
    List<Path> found = new ArrayList<>();
    onward(layout, kind, post, List.of(), found);
    return found;
  }

  /** Whether a `for:` that names these tracks admits the path. */
  boolean passesOneOf(List<String> ways) {
    return ways.isEmpty() || tracks.stream().anyMatch(ways::contains);
  }

  private static void onward(
      Layout layout, Arm kind, TrackEnd leaves, List<Step> passed, List<Path> found) {
    for (Step step : Step.ahead(layout, leaves)) {
      if (passed.stream().anyMatch(p -> p.enters().track().equals(step.enters().track()))) {
        continue;
      }
      List<Step> steps = new ArrayList<>(passed);
      steps.add(step);
      TrackEnd ahead = step.enters().opposite();
      endAt(layout, kind, ahead)
          .ifPresentOrElse(
              end -> found.add(of(steps, end)), () -> onward(layout, kind, ahead, steps, found));
    }
  }

  private static Path of(List<Step> steps, Route.End end) {
    return new Path(
        steps.stream().map(s -> s.enters().track()).toList(),
        steps.stream().map(Step::points).flatMap(Optional::stream).toList(),
        steps.stream().map(Step::crossing).flatMap(Optional::stream).toList(),
        steps.stream().map(Step::beside).flatMap(Collection::stream).toList(),
        end);
  }

  /** What a path ends at where it would leave a track, if it ends there. */
  static Optional<Route.End> endAt(Layout layout, Arm kind, TrackEnd leaves) {
    List<String> arms =
        layout.post(leaves).stream()
            .filter(s -> s.arm() == Arm.STOP || (kind.subsidiary() && s.arm().subsidiary()))
            .map(Signal::id)
            .toList();
    if (!arms.isEmpty()) {
      return Optional.of(new Route.End.AtSignals(arms));
    }
    if (kind.subsidiary() && layout.limitsOfShunt().contains(leaves)) {
      return Optional.of(new Route.End.AtLimitOfShunt());
    }
    Attachment at = layout.at(leaves);
    if (at instanceof Attachment.AtLimit limit) {
      return Optional.of(new Route.End.AtLimit(limit.limit()));
    }
    if (at instanceof Attachment.InSection section) {
      return Optional.of(new Route.End.InSection(section.section()));
    }
    return Optional.empty();
  }
}
