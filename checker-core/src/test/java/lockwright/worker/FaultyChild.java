package lockwright.worker;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.verdict.Trace;

/**
 * A child with a fault. Whatever its fault, it would have every target proved: so if its answer
 * were taken, it would show. Having put its fault in, it leaves a file of the fault's name beside
 * its folder.
 *
 * <p>Arguments: the fault, the folder, and the secret.
 */
final class FaultyChild {
  enum Fault {
    NONE,
    ENDS_BEFORE_READY,
    UNFIT,
    SILENT_BEFORE_READY,
    SILENT,
    EXIT_ZERO_WITHOUT_MARK,
    OUTPUT_CLOSED,
    MARK_WITHOUT_ANSWER,
    MARK_OF_WRONG_DIGEST,
    MARK_OF_ANOTHER_NUMBER,
    MARK_WITHOUT_SECRET,
    TRUNCATED_ANSWER,
    ANSWER_TO_ANOTHER_JOB,
    ANSWER_WITHOUT_A_TARGET,
    ANSWER_WITH_A_TARGET_TWICE,
    ANSWER_OF_TWO_VERDICTS,
    ANSWER_WITHOUT_ITS_CERTIFICATE,
    ANSWER_WITH_MORE_AFTER_IT,
    ANSWER_OF_TWO_GIGABYTES,
    GARBAGE,
    LINE_WITHOUT_END,
    TALKS_WHEN_IDLE,
    SLOW
  }

  private static final String PREPARED = "prepared.json";

  private final Fault fault;
  private final Path folder;
  private final String secret;
  private final OutputStream out = new FileOutputStream(FileDescriptor.out);

  private FaultyChild(Fault fault, Path folder, String secret) {
    this.fault = fault;
    this.folder = folder;
    this.secret = secret;
  }

  public static void main(String[] arguments) throws Exception {
    new FaultyChild(Fault.valueOf(arguments[0]), Path.of(arguments[1]), arguments[2]).serve();
  }

  private void serve() throws Exception {
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    switch (fault) {
      case ENDS_BEFORE_READY -> {
        System.err.println("no such option");
        putIn();
        System.exit(1);
      }
      case UNFIT -> {
        putIn();
        say(secret + " unfit java.lang.UnsatisfiedLinkError: libz3java");
      }
      case SILENT_BEFORE_READY -> putIn();
      default -> say(secret + " ready none");
    }
    String line;
    while ((line = in.readLine()) != null) {
      String[] words = line.split(" ");
      answer(words[1], words[2]);
    }
  }

