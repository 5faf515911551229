package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.audit.EntryVerdict;
import lockwright.proof.Knowledge;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.report.Findings;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.worker.UnfitMachine;

/** The boxes of the examples and of the tests, and the flow on them in this process. */
final class Boxes {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Path TESTS = Path.of("src", "test", "resources", "boxes");

  private Boxes() {}

  static Box example(String folder) {
    return read(EXAMPLES.resolve(folder).resolve("box"));
  }

  static Box test(String folder) {
    return read(TESTS.resolve(folder));
  }

  static Box read(Path folder) {
    BoxBuilder.Built built = BoxBuilder.read(folder);
    assertThat(built.problems()).as(folder.toString()).isEmpty();
    return built.box().orElseThrow();
  }

  /** The folders of every box that is proved or broken, of examples and tests. */
  static List<Path> all() throws IOException {
    try (Stream<Path> examples = Files.walk(EXAMPLES, 4);
        Stream<Path> tests = Files.walk(TESTS, 2)) {
      return Stream.concat(examples, tests)
          .filter(p -> p.getFileName().toString().equals("plan.yaml"))
          .map(Path::getParent)
          .filter(p -> !p.toString().contains("rejected") && !p.toString().contains("target"))
          .sorted()
          .toList();
    }
  }

  static Findings check(Box box) {
    return check(box, Limits.usual());
  }

  static Findings check(Box box, Limits limits) {
    try {
      return new Check(limits, (job, progress) -> search(job), progress -> {})
          .run(box, new TreeMap<>());
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  static Found search(Job job) {
    Knowledge known = job.run(progress -> {});
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }

  static Audited of(Findings findings, String requirement) {
    return findings.audited().stream()
        .filter(a -> a.requirement().id().equals(requirement))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no requirement " + requirement));
  }

  /** The keys of the movements by which a requirement is broken, or shown. */
  static List<String> movements(Findings findings, String requirement) {
    Audited audited = of(findings, requirement);
    if (audited instanceof Audited.Broken broken) {
      return broken.played().steps().stream().map(s -> s.event().key()).toList();
    }
    assertThat(audited).as(requirement).isInstanceOf(Audited.Shown.class);
    return ((Audited.Shown) audited).played().steps().stream().map(s -> s.event().key()).toList();
  }

  /** Each entry left out alone. */
  static Findings tried(Findings findings) {
    return tried(findings, Limits.usual(), (job, progress) -> search(job));
  }

  static Findings tried(Findings findings, Limits limits, Searcher searcher) {
    try {
      return new EntryTrials(limits, searcher, progress -> {}).run(findings);
    } catch (IOException | InterruptedException | UnfitMachine e) {
      throw new IllegalStateException(e);
    }
  }

  static EntryVerdict entry(Findings findings, String entry) {
    return findings.entries().verdicts().stream()
        .filter(v -> v.entry().words().equals(entry))
        .findFirst()
        .orElseThrow();
  }
}
