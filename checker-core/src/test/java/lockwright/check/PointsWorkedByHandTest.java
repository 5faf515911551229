package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.report.Findings;
import lockwright.report.Sequence;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * Points worked by hand; `docs/meaning.md` 2.3. That a bolt on a lever holds them, and that the arm
 * proves their lie by a detector in its wire, is common practice, no source (the detector: Board of
 * Trade Requirements, no. 5). The box is ours.
 */
class PointsWorkedByHandTest {
  private static final Box BOX = Boxes.test("points-worked-by-hand");

  /** Points A, in the yard, move at any time: no requirement looks there. */
  @Test
  void a_bolt_that_the_arm_locks_and_a_detector_in_its_wire_are_enough() {
    assertThat(Boxes.check(BOX).passes()).isTrue();
    assertThat(BOX.requirements().stream().map(r -> r.id()))
        .contains("points bolted: signal 1, points 3")
        .noneMatch(r -> r.startsWith("bolt and points agree"));
  }

  @Test
  void with_the_bolt_free_the_points_move_under_the_arm() {
    Box free = without("1 locks 2");
    Findings findings = Boxes.check(free);

    assertThat(Boxes.movements(findings, "points set: signal 1"))
        .containsExactly("lever 1 N>M", "lever 2 N>M", "points 3 N>M");
    assertThat(Boxes.movements(findings, "route held: route 1 to main"))
        .containsExactly("lever 1 N>M", "lever 2 N>M");
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, "points set: signal 1");
    assertThat(Sequence.of(free, broken.played()).text())
        .last()
        .asString()
        .contains("by hand: reverse points 3 part-way", "points 3 lie neither way");
    assertThat(MissingEntry.draft(free, broken.requirement(), broken.played()))
        .map(MissingEntry::words)
        .contains("1 locks 2");
  }

  /** In the beginning the bolt is in, but in which lie nobody has said. */
  @Test
  void without_a_detector_the_points_may_be_bolted_the_wrong_way() {
    Findings findings = Boxes.check(BOX.withConnections(Connections.PLAIN));

    assertThat(Boxes.movements(findings, "points set: signal 1")).containsExactly("lever 1 N>M");
  }

  @Test
  void without_a_bolt_nothing_holds_them() {
    Frame frame =
        new Frame(
            BOX.frame().levers().stream()
                .map(
                    l ->
                        l.id().equals("2")
                            ? new Lever(l.id(), l.label(), new Work.Spare(), l.at())
                            : l)
                .toList(),
            BOX.frame().connections());
    Findings findings =
        Boxes.check(
            BoxBuilder.box(
                BOX.name(), BOX.layout(), frame, without("1 locks 2").locking(), List.of()));

    assertThat(Boxes.movements(findings, "points bolted: signal 1, points 3"))
        .containsExactly("lever 1 N>M");
    assertThat(Boxes.movements(findings, "route held: route 1 to main"))
        .containsExactly("lever 1 N>M", "points 3 N>M");
  }

  @Test
  void a_bolt_enters_points_only_where_they_lie_and_then_holds_them() {
    Working working = Working.parted(BOX);
    State state = working.beginnings().iterator().next();
    assertThat(holds(working, state, "points 3 N>M"))
        .containsExactly("points 3 do not move with their bolt in");
    for (String key : List.of("lever 2 N>M", "points 3 N>M")) {
      state = working.make(state, event(working, key));
    }
    assertThat(holds(working, state, "lever 2 M>N"))
        .containsExactly("the bolt does not enter points 3, which lie neither way");
    assertThat(holds(working, state, "lever 2 M>R")).isEmpty();
    state = working.make(state, event(working, "points 3 M>R"));
    assertThat(holds(working, state, "lever 2 M>N")).isEmpty();
  }

  /** Points 3, under their bolt, begin at N or R; A anywhere. */
  @Test
  void they_begin_where_they_may_have_been_left() {
    assertThat(Working.parted(BOX).beginnings()).hasSize(6);
  }

  private static List<String> holds(Working working, State state, String key) {
    return working.holds(state, event(working, key)).stream().map(h -> h.words()).toList();
  }

  private static Event event(Working working, String key) {
    return working.movements().stream()
        .map(m -> m.event())
        .filter(e -> e.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static Box without(String entry) {
    List<Entry> kept = BOX.locking().stream().filter(e -> !e.words().equals(entry)).toList();
    assertThat(kept).hasSize(BOX.locking().size() - 1);
    return BOX.withLocking(kept);
  }
}
