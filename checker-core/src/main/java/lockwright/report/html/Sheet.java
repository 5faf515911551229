package lockwright.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import lockwright.report.picture.Pictures;

/**
 * The frame of a page: its head with the style sheet, perhaps a script, and a content policy that
 * lets nothing else in; the link past what stands before the content; and the box of the cautions.
 */
public final class Sheet {
  private static final String STYLE = read(Sheet.class, "page.css").concat(Pictures.stylesheet());

  private final Markup markup = new Markup();
  private final String script;

  private Sheet(String title, String style, String script) {
    this.script = script;
    String scripts = script.isEmpty() ? "" : " script-src 'sha256-" + digest(script) + "';";
    markup.open("html", "lang", "en").open("head");
    markup.open("meta", "charset", "utf-8");
    markup.open(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; style-src 'sha256-"
            + digest(style)
            + "';"
            + scripts
            + " base-uri 'none'");
    markup.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    markup.open("meta", "name", "color-scheme", "content", "light dark");
    markup.element("title", title);
    markup.open("style").written(style).close();
    markup.close().open("body").open("div", "class", "skip").link("content", "to the content");
    markup.close().open("main", "id", "content", "tabindex", "-1");
  }

  /** A page without script. */
  public static Sheet of(String title) {
    return new Sheet(title, STYLE, "");
  }

  /**
   * A page with more style and a script, which runs when all of the page is there.
   *
   * @param script without any of {@code & < >}, so that it is the same in HTML and in XML
   */
  public static Sheet of(String title, String moreStyle, String script) {
    if (script.matches("(?s).*[&<>].*")) {
      throw new IllegalArgumentException("a script with markup in it");
    }
    return new Sheet(title, STYLE + moreStyle, script);
  }

  public Markup markup() {
    return markup;
  }

  /** What every page has to say before anything else. */
  public static void cautions(Markup m, List<String> cautions) {
    m.open("section", "class", "cautions", "role", "note", "aria-labelledby", "cautions");
    m.element("h2", "Cautions", "id", "cautions").open("ul");
    cautions.forEach(c -> m.element("li", c));
    m.close().close();
  }

  public String finish() {
    markup.close();
    if (!script.isEmpty()) {
      markup.open("script").written(script).close();
    }
    return markup.close().close().page();
  }

  /**
   * A file that lies beside a class.
   *
   * @throws UncheckedIOException if this build lacks it
   */
  public static String read(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("a file of this build cannot be read", e);
    }
  }

  /** SHA-256 in base 64, as a content policy names what is let in (W3C, CSP Level 3, 2.3.1). */
  private static String digest(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return Base64.getEncoder().encodeToString(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
