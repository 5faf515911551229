package lockwright.maven;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecution;

/** The command that runs another goal on the same box, as the user would type it. */
final class Again {
  private Again() {}

  /**
   * Runs the goal with what the build file gives this execution, and with what was given beside it.
   *
   * @param execution the one that runs; null if it is not known
   * @param top the folder in which the build was started; null if it is not known
   * @param date the date of the build; null if none was given
   */
  static String command(
      String goal, MojoExecution execution, File basedir, File top, File box, String date) {
    List<String> words = new ArrayList<>(List.of("mvn"));
    if (top != null && !top.equals(basedir)) {
      words.add("-f");
      words.add(quoted(Place.shown(basedir, top) + "pom.xml"));
    }
    boolean named = execution != null && execution.getSource() == MojoExecution.Source.LIFECYCLE;
    words.add(quoted("lockwright:" + goal + (named ? "@" + execution.getExecutionId() : "")));
    String folder = Place.shown(box, basedir);
    if (!folder.equals("box/")) {
      words.add(quoted("-Dlockwright.box=" + folder));
    }
    if (date != null) {
      words.add(quoted("-Dlockwright.date=" + date));
    }
    return String.join(" ", words);
  }

  private static String quoted(String word) {
    return word.matches("[A-Za-z0-9._/=:@-]+") ? word : '"' + word + '"';
  }
}
