package lockwright.report.text;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.audit.CheckedBy;
import lockwright.report.Findings;
import lockwright.report.Judgement;
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
    if (!findings.passes()) {
      throw new IllegalArgumentException("the box does not pass: " + tally);
    }
    String name = findings.box().name();
    List<String> text = new ArrayList<>();
    text.add(
        name
            + ": "
            + counted(tally.proved(), "requirement", "requirements")
            + " of safety proved, "
            + counted(tally.shown(), "possibility", "possibilities")
            + " shown"
            + KnownFailures.held(findings).stream().map(h -> ", " + h).collect(joining())
            + exempted(findings)
            + " ("
            + findings.solver()
            + "; certificates checked by: "
            + checkers(findings)
            + ")");
    text.addAll(AdviceLines.told(findings));
    text.add(name + ": " + CAUTION);
    return Shown.lines(text);
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

  /**
   * How many requirements fail, and the first breach, or else the first other failure, in full; and
   * each expectation or waiver that fails the build.
   */
  public static List<String> failed(Findings findings) {
    List<String> text = new ArrayList<>();
    text.add(findings.box().name() + ": " + count(findings));
    first(findings).ifPresent(a -> text.addAll(new Finding(findings).text(a)));
    text.addAll(KnownFailures.failing(findings));
    return Shown.lines(text);
  }

  /** One line for each requirement that fails, in the order of the box. */
  public static List<String> failing(Findings findings) {
    return Shown.lines(findings.failing().stream().map(a -> VerdictLine.of(findings, a)).toList());
  }

  /** All that is expected and waived, and what became of it; empty if nothing is. */
  public static List<String> knownFailures(Findings findings) {
    return Shown.lines(KnownFailures.text(findings));
  }

  private static Optional<Audited> first(Findings findings) {
    List<Audited> all = unforeseen(findings);
    return Stream.concat(all.stream().filter(a -> Word.of(a) == Word.BROKEN), all.stream())
        .findFirst();
  }

  /** The failures of which nothing is expected. */
  private static List<Audited> unforeseen(Findings findings) {
    return findings.failing().stream().filter(a -> findings.judgement(a).isEmpty()).toList();
  }

  /** ", 3 more exempted by name", if any are. */
  private static String exempted(Findings findings) {
    int number = findings.box().exempted().size();
    return number == 0 ? "" : ", " + number + " more exempted by name";
  }

  /** "2 of 97 requirements fail (1 broken, 1 undecided)". */
  static String count(Findings findings) {
    return verdicts(findings) + exempted(findings);
  }

  private static String verdicts(Findings findings) {
    int all = findings.tally().all();
    int failing = findings.failing().size();
    List<String> held = KnownFailures.held(findings);
    String requirements = counted(all, "requirement", "requirements");
    if (failing > 0) {
      return failing
          + " of "
          + requirements
          + (failing == 1 ? " fails (" : " fail (")
          + String.join(", ", kinds(findings))
          + ")"
          + held.stream().map(h -> ", " + h).collect(joining());
    }
    if (!findings.passes()) {
      return all == 0 || held.isEmpty()
          ? "there is no requirement of safety, so nothing is said of its safety"
          : "no requirement of safety is proved, so nothing is said of its safety: "
              + String.join(", ", held);
    }
    return held.isEmpty()
        ? "none of " + requirements + " fails"
        : all
            - KnownFailures.count(findings, Judgement.State.HOLDS)
            + " of "
            + requirements
            + " proved or shown, "
            + String.join(", ", held);
  }

  private static List<String> kinds(Findings findings) {
    List<String> kinds = new ArrayList<>();
    List<Word> words = unforeseen(findings).stream().map(Word::of).toList();
    for (Word word : List.of(Word.BROKEN, Word.EMPTY, Word.UNDECIDED, Word.IMPOSSIBLE)) {
      kind(Collections.frequency(words, word), word.toString(), kinds);
    }
    for (Judgement.State state :
        List.of(Judgement.State.NO_LONGER_BITES, Judgement.State.PAST_ITS_DATE)) {
      kind(KnownFailures.count(findings, state), state.toString(), kinds);
    }
    return kinds;
  }

  private static void kind(int number, String word, List<String> kinds) {
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
    return all.stream().map(CheckedBy::words).collect(joining(", "));
  }
}
