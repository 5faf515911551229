package lockwright.maven;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import lockwright.report.Shown;

/** Passes progress on to a log, and says where things are when there was none for some seconds. */
final class Heartbeat implements Consumer<String>, AutoCloseable {
  private static final int LONGEST_SILENCE = 6;

  private final Consumer<String> log;
  private final String name;
  private final int silence;
  private final ScheduledExecutorService clock;
  private String last = "the beginning";
  private long said = System.nanoTime();

  Heartbeat(Consumer<String> log, String name) {
    this(log, name, LONGEST_SILENCE);
  }

  /**
   * @param silence seconds without progress after which it speaks, give or take one
   */
  Heartbeat(Consumer<String> log, String name, int silence) {
    this.log = log;
    this.name = name;
    this.silence = silence;
    clock =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, "progress of " + name);
              thread.setDaemon(true);
              return thread;
            });
    clock.scheduleAtFixedRate(this::beat, 1, 1, TimeUnit.SECONDS);
  }

  @Override
  public synchronized void accept(String progress) {
    last = progress;
    say(progress);
  }

  /** Progress that is said only after a silence. */
  synchronized void at(String progress) {
    last = progress;
  }

  private synchronized void beat() {
    if (System.nanoTime() - said >= TimeUnit.SECONDS.toNanos(silence)) {
      say("still at: " + last);
    }
  }

  private void say(String words) {
    log.accept(Shown.line(name + ": " + words));
    said = System.nanoTime();
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
