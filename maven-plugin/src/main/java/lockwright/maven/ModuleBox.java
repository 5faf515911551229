package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lockwright.railway.BoxBuilder;
import lockwright.railway.requirement.Requirement;
import lockwright.report.page.ProofIndex;
import lockwright.report.page.ProofReport;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;
import lockwright.report.text.Rejection;
import org.apache.maven.execution.MavenSession;
import org.apache.maven.model.Plugin;
import org.apache.maven.model.PluginExecution;
import org.apache.maven.project.MavenProject;
import org.codehaus.plexus.util.xml.Xpp3Dom;

/**
 * A box of a module.
 *
 * @param module the module in words
 * @param folder of its spec
 * @param outputs where its check puts them; nothing if the module does not check it
 */
record ModuleBox(String module, Path folder, Optional<Path> outputs) {
  private static final String PLUGIN = "lockwright:lockwright-maven-plugin";

  /** Those that the module checks; or else the one that it has and does not check. */
  static List<ModuleBox> of(MavenProject project, MavenSession session) {
    List<ModuleBox> boxes = new ArrayList<>();
    Plugin plugin = project.getPlugin(PLUGIN);
    for (PluginExecution e : plugin == null ? List.<PluginExecution>of() : plugin.getExecutions()) {
      if (e.getGoals().contains("check")) {
        Path outputs = path(project, e, "outputFolder").orElse(target(project));
        Path folder = path(project, e, "box").orElse(usual(project, session));
        boxes.add(new ModuleBox(named(project), folder, Optional.of(outputs)));
      }
    }
    Path unchecked = project.getBasedir().toPath().resolve("box");
    if (boxes.isEmpty() && Files.exists(unchecked.resolve("plan.yaml"))) {
      boxes.add(new ModuleBox(named(project), unchecked, Optional.empty()));
    }
    return boxes;
  }

  private static String named(MavenProject project) {
    return project.getGroupId() + ":" + project.getArtifactId();
  }

  private static Path target(MavenProject project) {
    return project
        .getBasedir()
        .toPath()
        .resolve(project.getBuild().getDirectory())
        .resolve("lockwright");
  }

  /** As the check finds it where its parameter is not configured. */
  private static Path usual(MavenProject project, MavenSession session) {
    String property =
        session == null ? null : session.getUserProperties().getProperty("lockwright.box");
    property = property == null ? project.getProperties().getProperty("lockwright.box") : property;
    return project.getBasedir().toPath().resolve(property == null ? "box" : property);
  }

  private static Optional<Path> path(MavenProject project, PluginExecution execution, String name) {
    Xpp3Dom configuration = (Xpp3Dom) execution.getConfiguration();
    Xpp3Dom value = configuration == null ? null : configuration.getChild(name);
    return Optional.ofNullable(value)
        .map(Xpp3Dom::getValue)
        .map(v -> project.getBasedir().toPath().resolve(v));
  }

  /**
   * What its result says, if that is one of this build, on the files as they are.
   *
   * @param started when the build began
   * @param index the folder of the page that links to the proof report
   */
  ProofIndex.Entry read(Instant started, Path index) throws IOException {
    if (outputs.isEmpty()) {
      return none("the module has a box, and does not check it");
    }
    if (!Files.isDirectory(folder)) {
      return none("there is no folder " + folder.getFileName() + "/ with a spec");
    }
    BoxBuilder.Built built = BoxBuilder.read(folder);
    if (built.box().isEmpty()) {
      return none(Rejection.summary(built.problems(), folder.getFileName() + "/"));
    }
    Path result = outputs.get().resolve(Outputs.RESULT);
    if (!Files.isRegularFile(result)) {
      return none("there is no result.json; its check was left out, failed or comes later");
    }
    Instant written = Files.getLastModifiedTime(result).toInstant();
    if (written.isBefore(started.truncatedTo(ChronoUnit.SECONDS))) {
      return none("result.json is older than this build, so it was not checked in it");
    }
    byte[] bytes = Files.readAllBytes(result);
    try {
      CheckedBox box = CheckedBox.read(bytes);
      List<String> why = why(box, built, bytes);
      String report = relative(index, outputs.get().resolve(Outputs.PROOF_REPORT));
      return why.isEmpty()
          ? new ProofIndex.Entry(module, report, Optional.of(box), List.of())
          : none(why);
    } catch (IllegalArgumentException e) {
      return none("result.json cannot be read as a result: " + e.getMessage());
    }
  }

  private List<String> why(CheckedBox box, BoxBuilder.Built built, byte[] result)
      throws IOException {
    List<String> why = new ArrayList<>();
    if (!box.digests().equals(built.digests())) {
      why.add("the files of the spec are not those that were checked: their SHA-256 are others");
    }
    List<String> ids =
        built.box().orElseThrow().requirements().stream().map(Requirement::id).toList();
    if (!box.name().equals(built.box().get().name())
        || !box.requirements().stream().map(Instance::id).toList().equals(ids)) {
      why.add("result.json is that of another box, or has other requirements");
    }
    Path report = outputs.orElseThrow().resolve(Outputs.PROOF_REPORT);
    byte[] page = ProofReport.checked(result).getBytes(StandardCharsets.UTF_8);
    if (!Files.isRegularFile(report) || !Arrays.equals(Files.readAllBytes(report), page)) {
      why.add("the proof report is not there, or is not that of result.json");
    }
    return why;
  }

  private static String relative(Path from, Path to) {
    Path relative = from.toAbsolutePath().normalize().relativize(to.toAbsolutePath().normalize());
    return relative.toString().replace(File.separatorChar, '/');
  }

  private ProofIndex.Entry none(String why) {
    return none(List.of(why));
  }

  private ProofIndex.Entry none(List<String> why) {
    return new ProofIndex.Entry(module, "", Optional.empty(), why);
  }
}
