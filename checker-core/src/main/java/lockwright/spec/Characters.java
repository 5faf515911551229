package lockwright.spec;

import java.util.Locale;
import java.util.OptionalInt;

/** Which characters may stand in a file at all: none that is invisible or turns the text around. */
final class Characters {
  private Characters() {}

  /** The index of the first character that is not allowed. */
  static OptionalInt firstRefused(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (refused(text.codePointAt(i))) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean refused(int c) {
    if (c == '\t' || c == '\n' || c == '\r') {
      return false;
    }
    return switch (Character.getType(c)) {
      // FORMAT holds the bidirectional controls, zero-width characters and the soft hyphen
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.SURROGATE ->
          true;
      default -> (c & 0xFFFE) == 0xFFFE;
    };
  }

  static void report(String text, int index, Span at, Problems problems) {
    problems.add(
        Message.CHARACTER_NOT_ALLOWED,
        at,
        String.format(
            Locale.ROOT,
            "here stands the character U+%04X, which is invisible or turns the text around",
            text.codePointAt(index)),
        "take it out; nothing but printing characters, spaces, tabs and line ends can be read");
  }
}
