package lockwright.maven;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lockwright.railway.requirement.Expectation;
import lockwright.report.Expectations;
import lockwright.spec.Dates;
import lockwright.spec.Problem;
import org.apache.maven.plugin.MojoFailureException;

/** The date that a build is given, for waivers that end on a day. */
final class DateOfBuild {
  private DateOfBuild() {}

  /**
   * What the author expects and waives, if there is a date where one is needed.
   *
   * @param date the parameter; null if it is not given
   */
  static Expectations expectations(List<Expectation> all, String date) throws MojoFailureException {
    Optional<LocalDate> given = date == null ? Optional.empty() : Dates.read(date);
    if (given.isEmpty() && (date != null || Expectations.needDate(all))) {
      throw new MojoFailureException(
          "NOT VERIFIED: "
              + (date == null
                  ? "waivers.yaml waives something until a day, and the build was given no date"
                  : Problem.quote(date) + " is no date")
              + "; the parameter 'date' (property lockwright.date) is the date of the build, as"
              + " year, month and day: -Dlockwright.date=2031-04-30");
    }
    return new Expectations(all, given);
  }
}
