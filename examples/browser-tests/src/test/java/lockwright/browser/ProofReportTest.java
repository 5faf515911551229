package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

@ExtendWith(InTheBrowser.class)
class ProofReportTest {
  private static final String BOX = "proved/brindlewick";

  /** Whether all of the element that the address names can be seen, and nothing lies on it. */
  private static final String IN_VIEW =
      """
      var line = document.getElementById(location.hash.slice(1));
      if (!line) {
        return 'there is no line ' + location.hash;
      }
      var at = line.getBoundingClientRect();
      var top = document.elementFromPoint(at.left + 9, at.top + 9);
      var bottom = document.elementFromPoint(at.right - 9, at.bottom - 9);
      return line.contains(top) && line.contains(bottom);
      """;

  @Test
  void aRequirementLeadsToItsLineInTheTableOfRequirements(Browser browser) {
    browser.open(Written.report(BOX), 1280);
    browser.first("#requirement-1 a[href^='#catalogue-']").click();
    assertThat(browser.ask(IN_VIEW)).isEqualTo(true);
    assertThat(browser.first(":target").getText())
        .startsWith("points set")
        .contains("While an arm is off", "Board of Trade Requirements, no. 7");
  }

  @Test
  void aRequirementLeadsToTheLineOfTheLockingTableThatItNeeds(Browser browser) {
    browser.open(Written.report(BOX), 1280);
    browser.first("#requirement-1 a[href^='#entry-']").click();
    assertThat(browser.ask(IN_VIEW)).isEqualTo(true);
    // Without it signal 1 could be off over points that do not lie for it.
    assertThat(browser.first(":target").getText())
        .contains("locking.csv:")
        .contains("needed")
        .contains("points set: signal");
  }

  @Test
  void aCellOfTheLockingMatrixLeadsToItsLineInTheTableByKeyboard(Browser browser) {
    browser.open(Written.report(BOX), 1280);
    browser.ask("document.querySelector('svg a[aria-label=\"20 released by 13\"]').focus()");
    browser.press(Keys.ENTER);
    assertThat(browser.ask(IN_VIEW)).isEqualTo(true);
    // "20;13;;8, 12;..." is line 11 of the file.
    assertThat(browser.first(":target").getText())
        .contains("20 released by 13")
        .contains("locking.csv:11:4");
  }
}
