package lockwright.report.picture;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import lockwright.report.Shown;

/** Writes one picture: elements, attributes in pairs of name and value, and text, all escaped. */
final class Svg {
  /** One {@code em} of the page in units of the picture. */
  private static final double EM = 14;

  /** The same in a picture so wide that it would never fit a screen: small, yet to be read. */
  private static final double SMALL_EM = 20;

  /** Units from which a picture is wide. It is scrolled sideways and not made smaller still. */
  private static final double WIDE = 1600;

  private final StringBuilder out = new StringBuilder(4096);
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Begins a picture.
   *
   * @param role "img" for a picture that is read as a whole, "group" for one with links
   * @param kind a class
   * @param words all that the picture shows, for those who do not see it
   */
  Svg(String role, String kind, double width, double height, String title, String words) {
    boolean wide = width > WIDE;
    double em = wide ? SMALL_EM : EM;
    open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "picture " + kind + (wide ? " wide" : ""),
        "role",
        role,
        "width",
        number(width / em) + "em",
        "height",
        number(height / em) + "em",
        "viewBox",
        "0 0 " + number(width) + " " + number(height),
        "aria-label",
        title + ". " + words);
    title(title);
    leaf("desc", words);
  }

  /** A part of a picture, without the picture around it. */
  Svg() {}

  Svg open(String element, String... attributes) {
    tag(element, attributes);
    out.append('>');
    open.push(element);
    return this;
  }

  Svg close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element without content. */
  Svg shape(String element, String... attributes) {
    tag(element, attributes);
    out.append("/>");
    return this;
  }

  /** An element that holds text alone. */
  Svg leaf(String element, String text, String... attributes) {
    tag(element, attributes);
    out.append('>').append(escaped(text)).append("</").append(element).append('>');
    return this;
  }

  Svg title(String text) {
    return leaf("title", text);
  }

  /**
   * @param anchor which end of the text stands at x: "start", "middle" or "end"
   */
  Svg text(String kind, double x, double y, String anchor, String text) {
    return leaf("text", text, "class", kind, "x", number(x), "y", number(y), "text-anchor", anchor);
  }

  Svg line(String kind, double x1, double y1, double x2, double y2) {
    return shape(
        "line",
        "class",
        kind,
        "x1",
        number(x1),
        "y1",
        number(y1),
        "x2",
        number(x2),
        "y2",
        number(y2));
  }

  Svg rect(String kind, double x, double y, double width, double height) {
    return shape(
        "rect",
        "class",
        kind,
        "x",
        number(x),
        "y",
        number(y),
        "width",
        number(width),
        "height",
        number(height));
  }

  Svg circle(String kind, double x, double y, double radius) {
    return shape("circle", "class", kind, "cx", number(x), "cy", number(y), "r", number(radius));
  }

  Svg path(String kind, String path) {
    return shape("path", "class", kind, "d", path);
  }

  /** What another one of these has written. */
  Svg written(String markup) {
    out.append(markup);
    return this;
  }

  /** What is written so far. */
  String part() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }

  /** The picture, with everything closed. */
  String end() {
    while (!open.isEmpty()) {
      close();
    }
    return out.append('\n').toString();
  }

  /** To a hundredth, without needless noughts. */
  static String number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths % 100 == 0) {
      return Long.toString(hundredths / 100);
    }
    String text = String.format(Locale.ROOT, "%.2f", hundredths / 100.0);
    return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }

  private void tag(String element, String... attributes) {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"").append(escaped(attributes[i + 1]));
      out.append('"');
    }
  }

  /** Text that is neither markup nor a character that XML or the eye cannot bear. */
  private static String escaped(String text) {
    return Shown.line(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
