package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.audit.EntryVerdict;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Asked;
import lockwright.railway.teaching.Teaching;
import lockwright.report.Advised;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import lockwright.report.junit.JunitXml;
import lockwright.report.lesson.Lessons;
import lockwright.report.markdown.MarkdownSummary;
import lockwright.report.page.ProofReport;
import lockwright.report.readback.ReadBack;
import lockwright.report.sarif.Sarif;
import lockwright.report.text.FullLog;
import lockwright.report.text.Summary;
import lockwright.spec.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Points are interlocked with one another, where possible, to avoid collision: Board of Trade
 * Requirements, no. 7, as printed in W. H. Mills, Railway Construction (1898). On an invented
 * junction of double lines: the facing points may not lie for the branch, over the crossing, while
 * the trailing points of the other line lie for the main, over the same crossing. That these are
 * the lies is by the geometry, ours; that such points are locked so, common practice, no source.
 */
class PointsToPointsTest {
  private static final String ADVICE = "points to points: points D R, points U N";
  private static final String LOCK = "6 released by 7";
  private static final Box LOCKED = Boxes.test("double-line-junction");
  private static final Box FREE = without(LOCKED, LOCK);
  private static final Box ASKED = Boxes.test("double-line-junction-asked");
  private static final Findings OF_LOCKED = Boxes.check(LOCKED);
  private static final Findings OF_FREE = Boxes.check(FREE);

  private static Box without(Box box, String entry) {
    List<Entry> rest = new ArrayList<>(box.locking());
    assertThat(rest.removeIf(e -> e.words().equals(entry))).isTrue();
    return box.withLocking(rest);
  }

  @Test
  void a_junction_whose_points_are_interlocked_keeps_the_advice() {
    assertThat(OF_LOCKED.advice().stream().map(a -> a.requirement().id())).containsExactly(ADVICE);
    assertThat(OF_LOCKED.advice(Advised.KEPT)).hasSize(1);
    assertThat(OF_LOCKED.passes()).isTrue();
    assertThat(FullLog.of(OF_LOCKED))
        .contains("\nAdvice: 1 kept\n")
        .contains("\nkept: " + ADVICE + "\n")
        .contains("  for these meet: 2 to down branch and 3 to up, crossing X\n");
    assertThat(String.join("\n", Summary.passed(OF_LOCKED))).doesNotContain("advice");
  }

  @Test
  void without_that_it_is_not_kept_and_the_build_passes_all_the_same() {
    assertThat(OF_FREE.passes()).isTrue();
    assertThat(OF_FREE.failing()).isEmpty();
    assertThat(OF_FREE.advice(Advised.NOT_KEPT)).hasSize(1);
    assertThat(OF_FREE.tally()).isEqualTo(OF_LOCKED.tally());
    assertThat(OF_FREE.tally().broken()).isZero();
    assertThat(OF_FREE.tally().all()).isEqualTo(FREE.requirements().size());
    assertThat(Summary.passed(OF_FREE))
        .contains(
            "Rushy Fold Junction: advice, which fails nothing: 1 not kept (each is in check.txt)");
    assertThat(FullLog.of(OF_FREE))
        .contains("\nnot kept: " + ADVICE + "\n")
        .contains("then they lie so together; no sequence of fewer half-strokes")
        .contains("perhaps missing: '" + LOCK + "'")
        .contains("none of " + FREE.requirements().size() + " requirements fails")
        .doesNotContain("broken");
  }

