package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.railway.words.Event.Deed;
import lockwright.railway.words.Event.LockDeed;
import org.junit.jupiter.api.Test;

/**
 * A ground frame that a token releases: docs/meaning.md 2.3, 4.2 and 4.4. That the token locks the
 * points is of the Board of Trade Requirements, no. 2, as printed in W. H. Mills, Railway
 * Construction (1898); that a lock holds the token while the points are open is as of the key in G.
 * Findlay, The Working and Management of an English Railway, p. 90; the rest is common practice, no
 * source.
 */
class TokenLockTest {
  private static final LockDeed FRESH = LockDeed.PUT_FRESH_IN;
  private static final LockDeed OTHER = LockDeed.PUT_OTHER_IN;
  private static final LockDeed OUT = LockDeed.TAKE_OUT;
  private static final Requirement EARNED = new Requirement.SectionSignalEarned("line", "1");

  /** Ground frames a (points A1 and A2) and b (points B1); a section signal 1, if asked for. */
  private static Line line(int tokens, boolean signal, boolean held) {
    HandBox box =
        new HandBox()
            .groundFrame("a", "A1", "A2")
            .groundFrame("b", "B1")
            .section(Sections.pair(tokens).lock("a", held).lock("b", held));
    if (signal) {
      box.signal("1", Arm.STOP)
          .routes(HandBox.route("1", "", new Route.End.InSection("line")))
          .requirements(EARNED);
    }
    return new Line(Working.parted(box.box()), tokens);
  }

  @Test
  void points_move_only_with_a_token_in_their_own_lock() {
    Line line = line(2, false, true);
    assertThat(line.opens("A1")).isFalse();
    line.withdraw("Here");
    assertThat(line.opens("A1")).as("the token is out, and not in the lock").isFalse();
    line.make(OTHER, "b");
    assertThat(line.opens("A1")).isFalse();
    assertThat(line.opens("B1")).isTrue();
  }

  @Test
  void no_token_can_be_put_in_a_lock_that_is_not_out() {
    Line line = line(2, false, true);
    assertThat(line.free(OTHER, "a")).isFalse();
    assertThat(line.free(OUT, "a")).isFalse();
    assertThat(line.withdraw("Here").free(OTHER, "a")).isTrue();
  }

  @Test
  void a_token_in_a_lock_is_in_no_other_and_can_be_put_in_no_instrument() {
    Line line = line(2, false, true).withdraw("Here").make(OTHER, "a");
    assertThat(line.is("tokens out")).isEqualTo("1");
    assertThat(line.free(OTHER, "b")).isFalse();
    assertThat(line.free(OTHER, "a")).isFalse();
    assertThat(line.free(Deed.PUT_OTHER_IN, "There")).isFalse();
    assertThat(line.make(OUT, "a").free(Deed.PUT_OTHER_IN, "There")).isTrue();
  }

  /** Common practice, no source: the points need the lever and the token. */
  @Test
  void by_lever_and_token_points_move_only_with_both() {
    Line line =
        new Line(
            Working.parted(
                new HandBox()
                    .release("9", "a", true, "A1")
                    .section(Sections.pair(1).lock("a", true))
                    .box()),
            1);
    line.withdraw("Here").make(OTHER, "a");
    assertThat(line.opens("A1")).as("the lever is normal").isFalse();
    line.stroke("9", Position.N, Position.M).stroke("9", Position.M, Position.R);
    assertThat(line.opens("A1")).isTrue();
    line.make(OUT, "a");
    assertThat(line.opens("A1")).as("the lock is empty").isFalse();
    line.make(OTHER, "a").moves("A1", Position.N, Position.M);
    assertThat(line.free(OUT, "a")).isFalse();
  }

  @Test
  void it_is_held_until_all_points_are_normal() {
    Line line = line(2, false, true).withdraw("Here").make(OTHER, "a");
    for (String points : List.of("A1", "A2")) {
      line.moves(points, Position.N, Position.M);
      assertThat(line.free(OUT, "a")).isFalse();
      line.moves(points, Position.M, Position.R);
      assertThat(line.free(OUT, "a")).isFalse();
      line.moves(points, Position.R, Position.M).moves(points, Position.M, Position.N);
      assertThat(line.free(OUT, "a")).isTrue();
    }
  }

