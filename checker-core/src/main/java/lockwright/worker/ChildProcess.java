package lockwright.worker;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** One child, and the talk with it. For one thread at a time. */
final class ChildProcess {
  /** A child that cannot be used: it broke the rules of the talk, ended, or met the limit. */
  static final class Lost extends Exception {
    private static final long serialVersionUID = 1L;

    Lost(String reason) {
      super(reason);
    }
  }

  /** The Java runtime's account of its crash: in the child's folder, then kept beside it. */
  static final String CRASH = "solver-crash.log";

  private static final String LOG = "solver.log";
  private static final String END = "";
  private static final int LONGEST_LINE = 4096;
  private static final int MOST_LINES_WAITING = 10_000;

  /** Options of the user's for other Java programs: a debugger's port, say, or a small heap. */
  private static final List<String> NOT_FOR_CHILDREN =
      List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "_JAVA_OPTIONS", "CLASSPATH");

  private final Path folder;
  private final Process process;
  private final BufferedWriter input;
  private final String secret = UUID.randomUUID().toString();
  private final BlockingQueue<String> said = new LinkedBlockingQueue<>();
  private boolean ready;
  private int jobs;

  /** Starts a child with a new folder of its own. */
  ChildProcess(Path folder, List<String> command) throws IOException {
    this.folder = folder;
    List<String> all = new ArrayList<>(command);
    all.add(Command.text(folder));
    all.add(secret);
    ProcessBuilder builder = new ProcessBuilder(all).redirectError(folder.resolve(LOG).toFile());
    builder.environment().keySet().removeAll(NOT_FOR_CHILDREN);
    process = builder.start();
    input =
        new BufferedWriter(
            new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
    Thread listener = new Thread(this::listen, "solver process " + process.pid());
    listener.setDaemon(true);
    listener.start();
  }

  Process process() {
    return process;
  }

  /** Whether it can be given a job: it lives, has its folder, and says nothing unasked. */
  boolean isFit() {
    return process.isAlive() && Files.isDirectory(folder) && said.isEmpty();
  }

  private void listen() {
    try (Reader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      StringBuilder line = new StringBuilder();
      int character;
      while ((character = out.read()) >= 0) {
        if (character == '\n') {
          hear(line.toString());
          line.setLength(0);
        } else if (line.length() < LONGEST_LINE) {
          line.append((char) character);
        }
      }
    } catch (IOException e) {
      // The child ended; what follows says so.
    }
    said.add(END);
  }

  /** Keeps what the child says; anything else is the solver's, and none of ours. */
  private void hear(String line) {
    if (!line.startsWith(secret + " ")) {
      return;
    }
    if (said.size() >= MOST_LINES_WAITING) {
      process.destroyForcibly();
      return;
    }
    said.add(line.substring(secret.length()).replaceAll("\\p{Cntrl}+", " ").strip());
  }

  /** Waits until the child can work. */
  void awaitReady(int seconds) throws Lost, UnfitMachine, InterruptedException {
    String words =
        next(
            System.nanoTime() + seconds * 1_000_000_000L,
            "the solver's process was not ready after " + seconds + " s");
    if (words.startsWith("unfit ")) {
      throw new UnfitMachine(words.substring("unfit ".length()));
    }
    if (!words.startsWith("ready ")) {
      throw new Lost("the solver's process said '" + words + "' instead of being ready");
    }
    ready = true;
  }

  /** Has a job done. The answer counts only with the mark that it is complete. */
  Found work(Job job, int graceSeconds, Consumer<String> progress)
      throws Lost, IOException, InterruptedException {
    String number = Integer.toString(++jobs);
    long limit =
        System.nanoTime() + ((long) job.limits().seconds() + graceSeconds) * 1_000_000_000L;
    Path question = folder.resolve("job-" + number + ".json");
    String digest = Wire.write(job, question);
    try {
      input.write("job " + number + " " + digest + "\n");
      input.flush();
    } catch (IOException e) {
      throw new Lost("the solver's process ended" + exitCode());
    }
    while (true) {
      String words = next(limit, "limit met: the time for the search is over");
      if (words.startsWith("progress " + number + " ")) {
        progress.accept(words.substring(("progress " + number + " ").length()));
      } else if (words.startsWith("done " + number + " ")) {
        Path file = folder.resolve("answer-" + number + ".json");
        String mark = words.substring(("done " + number + " ").length());
        Found found = read(file, mark, job, digest);
        Folders.delete(file);
        Folders.delete(question);
        return found;
      } else {
        throw new Lost("the solver's process said: " + words);
      }
    }
  }

  /** Whatever is wrong with the answer, the child is lost, and the build is not. */
  private static Found read(Path file, String mark, Job job, String digest) throws Lost {
    try {
      return Wire.read(file, mark, Answer.class).found(job.system(), digest);
    } catch (IOException | RuntimeException e) {
      String why = e instanceof IllegalArgumentException ? ": " + e.getMessage() : "";
      throw new Lost("the answer of the solver's process cannot be used" + why);
    }
  }

  private String next(long limit, String late) throws Lost, InterruptedException {
    String words = said.poll(limit - System.nanoTime(), TimeUnit.NANOSECONDS);
    if (words == null) {
      throw new Lost(late);
    }
    if (words.equals(END)) {
      throw new Lost("the solver's process ended" + exitCode());
    }
    return words;
  }

  private String exitCode() throws InterruptedException {
    if (!process.waitFor(2, TimeUnit.SECONDS)) {
      return "";
    }
    return " with exit code "
        + process.exitValue()
        + (ready ? " before its answer was complete" : " before it was ready" + firstWords());
  }

  /** The first line in the log, which is Java's own complaint if it could not start. */
  private String firstWords() {
    try (InputStream log = Files.newInputStream(folder.resolve(LOG))) {
      String line =
          new String(log.readNBytes(300), StandardCharsets.UTF_8).lines().findFirst().orElse("");
      return line.isEmpty() ? "" : ": " + line.replaceAll("\\p{Cntrl}+", " ");
    } catch (IOException e) {
      return "";
    }
  }

  /**
   * Ends the child, whatever it does, and takes its folder away; what is known of a crash stays.
   */
  void end() {
    process.destroyForcibly();
    boolean interrupted = Thread.interrupted();
    try {
      process.waitFor(5, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      interrupted = true;
    }
    try {
      Files.move(
          folder.resolve(CRASH), folder.resolveSibling(CRASH), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // There was no crash that the Java runtime could tell of.
    }
    Folders.delete(folder);
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