  /**
   * Ours, by their plans: two have a junction of double lines. Of Brindlewick's crossover nothing
   * is said: whichever way it lies, a route over it crosses that over D reversed.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "brindlewick | points D R, points U N",
        "pellowmere | points J R, points U N",
        "quillby |",
        "corlhaven |"
      })
  void of_the_examples_those_with_a_double_junction_have_advice(String example, String advice) {
    assertThat(Boxes.example("proved/" + example).advice().stream().map(a -> a.subject()))
        .containsExactlyElementsOf(Stream.ofNullable(advice).toList());
  }

  @Test
  void no_report_shows_advice_that_is_not_kept_as_a_failure() {
    byte[] result = ResultJson.bytes(OF_FREE);
    assertThat(ProofReport.checked(result))
        .contains("<h3>not kept: " + ADVICE + "</h3>")
        .contains("<li>2 to down branch and 3 to up, crossing X</li>")
        .contains("Then they lie so together. The search found no sequence of fewer")
        .contains("Perhaps missing: &#39;" + LOCK + "&#39;")
        .contains("\u2714 Passes: of " + FREE.requirements().size() + " requirements ")
        .contains("1 as advice")
        .doesNotContain("\u2718", "is broken", "class=\"bad\"");
    assertThat(MarkdownSummary.of(result))
        .contains("### Advice, which fails nothing")
        .contains("- not kept\\: points to points\\: points D R, points U N")
        .doesNotContain("What fails", "broken");
    assertThat(JunitXml.of(result)).doesNotContain("points to points", "<failure");
    assertThat(new String(Sarif.of(result, "box/"), StandardCharsets.UTF_8)).doesNotContain(ADVICE);
    assertThat(ReadBack.text(FREE))
        .contains("Points to points: points D R, points U N\n")
        .contains("advice, which fails nothing");
    assertThat(ReadBack.text(ASKED))
        .contains("asked for, so a requirement here: the old table of the box has it so");
  }

  @Test
  void a_lesson_is_made_of_it_only_where_it_is_asked_for() {
    Findings asked = Boxes.check(ASKED);
    assertThat(lessons(asked).keySet()).anyMatch(f -> f.startsWith("points-to-points"));
    assertThat(lessons(OF_FREE).keySet())
        .isNotEmpty()
        .noneMatch(f -> f.startsWith("points-to-points"));
  }

  private static Map<String, String> lessons(Findings findings) {
    return Lessons.of(findings, ResultJson.bytes(findings), Teaching.NONE).pages();
  }

  /** One whole stroke of lever 6: two half-strokes, and no fewer. */
  @Test
  void the_sequence_is_the_shortest() {
    Audited.Broken found = (Audited.Broken) OF_FREE.advice(Advised.NOT_KEPT).get(0);
    assertThat(found.shortest()).isTrue();
    assertThat(found.played().steps().stream().map(s -> s.event().key()))
        .containsExactly("lever 6 N>M", "lever 6 M>R");
  }

  @Test
  void asked_for_it_is_a_requirement_and_fails() {
    Findings findings = Boxes.check(ASKED);

    assertThat(findings.advice()).isEmpty();
    assertThat(findings.passes()).isFalse();
    assertThat(findings.failing().stream().map(a -> a.requirement().id())).containsExactly(ADVICE);
    assertThat(findings.tally().broken()).isEqualTo(1);
    assertThat(findings.tally().all()).isEqualTo(FREE.requirements().size() + 1);
    assertThat(FullLog.of(findings))
        .contains("broken: " + ADVICE)
        .contains("  asked: " + ADVICE)
        .contains("    reason: the old table of the box has it so");
  }

  @Test
  void asked_for_and_kept_it_is_proved() {
    Asked asked = new Asked(LOCKED.advice().get(0), "so agreed", new Span("waivers.yaml", 2, 3));
    Findings findings = Boxes.check(LOCKED.asking(List.of(asked)));

    assertThat(Boxes.of(findings, ADVICE)).isInstanceOf(Audited.Proved.class);
    assertThat(findings.passes()).isTrue();
    assertThat(findings.tally().proved()).isEqualTo(OF_LOCKED.tally().proved() + 1);
  }

  /** The signals are locked too, so nothing but the advice asks for the lock between the points. */
  @Test
  void the_lock_between_the_points_is_needed_by_advice_alone() {
    Findings findings = Boxes.tried(OF_LOCKED);

    EntryVerdict.NeededByAdvice needed = (EntryVerdict.NeededByAdvice) Boxes.entry(findings, LOCK);
    assertThat(needed.advice().stream().map(b -> b.requirement().id())).containsExactly(ADVICE);
    assertThat(needed.kept()).hasSize(OF_LOCKED.tally().proved());
    assertThat(Boxes.entry(findings, "2 locks 3")).isInstanceOf(EntryVerdict.Implied.class);
    assertThat(Boxes.entry(findings, "1 locks 6")).isInstanceOf(EntryVerdict.Needed.class);
    assertThat(FullLog.of(findings))
        .contains("1 needed by advice, 1 implied by others, 0 not needed, 0 undecided")
        .contains("needed by advice: '" + LOCK + "'")
        .contains("  without it not kept, as advice, after 2 half-strokes and events: " + ADVICE);
  }

  /** What is not kept with the entry says nothing of it. */
  @Test
  void advice_that_is_not_kept_anyway_needs_no_entry() {
    Findings findings = Boxes.tried(OF_FREE);

    assertThat(findings.entries().verdicts())
        .allSatisfy(
            v -> {
              EntryVerdict.Needed needed = (EntryVerdict.Needed) v;
              assertThat(needed.advice()).isEmpty();
            });
    assertThat(FullLog.of(findings)).doesNotContain("needed by advice");
  }
}
