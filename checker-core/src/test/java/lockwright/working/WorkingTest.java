package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Route;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.section.Section.Release;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be said of a box, how it begins and what moves: docs/meaning.md 2, 3, 5 and 7. */
class WorkingTest {

  private static HandBox everything() {
    return new HandBox()
        .signal("1", Arm.STOP)
        .spare("2")
        .release("3", "yard", true, "Y1")
        .release("4", "quarry", false, "Q1")
        .routes(HandBox.route("1", "", new Route.End.InSection("line")))
        .section(
            Sections.pair(2)
                .irregular(Irregular.ONCE)
                .release(new Release(List.of("1"), Lasts.UNTIL_USED, Begins.EITHER)));
  }

  @Test
  void the_quantities_are_in_order() {
    assertThat(Working.parted(everything().box()).quantities())
        .extracting(Quantity::key)
        .containsExactly(
            "lever 1",
            "lever 2",
            "lever 3",
            "lever 4",
            "points Y1",
            "points Q1",
            "section line: phase",
            "section line: tokens in Here",
            "section line: tokens in There",
            "section line: tokens out",
            "section line: plunging at Here",
            "section line: plunging at There",
            "section line: withdrawal at Here",
            "section line: withdrawal at There",
            "section line: release",
            "section line: fresh tokens",
            "section line: irregular withdrawal");
  }

  @Test
  void the_movements_are_in_order() {
    List<String> parted = keys(Working.parted(everything().box()));
    assertThat(parted.subList(0, 9))
        .containsExactly(
            "lever 1 N>M",
            "lever 1 M>R",
            "lever 1 R>M",
            "lever 1 M>N",
            "lever 3 N>M",
            "lever 3 M>R",
            "lever 3 R>M",
            "lever 3 M>N",
            "lever 4 N>M");
    assertThat(parted.subList(12, 20))
        .containsExactly(
            "points Y1 N>M",
            "points Y1 M>R",
            "points Y1 R>M",
            "points Y1 M>N",
            "points Q1 N>M",
            "points Q1 M>R",
            "points Q1 R>M",
            "points Q1 M>N");
    assertThat(parted.subList(20, 24))
        .containsExactly(
            "section line: plunge at Here",
            "section line: plunge at There",
            "section line: stop plunging at Here",
            "section line: stop plunging at There");
    assertThat(parted).hasSize(20 + 16);
    assertThat(keys(Working.whole(everything().box())).subList(0, 6))
        .containsExactly(
            "lever 1 N>R",
            "lever 1 R>N",
            "lever 3 N>R",
            "lever 3 R>N",
            "lever 4 N>R",
            "lever 4 R>N");
  }

  private static List<String> keys(Working working) {
    return working.movements().stream().map(m -> m.event().key()).toList();
  }

  @Test
  void the_beginnings_are_those_of_the_condition_and_in_order() {
    Working working = Working.parted(everything().box());
    List<State> counted = new ArrayList<>();
    working.beginnings().forEach(counted::add);
    assertThat(counted).hasSize(3 * 3 * 2).doesNotHaveDuplicates();
    assertThat(counted).allMatch(working.beginning()::evaluate);
    assertThat(counted).isSortedAccordingTo((a, b) -> Arrays.compare(a.indices(), b.indices()));
    Set<State> near = new LinkedHashSet<>();
    for (State state : counted) {
      for (int q = 0; q < working.quantities().size(); q++) {
        Quantity quantity = working.quantities().get(q);
        for (String value : quantity.values()) {
          SortedMap<String, String> changed = state.values();
          changed.put(quantity.key(), value);
          near.add(working.state(changed));
        }
      }
    }
    assertThat(near).filteredOn(working.beginning()::evaluate).hasSameElementsAs(counted);
  }

  /** The table of 3.1, each row with a lever at N, M and R: what is forbidden together. */
  @ParameterizedTest
  @CsvSource({
    "a released by b,                    MN MM RN RM",
    "a locks b,                          MM MR RM RR",
    "a locks both ways b,                MM RM",
    "a while normal locks both ways b,   NM MM"
  })
  void the_combinations_that_an_entry_forbids(String entry, String forbidden) {
    HandBox box = new HandBox().points("a").points("b").points("c").points("d");
    for (String c : List.of("N", "M", "R")) {
      assertForbidden(box, entry, forbidden, c, true);
      assertForbidden(box, entry + " when c N", forbidden, c, !c.equals("R"));
      assertForbidden(box, entry + " when c R", forbidden, c, !c.equals("N"));
      assertForbidden(box, entry + " when c R and d N", forbidden, c, !c.equals("N"));
      assertForbidden(box, entry + " when d R", forbidden, c, false);
    }
  }

