package lockwright.browser;

import java.nio.file.Path;
import java.util.List;

/** Where the examples have written their pages in this build. */
final class Written {
  static final List<String> BOXES =
      List.of(
          "proved/quillby",
          "proved/brindlewick",
          "proved/corlhaven",
          "proved/pellowmere",
          "proved/merrowdyke",
          "expected/thrapwick");

  private static final Path EXAMPLES = Path.of("..");

  private Written() {}

  static Path report(String box) {
    return outputs(box).resolve("proof-report.html");
  }

  static Path lessons(String box) {
    return outputs(box).resolve("lessons").resolve("index.html");
  }

  private static Path outputs(String box) {
    return EXAMPLES
        .resolve(box)
        .resolve("target")
        .resolve("lockwright")
        .toAbsolutePath()
        .normalize();
  }
}
