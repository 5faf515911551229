package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.audit.Disagreement;
import lockwright.audit.EntryVerdict;
import lockwright.encode.Encoder;
import lockwright.encode.names.Names;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.locking.Entry.Kind;
import lockwright.report.Entries;
import lockwright.report.Findings;
import lockwright.report.text.FullLog;
import lockwright.spec.Span;
import lockwright.verdict.Verdict;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/** Each entry of a table for itself; meaning.md 10. */
class EntryTrialsTest {
  private static final Span HERE = new Span("locking.csv", 99, 1);
  private static final Limits USUAL = Limits.usual();
  private static final Box JUNCTION = Boxes.test("e1-junction");

  private static Box with(Box box, Entry... more) {
    List<Entry> entries = new ArrayList<>(box.locking());
    entries.addAll(List.of(more));
    return box.withLocking(entries);
  }

  private static Entry entry(Kind kind, String lever, String other) {
    return new Entry(kind, lever, List.of(other), List.of(), false, "", HERE);
  }

  private static Findings tried(Box box) {
    return Boxes.tried(Boxes.check(box));
  }

  private static List<String> kinds(Findings findings) {
    return findings.entries().verdicts().stream()
        .map(v -> v.entry().words() + ": " + v.getClass().getSimpleName())
        .toList();
  }

  private static Map<String, String> breaks(EntryVerdict verdict) {
    Map<String, String> breaks = new LinkedHashMap<>();
    for (EntryVerdict.Break b : ((EntryVerdict.Needed) verdict).breaks()) {
      breaks.put(
          b.requirement().id(),
          String.join(", ", b.run().played().steps().stream().map(s -> s.event().key()).toList()));
    }
    return breaks;
  }

  /**
   * Indian Railways Signal Engineering Manual, 12.26.7(c)(iii)-(iv), figure 1: the table. That
   * without '1 locks 4' the levers 4, 3, 1 clear the straight signal over points lying wrong, and
   * that without '3 locks 4 both ways' the points move with the bolt in, is our count.
   */
  @Test
  void every_entry_of_the_published_junction_is_needed() {
    Findings findings = tried(JUNCTION);

    assertThat(kinds(findings))
        .containsExactly(
            "1 released by 3: Needed",
            "1 locks 4: Needed",
            "2 released by 3: Needed",
            "2 released by 4: Needed",
            "3 locks both ways 4: Needed");
    assertThat(breaks(Boxes.entry(findings, "1 locks 4")))
        .containsEntry(
            "points set: signal 1",
            "lever 4 N>M, lever 4 M>R, lever 3 N>M, lever 3 M>R, lever 1 N>M");
    assertThat(breaks(Boxes.entry(findings, "3 locks both ways 4")))
        .containsEntry("bolt and points agree: points 4", "lever 3 N>M, lever 4 N>M");
    assertThat(FullLog.of(findings))
        .contains("5 needed, 0 implied by others, 0 not needed, 0 undecided")
        .contains("needed: '1 locks 4' (locking.csv:2:5)")
        .contains("  with it, movement 3 is not free");
  }

  /** Ours: 1 locks 4, 2 is released by 4, so 1 and 2 are never off together. */
  @Test
  void what_others_forbid_anyway_is_implied_and_each_of_two_that_say_the_same() {
    Findings findings =
        tried(with(JUNCTION, entry(Kind.LOCKS, "1", "2"), entry(Kind.LOCKS, "4", "1")));

    assertThat(kinds(findings))
        .contains(
            "1 locks 2: Implied",
            "1 locks 4: Implied",
            "4 locks 1: Implied",
            "1 released by 3: Needed");
  }

  /** Of two that are alike to the letter, one is left out, and not both. */
  @Test
  void of_two_alike_one_is_left_out() {
    Entry twice = JUNCTION.locking().get(1);

    assertThat(kinds(tried(with(JUNCTION, twice))))
        .filteredOn(k -> k.startsWith("1 locks 4"))
        .containsExactly("1 locks 4: Implied", "1 locks 4: Implied");
  }

  /** Ours: no requirement asks for a turn, and 4 can be pulled before 3. */
  @Test
  void a_rule_that_no_requirement_asks_for_is_not_needed_and_never_advice() {
    Findings findings = tried(with(JUNCTION, entry(Kind.NOT_AGAIN_BEFORE, "3", "4")));

    assertThat(kinds(findings)).contains("3 not again before 4: NotNeeded");
    EntryVerdict.NotNeeded verdict =
        (EntryVerdict.NotNeeded) Boxes.entry(findings, "3 not again before 4");
    assertThat(verdict.kept()).hasSize(8);
    assertThat(verdict.allows().played().steps().stream().map(s -> s.event().key()))
        .containsExactly("lever 3 N>M", "lever 3 M>N", "lever 3 N>M");
    assertThat(verdict.allows().heldAt()).isEqualTo(3);
    assertThat(FullLog.of(findings))
        .contains(
            "not needed by the requirements of this catalogue, under these assumptions, while all"
                + " others stay")
        .doesNotContain("can be left out", "should");
  }

