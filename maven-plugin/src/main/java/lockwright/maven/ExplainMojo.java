package lockwright.maven;

import java.io.File;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import lockwright.explain.Asked;
import lockwright.explain.Collars;
import lockwright.explain.Explanation;
import lockwright.railway.Box;
import lockwright.report.explain.ExplanationText;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Says whether a lever is free while others stand reversed or part-way, which entries of the
 * locking table hold it, and what would free it with fewest movements. Writes nothing. An aid for
 * checking written rules: not locking data, and no substitute for competent and licensed people,
 * the rule book, testing on site or approval.
 */
@Mojo(name = "explain", requiresProject = false, threadSafe = true)
public class ExplainMojo extends AbstractMojo {
  /** The folder with plan.yaml, frame.yaml, the locking table and sections.yaml. */
  @Parameter(property = "lockwright.box", defaultValue = "${basedir}/box")
  File box;

  /** The levers that stand reversed, in the order in which they were pulled, joined by commas. */
  @Parameter(property = "lockwright.reversed")
  String reversed;

  /** The levers that have left normal and stand part-way, joined by commas. */
  @Parameter(property = "lockwright.partWay")
  String partWay;

  /** The lever that is asked about. */
  @Parameter(property = "lockwright.lever")
  String lever;

  /** The levers with a collar on, which then do not move, joined by commas. */
  @Parameter(property = "lockwright.collars")
  String collars;

  /** How many states each search may look at. */
  @Parameter(property = "lockwright.states", defaultValue = "200000")
  int states;

  @Parameter(defaultValue = "${basedir}", readonly = true, required = true)
  File basedir;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    try {
      String folder = Place.shown(box, basedir);
      Box read = ReadSpec.box(box, folder, "NOT EXPLAINED", getLog()).box().orElseThrow();
      Asked asked = Asked.written(reversed, partWay, lever, collars);
      List<Asked.Fault> faults = asked.faults(read);
      if (!faults.isEmpty()) {
        refuse(ExplanationText.faults(faults));
      }
      if (states < 1) {
        refuse(List.of("lockwright.states is " + states + ": 1 or more"));
      }
      Explanation explanation = Explanation.of(read, asked, states);
      ExplanationText.lines(explanation, folder).forEach(getLog()::info);
      if (!asked.collars().isEmpty()) {
        ExplanationText.lines(explanation, Collars.of(explanation, states)).forEach(getLog()::info);
      }
    } catch (UncheckedIOException e) {
      throw new MojoExecutionException("NOT EXPLAINED: files fail: " + e.getMessage(), e);
    }
  }

  private static void refuse(List<String> why) throws MojoFailureException {
    List<String> text = new ArrayList<>(List.of("NOT EXPLAINED:"));
    text.addAll(why);
    throw new MojoFailureException(String.join("\n", text));
  }
}
