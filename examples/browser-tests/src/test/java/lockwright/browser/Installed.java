package lockwright.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The browser and its driver on this machine. Nothing is ever downloaded.
 *
 * @param chromium the browser
 * @param driver its driver, of the same version
 */
record Installed(Path chromium, Path driver) {
  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

  /** Whether a browser that is not there is a fault: {@code -Dlockwright.browser=required}. */
  static boolean required() {
    String wish = System.getProperty("lockwright.browser", "");
    if (!List.of("", "required").contains(wish)) {
      throw new IllegalArgumentException(
          "lockwright.browser is '" + wish + "': 'required' is what it can be");
    }
    return wish.equals("required");
  }

  /** From {@code -Dlockwright.chromium} and {@code -Dlockwright.chromedriver}, or on the path. */
  static Optional<Installed> find() {
    Optional<Path> chromium = named("lockwright.chromium", BROWSERS);
    Optional<Path> driver = named("lockwright.chromedriver", List.of("chromedriver"));
    return chromium.isPresent() && driver.isPresent()
        ? Optional.of(new Installed(chromium.get(), driver.get()))
        : Optional.empty();
  }

  private static Optional<Path> named(String property, List<String> names) {
    String path = System.getProperty(property, "");
    return path.isEmpty()
        ? names.stream().map(Installed::onThePath).flatMap(Optional::stream).findFirst()
        : Optional.of(Path.of(path)).filter(Files::isExecutable);
  }

  private static Optional<Path> onThePath(String name) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return List.of(path.split(File.pathSeparator)).stream()
        .filter(folder -> !folder.isEmpty())
        .map(folder -> Path.of(folder, name))
        .filter(file -> Files.isRegularFile(file) && Files.isExecutable(file))
        .findFirst();
  }
}
