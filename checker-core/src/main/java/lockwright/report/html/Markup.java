package lockwright.report.html;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.regex.Pattern;
import lockwright.report.Shown;

/**
 * Writes HTML that is well-formed XML too. Text is made safe to show and escaped; an attribute is
 * one of a few, a link leads to an anchor of the same page or to another page on the same disk, and
 * no attribute has script or style in it. So no word of an author is ever markup.
 */
public final class Markup {
  private static final Set<String> EMPTY = Set.of("meta", "input", "br");
  private static final Set<String> LINES =
      Set.of("p", "li", "tr", "td", "th", "section", "table", "div", "h1", "h2", "h3", "style");
  private static final Pattern ATTRIBUTE =
      Pattern.compile(
          "id|class|lang|charset|name|content|http-equiv|scope|for|type|checked|disabled|tabindex|role|hidden"
              + "|data-label|data-free|aria-label|aria-labelledby|aria-live");
  private static final Pattern ANCHOR = Pattern.compile("[a-z][a-z0-9-]*");
  private static final Pattern PATH = Pattern.compile("[A-Za-z0-9._~%-]+(/[A-Za-z0-9._~%-]+)*");

  private final StringBuilder html = new StringBuilder("<!DOCTYPE html>\n");
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element, or writes it whole if it is one that has no content.
   *
   * @param attributes names and values in turn
   */
  public Markup open(String element, String... attributes) {
    html.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      if (!ATTRIBUTE.matcher(attributes[i]).matches()) {
        throw new IllegalArgumentException("no attribute of this page: " + attributes[i]);
      }
      html.append(' ').append(attributes[i]).append("=\"");
      html.append(escaped(attributes[i + 1])).append('"');
    }
    if (EMPTY.contains(element)) {
      html.append("/>\n");
    } else {
      html.append('>');
      open.push(element);
    }
    return this;
  }

  /** Closes the element that was opened last. */
  public Markup close() {
    String element = open.pop();
    html.append("</").append(element).append('>');
    if (LINES.contains(element)) {
      html.append('\n');
    }
    return this;
  }

  public Markup text(String text) {
    html.append(escaped(text));
    return this;
  }

  /** An element with nothing but text in it. */
  public Markup element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close();
  }

  /** A link to an anchor of this page. */
  public Markup link(String anchor, String text) {
    if (!ANCHOR.matcher(anchor).matches()) {
      throw new IllegalArgumentException("no anchor: " + anchor);
    }
    return linkTo("#" + anchor, text);
  }

  /**
   * A link to another page on the same disk.
   *
   * @param path a relative reference, with slashes
   */
  public Markup linkToPage(String path, String text) {
    if (!PATH.matcher(path).matches()) {
      throw new IllegalArgumentException("no path: " + path);
    }
    return linkTo(path, text);
  }

  private Markup linkTo(String where, String text) {
    html.append("<a href=\"").append(where).append("\">").append(escaped(text)).append("</a>");
    return this;
  }

  /** Something that another room has written and escaped: a style sheet or a picture. */
  public Markup written(String markup) {
    html.append(markup);
    return this;
  }

  /**
   * The page.
   *
   * @throws IllegalStateException if an element is still open
   */
  public String page() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return html.append('\n').toString();
  }

  private static String escaped(String text) {
    return Shown.line(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
