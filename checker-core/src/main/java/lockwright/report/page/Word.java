package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;

/** A verdict on the page: its word and its sign, so that it does not depend on colour. */
enum Word {
  PROVED("proved", "\u2714", true),
  SHOWN("shown", "\u2714", true),
  BROKEN("broken", "\u2718", false),
  EMPTY("empty", "\u2205", false),
  IMPOSSIBLE("impossible", "\u2298", false),
  UNDECIDED("undecided", "?", false);

  private final String word;
  private final String sign;
  private final boolean good;

  Word(String word, String sign, boolean good) {
    this.word = word;
    this.sign = sign;
    this.good = good;
  }

  /**
   * The verdict of an instance.
   *
   * @throws IllegalArgumentException if it is none of them
   */
  static Word of(JsonNode instance) {
    return valueOf(instance.required("verdict").asText().toUpperCase(java.util.Locale.ROOT));
  }

  String word() {
    return word;
  }

  /** Whether a build may pass with it. */
  boolean good() {
    return good;
  }

  String signed() {
    return sign + " " + word;
  }
}
