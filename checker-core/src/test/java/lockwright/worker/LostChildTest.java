package lockwright.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lockwright.verdict.Verdict;
import lockwright.worker.FaultyChild.Fault;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A child that breaks the rules of the talk: its job is unknown, whatever it claims; the next is
 * done.
 */
@Timeout(120)
class LostChildTest {
  private static final Consumer<String> DEAF = words -> {};

  /** Faults that are noticed only when the time is over. */
  private static final Set<Fault> SILENT = EnumSet.of(Fault.SILENT, Fault.SILENT_BEFORE_READY);

  private static final Set<Fault> OTHERS =
      EnumSet.of(
          Fault.NONE, Fault.UNFIT, Fault.LINE_WITHOUT_END, Fault.TALKS_WHEN_IDLE, Fault.SLOW);

  @TempDir private Path within;
  private Children children;

  @AfterEach
  void end() {
    children.endAll();
    assertThat(folders()).isEmpty();
  }

  static Stream<Fault> faultsInTheTalk() {
    return EnumSet.complementOf(EnumSet.copyOf(OTHERS)).stream();
  }

  @ParameterizedTest
  @MethodSource("faultsInTheTalk")
  void the_job_of_a_faulty_child_is_unknown_and_nothing_of_it_is_left(Fault fault)
      throws Exception {
    Job job = job(SILENT.contains(fault) ? 1 : 60);
    children = firstFaulty(fault, SILENT.contains(fault) ? 3 : 60, 2);
    FaultyChild.prepare(fault, job, within);
    List<ProcessHandle> first = new ArrayList<>();

    Found found = searchAndSee(job, first);

    assertThat(within.resolve(fault.name())).exists();
    assertThat(found.verdicts().keySet()).containsExactly("off over normal points", "off");
    assertThat(found.verdicts().values()).allMatch(v -> v instanceof Verdict.Unknown);
    assertThat(first).hasSize(1).allMatch(Processes::isGone);
    assertThat(children.handles()).isEmpty();
    assertThat(folders()).isEmpty();
  }

  @Test
  void a_child_that_does_not_start_says_why() throws Exception {
    children = firstFaulty(Fault.ENDS_BEFORE_READY, 60, 1);
    assertThat(children.search(job(60), within, DEAF).verdicts().get("off"))
        .isEqualTo(
            new Verdict.Unknown(
                "the solver's process ended with exit code 1 before it was ready: no such option"));
  }

  @Test
  void a_stale_answer_of_an_earlier_job_is_not_taken() throws Exception {
    Answer earlier = new Answer("digest of job 1", "none", List.of(), List.of());
    assertThatThrownBy(() -> earlier.found(HandMade.signalOverPoints(), "digest of job 2"))
        .hasMessage("it answers another job");
    children = firstFaulty(Fault.ANSWER_TO_ANOTHER_JOB, 60, 1);
    assertThat(children.search(job(60), within, DEAF).verdicts().get("off"))
        .isEqualTo(
            new Verdict.Unknown(
                "the answer of the solver's process cannot be used: it answers another job"));
  }

  @Test
  void an_unfit_machine_is_told_from_an_undecided_job() throws Exception {
    children = firstFaulty(Fault.UNFIT, 60, 1);
    assertThatThrownBy(() -> children.search(job(60), within, DEAF))
        .isInstanceOf(UnfitMachine.class)
        .hasMessageContaining("UnsatisfiedLinkError: libz3java")
        .hasMessageContaining("glibc 2.34");
    assertThat(within.resolve("UNFIT")).exists();
    assertThat(children.handles()).isEmpty();
  }

  @Test
  void a_line_without_end_takes_no_memory() throws Exception {
    children = firstFaulty(Fault.LINE_WITHOUT_END, 60, 1);
    long before = usedMemory();
    ExecutorService asking = Executors.newSingleThreadExecutor();
    try {
      Future<Found> found = asking.submit(() -> children.search(job(60), within, DEAF));
      assertThat(Processes.within(30, () -> Files.exists(within.resolve("LINE_WITHOUT_END"))))
          .isTrue();
      assertThat(usedMemory() - before).isLessThan(32L << 20);
      children.handles().forEach(ProcessHandle::destroyForcibly);
      assertThat(found.get().verdicts().values()).allMatch(v -> v instanceof Verdict.Unknown);
    } finally {
      asking.shutdownNow();
    }
  }

  @Test
  void a_child_that_talks_without_end_while_idle_is_ended_and_not_used_again() throws Exception {
    children = firstFaulty(Fault.TALKS_WHEN_IDLE, 60, 1);
    children.search(job(60), within, DEAF);
    ProcessHandle idle = children.handles().get(0);
    assertThat(Processes.within(30, () -> children.handles().isEmpty())).isTrue();
    assertThat(children.search(job(60), within, DEAF).verdicts().values())
        .allMatch(v -> v instanceof Verdict.Never);
    assertThat(children.handles()).hasSize(1).doesNotContain(idle);
  }

