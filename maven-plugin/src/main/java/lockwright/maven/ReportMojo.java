package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import lockwright.check.Recheck;
import lockwright.report.Findings;
import lockwright.report.Shown;
import lockwright.report.page.ProofReport;
import lockwright.report.text.Summary;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Checks an existing result.json again, without a search, and writes the proof report of it. If the
 * files of the spec are no longer those that were checked, or any of the result does not stand, the
 * report is headed 'Not checked in this run' and has no verdict, and the build fails. An aid for
 * checking written rules: not locking data, and no substitute for competent and licensed people,
 * the rule book, testing on site or approval.
 */
@Mojo(name = "report", threadSafe = true)
public class ReportMojo extends AbstractMojo {
  /** The folder with plan.yaml, frame.yaml, the locking table, sections.yaml and waivers.yaml. */
  @Parameter(property = "lockwright.box", defaultValue = "${project.basedir}/box")
  File box;

  /** Where the check has put its outputs. */
  @Parameter(defaultValue = "${project.build.directory}/lockwright")
  File outputFolder;

  /** The date of the build, as the check was given it; needed only where something is waived. */
  @Parameter(property = "lockwright.date")
  String date;

  @Parameter(defaultValue = "${project.basedir}", readonly = true, required = true)
  File basedir;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    try {
      Files.createDirectories(outputFolder.toPath());
      Outputs outputs = new Outputs(outputFolder.toPath());
      outputs.remove(Outputs.PROOF_REPORT);
      report(outputs);
    } catch (IOException | UncheckedIOException e) {
      throw new MojoExecutionException("NOT VERIFIED: files fail: " + e.getMessage(), e);
    }
  }

  private void report(Outputs outputs) throws IOException, MojoFailureException {
    CheckedAgain again =
        CheckedAgain.of(
            box, Place.shown(box, basedir), outputs.folder().resolve(Outputs.RESULT), date);
    if (again.outcome() instanceof Recheck.Outcome.Refused refused) {
      refuse(outputs, refused.why(), again.digests(), again.name());
    } else if (again.outcome() instanceof Recheck.Outcome.Stands stands) {
      outputs.write(Outputs.PROOF_REPORT, ProofReport.checked(again.result()));
      tell(stands.findings(), outputs);
    }
  }

  /** Writes the page that has no verdict, and fails. */
  private static void refuse(
      Outputs outputs, List<String> why, SortedMap<String, String> digests, String name)
      throws IOException, MojoFailureException {
    outputs.write(Outputs.PROOF_REPORT, ProofReport.notChecked(name, why, digests));
    List<String> text = new ArrayList<>();
    text.add("NOT VERIFIED: " + name + ": not checked in this run");
    text.addAll(why);
    text.add("report:   " + outputs.folder().resolve(Outputs.PROOF_REPORT));
    throw new MojoFailureException(String.join("\n", Shown.lines(text)));
  }

  private void tell(Findings findings, Outputs outputs) throws MojoFailureException {
    String report = outputs.folder().resolve(Outputs.PROOF_REPORT).toString();
    if (findings.passes()) {
      getLog().info("checked again, without a search:");
      Summary.knownFailures(findings).forEach(getLog()::warn);
      Summary.passed(findings).forEach(getLog()::info);
      getLog().info("proof report: " + report);
      return;
    }
    Summary.knownFailures(findings).forEach(getLog()::error);
    Summary.failing(findings).forEach(getLog()::error);
    List<String> text = new ArrayList<>(Summary.failed(findings));
    text.add("report:   " + report);
    throw new MojoFailureException(String.join("\n", text));
  }
}
