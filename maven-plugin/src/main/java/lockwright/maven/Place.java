package lockwright.maven;

import java.io.File;
import java.nio.file.Files;
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

  /**
   * The folder as code hosts name it: from the folder above that has the repository, or else from
   * the base folder; with slashes, and one at its end; empty for that folder itself.
   */
  static String inRepository(File box, File basedir) {
    Path base = basedir.toPath().toAbsolutePath().normalize();
    Path root = base;
    for (Path above = base; above != null; above = above.getParent()) {
      if (Files.exists(above.resolve(".git"))) {
        root = above;
        break;
      }
    }
    Path path = box.toPath().toAbsolutePath().normalize();
    boolean same = path.getRoot() != null && path.getRoot().equals(root.getRoot());
    String folder = (same ? root.relativize(path) : path.getFileName()).toString();
    return folder.isEmpty() ? "" : folder.replace(File.separatorChar, '/') + "/";
  }
}
