package lockwright.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Text made safe to show: nothing in it moves the cursor, hides, or turns the line around. */
public final class Shown {
  private Shown() {}

  public static List<String> lines(List<String> lines) {
    return lines.stream().map(Shown::line).toList();
  }

  /**
   * The line with every control, format, private, unassigned or unpaired character and every line
   * or paragraph separator as {@code \\u} and four hexadecimal digits of each code unit.
   */
  public static String line(String line) {
    return line.codePoints().mapToObj(Shown::character).collect(Collectors.joining());
  }

  /** The same, with every backslash doubled, so that no two texts look alike. */
  public static String text(String text) {
    return line(text.replace("\\", "\\\\"));
  }

  private static String character(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.SURROGATE,
          Character.UNASSIGNED ->
          escaped(c);
      default -> Character.toString(c);
    };
  }

  private static String escaped(int c) {
    StringBuilder escaped = new StringBuilder();
    for (char unit : Character.toChars(c)) {
      escaped.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
    }
    return escaped.toString();
  }
}
