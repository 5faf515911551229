package lockwright.report.json;

import java.util.Locale;
import lockwright.railway.layout.Arm;

/** The words of the files of a spec for constants. */
final class Words {
  private Words() {}

  /** "until put in" for {@code UNTIL_PUT_IN}. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static String arm(Arm arm) {
    return of(arm).replace(' ', '-');
  }
}
