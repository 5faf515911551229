package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.Box;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.locking.Entry;
import lockwright.report.Findings;
import lockwright.report.Sequence;
import org.junit.jupiter.api.Test;

/**
 * Indication locking; `docs/meaning.md` 2.8. 49 CFR 236.762: it prevents the working of levers
 * where a switch fails to make the movement corresponding to its lever. The box is ours.
 */
class PointsWorkedElectricallyTest {
  private static final Box BOX = Boxes.test("points-worked-electrically");

  @Test
  void signals_that_need_the_lever_at_its_end_need_the_answer_of_all_its_points() {
    assertThat(Boxes.check(BOX).passes()).isTrue();
  }

  /** Both homes may be off with the crossover normal; over it, only one. */
  @Test
  void the_whole_stroke_includes_the_movement_of_the_points() {
    assertThat(Boxes.movements(Boxes.check(BOX), "route can be cleared: route 2 to down rear"))
        .containsExactly("lever 7 N>R", "lever 2 N>R");
  }

  /** Shortest by hand: the lever to its check, and one end of the crossover on its way. */
  @Test
  void without_the_lock_on_the_lever_one_end_moves_alone() {
    List<Entry> kept =
        BOX.locking().stream().filter(e -> !e.words().equals("2 locks both ways 7")).toList();
    Findings findings = Boxes.check(BOX.withLocking(kept));

    assertThat(Boxes.movements(findings, "points set: signal 2"))
        .containsExactly("lever 2 N>M", "lever 7 N>M", "points 7A N>M");
    assertThat(Boxes.movements(findings, "route held: route 2 to up front"))
        .containsExactly("lever 2 N>M", "lever 7 N>M");
  }

  @Test
  void the_movement_of_the_points_is_told_and_the_lock_of_their_lever_is_the_draft() {
    List<Entry> kept =
        BOX.locking().stream().filter(e -> !e.words().equals("2 locks both ways 7")).toList();
    Findings findings = Boxes.check(BOX.withLocking(kept));
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, "points set: signal 2");

    assertThat(Sequence.of(findings.box(), broken.played()).text())
        .last()
        .asString()
        .contains("points 7A begin to move to reverse", "points 7A lie neither way");
    assertThat(MissingEntry.draft(findings.box(), broken.requirement(), broken.played()))
        .map(MissingEntry::words)
        .contains("2 locks both ways 7");
  }

  /** Not so with a rod: there the lever at M is the points at M. */
  @Test
  void with_rods_the_same_lever_takes_its_points_along() {
    Box rods = BOX.withConnections(Connections.PLAIN);
    assertThat(rods.frame().levers().stream().map(Lever::work))
        .contains(new Work.OfPoints(List.of("7A", "7B")));
    List<Entry> kept =
        BOX.locking().stream().filter(e -> !e.words().equals("2 locks both ways 7")).toList();

    assertThat(Boxes.movements(Boxes.check(rods.withLocking(kept)), "points set: signal 2"))
        .containsExactly("lever 2 N>M", "lever 7 N>M");
  }
}
