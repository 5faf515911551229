package lockwright.spec;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Specs to read: the two good ones among the test resources, and changed copies of them. */
public final class SpecsOnDisk {
  public static final Path BOXES = Path.of("src", "test", "resources", "boxes");
  public static final Path JUNCTION = BOXES.resolve("e1-junction");
  public static final Path EVERY_FORM = BOXES.resolve("every-form");
  public static final Path REJECTED = Path.of("..", "examples", "rejected");

  private SpecsOnDisk() {}

  /** A copy of a spec in an empty folder. */
  public static Path copy(Path spec, Path into) throws IOException {
    for (Path file : children(spec)) {
      Files.copy(file, into.resolve(file.getFileName()));
    }
    return into;
  }

  /** Writes a file of a spec anew; half of a surrogate pair, which UTF-8 has not, becomes '?'. */
  public static Path write(Path folder, String file, String text) throws IOException {
    Files.write(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8));
    return folder;
  }

  /** Changes the one place in a file where a text stands. */
  public static Path change(Path folder, String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    if (text.split(Pattern.quote(from), -1).length != 2) {
      throw new IllegalArgumentException(from + " does not stand once in " + file);
    }
    return write(folder, file, text.replace(from, to));
  }

  public static List<Path> children(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.sorted().toList();
    }
  }

  /** The problems as "CODE file:line:column". */
  public static List<String> places(List<Problem> problems) {
    return problems.stream().map(p -> p.code() + " " + p.span()).toList();
  }
}
