package lockwright.report.result;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Paths as relative references (RFC 3986). */
public final class RelativeUri {
  private static final String PLAIN =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";

  private RelativeUri() {}

  /** The path with slashes, with all but unreserved characters and slashes as octets. */
  public static String of(String path) {
    StringBuilder uri = new StringBuilder();
    for (byte octet : path.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (octet & 0xff);
      if (PLAIN.indexOf(c) >= 0) {
        uri.append(c);
      } else {
        uri.append('%').append(HexFormat.of().withUpperCase().toHexDigits(octet));
      }
    }
    return uri.toString();
  }
}
