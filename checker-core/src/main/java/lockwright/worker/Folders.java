package lockwright.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The folders of children: {@code solver-PARENT-NUMBER}, by the process id of the parent. */
final class Folders {
  private static final Pattern NAME = Pattern.compile("solver-([0-9]{1,18})-[0-9]+");

  private Folders() {}

  /** A new folder for one child, for its owner alone. Takes away those whose parent is no more. */
  static Path create(Path within) throws IOException {
    Files.createDirectories(within);
    try (DirectoryStream<Path> old = Files.newDirectoryStream(within, Folders::isLeft)) {
      old.forEach(Folders::delete);
    }
    return Files.createTempDirectory(within, "solver-" + ProcessHandle.current().pid() + "-");
  }

  private static boolean isLeft(Path path) {
    Matcher name = NAME.matcher(path.getFileName().toString());
    return name.matches()
        && Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
        && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
  }

  /**
   * Deletes a file, or a folder and what is in it, as far as it can be; the next build tries again.
   */
  static void delete(Path path) {
    List<Path> deepestFirst = List.of();
    try (Stream<Path> all = Files.walk(path)) {
      deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
    } catch (IOException | UncheckedIOException e) {
      // It is gone already, or not ours to read.
    }
    for (Path one : deepestFirst) {
      try {
        Files.deleteIfExists(one);
      } catch (IOException e) {
        // Left for the next build.
      }
    }
  }
}
