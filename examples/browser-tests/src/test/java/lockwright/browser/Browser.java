package lockwright.browser;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.json.Json;
import org.openqa.selenium.json.JsonInput;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Headless Chromium with one page open, and the log of what went wrong on it. */
final class Browser implements AutoCloseable {
  private static final List<String> FLAGS =
      List.of(
          "--headless=new",
          "--disable-gpu",
          "--disable-dev-shm-usage",
          "--disable-background-networking",
          "--no-first-run");

  /**
   * It warns of browsers that are younger than itself, which does not matter to what is used here.
   */
  private static final Logger QUIET = Logger.getLogger("org.openqa.selenium");

  private final ChromeDriver driver;

  Browser(Installed installed) {
    QUIET.setLevel(Level.SEVERE);
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(installed.chromium().toFile());
    options.addArguments(FLAGS);
    if (System.getProperty("user.name").equals("root")) {
      options.addArguments("--no-sandbox");
    }
    options.setCapability("goog:loggingPrefs", logs);
    options.setExperimentalOption("perfLoggingPrefs", Map.of("enablePage", false));
    driver =
        new ChromeDriver(
            new ChromeDriverService.Builder()
                .usingDriverExecutable(installed.driver().toFile())
                .usingAnyFreePort()
                .build(),
            options);
  }

  /** Opens a page from disk, in light colours. */
  void open(Path page, int width) {
    if (!Files.isRegularFile(page)) {
      throw new AssertionError("the build has not written " + page);
    }
    width(width);
    colours("light");
    driver.get(page.toUri().toString());
  }

  /** How wide the window is, in pixels of CSS. */
  void width(int width) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
  }

  /** What the reader has chosen: light or dark. */
  void colours(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** The first element of a selector of CSS. */
  WebElement first(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /** Presses a key, wherever the focus is. */
  void press(CharSequence key) {
    new Actions(driver).sendKeys(key).perform();
  }

  /** Presses the tabulator until an element has the focus. */
  void tabTo(String selector) {
    for (int i = 0; i < 100; i++) {
      press(Keys.TAB);
      if (ask("return document.activeElement.matches(arguments[0])", selector).equals(true)) {
        return;
      }
    }
    throw new AssertionError("the tabulator does not lead to " + selector);
  }

  Object ask(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** A list of texts. */
  List<String> texts(String script, Object... arguments) {
    return ((List<?>) ask(script, arguments)).stream().map(String::valueOf).toList();
  }

  /** Errors on the console, and whatever was asked of a network, since this was asked last. */
  List<String> faults() {
    List<String> faults = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
      if (entry.getLevel().intValue() >= Level.SEVERE.intValue()) {
        faults.add("on the console: " + entry.getMessage());
      }
    }
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      String asked = Request.url(entry.getMessage());
      if (!asked.isEmpty() && !asked.startsWith("file:") && !asked.startsWith("data:")) {
        faults.add("asked of a network: " + asked);
      }
    }
    return faults;
  }

  @Override
  public void close() {
    driver.quit();
  }

  /** What one entry of the log of DevTools asks for; else nothing. */
  private static final class Request {
    static String url(String entry) {
      try (JsonInput in = new Json().newInput(new StringReader(entry))) {
        Map<?, ?> message = (Map<?, ?>) ((Map<?, ?>) in.read(Json.MAP_TYPE)).get("message");
        Map<?, ?> params = (Map<?, ?>) message.get("params");
        return switch (String.valueOf(message.get("method"))) {
          case "Network.requestWillBeSent" ->
              String.valueOf(((Map<?, ?>) params.get("request")).get("url"));
          case "Network.webSocketCreated" -> String.valueOf(params.get("url"));
          default -> "";
        };
      }
    }
  }
}
