package lockwright.maven;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The folder of outputs. A file in it is whole, and of the check that runs or ran last. */
record Outputs(Path folder) {
  static final String LOG = "check.txt";
  static final String RESULT = "result.json";
  static final String READ_BACK_TEXT = "read-back.txt";
  static final String READ_BACK_TABLE = "read-back.csv";
  static final String PROOF_REPORT = "proof-report.html";

  static final String SARIF = "findings.sarif";
  static final String JUNIT = "junit.xml";
  static final String SUMMARY = "summary.md";

  /** Of the goal that looks at all modules; a check of one leaves it alone. */
  static final String INDEX = "index.html";

  /** Of the goal 'testsheet': as text, as a table, and to be printed. */
  static final List<String> TEST_SHEET =
      List.of("test-sheet.txt", "test-sheet.csv", "test-sheet.html");

  private static final List<String> ALL =
      List.of(LOG, RESULT, READ_BACK_TEXT, READ_BACK_TABLE, PROOF_REPORT, SARIF, JUNIT, SUMMARY);
  private static final String LESSONS = "lessons";
  private static final String UNFINISHED = ".unfinished";

  /** The names that the goal 'lessons' gives, whole or unfinished, and no others. */
  private static final Pattern LESSON = Pattern.compile("[a-z][a-z0-9-]*\\.html(\\.unfinished)?");

  /** The folder, made if it is not there, without what an earlier check left. */
  static Outputs fresh(Path folder) throws IOException {
    Files.createDirectories(folder);
    Outputs outputs = new Outputs(folder);
    for (String name : ALL) {
      outputs.remove(name);
    }
    for (String name : TEST_SHEET) {
      outputs.remove(name);
    }
    outputs.removeLessons();
    return outputs;
  }

  /** The folder of lessons, made if it is not there. */
  Outputs lessons() throws IOException {
    return new Outputs(Files.createDirectories(folder.resolve(LESSONS)));
  }

  /** Removes the lessons that an earlier run left, and nothing else that lies beside them. */
  void removeLessons() throws IOException {
    Path lessons = folder.resolve(LESSONS);
    if (!Files.isDirectory(lessons)) {
      return;
    }
    List<Path> left;
    try (Stream<Path> all = Files.list(lessons)) {
      left = all.filter(p -> LESSON.matcher(p.getFileName().toString()).matches()).toList();
    }
    for (Path lesson : left) {
      Files.delete(lesson);
    }
  }

  /** Removes what an earlier run left of a file. */
  void remove(String name) throws IOException {
    Files.deleteIfExists(folder.resolve(name));
    Files.deleteIfExists(folder.resolve(name + UNFINISHED));
  }

  void write(String name, String text) throws IOException {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes a file as a whole or not at all. */
  void write(String name, byte[] content) throws IOException {
    Path unfinished = folder.resolve(name + UNFINISHED);
    try (FileChannel channel =
        FileChannel.open(unfinished, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
    Files.move(unfinished, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
  }
}
