package lockwright.spec;

import java.util.List;
import java.util.Optional;

/**
 * `lessons.yaml` as written, in its order. What is missing here has been told as a problem.
 *
 * @param introduction the trainer's words before all lessons
 * @param closing the same, after them
 * @param lessons his words in lessons on what is broken, and on how a route is cleared
 * @param whyNots the lessons that he asks for
 */
public record LessonsFile(
    Optional<Written> introduction,
    Optional<Written> closing,
    List<InLesson> lessons,
    List<WhyNot> whyNots) {
  /** Words in one lesson. */
  public record Words(
      Optional<Written> introduction, Optional<Written> closing, List<Beside> steps) {}

  /** Words beside the step that is made by this movement. */
  public record Beside(Written step, Written words) {}

  /** Words in the lesson of a requirement, by its id. */
  public record InLesson(Written id, Words words) {}

  /**
   * A lesson on a lever that is held.
   *
   * @param first movements made beforehand, in this order
   * @param reversed the levers that stand reversed then, in the order in which they are pulled
   * @param pulled whether it is to be pulled, rather than replaced
   */
  public record WhyNot(
      Written title,
      List<Written> first,
      List<Written> reversed,
      Written lever,
      boolean pulled,
      Words words) {}
}
