package lockwright.spec;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;

/**
 * Turns the locking table of a folder from CSV into YAML, or back, without losing an entry: the old
 * file goes only when the new one, read back from the disk, has given the same entries.
 */
public final class LockingConversion {
  private static final String UNFINISHED = ".unfinished";

  private LockingConversion() {}

  /**
   * What was done.
   *
   * @param from the file that was there
   * @param to the file that is there now
   * @param lost the comments of the old file, which the new one cannot hold
   */
  public record Done(String from, String to, List<Written> lost) {}

  /** A lock with all that its row says of it. Two tables with the same are the same table. */
  private record Entry(
      String lever,
      String column,
      List<String> others,
      List<String> when,
      boolean holds,
      String note) {}

  /**
   * Writes the other file and removes the one that is there.
   *
   * @param spec the folder, read just now, with one locking table whose form has no problem
   * @throws IOException if the file system fails or something is in the way; the table is then
   *     still in the old file
   */
  public static Done convert(Path folder, SpecFolder spec) throws IOException {
    String from =
        spec.has(SpecFolder.LOCKING_CSV) ? SpecFolder.LOCKING_CSV : SpecFolder.LOCKING_YAML;
    boolean toYaml = from.equals(SpecFolder.LOCKING_CSV);
    String to = toYaml ? SpecFolder.LOCKING_YAML : SpecFolder.LOCKING_CSV;
    if (!spec.isWhole(from) || spec.has(to)) {
      throw new IllegalArgumentException("there must be one locking table, and no problem in it");
    }
    if (Files.exists(folder.resolve(to), LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(to);
    }
    LockingFile table = spec.locking().orElseThrow();
    String text = toYaml ? LockingWriter.yaml(table) : LockingWriter.csv(table);
    Path unfinished = Files.createFile(folder.resolve(to + UNFINISHED));
    List<Written> lost;
    try {
      write(unfinished, text);
      refuseUnlike(table, folder, to);
      String old = unchanged(folder, from, spec);
      lost = toYaml ? List.of() : YamlComments.of(from, old);
    } catch (IOException | RuntimeException e) {
      Files.delete(unfinished);
      throw e;
    }
    Files.move(unfinished, folder.resolve(to), StandardCopyOption.ATOMIC_MOVE);
    Files.delete(folder.resolve(from));
    return new Done(from, to, lost);
  }

  private static void write(Path file, String text) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  /** Reads the new table back from the disk, and stops unless it gives the same entries. */
  private static void refuseUnlike(LockingFile table, Path folder, String to) throws IOException {
    Problems problems = new Problems();
    Optional<LockingFile> back =
        SourceFile.read(folder, to + UNFINISHED, problems)
            .flatMap(SourceFile::text)
            .flatMap(text -> LockingReader.read(to, text, problems));
    if (!problems.isEmpty()
        || !back.map(LockingConversion::entries).equals(Optional.of(entries(table)))) {
      throw new IOException(
          to
              + " would not give the same entries when read back"
              + problems.sorted().stream()
                  .findFirst()
                  .map(p -> ": " + p.code() + " " + p.what())
                  .orElse(""));
    }
  }

  private static List<Entry> entries(LockingFile table) {
    return table.rows().stream()
        .flatMap(row -> row.locks().stream().map(lock -> entry(row, lock)))
        .toList();
  }

  private static Entry entry(LockingFile.Row row, LockingFile.Lock lock) {
    return new Entry(
        row.lever().text(),
        lock.column(),
        lock.others().stream().map(Written::text).toList(),
        row.when().stream().map(c -> c.lever() + " " + c.position()).toList(),
        row.holds(),
        row.note());
  }

  /** The text of the old file, if it still is what was read. */
  private static String unchanged(Path folder, String from, SpecFolder spec) throws IOException {
    return SourceFile.read(folder, from, new Problems())
        .filter(file -> file.digest().equals(spec.digests().get(from)))
        .flatMap(SourceFile::text)
        .orElseThrow(() -> new IOException(from + " was changed while it was converted"));
  }
}
