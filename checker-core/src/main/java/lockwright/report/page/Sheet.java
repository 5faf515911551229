package lockwright.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import lockwright.report.picture.Pictures;

/**
 * The frame of a page: its head with the style sheet and a content policy that lets nothing else
 * in, and the link past the list of parts.
 */
final class Sheet {
  private static final String STYLE = read() + Pictures.stylesheet();

  private final Markup markup = new Markup();

  Sheet(String title) {
    markup.open("html", "lang", "en").open("head");
    markup.open("meta", "charset", "utf-8");
    markup.open(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; style-src 'sha256-" + digest(STYLE) + "'; base-uri 'none'");
    markup.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    markup.open("meta", "name", "color-scheme", "content", "light dark");
    markup.element("title", title);
    markup.open("style").written(STYLE).close();
    markup.close().open("body").open("div", "class", "skip").link("content", "to the report");
    markup.close().open("main", "id", "content", "tabindex", "-1");
  }

  Markup markup() {
    return markup;
  }

  String finish() {
    return markup.close().close().close().page();
  }

  /** SHA-256 in base 64, as a content policy names a style sheet (W3C, CSP Level 3, 2.3.1). */
  private static String digest(String style) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return Base64.getEncoder().encodeToString(sha.digest(style.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static String read() {
    try (InputStream in = Sheet.class.getResourceAsStream("/lockwright/report/page/page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet of this build cannot be read", e);
    }
  }
}
