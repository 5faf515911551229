package lockwright.report.lesson;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;

/**
 * Names of files: the requirement's name, which is the catalogue's, and a digest of the id, so that
 * nothing that an author has written is in them. The same in every check of the same layout.
 */
final class FileNames {
  private static final int DIGITS = 12;

  private FileNames() {}

  static String of(String requirement, String id) {
    if (!requirement.matches("[a-z]+( [a-z]+)*")) {
      throw new IllegalArgumentException("no requirement of the catalogue: " + requirement);
    }
    return requirement.replace(' ', '-').toLowerCase(Locale.ROOT) + "-" + digest(id) + ".html";
  }

  private static String digest(String id) {
    try {
      byte[] sha = MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sha).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
