package lockwright.report.picture;

import java.util.List;
import lockwright.railway.Box;
import lockwright.spec.Problem;

/** What is told of a box as its diagram is drawn. */
public final class PictureProblems {
  private PictureProblems() {}

  public static List<Problem> of(Box box) {
    return Pictures.withoutRoom(Drawn.result(box));
  }
}
