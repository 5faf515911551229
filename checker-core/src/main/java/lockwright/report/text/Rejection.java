package lockwright.report.text;

import java.util.ArrayList;
import java.util.List;
import lockwright.report.Shown;
import lockwright.spec.Problem;

/** The problems of a spec that is not checked for them. */
public final class Rejection {
  private Rejection() {}

  /**
   * The lines of every problem, by place.
   *
   * @param folder the path of the spec's folder as it is to be shown, ended by a slash
   */
  public static List<String> lines(List<Problem> problems, String folder) {
    List<String> lines = new ArrayList<>();
    problems.forEach(p -> p.text(folder).lines().forEach(lines::add));
    return Shown.lines(lines);
  }

  /** How many there are, and the first. */
  public static List<String> summary(List<Problem> problems, String folder) {
    List<String> lines = new ArrayList<>(first(problems, folder));
    lines.set(0, "NOT VERIFIED: " + lines.get(0));
    return lines;
  }

  /** The same, of what is no fault of the box. */
  public static List<String> first(List<Problem> problems, String folder) {
    List<String> lines = new ArrayList<>();
    lines.add(
        (problems.size() == 1 ? "1 problem in " : problems.size() + " problems in ")
            + folder
            + (problems.size() == 1 ? ":" : ", the first:"));
    problems.get(0).text(folder).lines().forEach(lines::add);
    return Shown.lines(lines);
  }
}
