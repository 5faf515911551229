package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** That a fault of a page is seen at all. */
@ExtendWith(InTheBrowser.class)
class FaultsTest {
  @TempDir Path folder;

  @Test
  void anErrorOfAScriptIsSeen(Browser browser) throws IOException {
    open(browser, "<script>nothing.of.this.name();</script>");
    assertThat(browser.faults()).singleElement().asString().contains("nothing is not defined");
    assertThat(browser.faults()).isEmpty();
  }

  @Test
  void whatThePolicyOfAPageRefusesIsSeen(Browser browser) throws IOException {
    open(
        browser,
        "<meta http-equiv='Content-Security-Policy' content=\"default-src 'none'\">"
            + "<img src='http://127.0.0.1:9/a.png' alt=''>");
    assertThat(browser.faults()).anyMatch(fault -> fault.contains("Content Security Policy"));
  }

  @Test
  void aRequestToANetworkIsSeen(Browser browser) throws IOException {
    open(browser, "<img src='http://127.0.0.1:9/a.png' alt=''>");
    assertThat(browser.faults()).contains("asked of a network: http://127.0.0.1:9/a.png");
  }

  private void open(Browser browser, String markup) throws IOException {
    Path page = folder.resolve("page.html");
    Files.writeString(page, "<!DOCTYPE html><meta charset='utf-8'><title>A page</title>" + markup);
    browser.open(page, 320);
  }
}
