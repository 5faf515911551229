package lockwright.report.lesson;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Predicate;
import lockwright.check.Check;
import lockwright.proof.Knowledge;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;

/** A box, its result, and the lessons made of it. */
record Taught(Findings findings, byte[] result, SortedMap<String, String> pages) {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Path TESTS = Path.of("src", "test", "resources", "boxes");

  /** An example that is broken, by the name of its folder. */
  static Taught broken(String example) {
    return of(BoxBuilder.read(EXAMPLES.resolve("broken").resolve(example).resolve("box")), e -> false);
  }

  /** A box of the tests without some entries of its locking table. */
  static Taught without(String box, String... entries) {
    return of(BoxBuilder.read(TESTS.resolve(box)), e -> List.of(entries).contains(e));
  }

  static Taught of(Findings findings) {
    byte[] result = ResultJson.bytes(findings);
    return new Taught(findings, result, Lessons.of(findings, result));
  }

  private static Taught of(BoxBuilder.Built built, Predicate<String> leftOut) {
    Box read = built.box().orElseThrow();
    Box box =
        read.withLocking(
            read.locking().stream().filter(e -> !leftOut.test(e.words())).toList());
    try {
      Findings findings =
          new Check(Limits.usual(), (job, progress) -> search(job), text -> {})
              .run(box, built.digests());
      return of(findings);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static Found search(Job job) {
    Knowledge known = job.run(progress -> {});
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }
}
