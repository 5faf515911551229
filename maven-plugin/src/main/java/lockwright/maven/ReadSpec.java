package lockwright.maven;

import java.io.File;
import java.nio.file.Files;
import java.util.List;
import lockwright.railway.BoxBuilder;
import lockwright.report.text.Rejection;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;

/** A box for a goal that checks nothing. */
final class ReadSpec {
  private ReadSpec() {}

  /**
   * With a box, if there is nothing wrong with its spec; all that is wrong is told.
   *
   * @param shown the folder, as it is named to the user
   * @param failure what the failure begins with, in capitals
   */
  static BoxBuilder.Built box(File box, String shown, String failure, Log log)
      throws MojoFailureException {
    if (!Files.isDirectory(box.toPath())) {
      throw new MojoFailureException(
          failure
              + ": there is no folder "
              + shown
              + "; the property lockwright.box names the folder of the spec");
    }
    BoxBuilder.Built built = BoxBuilder.read(box.toPath());
    if (built.box().isEmpty()) {
      Rejection.lines(built.problems(), shown).forEach(log::error);
      List<String> summary = Rejection.summary(built.problems(), shown);
      throw new MojoFailureException(failure + ": " + String.join("\n", summary));
    }
    return built;
  }
}
