package lockwright.encode.names;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An invariant, offered as proof: in every state that can be reached, each clause holds, that is at
 * least one fact of it. Nothing is believed of it until it is checked.
 */
public record Certificate(List<List<Fact>> clauses) {
  public Certificate {
    clauses = clauses.stream().map(List::copyOf).toList();
  }

  /** One clause a line, facts joined by " or ". */
  public String text() {
    return clauses.stream()
        .map(c -> c.stream().map(Fact::toString).collect(Collectors.joining(" or ")) + "\n")
        .collect(Collectors.joining());
  }

  /** SHA-256 of {@link #text()} in UTF-8, in lower-case hexadecimal. */
  public String digest() {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(text().getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
