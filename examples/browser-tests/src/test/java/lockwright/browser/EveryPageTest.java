package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages of each kind, narrow and wide, and in both colours. */
@ExtendWith(InTheBrowser.class)
class EveryPageTest {
  /** By how much the page could be scrolled sideways. */
  private static final String BEYOND =
      "var page = document.scrollingElement; return page.scrollWidth - page.clientWidth;";

  /** Links of HTML and of the pictures to places of the same page that are not there. */
  private static final String LEADING_NOWHERE =
      """
      var links = Array.from(document.querySelectorAll('a')).map(a => a.getAttribute('href'));
      return links.length === 0 ? ['no links at all'] : links
          .filter(to => to.startsWith('#') && !document.getElementById(to.slice(1)));
      """;

  /**
   * The colour of the page, and each kind of text of which the contrast with it is below 4.5, by
   * WCAG 2.2, 1.4.3 and "relative luminance" (from memory).
   */
  private static final String COLOURS =
      """
      function luminance(colour) {
        var parts = colour.match(/[0-9.]+/g).slice(0, 3).map(n => n / 255)
            .map(c => c > 0.04045 ? Math.pow((c + 0.055) / 1.055, 2.4) : c / 12.92);
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
      }
      var paper = luminance(getComputedStyle(document.body).backgroundColor);
      var faint = ['h1', '.cautions li', 'main a, summary', '.picture text'].filter(text => {
        var element = document.querySelector(text);
        var style = element ? getComputedStyle(element) : null;
        var ink = style ? luminance(text === '.picture text' ? style.fill : style.color) : 1 - paper;
        return (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05) < 4.5;
      });
      return [paper > 0.5 ? 'light' : 'dark'].concat(faint);
      """;

  static Stream<Path> pages() throws IOException {
    Stream<Path> reports = Written.BOXES.stream().map(Written::report);
    return Stream.concat(
        reports,
        Stream.concat(kinds("proved/brindlewick").stream(), kinds("expected/thrapwick").stream()));
  }

  /** Where there are lessons: what leads to them, the first of each kind, and the frame. */
  private static List<Path> kinds(String box) throws IOException {
    Path folder = Written.lessons(box).getParent();
    if (!Files.isDirectory(folder)) {
      return List.of(Written.lessons(box));
    }
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> sorted = all.sorted().toList();
      return sorted.stream().filter(p -> p.equals(first(sorted, p))).toList();
    }
  }

  /** The first page whose name begins with the same words. */
  private static Path first(List<Path> pages, Path like) {
    return pages.stream().filter(p -> words(p).equals(words(like))).findFirst().orElseThrow();
  }

  private static String words(Path page) {
    return page.getFileName().toString().replaceFirst("(-[0-9a-f]{12})?\\.html$", "");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void aPageIsNoWiderThanTheScreenReadableInBothColoursAndItsLinksLead(Path page, Browser browser) {
    browser.open(page, 1600);
    assertThat(browser.ask(BEYOND)).as("beyond a wide screen: %s", page).isEqualTo(0L);
    browser.width(320);
    assertThat(browser.ask(BEYOND)).as("beyond a narrow screen: %s", page).isEqualTo(0L);
    assertThat(browser.first("h1").isDisplayed()).isTrue();
    assertThat(browser.texts(LEADING_NOWHERE)).as("leading nowhere in %s", page).isEmpty();
    assertThat(browser.texts(COLOURS)).as("colours of %s", page).containsExactly("light");
    browser.colours("dark");
    assertThat(browser.texts(COLOURS)).as("colours of %s", page).containsExactly("dark");
  }
}
