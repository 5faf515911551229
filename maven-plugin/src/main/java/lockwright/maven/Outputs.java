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

  private static final List<String> ALL =
      List.of(LOG, RESULT, READ_BACK_TEXT, READ_BACK_TABLE, PROOF_REPORT, SARIF, JUNIT, SUMMARY);
  private static final String UNFINISHED = ".unfinished";

  /** The folder, made if it is not there, without what an earlier check left. */
  static Outputs fresh(Path folder) throws IOException {
    Files.createDirectories(folder);
    Outputs outputs = new Outputs(folder);
    for (String name : ALL) {
      outputs.remove(name);
    }
    return outputs;
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