  private static void assertForbidden(
      HandBox hand, String words, String forbidden, String c, boolean applies) {
    Box box = hand.box();
    Quantities quantities = new Quantities(box);
    Locking locking = new Locking(box, new Apparatus(box, quantities), false);
    Condition condition = locking.forbidden(HandBox.entry(words));
    Working working = Working.parted(box);
    for (String a : List.of("N", "M", "R")) {
      for (String b : List.of("N", "M", "R")) {
        State state =
            working.state(Map.of("lever a", a, "lever b", b, "lever c", c, "lever d", "N"));
        assertThat(condition.evaluate(state))
            .as(words + " at " + a + b + c)
            .isEqualTo(applies && List.of(forbidden.split(" ")).contains(a + b));
      }
    }
  }

  @Test
  void any_of_several_levers_releases() {
    Working working =
        Working.parted(
            new HandBox()
                .points("a")
                .points("b")
                .points("d")
                .locking("a released by b or d")
                .box());
    assertThat(Frames.pulled(working).free("a")).isFalse();
    assertThat(Frames.pulled(working, "b").free("a")).isTrue();
    assertThat(Frames.pulled(working, "d").free("a")).isTrue();
    Frames both = Frames.pulled(working, "b", "d", "a");
    assertThat(both.free("b")).isTrue();
    both.make(new Event.LeverMoves("b", Position.R, Position.M));
    assertThat(both.free("d")).isFalse();
  }

  @Test
  void what_holds_a_movement_is_told_by_its_entries_and_rules() {
    Working working =
        Working.parted(
            new HandBox()
                .signal("1", Arm.STOP)
                .points("2")
                .spare("3")
                .locking("1 released by 2", "1 locks 3")
                .box());
    State state = working.beginnings().iterator().next();
    Event pull = new Event.LeverMoves("1", Position.N, Position.M);
    assertThat(working.holds(state, pull))
        .extracting(Hold::words)
        .containsExactly("1 released by 2: 1 stands at N, 2 stands at N");
    assertThat(working.holds(state, pull).get(0).entry())
        .contains(HandBox.entry("1 released by 2"));
    assertThat(working.holds(state, new Event.LeverMoves("2", Position.R, Position.M)))
        .extracting(Hold::words)
        .containsExactly("lever 2 is not at R");
    assertThat(working.holds(state, new Event.LeverMoves("3", Position.N, Position.M)))
        .extracting(Hold::words)
        .containsExactly("the box has no movement 'lever 3 N>M'");
    assertThatIllegalStateException()
        .isThrownBy(() -> working.make(state, pull))
        .withMessageContaining("1 released by 2");
    assertThat(working.holds(state, new Event.LeverMoves("2", Position.N, Position.M))).isEmpty();
  }

  /** 2.3. Held while open: G. Findlay, The Working and Management of an English Railway, p. 90. */
  @Test
  void a_release_held_while_open_goes_home_only_with_the_points_normal() {
    Working working = Working.parted(new HandBox().release("3", "yard", true, "Y1").box());
    Frames frame = Frames.pulled(working);
    Event open = new Event.PointsMove("Y1", Position.N, Position.M);
    assertThat(working.free(frame.state(), open)).isFalse();
    frame.make(new Event.LeverMoves("3", Position.N, Position.M));
    assertThat(working.free(frame.state(), open)).isFalse();
    frame.make(new Event.LeverMoves("3", Position.M, Position.R)).make(open);
    assertThat(frame.free("3")).isFalse();
    frame.make(new Event.PointsMove("Y1", Position.M, Position.N));
    assertThat(frame.free("3")).isTrue();
  }

  @Test
  void a_release_not_held_goes_home_at_any_time_and_its_points_begin_anywhere() {
    Working working = Working.parted(new HandBox().release("4", "quarry", false, "Q1").box());
    assertThat(working.beginnings()).hasSize(3);
    Frames frame = Frames.pulled(working, "4");
    frame.make(new Event.PointsMove("Q1", Position.N, Position.M));
    assertThat(frame.free("4")).isTrue();
    frame.make(new Event.LeverMoves("4", Position.R, Position.M));
    assertThat(working.free(frame.state(), new Event.PointsMove("Q1", Position.M, Position.R)))
        .isFalse();
  }

  @Test
  void by_whole_strokes_every_piece_with_conditions_holds() {
    Box box = new HandBox().points("a").points("b").points("c").locking("a locks b when c R").box();
    Event back = new Event.LeverMoves("c", Position.N, Position.R);
    Working whole = Working.whole(box);
    State pulled =
        whole.make(
            whole.beginnings().iterator().next(),
            new Event.LeverMoves("a", Position.N, Position.R));
    assertThat(whole.free(pulled, back)).isFalse();
    assertThat(Frames.pulled(Working.parted(box), "a").free("c")).isTrue();
  }
}
