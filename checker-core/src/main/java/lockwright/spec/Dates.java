package lockwright.spec;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Pattern;

/** Days as a spec and a build write them: year, month and day of ISO 8601, 2031-04-30. */
public final class Dates {
  private static final Pattern FORM = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private Dates() {}

  /** The day, if the text is one that the calendar has. */
  public static Optional<LocalDate> read(String text) {
    if (!FORM.matcher(text).matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
