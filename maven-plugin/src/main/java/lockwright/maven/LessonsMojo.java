package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.check.Recheck;
import lockwright.report.Findings;
import lockwright.report.Shown;
import lockwright.report.learner.LearnersFrame;
import lockwright.report.lesson.Lessons;
import lockwright.report.text.Rejection;
import lockwright.report.text.Summary;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Makes lessons of an existing result.json: a page for each requirement that is broken, and one for
 * each route that can be cleared, step by step; and, if everything of the box is proved or shown,
 * one on which its frame can be worked. What the trainer has written in lessons.yaml stands in
 * them. First checks the result again; if it does not stand, or what is written does not fit, there
 * are no lessons, and the build fails. An aid for checking written rules: not locking data, and no
 * substitute for competent and licensed people, the rule book, testing on site or approval.
 */
@Mojo(name = "lessons", threadSafe = true)
public class LessonsMojo extends AbstractMojo {
  /**
   * The folder with plan.yaml, frame.yaml, the locking table, sections.yaml, waivers.yaml and
   * lessons.yaml.
   */
  @Parameter(property = "lockwright.box", defaultValue = "${project.basedir}/box")
  File box;

  /** Where the check has put its outputs; the lessons go into a folder 'lessons' there. */
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
      outputs.removeLessons();
      lessons(outputs);
    } catch (IOException | UncheckedIOException e) {
      throw new MojoExecutionException("NOT VERIFIED: files fail: " + e.getMessage(), e);
    }
  }

  private void lessons(Outputs outputs) throws IOException, MojoFailureException {
    CheckedAgain again =
        CheckedAgain.of(
            box, Place.shown(box, basedir), outputs.folder().resolve(Outputs.RESULT), date);
    if (again.outcome() instanceof Recheck.Outcome.Refused refused) {
      List<String> text = new ArrayList<>();
      text.add(
          "NOT VERIFIED: " + again.name() + ": not checked in this run, so there are no lessons");
      text.addAll(refused.why());
      throw new MojoFailureException(String.join("\n", Shown.lines(text)));
    } else if (again.outcome() instanceof Recheck.Outcome.Stands stands) {
      Lessons.Outcome made = Lessons.of(stands.findings(), again.result(), again.teaching());
      told(made);
      write(stands.findings(), made.pages(), outputs);
    }
  }

  /** What the trainer has written and does not fit fails the build, for it would teach wrongly. */
  private void told(Lessons.Outcome made) throws MojoFailureException {
    String folder = Place.shown(box, basedir);
    Rejection.lines(made.unused(), folder).forEach(getLog()::warn);
    if (!made.problems().isEmpty()) {
      Rejection.lines(made.problems(), folder).forEach(getLog()::error);
      throw new MojoFailureException(
          "NO LESSONS: " + String.join("\n", Rejection.first(made.problems(), folder)));
    }
  }

  private void write(Findings findings, Map<String, String> pages, Outputs outputs)
      throws IOException {
    Outputs folder = outputs.lessons();
    for (Map.Entry<String, String> page : pages.entrySet()) {
      if (!page.getKey().equals(Lessons.INDEX)) {
        folder.write(page.getKey(), page.getValue());
      }
    }
    folder.write(Lessons.INDEX, pages.get(Lessons.INDEX));
    getLog().info("checked again, without a search:");
    if (findings.passes()) {
      Summary.knownFailures(findings).forEach(getLog()::warn);
      Summary.passed(findings).forEach(getLog()::info);
    } else {
      Shown.lines(Summary.failed(findings).subList(0, 1)).forEach(getLog()::warn);
      getLog().warn("NOT PROVED: lessons are made of what fails; only a check can pass");
    }
    boolean frame = pages.containsKey(LearnersFrame.FILE);
    getLog()
        .info(
            (pages.size() - (frame ? 2 : 1))
                + (frame ? " lessons, and the frame to be worked: " : " lessons: ")
                + folder.folder().resolve(Lessons.INDEX));
  }
}