  private void answer(String number, String digest) throws Exception {
    Path file = folder.resolve("answer-" + number + ".json");
    String done = secret + " done " + number + " ";
    switch (fault) {
      case NONE -> say(done + write(file));
      case SILENT -> {
        write(file);
        putIn();
      }
      case EXIT_ZERO_WITHOUT_MARK -> {
        write(file);
        putIn();
        System.exit(0);
      }
      case OUTPUT_CLOSED -> {
        write(file);
        putIn();
        out.close();
      }
      case MARK_WITHOUT_ANSWER -> {
        putIn();
        say(done + digest);
      }
      case MARK_OF_WRONG_DIGEST -> {
        write(file);
        putIn();
        say(done + digest);
      }
      case MARK_OF_ANOTHER_NUMBER -> {
        write(file);
        String mark = write(folder.resolve("answer-7.json"));
        putIn();
        say(secret + " done 7 " + mark);
      }
      case MARK_WITHOUT_SECRET -> {
        String mark = " done " + number + " " + write(file);
        say(mark.strip());
        say("00000000-0000-0000-0000-000000000000" + mark);
        say("a copy of " + secret + mark);
        putIn();
        System.exit(0);
      }
      case TRUNCATED_ANSWER -> {
        String mark = write(file);
        try (RandomAccessFile half = new RandomAccessFile(file.toFile(), "rw")) {
          half.setLength(half.length() / 2);
        }
        putIn();
        say(done + mark);
      }
      case ANSWER_TO_ANOTHER_JOB,
          ANSWER_WITHOUT_A_TARGET,
          ANSWER_WITH_A_TARGET_TWICE,
          ANSWER_OF_TWO_VERDICTS,
          ANSWER_WITHOUT_ITS_CERTIFICATE,
          ANSWER_WITH_MORE_AFTER_IT -> {
        String mark = write(file);
        putIn();
        say(done + mark);
      }
      case ANSWER_OF_TWO_GIGABYTES -> {
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
          large.setLength(Integer.MAX_VALUE - 100L);
        }
        putIn();
        say(done + digest);
      }
      case GARBAGE -> {
        byte[] garbage = new byte[1 << 20];
        for (int i = 0; i < garbage.length; i++) {
          garbage[i] = (byte) (i * 31 + i / 251);
        }
        out.write(garbage);
        putIn();
        say(secret + " " + new String(garbage, 0, 300, StandardCharsets.ISO_8859_1));
      }
      case LINE_WITHOUT_END -> {
        byte[] part = new byte[1 << 20];
        Arrays.fill(part, (byte) 'x');
        for (int i = 0; i < 100; i++) {
          out.write(part);
        }
        putIn();
      }
      case TALKS_WHEN_IDLE -> {
        say(done + write(file));
        for (int i = 0; i < 20_000; i++) {
          say(secret + " progress " + number + " still here");
        }
        putIn();
      }
      case SLOW -> {
        say(secret + " progress " + number + " begun");
        Thread.sleep(100);
        say(secret + " progress " + number + " ended");
        say(done + write(file));
      }
      default -> throw new IllegalStateException(fault + " is not of this place");
    }
  }

  /** Writes what was {@linkplain #prepare prepared}, and returns its digest. */
  private String write(Path file) throws Exception {
    byte[] bytes = Files.readAllBytes(folder.resolveSibling(PREPARED));
    Files.write(file, bytes);
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  /**
   * Writes beside the children's folders what they answer to a job: that all is proved, right or
   * with the fault. It is done here, since a process that reads and writes JSON takes long to
   * start.
   */
  static void prepare(Fault fault, Job job, Path within) throws IOException {
    Path file = within.resolve(PREPARED);
    String digest = Wire.write(job, file);
    List<Answer.Told> told = job.system().targets().stream().map(FaultyChild::proved).toList();
    List<List<Clause>> certificates = List.of(List.of());
    String another = digest.replaceAll("[0-9]", "a");
    Answer answer =
        switch (fault) {
          case ANSWER_TO_ANOTHER_JOB -> new Answer(another, "none", certificates, told);
          case ANSWER_WITHOUT_A_TARGET ->
              new Answer(digest, "none", certificates, told.subList(1, 2));
          case ANSWER_WITH_A_TARGET_TWICE ->
              new Answer(digest, "none", certificates, List.of(told.get(0), told.get(0)));
          case ANSWER_WITHOUT_ITS_CERTIFICATE -> new Answer(digest, "none", List.of(), told);
          default -> new Answer(digest, "none", certificates, told);
        };
    Wire.write(answer, file);
    String json = Files.readString(file);
    if (fault == Fault.ANSWER_OF_TWO_VERDICTS) {
      Files.writeString(file, json.replaceFirst("\"reason\":null", "\"reason\":\"none\""));
    } else if (fault == Fault.ANSWER_WITH_MORE_AFTER_IT) {
      Files.writeString(file, json + "{}");
    }
  }

  private static Answer.Told proved(Target target) {
    return new Answer.Told(target.name(), 0, (Trace) null, false, null, "faulty");
  }

  private void putIn() throws IOException {
    Files.writeString(folder.resolveSibling(fault.name()), "");
  }

  private void say(String words) throws IOException {
    out.write(("\n" + words + "\n").getBytes(StandardCharsets.UTF_8));
  }
}
