package lockwright.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What happens outside the frame, in words; 2.9 of {@code docs/meaning.md}. */
public final class ConditionWords {
  private ConditionWords() {}

  /**
   * "Holm accepts: Holm gives the release".
   *
   * @param kind as in the spec: "track circuit"
   * @param of what it is read off
   * @param met whether it becomes met
   */
  public static String change(String name, String kind, List<String> of, boolean met) {
    String from = String.join(", ", of);
    return name
        + ": "
        + switch (kind) {
          case "track circuit" ->
              "the track circuit of " + from + (met ? " shows clear" : " shows occupied");
          case "release", "slot" -> from + (met ? " gives the " : " takes back the ") + kind;
          case "treadle" ->
              met
                  ? "the treadle at " + from + " is worked"
                  : "the treadle at " + from + " is set back";
          case "time" ->
              met ? "the time of " + from + " has run" : "the time of " + from + " is to run anew";
          default -> throw new IllegalArgumentException("no condition of this version: " + kind);
        };
  }

  /** How some stand: "met: A, B; not met: C"; empty for none. */
  public static String standing(List<String> met, List<String> unmet) {
    return Stream.of(
            met.isEmpty() ? "" : "met: " + String.join(", ", met),
            unmet.isEmpty() ? "" : "not met: " + String.join(", ", unmet))
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining("; "));
  }
}
