package lockwright.maven;

import java.io.File;
import java.nio.file.Path;

/** How the folder of a spec is named to the user. */
final class Place {
  private Place() {}

  /** The folder as the user would write it, from the base folder if it is in it. */
  static String shown(File box, File basedir) {
    Path base = basedir.toPath().toAbsolutePath().normalize();
    Path path = box.toPath().toAbsolutePath().normalize();
    Path shown = path.startsWith(base) ? base.relativize(path) : path;
    return shown.toString().replace(File.separatorChar, '/') + "/";
  }
}
