package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A piece of text that the author wrote, and where its first character stands.
 *
 * @param asItStands whether the file holds these very characters in a row, so that the place of a
 *     part can be told; not so with escapes and folded lines
 */
public record Written(String text, Span at, boolean asItStands) {
  /** The parts between the separators, without the spaces around them. */
  List<Written> split(Pattern separator) {
    List<Written> parts = new ArrayList<>();
    Matcher matcher = separator.matcher(text);
    int from = 0;
    while (matcher.find()) {
      parts.add(part(from, matcher.start()));
      from = matcher.end();
    }
    parts.add(part(from, text.length()));
    return parts;
  }

  /** The same without spaces, tabs and line breaks at either end. */
  Written trimmed() {
    return part(0, text.length());
  }

  private Written part(int from, int to) {
    int first = from;
    int last = to;
    while (first < last && isBlank(text.charAt(first))) {
      first++;
    }
    while (last > first && isBlank(text.charAt(last - 1))) {
      last--;
    }
    return new Written(text.substring(first, last), placeOf(first), asItStands);
  }

  Span placeOf(int index) {
    if (!asItStands) {
      return at;
    }
    int line = at.line();
    int column = at.column();
    for (int i = 0; i < index; i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'))) {
        line++;
        column = 1;
      } else if (c != '\r' && !Character.isLowSurrogate(c)) {
        column++;
      }
    }
    return new Span(at.file(), line, column);
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  /** The text in quotes, for a message. */
  public String quoted() {
    return Problem.quote(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
