package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.SortedMap;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.report.Cautions;
import lockwright.report.Shown;
import lockwright.report.testsheet.Papers;
import lockwright.testsheet.TestSheet;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Writes the locking test sheet of a box, with the pulling order of each route: as text, as CSV and
 * as one page to be printed. Checks no requirement. An aid for checking written rules: not locking
 * data, and no substitute for competent and licensed people, the rule book, testing on site or
 * approval.
 */
@Mojo(name = "testsheet", threadSafe = true)
public class TestSheetMojo extends AbstractMojo {
  /** The folder with plan.yaml, frame.yaml, the locking table and sections.yaml. */
  @Parameter(property = "lockwright.box", defaultValue = "${project.basedir}/box")
  File box;

  /** Where the papers go. */
  @Parameter(defaultValue = "${project.build.directory}/lockwright")
  File outputFolder;

  /** How many states each search may look at. */
  @Parameter(property = "lockwright.states", defaultValue = "200000")
  int states;

  @Parameter(defaultValue = "${project.basedir}", readonly = true, required = true)
  File basedir;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    try {
      Files.createDirectories(outputFolder.toPath());
      Outputs outputs = new Outputs(outputFolder.toPath());
      for (String name : Outputs.TEST_SHEET) {
        outputs.remove(name);
      }
      if (states < 1) {
        throw new MojoFailureException(
            "NO TEST SHEET: lockwright.states is " + states + ": 1 or more");
      }
      BoxBuilder.Built read =
          ReadSpec.box(box, Place.shown(box, basedir), "NO TEST SHEET", getLog());
      Box whole = read.box().orElseThrow();
      TestSheet sheet;
      try (Heartbeat progress = new Heartbeat(getLog()::info, whole.name())) {
        sheet = TestSheet.of(whole, states, progress::at);
      }
      write(sheet, read.digests(), outputs);
    } catch (IOException | UncheckedIOException e) {
      throw new MojoExecutionException("NO TEST SHEET: files fail: " + e.getMessage(), e);
    }
  }

  private void write(TestSheet sheet, SortedMap<String, String> digests, Outputs outputs)
      throws IOException {
    outputs.write(Outputs.TEST_SHEET.get(0), Papers.text(sheet, digests));
    outputs.write(Outputs.TEST_SHEET.get(1), Papers.csv(sheet, digests));
    outputs.write(Outputs.TEST_SHEET.get(2), Papers.page(sheet, digests));
    getLog()
        .info(
            Shown.line(sheet.box().name())
                + ": test sheet of "
                + (sheet.lines().size() + sheet.rules().lines().size())
                + " lines; "
                + sheet.covered().size()
                + " of "
                + sheet.box().locking().size()
                + " entries covered both ways");
    if (!sheet.all()) {
      getLog().warn("a limit was met (lockwright.states): not all that the levers can come to");
    }
    Cautions.ALL.forEach(getLog()::info);
    getLog().info("test sheet: " + outputs.folder().resolve(Outputs.TEST_SHEET.get(2)));
  }
}
