package lockwright.report.text;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.audit.CheckedBy;
import lockwright.report.Findings;
import lockwright.report.Shown;
import lockwright.report.Tally;

/** What was found of a box, in the few lines that end its check. */
public final class Summary {
  private static final String CAUTION =
      "within the model and the listed files; not locking data, and no substitute for competent"
          + " people and testing on site";

  private Summary() {}

  /**
   * The line of a box that passes, and the caution.
   *
   * @throws IllegalArgumentException if it does not pass
   */
  public static List<String> passed(Findings findings) {
    Tally tally = findings.tally();
    if (!tally.passes()) {
      throw new IllegalArgumentException("the box does not pass: " + tally);
    }
    String name = findings.box().name();
    return Shown.lines(
        List.of(
            name
                + ": "
                + counted(tally.proved(), "requirement", "requirements")
                + " of safety proved, "
                + counted(tally.shown(), "possibility", "possibilities")
                + " shown ("
                + findings.solver()
                + "; certificates checked by: "
                + checkers(findings)
                + ")",
            name + ": " + CAUTION));
  }

  /** How many entries of the locking table are needed, if that was tried; else nothing. */
  public static List<String> entries(Findings findings) {
    if (!findings.entries().notTried().isEmpty()) {
      return List.of();
    }
    return Shown.lines(
        List.of(
            findings.box().name()
                + ": of "
                + counted(findings.box().locking().size(), "entry", "entries")
                + ", each left out alone: "
                + EntryLines.count(findings.entries())));
  }

  /** How many requirements fail, and the first breach, or else the first other failure, in full. */
  public static List<String> failed(Findings findings) {
    List<String> text = new ArrayList<>();
    text.add(findings.box().name() + ": " + count(findings.tally()));
    first(findings).ifPresent(a -> text.addAll(new Finding(findings.box()).text(a)));
    return Shown.lines(text);
  }

  /** One line for each requirement that fails, in the order of the box. */
  public static List<String> failing(Findings findings) {
    return Shown.lines(failures(findings).map(Word::line).toList());
  }

  private static Optional<Audited> first(Findings findings) {
    return Stream.concat(
            failures(findings).filter(a -> Word.of(a) == Word.BROKEN), failures(findings))
        .findFirst();
  }

  private static Stream<Audited> failures(Findings findings) {
    return findings.audited().stream().filter(a -> Word.of(a).fails());
  }

  /** "2 of 97 requirements fail (1 broken, 1 undecided)". */
  static String count(Tally tally) {
    if (tally.failing() == 0) {
      return tally.passes()
          ? "none of " + counted(tally.all(), "requirement", "requirements") + " fails"
          : "there is no requirement of safety, so nothing is said of its safety";
    }
    List<String> kinds = new ArrayList<>();
    kind(tally.broken(), Word.BROKEN, kinds);
    kind(tally.empty(), Word.EMPTY, kinds);
    kind(tally.undecided(), Word.UNDECIDED, kinds);
    kind(tally.impossible(), Word.IMPOSSIBLE, kinds);
    return tally.failing()
        + " of "
        + counted(tally.all(), "requirement", "requirements")
        + (tally.failing() == 1 ? " fails (" : " fail (")
        + String.join(", ", kinds)
        + ")";
  }

  private static void kind(int number, Word word, List<String> kinds) {
    if (number > 0) {
      kinds.add(number + " " + word);
    }
  }

  private static String counted(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  private static String checkers(Findings findings) {
    Set<CheckedBy> all = EnumSet.noneOf(CheckedBy.class);
    for (Audited audited : findings.audited()) {
      if (audited instanceof Audited.Proved proved) {
        all.addAll(proved.checkedBy());
      }
    }
    return all.stream().map(CheckedBy::words).collect(Collectors.joining(", "));
  }
}
