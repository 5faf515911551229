package lockwright.report.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import lockwright.audit.Played;

/**
 * Collects the runs that verdicts name, each distinct one once, in the order of their first use.
 */
final class Runs {
  private final Map<Course, String> ids = new LinkedHashMap<>();

  /**
   * A run.
   *
   * @param strokes "half" or "whole": how levers and points of ground frames move in it
   * @param beginning the value of every quantity, by its key
   */
  record Part(String id, String strokes, SortedMap<String, String> beginning, List<Step> steps) {}

  /**
   * @param after the value of every quantity after the event, by its key
   */
  record Step(EventPart event, SortedMap<String, String> after) {}

  private record Course(String strokes, SortedMap<String, String> beginning, List<Step> steps) {}

  /** The id of a run by half-strokes. */
  String half(Played played) {
    return id("half", played);
  }

  /** The id of a run by whole strokes. */
  String whole(Played played) {
    return id("whole", played);
  }

  private String id(String strokes, Played played) {
    List<Step> steps =
        played.steps().stream().map(s -> new Step(EventPart.of(s.event()), s.after())).toList();
    Course course = new Course(strokes, played.beginning(), steps);
    return ids.computeIfAbsent(course, c -> "run " + (ids.size() + 1));
  }

  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    ids.forEach((c, id) -> parts.add(new Part(id, c.strokes(), c.beginning(), c.steps())));
    return parts;
  }
}