  /** Ours: 3 holds 4 both ways while it is not normal, so 4 never starts with 3 elsewhere. */
  @Test
  void a_rule_of_order_that_a_lock_keeps_is_implied_and_else_not() {
    assertThat(kinds(tried(with(JUNCTION, entry(Kind.STARTS_ONLY_WITH_NORMAL, "4", "3")))))
        .contains("4 starts only with normal 3: Implied", "3 locks both ways 4: Needed");
    assertThat(kinds(tried(with(JUNCTION, entry(Kind.STARTS_ONLY_WITH_NORMAL, "4", "1")))))
        .contains("4 starts only with normal 1: Implied", "1 locks 4: Needed");
  }

  @Test
  void a_limit_is_told_as_undecided_and_as_nothing_else() {
    Findings checked = Boxes.check(JUNCTION);
    Limits tiny = new Limits(60, 1, 0);

    Findings findings = Boxes.tried(checked, tiny, (job, progress) -> Boxes.search(job));

    assertThat(findings.entries().verdicts())
        .hasSize(5)
        .hasOnlyElementsOfType(EntryVerdict.Undecided.class)
        .allSatisfy(v -> assertThat(((EntryVerdict.Undecided) v).reasons()).isNotEmpty());
    assertThat(FullLog.of(findings)).contains("0 not needed, 5 undecided");
  }

  /** One open requirement is enough for nothing to be said. */
  @Test
  void not_needed_is_said_only_when_no_requirement_is_open() {
    Box box = with(JUNCTION, entry(Kind.NOT_AGAIN_BEFORE, "3", "4"));
    Findings checked = Boxes.check(box);

    for (String open : List.of("points set: signal 1", Names.FORBIDDEN_BY_ENTRY)) {
      Findings findings =
          Boxes.tried(
              checked,
              USUAL,
              (job, progress) -> changed(Boxes.search(job), open, new Verdict.Unknown("limit")));
      assertThat(kinds(findings)).contains("3 not again before 4: Undecided");
      assertThat(((EntryVerdict.Undecided) Boxes.entry(findings, "3 not again before 4")).reasons())
          .containsExactly(open + ": limit");
    }
  }

  @Test
  void a_needed_entry_names_what_is_open_besides() {
    Findings findings =
        Boxes.tried(
            Boxes.check(JUNCTION),
            USUAL,
            (job, progress) ->
                changed(Boxes.search(job), "points set: signal 2", new Verdict.Unknown("limit")));

    EntryVerdict.Needed needed = (EntryVerdict.Needed) Boxes.entry(findings, "1 locks 4");
    assertThat(needed.open()).extracting(r -> r.id()).containsExactly("points set: signal 2");
    assertThat(FullLog.of(findings)).contains("  not known of: points set: signal 2");
  }

  @Test
  void a_box_that_does_not_hold_is_not_tried() {
    Box box = JUNCTION.withLocking(JUNCTION.locking().subList(1, 5));

    Findings findings =
        Boxes.tried(
            Boxes.check(box),
            USUAL,
            (job, progress) -> {
              throw new AssertionError("searched");
            });

    assertThat(findings.entries()).isEqualTo(Entries.DOES_NOT_HOLD);
    assertThat(FullLog.of(findings))
        .contains("each left out alone: not tried, as not every requirement");
    assertThat(FullLog.of(Boxes.check(box))).contains("not tried, as it was not asked for");
  }

  /** A search that left out another entry, or none, is found out. */
  @Test
  void a_trial_of_another_box_is_refused() {
    Findings checked = Boxes.check(JUNCTION);
    Job first = new Job(Encoder.parted(JUNCTION, JUNCTION.locking().get(0)).system(), USUAL);
    Found another = Boxes.search(first);
    Map<String, Verdict> none =
        new LinkedHashMap<>(
            Boxes.search(new Job(Encoder.parted(JUNCTION).system(), USUAL)).verdicts());
    none.keySet().retainAll(another.verdicts().keySet());

    for (Found found : List.of(another, new Found(none, Map.of(), "none left out"))) {
      assertThatThrownBy(() -> Boxes.tried(checked, USUAL, (job, progress) -> found))
          .isInstanceOf(Disagreement.class);
    }
  }

  /** And so is an entry that the table has not. */
  @Test
  void what_is_not_in_the_table_cannot_be_left_out() {
    Entry stranger = entry(Kind.LOCKS, "4", "1");
    assertThatThrownBy(() -> Encoder.parted(JUNCTION, stranger))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Working.parted(JUNCTION, stranger))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** "Implied" needs a certificate of the box without the entry. */
  @Test
  void implied_on_the_proof_of_the_box_with_the_entry_is_refused() {
    Findings checked = Boxes.check(JUNCTION);
    Job whole = new Job(Encoder.parted(JUNCTION).system(), USUAL);
    Verdict proof = Boxes.search(whole).verdicts().get("points set: signal 1");

    assertThatThrownBy(
            () ->
                Boxes.tried(
                    checked,
                    USUAL,
                    (job, progress) -> changed(Boxes.search(job), Names.FORBIDDEN_BY_ENTRY, proof)))
        .isInstanceOf(Disagreement.class)
        .hasMessageContaining("does not prove it");
  }

  private static Found changed(Found found, String target, Verdict verdict) {
    Map<String, Verdict> verdicts = new LinkedHashMap<>(found.verdicts());
    verdicts.put(target, verdict);
    return new Found(verdicts, found.decidedBy(), found.solver());
  }
}
