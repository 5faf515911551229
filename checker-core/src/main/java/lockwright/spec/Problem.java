package lockwright.spec;

import java.util.Comparator;
import java.util.stream.Collectors;

/**
 * A fault of the author's, as data: what is wrong at a place, and what to do about it. Ordered by
 * place. What the author wrote appears in the texts only {@linkplain #quote quoted}.
 *
 * @param code a code of {@link Message}
 */
public record Problem(String code, Span span, String what, String fix)
    implements Comparable<Problem> {
  private static final int MOST_QUOTED = 60;
  private static final Comparator<Problem> BY_PLACE =
      Comparator.comparing(Problem::span)
          .thenComparing(Problem::code)
          .thenComparing(Problem::what)
          .thenComparing(Problem::fix);

  public Problem {
    if (!Message.isCode(code) || what.isBlank() || fix.isBlank()) {
      throw new IllegalArgumentException("no message: " + code + " " + what + " " + fix);
    }
  }

  /** The four lines of the message, each ended by a line feed, the file named as in the span. */
  public String text() {
    return text("");
  }

  /** The same with the file name led by the path of the folder: {@code boxes/alder-fen/}. */
  public String text(String folder) {
    return code
        + " "
        + folder
        + span
        + "\n"
        + "  what: "
        + what
        + "\n"
        + "  fix:  "
        + fix
        + "\n"
        + "  more: docs/messages/"
        + code
        + ".md\n";
  }

  /** Text of the author's for a message: in quotes, cut if long, all but printing ASCII escaped. */
  public static String quote(String written) {
    String cut = written.length() <= MOST_QUOTED ? written : written.substring(0, MOST_QUOTED);
    return cut.chars()
        .mapToObj(c -> c >= ' ' && c <= '~' ? Character.toString(c) : escape(c))
        .collect(Collectors.joining("", "'", cut.length() == written.length() ? "'" : "...'"));
  }

  private static String escape(int c) {
    String hex = Integer.toHexString(c);
    return "\\u" + "0".repeat(4 - hex.length()) + hex;
  }

  @Override
  public int compareTo(Problem other) {
    return BY_PLACE.compare(this, other);
  }
}
