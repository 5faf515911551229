package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/**
 * Thrapwick's lesson by keyboard alone. Which levers are free follows by hand from its table: 1 is
 * released by 3 and locks 2 and 4, 2 is released by 3, and 3 locks 4 both ways.
 */
@ExtendWith(InTheBrowser.class)
class LessonTest {
  private static final String SHOWN =
      """
      return Array.from(document.querySelectorAll('.step'))
          .filter(step => step.getClientRects().length !== 0).map(step => step.id);
      """;

  @Test
  void aBreachIsSteppedToItsEndByTheArrowKeys(Browser browser) {
    browser.open(Written.lessons("expected/thrapwick"), 1280);
    browser.first("[aria-labelledby=breaches] a").click();

    stands(browser, 0, "The beginning");
    asks(browser, 0, 3, "You ticked 1 of the 2 that are free, and 0 that are held.", "Free: 3, 4.");
    browser.press(Keys.ARROW_RIGHT);
    stands(browser, 1, "Step 1 of 2: pull 3 Bolt of 4");
    asks(
        browser,
        1,
        4,
        "You ticked 0 of the 3 that are free, and 1 that is held.",
        "Free: 1, 2, 3.");
    browser.press(Keys.ARROW_RIGHT);
    stands(browser, 2, "Step 2 of 2: pull 2 Branch home part-way");

    assertThat(browser.first("#step-2 .wrong").getText()).contains("signal 2 is off");
    assertThat(browser.first("#step-2 [data-signal='2']").getDomAttribute("class"))
        .contains("part-way");
    assertThat(browser.first("#next").isEnabled()).isFalse();
    browser.press(Keys.ARROW_RIGHT);
    stands(browser, 2, "Step 2 of 2: pull 2 Branch home part-way");
    browser.press(Keys.ARROW_LEFT);
    stands(browser, 1, "Step 1 of 2: pull 3 Bolt of 4");
  }

  private static void stands(Browser browser, int step, String heading) {
    assertThat(browser.texts(SHOWN)).containsExactly("step-" + step);
    assertThat(browser.first("#step-" + step + " h2").getText()).isEqualTo(heading);
    assertThat(browser.first("#status").getText()).isEqualTo(heading);
  }

  /** Ticks one lever and opens the answer. */
  private static void asks(Browser browser, int step, int lever, String told, String free) {
    String question = "#step-" + step + " .question ";
    assertThat(browser.first(question + "details p").isDisplayed()).isFalse();
    browser.tabTo("#tick-" + step + "-" + (lever - 1));
    browser.press(Keys.SPACE);
    browser.tabTo(question + "summary");
    browser.press(Keys.ENTER);
    assertThat(browser.first(question + ".told").getText()).isEqualTo(told);
    assertThat(browser.first(question + "details p").getText()).isEqualTo(free);
  }
}
