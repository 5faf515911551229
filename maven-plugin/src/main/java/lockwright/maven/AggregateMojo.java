package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.Cautions;
import lockwright.report.Shown;
import lockwright.report.page.ProofIndex;
import org.apache.maven.execution.MavenSession;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;

/**
 * Writes one page over the boxes of all modules, and fails the build unless each was checked in
 * this build and passes. For the module that is built last, which depends on the others. Does not
 * check certificates again. An aid for checking written rules: not locking data, and no substitute
 * for competent and licensed people, the rule book, testing on site or approval.
 */
@Mojo(name = "aggregate", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true)
public class AggregateMojo extends AbstractMojo {
  /** Where the page goes, as index.html. */
  @Parameter(defaultValue = "${project.build.directory}/lockwright")
  File outputFolder;

  @Parameter(defaultValue = "${session}", readonly = true, required = true)
  MavenSession session;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    String title = session.getTopLevelProject().getName();
    aggregate(title, session.getAllProjects(), session.getStartTime().toInstant());
  }

  /**
   * @param title of the build
   * @param all the modules of the build
   * @param started since when a result is one of this build
   */
  void aggregate(String title, List<MavenProject> all, Instant started)
      throws MojoExecutionException, MojoFailureException {
    try {
      Files.createDirectories(outputFolder.toPath());
      Outputs outputs = new Outputs(outputFolder.toPath());
      outputs.remove(Outputs.INDEX);
      List<ProofIndex.Entry> entries = new ArrayList<>();
      for (MavenProject project : all) {
        for (ModuleBox box : ModuleBox.of(project, session)) {
          entries.add(box.read(started, outputs.folder()));
        }
      }
      outputs.write(Outputs.INDEX, ProofIndex.of(title, entries));
      tell(entries, outputs.folder().resolve(Outputs.INDEX));
    } catch (IOException | UncheckedIOException e) {
      throw new MojoExecutionException("NOT VERIFIED: files fail: " + e.getMessage(), e);
    }
  }

  private void tell(List<ProofIndex.Entry> entries, Path page) throws MojoFailureException {
    String outcome = ProofIndex.outcome(entries);
    if (ProofIndex.passes(entries)) {
      getLog().info(outcome);
      Cautions.ALL.forEach(getLog()::info);
      getLog().info("index of the proof reports: " + page);
      return;
    }
    List<String> text = new ArrayList<>();
    text.add("NOT PROVED: " + (entries.isEmpty() ? "no module has a box" : outcome));
    for (ProofIndex.Entry entry : entries) {
      entry.why().forEach(w -> text.add(entry.module() + ": " + w));
      entry
          .box()
          .filter(b -> !b.passes())
          .ifPresent(b -> text.add(entry.module() + ": does not pass: " + b.counted()));
    }
    text.add("index:    " + page);
    throw new MojoFailureException(String.join("\n", Shown.lines(text)));
  }
}