  @Test
  void an_idle_child_that_died_is_not_used_again() throws Exception {
    children = firstFaulty(Fault.NONE, 60, 1);
    children.search(job(60), within, DEAF);
    ProcessHandle idle = children.handles().get(0);
    idle.destroyForcibly();
    assertThat(Processes.within(10, () -> children.handles().isEmpty())).isTrue();
    assertThat(children.search(job(60), within, DEAF).verdicts().values())
        .allMatch(v -> v instanceof Verdict.Never);
    assertThat(children.handles()).hasSize(1).doesNotContain(idle);
  }

  @Test
  void an_interrupted_question_ends_its_child_and_gives_back_its_permit() throws Exception {
    children = firstFaulty(Fault.SILENT, 60, 1);
    List<Throwable> thrown = new ArrayList<>();
    Thread asking =
        new Thread(
            () -> {
              try {
                children.search(job(60), within, DEAF);
              } catch (Exception e) {
                thrown.add(e);
              }
            });
    asking.start();
    assertThat(Processes.within(30, () -> Files.exists(within.resolve("SILENT")))).isTrue();
    ProcessHandle child = children.handles().get(0);
    asking.interrupt();
    asking.join(10_000);
    assertThat(thrown).hasSize(1).hasOnlyElementsOfType(InterruptedException.class);
    assertThat(child).matches(Processes::isGone);
    assertThat(folders()).isEmpty();
    assertThat(children.search(job(60), within, DEAF).verdicts().values())
        .allMatch(v -> v instanceof Verdict.Never);
  }

  @Test
  void a_listener_that_fails_ends_the_child_and_gives_back_the_permit() throws Exception {
    children = firstFaulty(Fault.SLOW, 60, 1);
    Consumer<String> failing =
        words -> {
          throw new IllegalStateException("will not listen to: " + words);
        };
    assertThatThrownBy(() -> children.search(job(60), within, failing))
        .hasMessage("will not listen to: begun");
    assertThat(children.handles()).isEmpty();
    assertThat(children.search(job(60), within, DEAF).verdicts().values())
        .allMatch(v -> v instanceof Verdict.Never);
  }

  @ParameterizedTest
  @EnumSource(names = {"SLOW", "EXIT_ZERO_WITHOUT_MARK"})
  void of_many_questions_all_are_answered_and_few_at_once(Fault fault) throws Exception {
    int most = 2;
    FaultyChild.prepare(fault, job(60), within);
    children = new Children(new Children.Rules(folder -> command(fault), 60, 2, most));
    AtomicInteger atWork = new AtomicInteger();
    AtomicInteger seen = new AtomicInteger();
    Consumer<String> count =
        words -> {
          int now = words.equals("begun") ? atWork.incrementAndGet() : atWork.decrementAndGet();
          seen.accumulateAndGet(Math.max(now, children.handles().size()), Math::max);
        };
    ExecutorService asking = Executors.newFixedThreadPool(8);
    try {
      List<Future<Found>> all = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        all.add(asking.submit(() -> children.search(job(60), within, count)));
      }
      for (Future<Found> one : all) {
        assertThat(one.get().verdicts().values())
            .allMatch(v -> fault == Fault.SLOW == v instanceof Verdict.Never);
      }
    } finally {
      asking.shutdownNow();
    }
    assertThat(seen.get()).isEqualTo(fault == Fault.SLOW ? most : 0);
    assertThat(children.handles()).hasSize(fault == Fault.SLOW ? most : 0);
  }

  private Found searchAndSee(Job job, List<ProcessHandle> seen) throws Exception {
    ExecutorService asking = Executors.newSingleThreadExecutor();
    try {
      Future<Found> found = asking.submit(() -> children.search(job, within, DEAF));
      Processes.within(
          30,
          () -> {
            seen.addAll(children.handles());
            return !seen.isEmpty() || found.isDone();
          });
      return found.get();
    } finally {
      asking.shutdownNow();
    }
  }

  /** Children of which the first has the fault, and the others have none. */
  private Children firstFaulty(Fault fault, int start, int grace) throws IOException {
    FaultyChild.prepare(fault, job(60), within);
    AtomicInteger started = new AtomicInteger();
    return new Children(
        new Children.Rules(
            folder -> command(started.getAndIncrement() == 0 ? fault : Fault.NONE),
            start,
            grace,
            1));
  }

  private static List<String> command(Fault fault) {
    return Processes.java(FaultyChild.class, fault.name());
  }

  private static Job job(int seconds) {
    return new Job(HandMade.signalOverPoints(), new Limits(seconds, 0, 16));
  }

  private List<Path> folders() {
    try (Stream<Path> all = Files.list(within)) {
      return all.filter(Files::isDirectory).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static long usedMemory() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
