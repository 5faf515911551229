package lockwright.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lockwright.system.Clause;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Children with the real solver: what they answer, and what is left of them when they are killed.
 */
@Timeout(120)
class ChildrenTest {
  private static final Consumer<String> DEAF = words -> {};

  @TempDir private Path within;
  private Children children = real(Command::write, 20);

  @AfterEach
  void end() throws IOException {
    List<ProcessHandle> last = children.handles();
    children.endAll();
    assertThat(last).allMatch(Processes::isGone);
    assertThat(folders(within)).isEmpty();
  }

  @Test
  void the_verdicts_are_right_and_one_child_serves_job_after_job() throws Exception {
    Job hard = new Job(HandMade.withFarTarget(), new Limits(3, 0, 16));
    Found found = children.search(hard, within, DEAF);
    List<ProcessHandle> first = children.handles();

    assertThat(found.verdicts().keySet()).containsExactly("off over normal points", "off", "far");
    assertThat(found.verdicts().get("far")).isInstanceOf(Verdict.Unknown.class);
    assertThat(found.verdicts().get("off over normal points")).isInstanceOf(Verdict.Never.class);
    assertThat(found.verdicts().get("off")).isInstanceOf(Verdict.Reached.class);
    assertThat(found.decidedBy().keySet())
        .containsExactlyInAnyOrder("off over normal points", "off");
    assertThat(found.solver()).startsWith("Z3 4.");

    assertRight(children.search(easy(), within, DEAF));
    assertThat(first).hasSize(1);
    assertThat(children.handles()).isEqualTo(first);
    assertThat(folders(within)).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a b #1", "\u00fc", "$HOME \\ 50%20 of 'it' @x"})
  void a_folder_may_have_any_name(String name) throws Exception {
    assumeTrue(
        Charset.forName(System.getProperty("sun.jnu.encoding")).newEncoder().canEncode(name));
    assumeTrue(OS.WINDOWS != OS.current() || !name.contains("\\"));
    assertRight(children.search(easy(), within.resolve(name), DEAF));
    children.endAll();
    assertThat(folders(within.resolve(name))).isEmpty();
    Files.delete(within.resolve(name));
  }

  @Test
  void what_others_print_to_the_same_output_does_not_disturb() throws Exception {
    children = real(folder -> Processes.java(NoisyChild.class), 20);
    for (int i = 0; i < 20; i++) {
      assertRight(children.search(easy(), within, DEAF));
    }
  }

  @ParameterizedTest
  @CsvSource({"KILL, 137, false", "SEGV, '', true"})
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void a_child_killed_at_work_leaves_its_job_unknown(String signal, String code, boolean told)
      throws Exception {
    AtomicReference<ProcessHandle> child = new AtomicReference<>();
    Found found = children.search(endless(60), within, words -> onFirstWords(child, signal));

    assertThat(child.get()).isNotNull().matches(Processes::isGone);
    assertThat(found.verdicts().values())
        .hasSize(3)
        .allMatch(
            v ->
                v instanceof Verdict.Unknown unknown
                    && unknown.reason().contains("ended with exit code " + code));
    assertThat(Files.exists(within.resolve("solver-crash.log"))).isEqualTo(told);
    assertRight(children.search(easy(), within, DEAF));
    assertThat(children.handles()).hasSize(1).doesNotContain(child.get());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void a_stopped_child_is_ended_when_the_time_is_over() throws Exception {
    children = real(Command::write, 1);
    AtomicReference<ProcessHandle> child = new AtomicReference<>();
    List<Boolean> stopped = new ArrayList<>();
    long start = System.nanoTime();
    Found found =
        children.search(
            endless(1),
            within,
            words -> {
              onFirstWords(child, "STOP");
              stopped.add(isStopped(child.get()));
            });

    assertThat(stopped).isNotEmpty().contains(true);
    assertThat(found.verdicts().values())
        .hasSize(3)
        .allMatch(new Verdict.Unknown("limit met: the time for the search is over")::equals);
    assertThat(child.get()).matches(Processes::isGone);
    assertThat((System.nanoTime() - start) / 1_000_000_000L).isLessThan(30);
    assertRight(children.search(easy(), within, DEAF));
  }

  @Test
  void where_the_natives_cannot_be_unpacked_the_machine_is_unfit() throws Exception {
    String missing = within.resolve("missing").toString();
    children =
        real(
            folder -> {
              List<String> command = Processes.java(Child.class);
              command.add(1, "-Djava.io.tmpdir=" + missing);
              return command;
            },
            20);
    assertThat(Path.of(missing)).doesNotExist();
    assertThatThrownBy(() -> children.search(easy(), within, DEAF))
        .isInstanceOf(UnfitMachine.class)
        .hasMessageContaining(missing)
        .hasMessageContaining("allow it");
    assertThat(children.handles()).isEmpty();
  }

  private static Children real(Children.Launch launch, int grace) {
    return new Children(new Children.Rules(launch, 60, grace, 2));
  }

  private static Job easy() {
    return new Job(HandMade.signalOverPoints(), new Limits(60, 0, 16));
  }

  private static Job endless(int seconds) {
    return new Job(HandMade.withFarTarget(), new Limits(seconds, 0, 1_000_000));
  }

  private void onFirstWords(AtomicReference<ProcessHandle> child, String signal) {
    if (child.get() == null) {
      child.set(children.handles().get(0));
      try {
        Processes.signal(child.get(), signal);
      } catch (Exception e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static boolean isStopped(ProcessHandle child) {
    try {
      return Processes.within(5, () -> Processes.isStopped(child));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Worked out by hand: see {@link HandMade#signalOverPoints}. The certificate, state by state. */
  private static void assertRight(Found found) {
    assertThat(found.verdicts().keySet()).containsExactly("off over normal points", "off");
    assertThat(found.verdicts().get("off"))
        .isEqualTo(new Verdict.Reached(new Trace(List.of(0, 0), List.of(0, 2)), true));
    assertThat(found.verdicts().get("off over normal points"))
        .isInstanceOfSatisfying(Verdict.Never.class, never -> assertProves(never.certificate()));
  }

  private static void assertProves(List<Clause> certificate) {
    TransitionSystem system = HandMade.signalOverPoints();
    for (int[] state : new int[][] {{0, 0}, {0, 1}, {1, 0}, {1, 1}}) {
      boolean within = certificate.stream().allMatch(c -> c.holds(state));
      if (system.initial().holds(state)) {
        assertThat(within).isTrue();
      }
      if (within) {
        assertThat(system.targets().get(0).states().holds(state)).isFalse();
        assertThat(system.transitions())
            .filteredOn(t -> t.guard().holds(state))
            .allMatch(t -> certificate.stream().allMatch(c -> c.holds(t.after(state))));
      }
    }
  }

  private static List<Path> folders(Path within) throws IOException {
    try (Stream<Path> all = Files.list(within)) {
      return all.filter(Files::isDirectory).toList();
    }
  }
}
