package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import lockwright.audit.Audited;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.report.Findings;
import lockwright.worker.Limits;
import org.junit.jupiter.api.Test;

/** The whole flow on published cases; the source stands beside each. */
class PublishedCasesTest {
  private static Box without(Box box, Predicate<Entry> out) {
    List<Entry> left = box.locking().stream().filter(out.negate()).toList();
    assertThat(left).hasSize(box.locking().size() - 1);
    return box.withLocking(left);
  }

  /** Indian Railways Signal Engineering Manual, 12.26.7(c)(iii)-(iv), figure 1. */
  @Test
  void the_published_junction_is_proved() {
    Findings findings = Boxes.check(Boxes.test("e1-junction"));

    assertThat(findings.passes()).isTrue();
    assertThat(findings.tally().proved()).isEqualTo(8);
    assertThat(Boxes.movements(findings, "route can be cleared: route 2 to branch"))
        .as("published: with 4 and 3 reversed, 2 is free")
        .containsExactly("lever 4 N>R", "lever 3 N>R", "lever 2 N>R");
  }

  /** The same source; that leaving the entry out allows 4-3-1 is our count. */
  @Test
  void without_1_locks_4_the_straight_signal_clears_over_points_lying_wrong() {
    Box box = without(Boxes.test("e1-junction"), e -> e.words().equals("1 locks 4"));

    assertThat(Boxes.movements(Boxes.check(box), "points set: signal 1"))
        .as("4-3-1")
        .containsExactly("lever 4 N>M", "lever 4 M>R", "lever 3 N>M", "lever 3 M>R", "lever 1 N>M");
  }

  /** The same source. A check of movements sees it with whole strokes too. */
  @Test
  void without_3_locks_4_both_ways_bolt_and_points_do_not_agree() {
    Box box = without(Boxes.test("e1-junction"), e -> e.words().equals("3 locks both ways 4"));
    Findings findings = Boxes.check(box);

    assertThat(Boxes.movements(findings, "bolt and points agree: points 4"))
        .containsExactly("lever 3 N>M", "lever 4 N>M");
  }

  /**
   * Engineering Wonders of the World, vol. I, p. 229: the extract says nothing of 7 or 8 against 2,
   * so branch against main is not kept. What it does say holds.
   */
  @Test
  void a_table_that_leaves_branch_against_main_out_is_found_wanting() {
    Findings findings = Boxes.check(Boxes.test("e4-siding-and-branch"));

    assertThat(Boxes.movements(findings, "no conflict: signals 2 and 7"))
        .as("8 is pulled for the branch, 7 is off, and nothing holds 2")
        .containsExactly("lever 2 N>M", "lever 8 N>M", "lever 8 M>R", "lever 7 N>M");
    assertThat(Boxes.of(findings, "points set: signal 2")).isInstanceOf(Audited.Broken.class);
    for (String kept : List.of("no conflict: signals 2 and 5", "points set: signal 5")) {
      assertThat(Boxes.of(findings, kept)).as(kept).isInstanceOf(Audited.Proved.class);
    }
    assertThat(Boxes.of(findings, "distant follows: signal 1"))
        .as("no facing points, and 1 is released by 2 and 3")
        .isInstanceOf(Audited.Proved.class);
  }

  /** A. Williams, How It Works, p. 75: 20 staffs in phase; the irregular withdrawal is ours. */
  @Test
  void one_irregular_withdrawal_lets_two_staffs_out() {
    Findings findings = Boxes.check(Boxes.test("e5-staffs"));
    String section = "section Fen to Holm: ";

    assertThat(Boxes.movements(findings, "one token out: section Fen to Holm"))
        .containsExactly(
            section + "plunge at Alder Fen",
            section + "start a withdrawal at Holm",
            section + "finish the withdrawal at Holm",
            section + "irregular withdrawal at Alder Fen");
    assertThat(findings.tally().broken()).isEqualTo(1);
  }

  /** Findlay, The Working and Management of an English Railway, p. 74: the plate reads 5, 7, 23. */
  @Test
  void the_pulling_order_is_that_of_the_published_lever_plate() {
    Findings findings = Boxes.check(Boxes.test("e6-lever-plate"));

    assertThat(Boxes.movements(findings, "lever can be moved: lever 10"))
        .containsExactly("lever 5 N>R", "lever 7 N>R", "lever 23 N>R", "lever 10 N>R");
  }

  /** Ours: a proof that no single lock gives. */
  @Test
  void the_ring_of_releases_needs_the_complete_engine() {
    Findings findings = Boxes.check(Boxes.test("released-in-a-ring"));

    assertThat(Boxes.of(findings, "no conflict: signals 1 and 2"))
        .isInstanceOf(Audited.Proved.class);
    assertThat(findings.decidedBy().get("no conflict: signals 1 and 2"))
        .isEqualTo("property directed reachability");
    assertThat(Boxes.of(findings, "lever can be moved: lever 4"))
        .isInstanceOf(Audited.Impossible.class);
    assertThat(findings.passes()).isFalse();
  }

  /**
   * Ours: the home signal reads for the branch only, so on the straight road nothing speaks for the
   * line ahead; a distant that could be off there would be off with the home at danger.
   */
  @Test
  void a_distant_whose_path_no_stop_arm_admits_must_never_be_off() {
    Findings findings = Boxes.check(Boxes.test("distant-without-stop"));

    assertThat(Boxes.movements(findings, "distant follows: signal 1"))
        .containsExactly("lever 1 N>M");
  }

  /**
   * Ours: a distant with no stop signal on its path at all; and a calling-on arm needs its token.
   */
  @Test
  void a_calling_on_arm_into_a_section_is_earned_like_a_stop_arm() {
    Findings findings = Boxes.check(Boxes.test("calling-on-into-section"));

    assertThat(Boxes.movements(findings, "section signal earned: signal 3, section Odd to Holm"))
        .containsExactly("lever 3 N>M");
    assertThat(Boxes.movements(findings, "distant follows: signal 1"))
        .containsExactly("lever 1 N>M");
  }

  /** Ours: a limit is never taken for a proof. */
  @Test
  void a_tiny_limit_leaves_everything_undecided() {
    Findings findings = Boxes.check(Boxes.test("released-in-a-ring"), new Limits(60, 1, 0));

    assertThat(findings.audited()).hasOnlyElementsOfType(Audited.Undecided.class);
    assertThat(findings.passes()).isFalse();
  }
}
