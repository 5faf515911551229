package lockwright.spec;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What may be the name of a thing, and that no two names of one kind can be taken for each other.
 */
final class Names {
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9]([ ]?[A-Za-z0-9_.-])*+");
  private static final int MOST_LETTERS = 60;
  static final String RULE =
      "a name has at most 60 letters, digits, single spaces and _ - . (of ASCII), a letter or digit"
          + " first";

  private Names() {}

  static boolean isName(String text) {
    return text.length() <= MOST_LETTERS && NAME.matcher(text).matches();
  }

  /** Tells each name that is none, and each that differs from an earlier one in case only. */
  static void check(
      String kind, List<Written> names, Message notAName, Message alike, Problems problems) {
    Map<String, Written> seen = new HashMap<>();
    for (Written name : names) {
      if (!isName(name.text())) {
        problems.add(
            notAName,
            name.at(),
            name.quoted() + " is no name for " + kind,
            "write another: " + RULE);
      }
      Written earlier = seen.putIfAbsent(name.text().toLowerCase(Locale.ROOT), name);
      if (earlier != null) {
        String how = earlier.text().equals(name.text()) ? "is named twice" : "differs only in case";
        problems.add(
            alike,
            name.at(),
            kind + " " + name.quoted() + " " + how + ", first in line " + earlier.at().line(),
            "give one of the two another name, or take one away");
      }
    }
  }
}
