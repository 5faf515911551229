package lockwright.working;

import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event.GatesMove;
import lockwright.railway.words.Event.LeverMoves;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Level crossings, docs/meaning.md 2.4. Board of Trade Requirements, no. 29, as printed in W. H.
 * Mills, Railway Construction (1898): gates are not open to road and railway at once. That a gate
 * lock goes in only with the gates home, and holds them, is common practice, no source.
 */
class LevelCrossingTest {
  private static final Route OVER = route("1", "");
  private static final Requirement CLOSED =
      new Requirement.RoadClosed("1", "Fen Lane", List.of(OVER));

  /** The gates stand anywhere before the lock goes in: close them, lock them, pull off. */
  @Test
  void with_a_gate_lock_the_gates_are_shut_then_locked_then_the_signal_is_free() {
    Working working = Working.parted(locked(false).locking("1 released by 2").box());
    assertThat(working.beginnings()).hasSize(3);
    State open = last(working);
    assertThat(open.values()).containsEntry("gates Fen Lane", "R");
    assertThat(working.free(open, move("2", Position.N, Position.M))).isFalse();
    State shut = make(working, open, gates(Position.R, Position.M), gates(Position.M, Position.N));
    State halfIn = working.make(shut, move("2", Position.N, Position.M));
    assertThat(working.free(halfIn, gates(Position.N, Position.M))).isFalse();
    assertThat(working.free(halfIn, move("1", Position.N, Position.M))).isFalse();
    State in = working.make(halfIn, move("2", Position.M, Position.R));
    assertThat(working.free(in, move("1", Position.N, Position.M))).isTrue();
    assertThat(working.free(in, gates(Position.N, Position.M))).isFalse();
  }

  @Test
  void a_lock_that_stands_in_begins_with_the_gates_across_the_road() {
    Working working = Working.parted(locked(true).locking("1 locks 2").box());
    assertThat(working.beginnings()).hasSize(1);
    assertThat(last(working).values()).containsEntry("gates Fen Lane", "N");
  }

  /** Shortest by hand: the lock's and the gates' half-strokes, and one of the signal. */
  @ParameterizedTest
  @CsvSource({
    "lock,  false, 1 released by 2,        -1",
    "lock,  false, 1 locks both ways 2,     1",
    "lock,  true,  1 locks 2,              -1",
    "lock,  true,  1 locks both ways 2,     3",
    "gates, true,  1 locks 2,              -1",
    "gates, true,  1 locks both ways 2,     3",
    "gates, false, 1 released by 2,        -1",
    "gates, false, 1 locks both ways 2,     1"
  })
  void a_signal_off_over_an_open_road_is_found(
      String works, boolean normal, String entry, int shortest) {
    HandBox box = works.equals("lock") ? locked(normal) : box().gates("2", "Fen Lane", normal);
    BruteForce all = BruteForce.of(Working.parted(box.locking(entry).box()));
    assertThat(all.shortest(CLOSED))
        .isEqualTo(shortest < 0 ? OptionalInt.empty() : OptionalInt.of(shortest));
  }

  /** The same rule as of points: Requirements, no. 7: nothing of the line is moved under it. */
  @Test
  void a_route_that_is_off_holds_gates_and_lock() {
    Requirement held = new Requirement.RouteHeld(OVER);
    assertThat(shortest(locked(false).locking("1 released by 2"), held)).isEmpty();
    assertThat(shortest(locked(true).locking("1 starts only with normal 2"), held)).hasValue(2);
    assertThat(shortest(locked(false).locking("1 starts only with normal 2"), held)).hasValue(2);
    HandBox gates = box().gates("2", "Fen Lane", true);
    assertThat(shortest(gates.locking("1 starts only with normal 2"), held)).hasValue(2);
    assertThat(shortest(gates.locking("1 locks both ways 2"), held)).isEmpty();
  }

  private static OptionalInt shortest(HandBox box, Requirement requirement) {
    return BruteForce.of(Working.parted(box.box())).shortest(requirement);
  }

  private static HandBox box() {
    return new HandBox().signal("1", Arm.STOP).routes(OVER);
  }

  private static HandBox locked(boolean normallyIn) {
    return box().gateLock("2", "Fen Lane", normallyIn);
  }

  private static LeverMoves move(String lever, Position from, Position to) {
    return new LeverMoves(lever, from, to);
  }

  private static GatesMove gates(Position from, Position to) {
    return new GatesMove("Fen Lane", from, to);
  }

  private static State make(Working working, State state, GatesMove... moves) {
    State now = state;
    for (GatesMove move : moves) {
      now = working.make(now, move);
    }
    return now;
  }

  private static State last(Working working) {
    State last = null;
    for (State one : working.beginnings()) {
      last = one;
    }
    return last;
  }
}
