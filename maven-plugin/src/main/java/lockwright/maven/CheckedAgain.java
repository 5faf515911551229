package lockwright.maven;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.check.Recheck;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.teaching.Teaching;
import lockwright.report.Expectations;
import lockwright.report.text.Rejection;
import org.apache.maven.plugin.MojoFailureException;

/**
 * A result.json of an earlier check, checked again on the files as they are now.
 *
 * @param name of the box, or of its folder where it cannot be read
 * @param digests of the files as they are now
 * @param teaching what the trainer has written for lessons; nothing, if the files cannot be read
 * @param result the bytes of the result; none, if it is not there
 */
record CheckedAgain(
    String name,
    SortedMap<String, String> digests,
    Teaching teaching,
    byte[] result,
    Recheck.Outcome outcome) {
  private static final byte[] NONE = {};

  /**
   * Reads the box and the result, and checks.
   *
   * @param shown the folder of the box, as it is named to the user
   * @param date the date of the build; null if none is given
   */
  static CheckedAgain of(File box, String shown, Path result, String date) throws IOException {
    if (!Files.isDirectory(box.toPath())) {
      return refused(shown, new TreeMap<>(), List.of("there is no folder " + shown));
    }
    BoxBuilder.Built built = BoxBuilder.read(box.toPath());
    SortedMap<String, String> digests = built.digests();
    if (built.box().isEmpty()) {
      return refused(shown, digests, Rejection.summary(built.problems(), shown));
    }
    Box read = built.box().get();
    if (!Files.isRegularFile(result)) {
      String why = "there is no " + result.getFileName() + " of it; a check writes one: mvn verify";
      return refused(read.name(), digests, List.of(why));
    }
    try {
      Expectations expectations = DateOfBuild.expectations(built.expectations(), date);
      byte[] bytes = Files.readAllBytes(result);
      Recheck.Outcome outcome = Recheck.of(read, digests, expectations, bytes);
      return new CheckedAgain(read.name(), digests, built.teaching(), bytes, outcome);
    } catch (MojoFailureException noDate) {
      return refused(read.name(), digests, List.of(noDate.getMessage()));
    }
  }

  private static CheckedAgain refused(
      String name, SortedMap<String, String> digests, List<String> why) {
    return new CheckedAgain(name, digests, Teaching.NONE, NONE, new Recheck.Outcome.Refused(why));
  }
}
