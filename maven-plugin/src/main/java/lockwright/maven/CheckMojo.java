package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import lockwright.audit.Disagreement;
import lockwright.check.Check;
import lockwright.check.EntryTrials;
import lockwright.check.Searcher;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.report.Expectations;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import lockwright.report.junit.JunitXml;
import lockwright.report.markdown.MarkdownSummary;
import lockwright.report.page.ProofReport;
import lockwright.report.picture.Pictures;
import lockwright.report.readback.ReadBack;
import lockwright.report.sarif.Sarif;
import lockwright.report.text.FullLog;
import lockwright.report.text.Rejection;
import lockwright.report.text.Summary;
import lockwright.worker.Limits;
import lockwright.worker.UnfitMachine;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Checks the requirements of a signal box, and fails the build unless each requirement of safety is
 * proved and each possibility is shown, or fails just as its author has written in waivers.yaml. An
 * aid for checking written rules: not locking data, and no substitute for competent and licensed
 * people, the rule book, testing on site or approval.
 */
@Mojo(name = "check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true)
public class CheckMojo extends AbstractMojo {
  /**
   * The folder with plan.yaml, frame.yaml, the locking table, sections.yaml, waivers.yaml and
   * drawing.yaml.
   */
  @Parameter(property = "lockwright.box", defaultValue = "${project.basedir}/box")
  File box;

  /** Where the outputs go; what an earlier check left there is removed first. */
  @Parameter(defaultValue = "${project.build.directory}/lockwright")
  File outputFolder;

  /** Leaves the check out. The build then says NOT VERIFIED. */
  @Parameter(property = "lockwright.skip", defaultValue = "false")
  boolean skip;

  /**
   * Goes on with the build whatever the findings are. They become warnings, and it says NOT PROVED.
   */
  @Parameter(property = "lockwright.warnOnly", defaultValue = "false")
  boolean warnOnly;

  /** Seconds that each of the two searches may take; what is open then is undecided, and fails. */
  @Parameter(property = "lockwright.seconds", defaultValue = "300")
  int seconds;

  /**
   * The solver's effort for one question, by its own measure, on any machine the same; 0: no limit.
   */
  @Parameter(property = "lockwright.effort", defaultValue = "0")
  int effort;

  /** The longest sequence that is looked for first, in half-strokes and events. */
  @Parameter(property = "lockwright.depth", defaultValue = "16")
  int depth;

  /**
   * The date of the build, for waivers that end on a day: year, month and day, such as 2031-04-30.
   * Needed only where waivers.yaml waives something. No clock is read.
   */
  @Parameter(property = "lockwright.date")
  String date;

  /**
   * Also leaves out each entry of the locking table alone, and says which requirements need it.
   * Takes a few times as long as the check; all entries together may take the seconds of one
   * search.
   */
  @Parameter(property = "lockwright.entries", defaultValue = "false")
  boolean entries;

  @Parameter(defaultValue = "${project.basedir}", readonly = true, required = true)
  File basedir;

  @Parameter(defaultValue = "${mojoExecution}", readonly = true)
  MojoExecution execution;

  @Parameter(defaultValue = "${session.executionRootDirectory}", readonly = true)
  File top;

  /** Where the searches are done, for a folder; for tests to put another in. */
  Function<Path, Searcher> search = Searcher::inChildren;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    try {
      Outputs outputs = Outputs.fresh(outputFolder.toPath());
      if (skip) {
        String words = "NOT VERIFIED: " + folder() + " was not checked, for lockwright.skip is set";
        outputs.write(Outputs.LOG, words + "\n");
        getLog().warn(words);
        return;
      }
      check(outputs);
    } catch (UnfitMachine e) {
      throw new MojoExecutionException("NOT VERIFIED: " + e.getMessage());
    } catch (IOException | UncheckedIOException e) {
      throw new MojoExecutionException(
          "NOT VERIFIED: files or processes fail: " + e.getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new MojoExecutionException("NOT VERIFIED: the check was interrupted", e);
    } catch (Disagreement e) {
      getLog().error(e);
      throw new MojoExecutionException(
          "NOT VERIFIED: search and audit disagree, which is a fault of Lockwright and none of yours."
              + " Please report it with the lines above and the files of the box.",
          e);
    }
  }

  private void check(Outputs outputs)
      throws MojoFailureException, UnfitMachine, IOException, InterruptedException {
    Limits limits = limits();
    BoxBuilder.Built built = read(outputs);
    Box read = built.box().orElseThrow();
    Expectations expectations = DateOfBuild.expectations(built.expectations(), date);
    outputs.write(Outputs.READ_BACK_TEXT, ReadBack.text(read));
    outputs.write(Outputs.READ_BACK_TABLE, ReadBack.csv(read));
    Findings findings;
    try (Heartbeat progress = new Heartbeat(getLog()::info, read.name())) {
      Searcher searcher = search.apply(outputs.folder());
      findings = new Check(limits, searcher, progress).run(read, built.digests());
      if (entries) {
        findings = new EntryTrials(limits, searcher, progress).run(findings);
      }
      findings = findings.against(expectations);
    }
    outputs.write(Outputs.LOG, FullLog.of(findings));
    byte[] result = ResultJson.bytes(findings);
    outputs.write(Outputs.RESULT, result);
    outputs.write(Outputs.SARIF, Sarif.of(result, Place.inRepository(box, basedir)));
    outputs.write(Outputs.JUNIT, JunitXml.of(result));
    outputs.write(Outputs.SUMMARY, MarkdownSummary.of(result));
    outputs.write(Outputs.PROOF_REPORT, ProofReport.checked(result));
    Rejection.lines(Pictures.withoutRoom(result), folder()).forEach(getLog()::warn);
    tell(findings, outputs);
  }

  private Limits limits() throws MojoFailureException {
    try {
      return new Limits(seconds, effort, depth);
    } catch (IllegalArgumentException e) {
      throw new MojoFailureException("NOT VERIFIED: parameters out of range: " + e.getMessage());
    }
  }

  /** The spec, if there is nothing wrong with it. */
  private BoxBuilder.Built read(Outputs outputs) throws MojoFailureException, IOException {
    if (!Files.isDirectory(box.toPath())) {
      throw new MojoFailureException(
          "NOT VERIFIED: there is no folder "
              + folder()
              + "; the parameter 'box' (property lockwright.box) names the folder of the spec");
    }
    BoxBuilder.Built built = BoxBuilder.read(box.toPath());
    if (built.box().isEmpty()) {
      List<String> lines = Rejection.lines(built.problems(), folder());
      lines.forEach(getLog()::error);
      outputs.write(Outputs.LOG, String.join("\n", lines) + "\n");
      throw new MojoFailureException(
          String.join("\n", Rejection.summary(built.problems(), folder())));
    }
    return built;
  }

  private void tell(Findings findings, Outputs outputs) throws MojoFailureException {
    if (findings.passes()) {
      Summary.knownFailures(findings).forEach(getLog()::warn);
      Summary.passed(findings).forEach(getLog()::info);
      Summary.entries(findings).forEach(getLog()::info);
      getLog().info("proof report: " + outputs.folder().resolve(Outputs.PROOF_REPORT));
      return;
    }
    Consumer<String> line = warnOnly ? getLog()::warn : getLog()::error;
    Summary.knownFailures(findings).forEach(line);
    Summary.failing(findings).forEach(line);
    List<String> text = new ArrayList<>(Summary.failed(findings));
    if (!warnOnly) {
      text.add("to go on with the build all the same: -Dlockwright.warnOnly");
    }
    text.add("full log: " + outputs.folder().resolve(Outputs.LOG));
    text.add("result:   " + outputs.folder().resolve(Outputs.RESULT));
    text.add("report:   " + outputs.folder().resolve(Outputs.PROOF_REPORT));
    if (findings.tally().broken() > 0) {
      text.add("lessons:  " + Again.command("lessons", execution, basedir, top, box, date));
    }
    if (!warnOnly) {
      throw new MojoFailureException(String.join("\n", text));
    }
    text.forEach(line);
    line.accept("NOT PROVED: the build goes on, for lockwright.warnOnly is set");
  }

  private String folder() {
    return Place.shown(box, basedir);
  }
}
