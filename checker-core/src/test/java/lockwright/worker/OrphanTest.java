package lockwright.worker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What is left when the build itself is killed, and in which folders no child can be started. */
@Timeout(120)
class OrphanTest {
  @TempDir private Path place;

  @Test
  void a_child_ends_with_a_killed_build_and_the_next_build_sweeps_its_folder() throws Exception {
    assertEndsWith(Process::destroyForcibly);
    Path within = place.resolve("within");
    assertThat(list(within)).hasSize(1);

    Path next = Folders.create(within);

    assertThat(list(within)).containsExactly(next);
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void a_build_that_is_asked_to_end_takes_its_children_and_their_folders_with_it()
      throws Exception {
    assertEndsWith(Process::destroy);
    assertThat(list(place.resolve("within"))).isEmpty();
  }

  @Test
  void only_folders_of_builds_that_are_no_more_are_swept() throws Exception {
    Process ended = new ProcessBuilder(Processes.java(FaultyChild.class)).start();
    ended.waitFor();
    String old = "solver-" + ended.pid();
    Files.createDirectories(place.resolve(old + "-1/deep/er"));
    Files.writeString(place.resolve(old + "-1/deep/file"), "left");
    for (String name : List.of("solver-", "solver-x-1", old + "-notes", "solver-crash.log")) {
      Files.createDirectory(place.resolve(name));
    }
    Files.writeString(place.resolve(old + "-2"), "a file");
    Path own = Folders.create(place);

    assertThat(place.resolve(old + "-1")).doesNotExist();
    assertThat(list(place)).hasSize(6).contains(own, place.resolve(old + "-2"));
    Folders.create(place);
    assertThat(own).exists();
  }

  /**
   * Where the locale is plain C, Java sees such a folder in a listing, but cannot write its name.
   */
  @Test
  @EnabledOnOs(OS.LINUX)
  void a_name_that_the_locale_cannot_write_is_said_to_be_so() throws Exception {
    makeFolderNamed("\u00fc");
    ProcessBuilder builder = new ProcessBuilder(Processes.java(Asking.class, place.toString()));
    builder.environment().put("LC_ALL", "C");
    Process asking = builder.redirectErrorStream(true).start();
    String said = new String(asking.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    assertThat(said)
        .startsWith("no child: the path ")
        .contains("set LC_ALL to one of UTF-8")
        .doesNotContain("\tat ");
  }

  private interface Ending {
    void end(Process parent);
  }

  private void assertEndsWith(Ending ending) throws Exception {
    Path within = Files.createDirectory(place.resolve("within"));
    Process parent =
        new ProcessBuilder(Processes.java(Asking.class, place.toString()))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    ProcessHandle child = null;
    try {
      BufferedReader said =
          new BufferedReader(
              new InputStreamReader(parent.getInputStream(), StandardCharsets.UTF_8));
      String line = said.readLine();
      assertThat(line).startsWith("child ");
      child = ProcessHandle.of(Long.parseLong(line.substring("child ".length()))).orElseThrow();
      assertThat(list(within)).hasSize(1);

      ending.end(parent);

      assertThat(parent.waitFor(30, TimeUnit.SECONDS)).isTrue();
      ProcessHandle gone = child;
      assertThat(Processes.within(5, () -> Processes.isGone(gone))).isTrue();
    } finally {
      parent.destroyForcibly();
      if (child != null) {
        child.destroyForcibly();
      }
    }
  }

  /** By the shell, as this Java may not be able to. */
  private void makeFolderNamed(String name) throws Exception {
    StringBuilder octal = new StringBuilder();
    for (byte one : name.getBytes(StandardCharsets.UTF_8)) {
      octal.append('\\').append(Integer.toOctalString(one & 0xff));
    }
    ProcessBuilder shell = new ProcessBuilder("sh", "-c", "mkdir \"$(printf '" + octal + "')\"");
    assertThat(shell.directory(place.toFile()).start().waitFor()).isZero();
    assertThat(list(place)).hasSize(1);
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }
}
