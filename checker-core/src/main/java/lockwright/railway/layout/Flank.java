package lockwright.railway.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The flank traps of a path; `docs/meaning.md` 1.5. The walk goes away from the path, against the
 * way a vehicle would come. A track that it comes to from both ends is walked both ways, so that
 * the order of the walk does not matter.
 */
final class Flank {
  private Flank() {}

  /** The flank traps, in order of the plan. Points that the path itself passes are none. */
  static List<FlankTrap> of(Layout layout, Path path) {
    Deque<TrackEnd> toWalk = new ArrayDeque<>(path.beside());
    Set<TrackEnd> walked = new HashSet<>();
    Set<String> traps = new HashSet<>();
    while (!toWalk.isEmpty()) {
      TrackEnd towards = toWalk.remove();
      if (guarded(layout, towards)
          || path.tracks().contains(towards.track())
          || !walked.add(towards)) {
        continue;
      }
      TrackEnd away = towards.opposite();
      Optional<String> trap = trapAt(layout, away).filter(p -> !passes(path, p));
      if (trap.isPresent()) {
        traps.add(trap.get());
      } else {
        Step.outOf(layout, away).forEach(s -> toWalk.add(s.enters()));
      }
    }
    return layout.points().stream()
        .filter(p -> traps.contains(p.id()))
        .map(p -> new FlankTrap(p.id(), p.trap().orElseThrow()))
        .toList();
  }

  /** Whether a stop or subsidiary signal stands at an end, reading out of the track. */
  private static boolean guarded(Layout layout, TrackEnd towards) {
    return layout.post(towards).stream().anyMatch(s -> s.arm() != Arm.DISTANT);
  }

  /** Trap points there where the walk leaves a track, if a vehicle would come over them facing. */
  private static Optional<String> trapAt(Layout layout, TrackEnd away) {
    return layout.at(away) instanceof Attachment.AtPoints at
            && at.leg() != Leg.TOE
            && layout.points(at.points()).trap().isPresent()
        ? Optional.of(at.points())
        : Optional.empty();
  }

  private static boolean passes(Path path, String points) {
    return path.points().stream().anyMatch(p -> p.points().equals(points));
  }
}