  @Test
  void a_lock_that_does_not_hold_lets_it_go_at_any_time() {
    Line line = line(2, false, false).but(Map.of("points A1", "M")).withdraw("Here");
    line.make(OTHER, "a");
    assertThat(line.make(OUT, "a").opens("A2")).isFalse();
  }

  @Test
  void points_under_a_lock_that_does_not_hold_begin_anywhere() {
    HandBox box = new HandBox().groundFrame("a", "A1");
    assertThat(Working.parted(box.section(Sections.pair(1).lock("a", false)).box()).beginnings())
        .hasSize(6);
    box = new HandBox().groundFrame("a", "A1");
    assertThat(Working.parted(box.section(Sections.pair(1).lock("a", true)).box()).beginnings())
        .hasSize(2);
  }

  @Test
  void a_fresh_token_stays_fresh_in_a_lock_until_the_section_signal_goes_off() {
    Line line = line(2, true, true).withdraw("Here");
    assertThat(line.free(OTHER, "a")).isFalse();
    line.make(FRESH, "a");
    assertThat(line.free(Deed.PUT_FRESH_IN, "There")).isFalse();
    assertThat(line.is("lock of a")).isEqualTo("fresh");
    line.stroke("1", Position.N, Position.M);
    assertThat(line.is("lock of a")).isEqualTo("other");
    assertThat(line.free(Deed.PUT_OTHER_IN, "There")).isFalse();
    line.make(OUT, "a");
    assertThat(line.free(Deed.PUT_FRESH_IN, "There")).isFalse();
    assertThat(line.free(Deed.PUT_OTHER_IN, "There")).isTrue();
  }

  /** One fresh and one other out: each kind fills one lock, and no more. */
  @Test
  void tokens_of_each_kind_are_put_in_as_many_locks_as_there_are_out() {
    Line line =
        line(3, true, true)
            .but(
                Map.of(
                    "section line: tokens out", "2",
                    "section line: tokens in Here", "1",
                    "section line: fresh tokens", "1"));
    for (LockDeed first : List.of(FRESH, OTHER)) {
      LockDeed second = first == FRESH ? OTHER : FRESH;
      Deed its = first == FRESH ? Deed.PUT_FRESH_IN : Deed.PUT_OTHER_IN;
      line.make(first, "a");
      assertThat(line.free(first, "b")).isFalse();
      assertThat(line.free(its, "There")).isFalse();
      line.make(second, "b");
      List<Boolean> free = new ArrayList<>();
      for (Deed deed : List.of(Deed.PUT_FRESH_IN, Deed.PUT_OTHER_IN)) {
        free.add(line.free(deed, "There"));
      }
      assertThat(free).containsOnly(false);
      line.make(OUT, "b").make(OUT, "a");
    }
  }

  @Test
  void with_two_others_out_both_locks_take_one() {
    Line line =
        line(3, false, true)
            .but(Map.of("section line: tokens out", "2", "section line: tokens in Here", "1"));
    line.make(OTHER, "a");
    assertThat(line.free(Deed.PUT_OTHER_IN, "There")).isTrue();
    line.make(OTHER, "b");
    assertThat(line.free(Deed.PUT_OTHER_IN, "There")).isFalse();
  }

  @Test
  void a_box_says_what_holds_the_token() {
    Working working =
        Working.parted(
            new HandBox().groundFrame("a", "A1").section(Sections.pair(1).lock("a", true)).box());
    Map<String, String> values = working.beginnings().iterator().next().values();
    values.put("section line: lock of a", "other");
    values.put("points A1", "R");
    State open = working.state(values);
    assertThat(working.holds(open, new Event.AtLock("line", OUT, "a")).stream().map(Hold::words))
        .containsExactly("it is held until all points of ground frame a lie normal");
  }
}
