package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole builds as a user would start them: an example, copied to a place of its own with an awkward
 * path, and {@code mvn verify} there, with the plugin from the repository staged beside this
 * module's output.
 */
class UserBuilds {
  private static final Path EXAMPLES = Path.of("..", "examples").toAbsolutePath().normalize();
  private static final Path REPOSITORY = Path.of("target", "repository").toAbsolutePath();

  @TempDir Path temporary;
  private Path place;

  @BeforeEach
  void a_place_with_an_awkward_path() throws IOException {
    String names = System.getProperty("sun.jnu.encoding");
    boolean umlauts = Charset.forName(names).newEncoder().canEncode('\u00fc');
    place = temporary.resolve(umlauts ? "box #1 f\u00fcr alle" : "box #1 for all");
    Files.createDirectory(place);
  }

  @Test
  void a_copy_of_a_proved_example_is_green() throws Exception {
    copy(EXAMPLES.resolve("proved/corlhaven"), place);
    Build build = verify();
    assertThat(build.log())
        .contains("Corlhaven: 88 requirements of safety proved, 31 possibilities");
    assertThat(build.exitCode()).isZero();
    assertThat(place.resolve("target/lockwright/result.json")).isNotEmptyFile();
  }

  /** From nothing to a proved box, by the commands of the README. */
  @Test
  void a_new_box_in_an_empty_folder_is_green_with_its_table_in_either_form() throws Exception {
    String version = "0.1.0-SNAPSHOT";
    Build written = maven("lockwright:lockwright-maven-plugin:" + version + ":new-box");
    assertThat(written.log()).contains("[INFO] written: pom.xml");
    assertThat(written.exitCode()).isZero();
    assertThat(Files.readString(place.resolve("pom.xml")))
        .contains("<version>" + version + "</version>");
    assertThat(verify().log()).containsPattern("Fennimere: [1-9][0-9]* requirements of safety");
    Build converted = maven("lockwright:convert-table", "verify");
    assertThat(converted.log())
        .contains("[INFO] box/locking.csv is now locking.yaml")
        .containsPattern("Fennimere: [1-9][0-9]* requirements of safety");
    assertThat(converted.exitCode()).isZero();
  }

  @Test
  void two_modules_are_checked_at_once_each_with_its_own_verdict() throws Exception {
    copy(EXAMPLES.resolve("proved/brindlewick"), place.resolve("one"));
    Path example = EXAMPLES.resolve("broken/gates-not-locked");
    copy(example, place.resolve("two"));
    Files.writeString(
        place.resolve("pom.xml"),
        """
        <project>
          <modelVersion>4.0.0</modelVersion>
          <groupId>two</groupId>
          <artifactId>boxes</artifactId>
          <version>1</version>
          <packaging>pom</packaging>
          <modules>
            <module>one</module>
            <module>two</module>
          </modules>
        </project>
        """);
    Build build = verify("-T", "2", "-fae");
    assertThat(build.exitCode()).isEqualTo(1);
    assertThat(build.log())
        .contains(
            "60 requirements of safety proved, 31 possibilities",
            "2 of 91 requirements fail (2 broken)")
        .doesNotContain("not marked @threadSafe");
    assertThat(build.errors())
        .containsAll(Files.readAllLines(example.resolve("expected.txt")).subList(1, 12));
    assertThat(Files.readString(place.resolve("one/target/lockwright/check.txt")))
        .contains("\nnone of 91 requirements fails\n");
    assertThat(Files.readString(place.resolve("two/target/lockwright/check.txt")))
        .contains("\n2 of 91 requirements fail (2 broken)\n");
  }

  /** The last line of a red build is a command, which is run as it stands. */
  @Test
  void from_a_red_build_to_its_lesson_by_the_command_that_it_names() throws Exception {
    copy(EXAMPLES.resolve("broken/gates-not-locked"), place);
    String words = "lessons:  mvn ";
    String command =
        verify().errors().stream()
            .filter(l -> l.startsWith(words))
            .map(l -> l.substring(words.length()).replaceFirst(" -> \\[Help 1\\]$", ""))
            .findFirst()
            .orElseThrow();
    assertThat(command).isEqualTo("lockwright:lessons@check");
    Build lessons = maven(command.split(" "));
    assertThat(lessons.exitCode()).isZero();
    assertThat(Files.readString(place.resolve("target/lockwright/lessons/index.html")))
        .contains("route held: route 20 to up line");
  }

  /** What a build said and how it ended. */
  private record Build(String log, int exitCode) {
    List<String> errors() {
      return log.lines()
          .filter(l -> l.startsWith("[ERROR] "))
          .map(l -> l.substring("[ERROR] ".length()))
          .toList();
    }
  }

  private Build verify(String... options) throws IOException, InterruptedException {
    List<String> arguments = new ArrayList<>(List.of(options));
    arguments.add("verify");
    return maven(arguments.toArray(String[]::new));
  }

  private Build maven(String... arguments) throws IOException, InterruptedException {
    boolean windows = File.separatorChar == '\\';
    List<String> command = new ArrayList<>();
    command.add(
        Path.of(System.getProperty("maven.home"), "bin", windows ? "mvn.cmd" : "mvn").toString());
    command.addAll(List.of("-B", "-ntp", "-gs", settings().toString()));
    command.add("-Dmaven.repo.local=" + REPOSITORY);
    command.addAll(List.of(arguments));
    Path log = temporary.resolve("log.txt");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(place.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("MAVEN_OPTS", "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC");
    int exitCode = builder.start().waitFor();
    return new Build(Files.readString(log, StandardCharsets.UTF_8), exitCode);
  }

  /** What the build around this test has downloaded is not downloaded again. */
  private Path settings() throws IOException {
    String url = Path.of(System.getProperty("downloaded")).toUri().toString();
    String text = Files.readString(EXAMPLES.resolve("settings.xml"));
    Path settings = temporary.resolve("settings.xml");
    return Files.writeString(settings, text.replace("@localRepositoryUrl@", url));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Path relative = from.relativize(path);
        if (!relative.startsWith("target")) {
          Path copied = to.resolve(relative.toString());
          if (Files.isDirectory(path)) {
            Files.createDirectories(copied);
          } else {
            Files.copy(path, copied);
          }
        }
      }
    }
  }
}
