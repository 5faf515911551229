package lockwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.layout.Arm;
import lockwright.railway.locking.Entry;
import lockwright.railway.section.Section;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.HandBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExplanationTest {
  private static Box read(String first, String... more) {
    return BoxBuilder.read(Path.of(first, more)).box().orElseThrow();
  }

  private static Box test(String name) {
    return read("src", "test", "resources", "boxes", name);
  }

  private static Explanation explain(Box box, String reversed, String lever) {
    return explain(box, reversed, "", lever);
  }

  private static Explanation explain(Box box, String reversed, String partWay, String lever) {
    Asked asked = Asked.written(reversed, partWay, lever);
    assertThat(asked.faults(box)).isEmpty();
    return Explanation.of(box, asked, Walks.USUAL);
  }

  private static String holding(Explanation explanation) {
    return String.join(
        " + ",
        explanation.ways().get(0).heldBy().stream()
            .filter(h -> !h.unmarked())
            .map(h -> h.entry().map(Entry::words).orElse(h.rule()))
            .toList());
  }

  /**
   * The printed results of a junction with a facing point lock: Indian Railways Signal Engineering
   * Manual, chapter 12, para 12.26.7(c)(iii)-(iv), figure 1 (text read, figure not seen). Which
   * entry holds is by the table printed with it; "locked", "back-locked" and "locked reversed" are
   * its words.
   */
  @ParameterizedTest
  @CsvSource({
    "'',    1, locked,          1 released by 3",
    "'',    2, locked,          2 released by 3 + 2 released by 4",
    "3,     2, locked,          2 released by 4",
    "3,     4, locked,          3 locks both ways 4",
    "3,     1, free,            ''",
    "'3,1', 3, back-locked,     1 released by 3",
    "'4,3', 1, locked,          1 locks 4",
    "'4,3', 4, locked reversed, 3 locks both ways 4",
    "'4,3', 2, free,            ''",
    "'4,3,2', 3, back-locked,   2 released by 3"
  })
  void the_printed_lines_of_a_junction(String pulled, String lever, String word, String entries) {
    Explanation explanation = explain(test("e1-junction"), pulled, lever);
    assertThat(explanation.arrival()).isInstanceOf(Arrival.AsGiven.class);
    assertThat(explanation.ways().get(0).words()).isEqualTo(word);
    assertThat(holding(explanation)).isEqualTo(entries);
  }

  /**
   * The printed results of a conditional release: the same manual, 12.26.7(c)(vi)-(vii), figure 2
   * (text read). The one entry holds all that is held, as release, as back lock, as a piece that
   * holds, and by its condition.
   */
  @ParameterizedTest
  @CsvSource({
    "'',    1, locked,      release wanting",
    "2,     1, free,        ''",
    "'2,1', 3, locked,      holding piece",
    "'2,1', 2, back-locked, condition",
    "3,     1, free,        ''",
    "'3,1', 2, locked,      holding piece",
    "'3,1', 3, back-locked, back lock"
  })
  void the_printed_lines_of_a_conditional_release(
      String pulled, String lever, String word, String seen) {
    Explanation explanation = explain(conditional(" (holds)"), pulled, lever);
    assertThat(explanation.ways().get(0).words()).isEqualTo(word);
    assertThat(seen(explanation)).isEqualTo(seen);
  }

  private static Box conditional(String mark) {
    return new HandBox()
        .signal("1", Arm.STOP)
        .points("2")
        .points("3")
        .locking("1 released by 3 when 2 N" + mark)
        .box();
  }

  private static String seen(Explanation explanation) {
    return String.join(
        " + ",
        explanation.ways().get(0).heldBy().stream()
            .map(h -> h.seen().replaceFirst(":.*", ""))
            .toList());
  }

  /** Unmarked, the third and fifth of these lines are weaker; what the mark would do is told. */
  @Test
  void what_only_an_unmarked_piece_would_hold_is_told_apart() {
    Way third = explain(conditional(""), "2,1", "3").ways().get(0);
    assertThat(third.free()).isTrue();
    assertThat(third.doubtful()).isTrue();
    assertThat(third.heldBy()).singleElement().extracting(Held::seen).asString().startsWith("hold");
    Way back = explain(conditional(""), "2,1", "2").ways().get(0);
    assertThat(back.words()).isEqualTo("back-locked");
    assertThat(explain(conditional(" (holds)"), "2,1", "3").ways().get(0).doubtful()).isFalse();
  }

  /**
   * Lever plate: G. Findlay, The Working and Management of an English Railway, p. 74 (read): the
   * plate of lever 10 reads 5, 7, 23.
   */
  @Test
  void a_lever_is_freed_by_the_three_on_its_plate() {
    Explanation explanation = explain(test("e6-lever-plate"), "", "10");
    assertThat(holding(explanation))
        .isEqualTo("10 released by 5 + 10 released by 7 + 10 released by 23");
    assertThat(freeing(explanation)).containsExactly("lever 5 N>R", "lever 7 N>R", "lever 23 N>R");
  }

  private static List<String> freeing(Explanation explanation) {
    return ((Outcome.Found) explanation.freeing().orElseThrow())
        .walk().events().stream().map(e -> e.key()).toList();
  }

  /** Counted by hand on the junction: what stands in the way is put back first. */
  @Test
  void a_lever_is_freed_by_putting_back_and_pulling() {
    Box junction = test("e1-junction");
    assertThat(freeing(explain(junction, "3,1", "4")))
        .containsExactly("lever 1 R>N", "lever 3 R>N");
    assertThat(freeing(explain(junction, "4,3,2", "1")))
        .containsExactly("lever 2 R>N", "lever 3 R>N", "lever 4 R>N", "lever 3 N>R");
    assertThat(explain(junction, "3", "1").freeing()).isEmpty();
  }

  @Test
  void a_state_that_an_entry_forbids_is_told_with_the_entry() {
    Explanation explanation = explain(test("e1-junction"), "4,1", "2");
    assertThat(explanation.arrival()).isInstanceOf(Arrival.Forbidden.class);
    assertThat(((Arrival.Forbidden) explanation.arrival()).by())
        .extracting(Entry::words)
        .containsExactly("1 released by 3", "1 locks 4");
    assertThat(explanation.freeing()).isEmpty();
  }

  /** No entry forbids both reversed; but each must start first. */
  @Test
  void a_state_that_no_sequence_reaches_is_told_too() {
    Box box =
        new HandBox()
            .signal("1", Arm.STOP)
            .signal("2", Arm.STOP)
            .locking("1 starts only with normal 2", "2 starts only with normal 1")
            .box();
    assertThat(explain(box, "1,2", "1").arrival()).isInstanceOf(Arrival.Never.class);
    assertThat(explain(box, "1", "2").arrival()).isInstanceOf(Arrival.AsGiven.class);
    assertThat(seen(explain(box, "1", "2"))).isEqualTo("order");
  }

  @Test
  void the_order_of_the_pulls_counts_where_the_locking_lets_it() {
    Box box =
        new HandBox()
            .signal("1", Arm.STOP)
            .signal("2", Arm.STOP)
            .locking("1 not again before 2")
            .box();
    assertThat(explain(box, "1,2", "1").state().values())
        .containsEntry("turn of 1 after 2", "return awaited");
    assertThat(explain(box, "2,1", "1").state().values())
        .containsEntry("turn of 1 after 2", "pull awaited");
    Explanation other = explain(test("e1-junction"), "3,4", "2");
    assertThat(other.arrival()).isInstanceOf(Arrival.Otherwise.class);
    assertThat(other.ways().get(0).free()).isTrue();
  }

  @Test
  void a_lever_part_way_holds_what_it_holds_and_may_go_either_way() {
    Box junction = test("e1-junction");
    Explanation held = explain(junction, "", "4", "3");
    assertThat(held.arrival()).isInstanceOf(Arrival.AsGiven.class);
    assertThat(held.ways().get(0).words()).isEqualTo("locked");
    assertThat(holding(held)).isEqualTo("3 locks both ways 4");
    assertThat(freeing(held)).containsExactly("lever 4 M>R");
    Explanation partWay = explain(junction, "3", "1", "1");
    assertThat(partWay.ways()).hasSize(2).allMatch(Way::free);
    assertThat(explain(junction, "3", "1", "3").ways().get(0).words()).isEqualTo("back-locked");
  }

  /** Two instruments, as in A. Williams, How It Works, p. 75: a staff is needed to pull lever 1. */
  @Test
  void a_token_release_is_named_and_the_withdrawal_that_gives_it_is_found() {
    Box staffs = test("e5-staffs");
    Explanation explanation = explain(staffs, "", "1");
    assertThat(explanation.ways().get(0).words()).isEqualTo("locked");
    assertThat(holding(explanation))
        .isEqualTo("lever 1 leaves N only with the release of Fen to Holm given");
    String here = staffs.sections().stream().map(Section::here).findFirst().orElseThrow();
    assertThat(freeing(explanation))
        .hasSize(3)
        .last()
        .isEqualTo("section Fen to Holm: finish the withdrawal at " + here);
  }

  @Test
  void never_is_said_only_when_all_was_tried_and_a_limit_is_called_one() {
    Box ring =
        new HandBox()
            .signal("1", Arm.STOP)
            .signal("2", Arm.STOP)
            .locking("1 released by 2", "2 released by 1")
            .box();
    assertThat(explain(ring, "", "1").freeing().orElseThrow()).isInstanceOf(Outcome.Never.class);
    Box plate = test("e6-lever-plate");
    Outcome outcome = Explanation.of(plate, Asked.written("", "", "10"), 3).freeing().orElseThrow();
    assertThat(outcome).isInstanceOf(Outcome.NotWithin.class);
    assertThat(((Outcome.NotWithin) outcome).movements()).isLessThan(3);
  }

  @Test
  void all_that_is_wrong_with_a_question_is_told_with_what_to_do() {
    Box quillby = read("..", "examples", "proved", "quillby", "box");
    assertThat(Asked.written("2 2;99", "13,2", "").faults(quillby))
        .extracting(f -> f.setting() + ": " + f.what())
        .containsExactly(
            "lockwright.lever: no lever is asked about",
            "lockwright.reversed: lever 2 is named twice",
            "lockwright.reversed: the frame has no lever '99'",
            "lockwright.partWay: lever 13 is spare: it works nothing, and does not move",
            "lockwright.partWay: lever 2 is named twice");
    assertThat(Asked.written(null, null, "18").faults(quillby)).hasSize(1);
    assertThat(Stream.of("99", "13").map(l -> Asked.written("", "", l).faults(quillby)))
        .allMatch(f -> f.size() == 1 && !f.get(0).fix().isEmpty());
  }

  @Test
  void a_lever_out_of_use_is_not_asked_about() {
    Box everyForm = test("every-form");
    List<String> still =
        everyForm.frame().levers().stream()
            .filter(l -> !l.work().moves())
            .map(l -> Asked.written("", "", l.id()).faults(everyForm).get(0).what())
            .toList();
    assertThat(still)
        .anyMatch(w -> w.contains(" is out of use: "))
        .anyMatch(w -> w.contains("spare"));
  }

  /** 2 locks 12 when 8 N is not marked: with 8 reversed its piece holds 12 only for possibility. */
  @Test
  void the_conditions_that_apply_are_told() {
    Box quillby = read("..", "examples", "proved", "quillby", "box");
    Way held = explain(quillby, "9,2", "12").ways().get(0);
    assertThat(held.words()).isEqualTo("locked");
    assertThat(held.heldBy())
        .extracting(Held::seen)
        .containsExactly("converse: 2 is reversed, and holds 12 normal (condition: 8 is normal)");
    Way weak = explain(quillby, "8,9,2", "12").ways().get(0);
    assertThat(weak.doubtful()).isTrue();
    assertThat(weak.heldBy())
        .extracting(Held::seen)
        .containsExactly("holding piece: 2 is reversed, and its piece holds 12 as it lies");
  }
}
