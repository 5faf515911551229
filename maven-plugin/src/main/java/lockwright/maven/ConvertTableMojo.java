package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.util.List;
import lockwright.railway.BoxBuilder;
import lockwright.report.Shown;
import lockwright.report.text.Rejection;
import lockwright.spec.LockingConversion;
import lockwright.spec.Problem;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Writes the locking table of a box in its other form: locking.csv becomes locking.yaml, or
 * locking.yaml becomes locking.csv. No entry is lost; a table with a problem is left as it is.
 */
@Mojo(name = "convert-table", requiresProject = false, threadSafe = true)
public class ConvertTableMojo extends AbstractMojo {
  /** The folder with the locking table. */
  @Parameter(property = "lockwright.box", defaultValue = "${basedir}/box")
  File box;

  @Parameter(defaultValue = "${basedir}", readonly = true, required = true)
  File basedir;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    String folder = Place.shown(box, basedir);
    if (!Files.isDirectory(box.toPath())) {
      throw new MojoFailureException(
          "NOT CONVERTED: there is no folder "
              + folder
              + "; the property lockwright.box names the folder of the spec");
    }
    try {
      SpecFolder spec = SpecFolder.read(box.toPath());
      refuseProblems(spec, folder);
      LockingConversion.Done done = LockingConversion.convert(box.toPath(), spec);
      for (Written comment : done.lost()) {
        getLog()
            .warn(
                Shown.line(
                    folder + comment.at() + ": a comment, which CSV cannot keep: #" + comment));
      }
      getLog().info(folder + done.from() + " is now " + done.to() + ", with the same entries");
    } catch (FileAlreadyExistsException e) {
      throw new MojoFailureException("NOT CONVERTED: this is in the way: " + e.getFile());
    } catch (IOException | UncheckedIOException e) {
      throw new MojoExecutionException("NOT CONVERTED: " + e.getMessage(), e);
    }
  }

  /** Tells all problems of the table. Those of other files do not hinder. */
  private void refuseProblems(SpecFolder spec, String folder) throws MojoFailureException {
    List<Problem> problems =
        BoxBuilder.build(spec).problems().stream()
            .filter(
                problem ->
                    List.of(SpecFolder.LOCKING_CSV, SpecFolder.LOCKING_YAML)
                        .contains(problem.span().file()))
            .toList();
    if (!problems.isEmpty()) {
      Rejection.lines(problems, folder).forEach(getLog()::error);
      throw new MojoFailureException(
          "NOT CONVERTED: the table has problems, and was left as it is.\n"
              + String.join("\n", Rejection.summary(problems, folder)));
    }
  }
}
