package lockwright.report.readback;

import java.util.Locale;

/** Text made safe to show: nothing in it moves the cursor, hides, or turns the line around. */
final class Shown {
  private Shown() {}

  /**
   * The text with every control, format, private, unassigned or unpaired character and every line
   * or paragraph separator as `\\u` and four hexadecimal digits of each code unit, and every
   * backslash doubled.
   */
  static String of(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> append(shown, c));
    return shown.toString();
  }

  private static void append(StringBuilder shown, int c) {
    if (c == '\\') {
      shown.append("\\\\");
    } else if (visible(c)) {
      shown.appendCodePoint(c);
    } else {
      for (char unit : Character.toChars(c)) {
        shown.append(String.format(Locale.ROOT, "\\u%04X", (int) unit));
      }
    }
  }

  private static boolean visible(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.SURROGATE,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }
}
