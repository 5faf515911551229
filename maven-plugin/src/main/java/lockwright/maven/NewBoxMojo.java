package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Writes the starter files of a new box into the current folder: a small invented junction, whose
 * check is green, with comments that say how to write one's own over it. Nothing is overwritten.
 */
@Mojo(name = "new-box", requiresProject = false, threadSafe = true)
public class NewBoxMojo extends AbstractMojo {
  @Parameter(defaultValue = "${basedir}", readonly = true, required = true)
  File basedir;

  /** The version of this plugin, for the written pom.xml. */
  @Parameter(defaultValue = "${plugin.version}", readonly = true, required = true)
  String version;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    Path folder = basedir.toPath();
    try {
      Starter starter = Starter.ofVersion(version);
      List<String> inTheWay = starter.inTheWay(folder);
      if (!inTheWay.isEmpty()) {
        throw new MojoFailureException(
            "nothing was written, for these are in the way: " + String.join(", ", inTheWay));
      }
      starter.write(folder);
      starter.files().keySet().forEach(name -> getLog().info("written: " + name));
      getLog().info("next: mvn verify; then write your own box over the one in box/");
      getLog().info("the box is invented; an aid for checking written rules, not locking data");
    } catch (IOException e) {
      throw new MojoExecutionException("nothing was written: " + e.getMessage(), e);
    }
  }
}
