package lockwright.railway.teaching;

import java.util.List;
import lockwright.spec.Span;

/**
 * The trainer's words in one lesson.
 *
 * @param introduction before its story; empty, if there are none
 * @param closing at its end; empty, if there are none
 */
public record Words(String introduction, String closing, List<Beside> steps) {
  /** Of a lesson in which he has written nothing. */
  public static final Words NONE = new Words("", "", List.of());

  public Words {
    steps = List.copyOf(steps);
  }

  /**
   * Words beside a step, which is named by its movement, so that they stay with it while other
   * steps come and go.
   *
   * @param movement such as "pull 17", or "the beginning"
   * @param time which of the steps with this movement, from 1
   */
  public record Beside(String movement, int time, String words, Span at) {}
}
