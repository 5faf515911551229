package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lockwright.audit.Audited;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Expectation;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Expectations;
import lockwright.report.Findings;
import lockwright.report.Judgement.State;
import lockwright.report.text.FullLog;
import lockwright.report.text.Summary;
import lockwright.spec.Span;
import lockwright.worker.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is expected or waived changes the outcome and no verdict; `docs/meaning.md` 7. The box is
 * the published junction with an entry left out, so that two of its eight requirements of safety
 * are broken.
 */
class ExpectationsTest {
  private static final String SET = "points set: signal 1";
  private static final String CONFLICT = "no conflict: signals 1 and 2";
  private static final String KEPT = "points set: signal 2";
  private static final LocalDate LAST = LocalDate.of(2031, 4, 30);
  private static final Findings BROKEN = Boxes.check(without("1 locks 4"));

  private static Box without(String entry) {
    Box box = Boxes.test("e1-junction");
    List<Entry> entries = new ArrayList<>(box.locking());
    assertThat(entries.removeIf(e -> e.words().equals(entry))).isTrue();
    return box.withLocking(entries);
  }

  private static Expectation expected(String id, Expectation.Verdict verdict) {
    return new Expectation(
        id, verdict, "a lesson", Optional.empty(), new Span("waivers.yaml", 2, 3));
  }

  private static Expectation expected(String id) {
    return expected(id, Expectation.Verdict.BROKEN);
  }

  private static Expectation waived(String id) {
    return new Expectation(
        id,
        Expectation.Verdict.BROKEN,
        "to be mended",
        Optional.of(new Expectation.Waiver("signal engineer", LAST)),
        new Span("waivers.yaml", 4, 3));
  }

  private static Findings on(LocalDate date, Expectation... all) {
    return BROKEN.against(new Expectations(List.of(all), Optional.of(date)));
  }

  private static State state(Findings findings, String id) {
    return findings.judgement(Boxes.of(findings, id)).orElseThrow().state();
  }

  private static List<String> failing(Findings findings) {
    return findings.failing().stream().map(a -> a.requirement().id()).toList();
  }

  @Test
  void without_any_all_that_is_broken_fails() {
    assertThat(failing(BROKEN)).containsExactly(SET, CONFLICT);
    assertThat(BROKEN.passes()).isFalse();
  }

  @Test
  void what_is_broken_as_expected_and_as_waived_passes_and_stays_broken() {
    Findings findings = on(LAST, expected(SET), waived(CONFLICT));
    assertThat(findings.passes()).isTrue();
    assertThat(findings.failing()).isEmpty();
    assertThat(Boxes.of(findings, SET)).isInstanceOf(Audited.Broken.class);
    assertThat(findings.tally()).isEqualTo(BROKEN.tally());
    assertThat(findings.tally().proved()).isEqualTo(6);
    assertThat(Summary.passed(findings).get(0))
        .startsWith(
            "Alder Fen: 6 requirements of safety proved, 7 possibilities shown,"
                + " 1 broken as expected, 1 broken as waived (in this process;");
    assertThat(FullLog.of(findings))
        .contains(
            "\n13 of 15 requirements proved or shown, 1 broken as expected, 1 broken as waived\n",
            """

            Expected and waived: 2 hold (on 2031-04-30)
              broken, expected: points set: signal 1
                reason: a lesson
              broken, waived: no conflict: signals 1 and 2
                by: signal engineer, until 2031-04-30
                reason: to be mended
            """,
            "\nbroken, expected: points set: signal 1\n  beginning: all levers normal\n",
            "\nbroken, waived: no conflict: signals 1 and 2\n  beginning: all levers normal\n");
  }

  @Test
  void a_breach_that_nobody_has_named_still_fails() {
    Findings findings = on(LAST, waived(CONFLICT));
    assertThat(failing(findings)).containsExactly(SET);
    assertThat(findings.passes()).isFalse();
    assertThat(Summary.failed(findings).get(0))
        .isEqualTo("Alder Fen: 1 of 15 requirements fails (1 broken), 1 broken as waived");
    assertThat(Summary.failing(findings)).containsExactly("broken: points set: signal 1");
  }

  @Test
  void the_last_day_of_a_waiver_is_within_it_and_the_next_is_not() {
    assertThat(on(LAST.minusYears(20), waived(CONFLICT), expected(SET)).passes()).isTrue();
    assertThat(on(LAST, waived(CONFLICT), expected(SET)).passes()).isTrue();
    Findings late = on(LAST.plusDays(1), waived(CONFLICT), expected(SET));
    assertThat(late.passes()).isFalse();
    assertThat(state(late, SET)).isEqualTo(State.HOLDS);
    assertThat(state(late, CONFLICT)).isEqualTo(State.PAST_ITS_DATE);
    assertThat(Summary.failed(late))
        .containsExactly(
            "Alder Fen: 1 of 15 requirements fails (1 past its date), 1 broken as expected",
            "broken, waived only until 2031-04-30: no conflict: signals 1 and 2",
            "  it is past its date: mend what fails, or have it waived anew at waivers.yaml:4:3");
  }

