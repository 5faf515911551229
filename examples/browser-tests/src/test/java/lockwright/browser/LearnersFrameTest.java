package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The frame of Brindlewick, worked. Line 4 of its table is "3;10, 13;8, 11;;". */
@ExtendWith(InTheBrowser.class)
class LearnersFrameTest {
  private static final String ARM =
      """
      return Array.from(document.querySelectorAll('[aria-label="Track diagram"] [data-signal="3"]'))
          .filter(arm => arm.getClientRects().length !== 0).map(arm => arm.getAttribute('class'));
      """;

  @Test
  void aLeverIsRefusedWithTheReasonAndMovesWhenThatIsMet(Browser browser) {
    open(browser);
    lever(browser, 3).click();
    assertThat(said(browser))
        .isEqualTo(
            "\u2718 Lever 3 will not move: '3 released by 10' (locking.csv:4:3);"
                + " '3 released by 13' (locking.csv:4:7).");
    stands(browser, 3, "normal");

    lever(browser, 10).click();
    lever(browser, 13).click();
    assertThat(said(browser)).isEqualTo("\u2714 Lever 13 reversed.");
    assertThat(browser.texts(ARM)).containsExactly("arm stop on");
    lever(browser, 3).click();
    assertThat(said(browser)).isEqualTo("\u2714 Lever 3 reversed.");
    stands(browser, 3, "reversed");
    assertThat(browser.texts(ARM)).containsExactly("arm stop off");
    assertThat(
            browser.texts(
                "return Array.from(document.querySelectorAll('#done li'), e => e.textContent)"))
        .containsExactly("Lever 10 reversed", "Lever 13 reversed", "Lever 3 reversed");

    lever(browser, 10).click();
    assertThat(said(browser))
        .isEqualTo("\u2718 Lever 10 will not move: '3 released by 10' (locking.csv:4:3).");
    stands(browser, 10, "reversed");
  }

  @Test
  void aLeverIsWorkedAndRefusedByKeyboard(Browser browser) {
    open(browser);
    browser.tabTo("#lever-11");
    browser.press(Keys.SPACE);
    stands(browser, 12, "reversed");
    browser.press(Keys.ARROW_LEFT);
    browser.press(Keys.SPACE);
    stands(browser, 11, "reversed");
    browser.press(Keys.ARROW_RIGHT);
    browser.press(Keys.SPACE);
    assertThat(said(browser))
        .isEqualTo("\u2718 Lever 12 will not move: '11 released by 12' (locking.csv:10:4).");
    stands(browser, 12, "reversed");
    browser.tabTo("#undo");
    browser.press(Keys.SPACE);
    stands(browser, 11, "normal");
  }

  @Test
  void aLeverWithACollarDoesNotMoveUntilItIsOff(Browser browser) {
    open(browser);
    browser.first("#collars").click();
    lever(browser, 10).click();
    assertThat(said(browser)).isEqualTo("A collar is on: Lever 10 does not move.");
    stands(browser, 10, "normal, a collar on it");
    browser.first("#collars").click();
    lever(browser, 10).click();
    assertThat(said(browser)).isEqualTo("\u2718 Lever 10 will not move: a collar is on it.");
    lever(browser, 13).click();
    stands(browser, 13, "reversed");

    browser.first("#collars").click();
    lever(browser, 10).click();
    browser.first("#collars").click();
    lever(browser, 10).click();
    stands(browser, 10, "reversed");
  }

  private static void open(Browser browser) {
    browser.open(Written.lessons("proved/brindlewick"), 1280);
    browser.first("[aria-labelledby=own] a").click();
  }

  /** Levers are numbered from 1, their buttons from 0. */
  private static WebElement lever(Browser browser, int number) {
    return browser.first("#lever-" + (number - 1));
  }

  private static void stands(Browser browser, int number, String at) {
    assertThat(lever(browser, number).getDomAttribute("aria-label")).endsWith(": " + at);
  }

  private static String said(Browser browser) {
    return browser.first("#says").getText();
  }
}
