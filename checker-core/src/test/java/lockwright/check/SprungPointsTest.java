package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Quantity;
import lockwright.report.Findings;
import lockwright.report.readback.ReadBack;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * Sprung points; `docs/meaning.md` 2.3. That trains trail out of a loop through them, that none
 * takes them facing to the reverse leg, and that the home and the starting signal of the two ways
 * are locked against each other all the same, is common practice, no source. The box is ours.
 */
class SprungPointsTest {
  private static final Box BOX = Boxes.test("sprung-points");

  @Test
  void a_loop_with_sprung_points_at_either_end_is_proved() {
    assertThat(Boxes.check(BOX).passes()).isTrue();
    assertThat(BOX.requirements().stream().map(r -> r.id()))
        .contains("no conflict: signals 1 and 6", "no conflict: signals 2 and 7")
        .noneMatch(r -> r.startsWith("points held in rear") && r.matches(".*points [34T]"))
        .noneMatch(r -> r.startsWith("bolt and points agree"));
  }

  @Test
  void no_route_leads_facing_to_the_reverse_leg() {
    assertThat(BOX.routes().stream().map(r -> r.name()))
        .containsExactly("1 to down loop", "2 to east", "6 to west", "7 to up loop");
  }

  /** They have no position, and nothing moves them: in both readings. */
  @Test
  void they_are_no_quantity() {
    assertThat(Working.parted(BOX).quantities())
        .extracting(Quantity::key)
        .containsExactly(
            "lever 1", "lever 2", "lever 3", "lever 4", "lever 5", "lever 6", "lever 7");
  }

  /** Trains over either leg meet at the toe, and no points lie between them. */
  @Test
  void with_the_signals_free_of_each_other_trains_meet_at_the_toe() {
    assertThat(movements("1 locks 6", "no conflict: signals 1 and 6"))
        .containsExactly("lever 1 N>M", "lever 6 N>M");
    assertThat(BOX.conflicts())
        .filteredOn(c -> c.reason().contains("points 3"))
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.reason()).contains("points 3 (sprung; by both legs)");
              assertThat(c.possible()).isTrue();
              assertThat(c.opposed()).isFalse();
            });
  }

  /** The trap always lies for the trap; points 5 have a lever, and need a lock. */
  @Test
  void other_points_of_the_route_are_asked_for_as_ever() {
    assertThat(movements("6 locks 5", "points set: signal 6"))
        .containsExactly("lever 5 N>M", "lever 6 N>M");
    assertThat(BOX.routes().get(2).flankTraps()).extracting(t -> t.points()).containsExactly("T");
  }

  /** Without an exemption the home leads over facing points that nothing locks. */
  @Test
  void facing_on_a_passenger_line_they_are_never_bolted() {
    Findings findings =
        Boxes.check(
            BoxBuilder.box(BOX.name(), BOX.layout(), BOX.frame(), BOX.locking(), List.of()));

    assertThat(Boxes.movements(findings, "points bolted: signal 1, points 3"))
        .containsExactly("lever 1 N>M");
  }

  private static List<String> movements(String entry, String requirement) {
    List<Entry> kept = BOX.locking().stream().filter(e -> !e.words().equals(entry)).toList();
    assertThat(kept).hasSize(BOX.locking().size() - 1);
    return Boxes.movements(Boxes.check(BOX.withLocking(kept)), requirement);
  }

  /** 2.3: `points bolted` asks a bolt of the home, or an exemption; a distant asks none. */
  @Test
  void the_read_back_asks_no_bolt_of_sprung_points_for_a_distant() {
    String words = "\"facing, by the leg N; sprung, need lie no way";
    assertThat(ReadBack.csv(Boxes.example("proved/merrowdyke")))
        .contains("signal,1,points W," + words + "\",")
        .contains(
            "route,2 to down road,points W," + words + ", on a passenger line: must be bolted");
  }
}
