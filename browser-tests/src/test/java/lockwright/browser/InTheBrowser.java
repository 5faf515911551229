package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.WebDriverException;
import org.opentest4j.TestAbortedException;

/**
 * Gives each test the one browser, and after each looks that no page of it had an error or asked
 * for a network. Where there is no browser, the test is skipped, and that is said; or it fails, if
 * a browser is required.
 */
final class InTheBrowser implements ParameterResolver, AfterEachCallback {
  private static final ExtensionContext.Namespace OURS =
      ExtensionContext.Namespace.create(InTheBrowser.class);

  /** The browser, or why there is none; the store of all tests closes it. */
  private record Started(Optional<Browser> browser, String why) implements AutoCloseable {
    @Override
    public void close() {
      browser.ifPresent(Browser::close);
    }
  }

  private static Started start() {
    Optional<Installed> installed = Installed.find();
    if (installed.isEmpty()) {
      return none("Chromium and chromedriver are not both on the PATH");
    }
    try {
      return new Started(Optional.of(new Browser(installed.get())), "");
    } catch (WebDriverException e) {
      return none(
          "the browser does not start: " + e.getRawMessage().lines().findFirst().orElse(""));
    }
  }

  private static Started none(String why) {
    if (!Installed.required()) {
      System.out.println("PAGES NOT TESTED IN A BROWSER: " + why);
    }
    return new Started(Optional.empty(), why);
  }

  private static Started started(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(OURS)
        .getOrComputeIfAbsent(Started.class, key -> start(), Started.class);
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    Started started = started(context);
    if (started.browser().isEmpty() && Installed.required()) {
      throw new IllegalStateException("a browser is required here, but " + started.why());
    }
    return started.browser().orElseThrow(() -> new TestAbortedException(started.why()));
  }

  @Override
  public void afterEach(ExtensionContext context) {
    started(context).browser().ifPresent(b -> assertThat(b.faults()).isEmpty());
  }
}
