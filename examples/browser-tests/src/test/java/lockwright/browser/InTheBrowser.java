package lockwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.WebDriverException;

/**
 * Gives each test the one browser, and after each looks that no page of it had an error or asked
 * for a network. Where there is no browser, the test is skipped, and that is said; or it fails, if
 * a browser is required.
 */
final class InTheBrowser
    implements ExecutionCondition, BeforeAllCallback, ParameterResolver, AfterEachCallback {
  private static final ExtensionContext.Namespace OURS =
      ExtensionContext.Namespace.create(InTheBrowser.class);

  /** The browser, or why there is none. The store closes it after the last test. */
  private record Started(Optional<Browser> browser, String why) implements AutoCloseable {
    @Override
    public void close() {
      browser.ifPresentOrElse(
          Browser::close, () -> System.out.println("PAGES NOT TESTED IN A BROWSER: " + why));
    }
  }

  private static Started start() {
    Optional<Installed> installed = Installed.find();
    if (installed.isEmpty()) {
      return new Started(Optional.empty(), "Chromium and chromedriver are not both on the PATH");
    }
    try {
      return new Started(Optional.of(new Browser(installed.get())), "");
    } catch (WebDriverException e) {
      String why = e.getRawMessage().lines().findFirst().orElse("it does not say why").strip();
      return new Started(Optional.empty(), "the browser does not start: " + why);
    }
  }

  private static Started started(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(OURS)
        .getOrComputeIfAbsent(Started.class, key -> start(), Started.class);
  }

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    Started started = started(context);
    return started.browser().isPresent() || Installed.required()
        ? ConditionEvaluationResult.enabled("")
        : ConditionEvaluationResult.disabled(started.why());
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    Started started = started(context);
    if (started.browser().isEmpty()) {
      throw new IllegalStateException("a browser is required here, but " + started.why());
    }
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return started(context).browser().orElseThrow();
  }

  @Override
  public void afterEach(ExtensionContext context) {
    started(context).browser().ifPresent(b -> assertThat(b.faults()).isEmpty());
  }
}