  @Test
  void what_is_proved_and_was_to_be_broken_fails() {
    Findings findings = on(LAST, expected(SET), expected(CONFLICT), waived(KEPT));
    assertThat(failing(findings)).containsExactly(KEPT);
    assertThat(findings.passes()).isFalse();
    assertThat(state(findings, KEPT)).isEqualTo(State.NO_LONGER_BITES);
    assertThat(Summary.failed(findings))
        .containsExactly(
            "Alder Fen: 1 of 15 requirements fails (1 no longer bites), 2 broken as expected",
            "proved, and not broken as waived: points set: signal 2",
            "  it no longer bites: take it out at waivers.yaml:4:3, or write the verdict that is"
                + " so");
  }

  /** A waiver that is both stale and late is stale: there is nothing left to waive anew. */
  @Test
  void what_is_proved_and_was_waived_until_yesterday_no_longer_bites() {
    assertThat(state(on(LAST.plusDays(1), waived(KEPT)), KEPT)).isEqualTo(State.NO_LONGER_BITES);
  }

  @ParameterizedTest
  @EnumSource(names = {"EMPTY", "UNDECIDED"})
  void another_failing_verdict_than_the_one_written_fails(Expectation.Verdict verdict) {
    Findings findings = on(LAST, expected(SET, verdict), expected(CONFLICT));
    assertThat(failing(findings)).containsExactly(SET);
    assertThat(Summary.failing(findings))
        .containsExactly("broken, and not " + verdict + " as expected: points set: signal 1");
  }

  @Test
  void every_failing_verdict_can_be_expected() {
    Box box = Boxes.test("e1-junction");
    List<Entry> entries = new ArrayList<>(box.locking());
    for (Entry.Kind kind : List.of(Entry.Kind.RELEASED_BY, Entry.Kind.LOCKS)) {
      entries.add(
          new Entry(kind, "1", List.of("2"), List.of(), false, "", new Span("locking.csv", 9, 1)));
    }
    Findings stuck = Boxes.check(box.withLocking(entries));
    Findings undecided = Boxes.check(box, new Limits(60, 1, 0));
    for (Findings findings : List.of(stuck, undecided)) {
      List<Expectation> all = new ArrayList<>();
      for (String line : Summary.failing(findings)) {
        int colon = line.indexOf(": ");
        Expectation.Verdict verdict =
            Expectation.Verdict.valueOf(line.substring(0, colon).toUpperCase(Locale.ROOT));
        all.add(expected(line.substring(colon + 2), verdict));
      }
      assertThat(all).isNotEmpty();
      Findings against = findings.against(new Expectations(all, Optional.empty()));
      assertThat(against.failing()).isEmpty();
      assertThat(against.passes()).isEqualTo(findings.tally().proved() > 0);
    }
    assertThat(Summary.failing(stuck))
        .anyMatch(l -> l.startsWith("empty: "))
        .anyMatch(l -> l.startsWith("impossible: "));
    assertThat(Summary.failing(undecided)).anyMatch(l -> l.startsWith("undecided: "));
  }

  /** Nothing proves nothing, whatever is expected. */
  @Test
  void a_box_of_which_nothing_is_proved_does_not_pass() {
    Box box = without("1 locks 4");
    List<Requirement> one = box.requirements().stream().filter(r -> r.id().equals(SET)).toList();
    Box only =
        new Box(
            box.name(),
            box.layout(),
            box.frame(),
            box.locking(),
            box.sections(),
            box.routes(),
            box.notSignalled(),
            box.conflicts(),
            box.distantPaths(),
            one);
    Findings findings =
        Boxes.check(only).against(new Expectations(List.of(expected(SET)), Optional.empty()));
    assertThat(findings.failing()).isEmpty();
    assertThat(findings.passes()).isFalse();
    assertThat(Summary.failed(findings))
        .containsExactly(
            "Alder Fen: no requirement of safety is proved, so nothing is said of its safety:"
                + " 1 broken as expected");
  }

  @Test
  void the_author_s_words_forge_no_line() {
    Expectation forged =
        new Expectation(
            SET,
            Expectation.Verdict.BROKEN,
            "x\nproved: all\u202e",
            Optional.of(new Expectation.Waiver("y\r\u001b[2K", LAST)),
            new Span("waivers.yaml", 2, 3));
    assertThat(Summary.knownFailures(on(LAST, forged)))
        .contains(
            "    by: y\\u000d\\u001b[2K, until 2031-04-30",
            "    reason: x\\u000aproved: all\\u202e");
  }

  @Test
  void a_waiver_without_a_date_and_an_unknown_name_are_refused() {
    assertThatThrownBy(() -> new Expectations(List.of(waived(SET)), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new Expectations(List.of(waived(SET), expected(SET)), Optional.of(LAST)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> on(LAST, expected("points set: signal 7")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
