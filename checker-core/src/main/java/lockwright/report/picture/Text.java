package lockwright.report.picture;

import java.util.ArrayList;
import java.util.List;
import lockwright.report.Shown;

/** How much room a text takes, on the safe side, whatever font the page has. */
final class Text {
  private Text() {}

  /** The width of a text in a font of this size. */
  static double width(String text, double size) {
    return size
        * Shown.line(text)
            .codePoints()
            .mapToDouble(
                c -> c > 0x2ff ? 1.1 : "ilj.,:;'|! ()[]tfrI".indexOf(c) >= 0 ? 0.42 : wide(c))
            .sum();
  }

  /** The same in bold. */
  static double bold(String text, double size) {
    return 1.12 * width(text, size);
  }

  private static double wide(int c) {
    return "mwMW@%".indexOf(c) >= 0 ? 0.95 : Character.isUpperCase(c) ? 0.74 : 0.63;
  }

  static double width(List<String> lines, double size) {
    return lines.stream().mapToDouble(l -> width(l, size)).max().orElse(0);
  }

  /** The text in lines that are no wider; a word that is wider is broken. */
  static List<String> wrapped(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : Shown.line(text).split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, size) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, size) > width) {
        int fits = fits(line, size, width);
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /** The same, in at most so many lines; what is left out is marked. */
  static List<String> wrapped(String text, double size, double width, int most) {
    List<String> lines = wrapped(text, size, width);
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most));
    String last = kept.get(most - 1);
    while (!last.isEmpty() && width(last + "\u2026", size) > width) {
      last = last.substring(0, last.offsetByCodePoints(last.length(), -1));
    }
    kept.set(most - 1, last + "\u2026");
    return kept;
  }

  /** How much of a text, at least one character, fits. */
  private static int fits(String text, double size, double width) {
    int end = text.offsetByCodePoints(0, 1);
    while (end < text.length()) {
      int next = text.offsetByCodePoints(end, 1);
      if (width(text.substring(0, next), size) > width) {
        break;
      }
      end = next;
    }
    return end;
  }
}
