package lockwright.worker;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import lockwright.system.Term;

/**
 * Jobs and answers as JSON files, each with a digest, so that a torn or foreign file is noticed.
 */
final class Wire {
  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, include = JsonTypeInfo.As.WRAPPER_OBJECT)
  @JsonSubTypes({
    @JsonSubTypes.Type(value = Term.Is.class, name = "is"),
    @JsonSubTypes.Type(value = Term.Not.class, name = "not"),
    @JsonSubTypes.Type(value = Term.And.class, name = "and"),
    @JsonSubTypes.Type(value = Term.Or.class, name = "or")
  })
  private interface TermOnWire {}

  /**
   * Far above any file of this program's; below what would be a danger to the memory of a build.
   */
  private static final long LARGEST = 256L << 20;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addMixIn(Term.class, TermOnWire.class)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
          .build();

  private Wire() {}

  /** Writes the whole file or none, and returns its digest. */
  static String write(Object value, Path file) throws IOException {
    byte[] bytes = MAPPER.writeValueAsBytes(value);
    if (bytes.length > LARGEST) {
      throw new IOException(
          file.getFileName() + " would be of " + bytes.length + " bytes, too large");
    }
    Path half = file.resolveSibling(file.getFileName() + ".part");
    Files.write(half, bytes);
    Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
    return digest(bytes);
  }

  /** Reads a file whose digest must be as said, with all that it should say and no more. */
  static <T> T read(Path file, String digest, Class<T> type) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > LARGEST) {
      throw new IOException(file.getFileName() + " is no file, or too large");
    }
    byte[] bytes = Files.readAllBytes(file);
    if (!digest(bytes).equals(digest)) {
      throw new IOException(file.getFileName() + " is not what was written");
    }
    return MAPPER.readValue(bytes, type);
  }

  static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
