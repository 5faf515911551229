package lockwright.railway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A vehicle leaves one track and enters another: over a joint, points or a crossing.
 *
 * @param enters the end at which it enters the next track
 * @param points the points passed, if any
 * @param crossing the crossing passed, if any
 * @param beside the ends of tracks there that it does not use: the other leg of the points, or both
 *     ends of the other way of the crossing
 */
record Step(
    TrackEnd enters,
    Optional<PointsOnRoute> points,
    Optional<String> crossing,
    List<TrackEnd> beside) {

  /**
   * The steps that a vehicle can make: all but those that face sprung points into their reverse
   * leg; in the order of {@link #outOf}. What looks for where a vehicle may come from asks {@link
   * #outOf}.
   */
  static List<Step> ahead(Layout layout, TrackEnd leaves) {
    return outOf(layout, leaves).stream()
        .filter(s -> s.points().filter(PointsOnRoute::barred).isEmpty())
        .toList();
  }

  /**
   * All steps out of a track at an end, normal before reverse. At a limit and in a section there
   * are none, and none leads into a trap.
   */
  static List<Step> outOf(Layout layout, TrackEnd leaves) {
    Attachment at = layout.at(leaves);
    if (at instanceof Attachment.Joint joint) {
      return List.of(new Step(joint.other(), Optional.empty(), Optional.empty(), List.of()));
    }
    if (at instanceof Attachment.AtCrossing crossing) {
      return List.of(over(layout, crossing, leaves));
    }
    if (at instanceof Attachment.AtPoints points) {
      return over(layout, points);
    }
    return List.of();
  }

  private static Step over(Layout layout, Attachment.AtCrossing crossing, TrackEnd leaves) {
    List<TrackEnd> beside =
        layout.attachments().entrySet().stream()
            .filter(
                e ->
                    e.getValue() instanceof Attachment.AtCrossing other
                        && other.crossing().equals(crossing.crossing()))
            .map(Map.Entry::getKey)
            .filter(end -> !end.equals(leaves) && !end.equals(crossing.across()))
            .toList();
    return new Step(crossing.across(), Optional.empty(), Optional.of(crossing.crossing()), beside);
  }

  private static List<Step> over(Layout layout, Attachment.AtPoints at) {
    if (at.leg() != Leg.TOE) {
      Lie lie = at.leg() == Leg.NORMAL ? Lie.NORMAL : Lie.REVERSE;
      return List.of(over(layout, passed(layout, at, lie, false), Leg.TOE));
    }
    List<Step> steps = new ArrayList<>();
    for (Lie lie : Lie.values()) {
      if (layout.points(at.points()).track(lie).isPresent()) {
        steps.add(over(layout, passed(layout, at, lie, true), leg(lie)));
      }
    }
    return steps;
  }

  private static PointsOnRoute passed(
      Layout layout, Attachment.AtPoints at, Lie lie, boolean facing) {
    return new PointsOnRoute(at.points(), lie, facing, layout.sprung(at.points()));
  }

  private static Step over(Layout layout, PointsOnRoute passed, Leg to) {
    Lie unused = passed.lie().other();
    List<TrackEnd> beside =
        layout.points(passed.points()).track(unused).isPresent()
            ? List.of(layout.endAt(passed.points(), leg(unused)))
            : List.of();
    return new Step(
        layout.endAt(passed.points(), to), Optional.of(passed), Optional.empty(), beside);
  }

  private static Leg leg(Lie lie) {
    return lie == Lie.NORMAL ? Leg.NORMAL : Leg.REVERSE;
  }
}
