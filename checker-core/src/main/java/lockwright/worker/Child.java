package lockwright.worker;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import lockwright.proof.Knowledge;
import lockwright.solver.z3.Z3Solvers;

/**
 * The main class of a child. It reads lines {@code job NUMBER DIGEST} from standard input, searches
 * what the file {@code job-NUMBER.json} in its folder says, writes {@code answer-NUMBER.json}, and
 * only then says {@code done NUMBER DIGEST}. Each line that it says begins with a secret of this
 * child, so that whatever the solver prints is told from it. It ends when its input does, at once.
 *
 * <p>Arguments: the folder, and the secret.
 */
public final class Child {
  private final Path folder;
  private final String secret;
  private final OutputStream parent = new FileOutputStream(FileDescriptor.out);

  private Child(Path folder, String secret) {
    this.folder = folder;
    this.secret = secret;
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    System.setOut(System.err);
    BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    Thread reader = new Thread(() -> readInto(lines), "input");
    reader.setDaemon(true);
    reader.start();
    new Child(Path.of(arguments[0]), arguments[1]).serve(lines);
  }

  private static void readInto(BlockingQueue<String> lines) {
    try (BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
      String line;
      while ((line = in.readLine()) != null) {
        lines.add(line);
      }
    } catch (IOException e) {
      System.err.println("the input broke: " + e);
    }
    Runtime.getRuntime().halt(0);
  }

  private void serve(BlockingQueue<String> lines) throws IOException, InterruptedException {
    try {
      say("ready " + Z3Solvers.version());
    } catch (LinkageError | RuntimeException e) {
      say("unfit " + oneLine(root(e)));
      return;
    }
    while (true) {
      String[] words = lines.take().split(" ");
      try {
        search(words[1], words[2]);
      } catch (IOException | RuntimeException | Error e) {
        e.printStackTrace();
        say("failed " + words[1] + " " + oneLine(e));
      }
    }
  }

  private void search(String number, String digest) throws IOException {
    Job job = Wire.read(folder.resolve("job-" + number + ".json"), digest, Job.class);
    Knowledge known = job.run(text -> sayProgress(number, text));
    Answer answer = Answer.of(known, digest, "Z3 " + Z3Solvers.version());
    say("done " + number + " " + Wire.write(answer, folder.resolve("answer-" + number + ".json")));
  }

  private void sayProgress(String number, String text) {
    try {
      say("progress " + number + " " + oneLine(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Throwable root(Throwable e) {
    return e.getCause() == null ? e : root(e.getCause());
  }

  private static String oneLine(Object text) {
    String line = text.toString().replaceAll("\\s+", " ");
    return line.length() > 500 ? line.substring(0, 500) : line;
  }

  /** In one write, which a pipe does not mix with what others print to it. */
  private void say(String words) throws IOException {
    parent.write(("\n" + secret + " " + words + "\n").getBytes(StandardCharsets.UTF_8));
  }
}
