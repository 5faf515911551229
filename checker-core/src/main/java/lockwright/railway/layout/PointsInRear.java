package lockwright.railway.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The trailing points in rear of a stop arm; `docs/meaning.md` 1.8. */
public final class PointsInRear {
  private PointsInRear() {}

  /** Their ids, in order of the plan. */
  public static List<String> of(Layout layout, Signal arm) {
    Set<String> trailing = new HashSet<>();
    Set<TrackEnd> walked = new HashSet<>();
    Deque<TrackEnd> toWalk = new ArrayDeque<>(List.of(arm.stands()));
    while (!toWalk.isEmpty()) {
      TrackEnd towards = toWalk.remove();
      if (!walked.add(towards)) {
        continue;
      }
      for (Step back : Step.outOf(layout, towards.opposite())) {
        // Seen against the direction of the arm, trailing points are facing.
        back.points().filter(PointsOnRoute::facing).ifPresent(p -> trailing.add(p.points()));
        if (layout.post(back.enters()).stream().noneMatch(s -> s.arm() == Arm.STOP)) {
          toWalk.add(back.enters());
        }
      }
    }
    return layout.points().stream().map(Points::id).filter(trailing::contains).toList();
  }
}
