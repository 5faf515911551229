package lockwright.spec;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The text of one file of a spec.
 *
 * @param name its name in the folder
 * @param digest SHA-256 of the very bytes that the text was decoded from, in hexadecimal
 * @param text without a byte order mark; empty if the bytes are no text that can be read
 */
record SourceFile(String name, String digest, Optional<String> text) {
  static final int MOST_BYTES = 1_000_000;

  /**
   * Reads a file; empty, with a problem, if it is not a regular file or too large.
   *
   * @throws UncheckedIOException if the file system fails, which is no fault of the spec
   */
  static Optional<SourceFile> read(Path folder, String name, Problems problems) {
    Path path = folder.resolve(name);
    Span start = new Span(name, 1, 1);
    try {
      if (!Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
          .isRegularFile()) {
        problems.add(
            Message.NOT_A_REGULAR_FILE,
            start,
            name + " is a link, a folder or a device, not a file",
            "put the file itself into the folder of the spec");
        return Optional.empty();
      }
      byte[] bytes;
      try (InputStream in = Files.newInputStream(path, LinkOption.NOFOLLOW_LINKS)) {
        bytes = in.readNBytes(MOST_BYTES + 1);
      }
      if (bytes.length > MOST_BYTES) {
        problems.add(
            Message.FILE_TOO_LARGE,
            start,
            name + " is larger than the limit of " + MOST_BYTES + " bytes",
            "make it smaller; a spec describes one signal box");
        return Optional.empty();
      }
      return Optional.of(new SourceFile(name, sha256(bytes), decode(name, bytes, problems)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name, e);
    }
  }

  private static Optional<String> decode(String name, byte[] bytes, Problems problems) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CharBuffer chars = CharBuffer.allocate(bytes.length);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = decoder.decode(in, chars, true);
    String text = chars.flip().toString();
    boolean mark = text.startsWith("\uFEFF");
    Written all = new Written(mark ? text.substring(1) : text, new Span(name, 1, 1), true);
    if (result.isError()) {
      problems.add(
          Message.NOT_UTF_8,
          all.placeOf(all.text().length()),
          "the byte after the first " + in.position() + " bytes of the file is not UTF-8 text",
          "save the file as UTF-8; in a spreadsheet choose 'CSV UTF-8', or 'Unicode (UTF-8)' as the"
              + " character set, when saving");
      return Optional.empty();
    }
    OptionalInt refused = Characters.firstRefused(all.text());
    if (refused.isPresent()) {
      int index = refused.getAsInt();
      Characters.report(all.text(), index, all.placeOf(index), problems);
      return Optional.empty();
    }
    return Optional.of(all.text());
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
