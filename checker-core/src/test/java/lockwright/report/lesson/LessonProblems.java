package lockwright.report.lesson;

import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.BoxBuilder;
import lockwright.spec.Problem;

/** What is told of a trainer's words and questions as the lessons are made. */
public final class LessonProblems {
  private LessonProblems() {}

  /** Of a box of which nothing is claimed, so that there are only the lessons asked for. */
  public static List<Problem> of(BoxBuilder.Built built) {
    Lessons.Outcome outcome = Taught.unclaimed(built.box().orElseThrow()).with(built.teaching());
    return Stream.concat(outcome.problems().stream(), outcome.unused().stream()).sorted().toList();
  }
}
