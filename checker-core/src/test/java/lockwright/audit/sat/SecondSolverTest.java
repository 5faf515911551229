package lockwright.audit.sat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import org.junit.jupiter.api.Test;

class SecondSolverTest {

  /** As many pigeons, each in one of as many holes. */
  private static List<Quantity> pigeons(int pigeons, int holes) {
    List<String> names = IntStream.range(0, holes).mapToObj(Integer::toString).toList();
    return IntStream.range(0, pigeons).mapToObj(p -> new Quantity("pigeon " + p, names)).toList();
  }

  private static Condition in(List<Quantity> pigeons, int pigeon, int... holes) {
    BitSet set = new BitSet();
    IntStream.of(holes).forEach(set::set);
    return Condition.oneOf(pigeon, pigeons.get(pigeon), set);
  }

  /** No two share a hole: impossible with more pigeons than holes, and slow to find out. */
  private static Answer allApart(int pigeons, int holes, int conflicts) {
    List<Quantity> all = pigeons(pigeons, holes);
    SecondSolver solver = new SecondSolver(all, conflicts);
    for (int hole = 0; hole < holes; hole++) {
      for (int p = 0; p < pigeons; p++) {
        for (int q = 0; q < p; q++) {
          solver.require(Condition.not(Condition.all(in(all, p, hole), in(all, q, hole))));
        }
      }
    }
    return solver.ask();
  }

  @Test
  void four_pigeons_find_four_holes_and_five_do_not() {
    assertThat(allApart(4, 4, 1000)).isInstanceOf(Answer.Found.class);
    assertThat(allApart(5, 4, 1000)).isInstanceOf(Answer.None.class);
  }

  @Test
  void a_limit_that_is_met_leaves_the_question_open() {
    assertThat(allApart(10, 9, 20)).isInstanceOf(Answer.Open.class);
  }

  @Test
  void a_contradiction_leaves_every_question_open() {
    List<Quantity> one = pigeons(1, 3);
    SecondSolver solver = new SecondSolver(one, 1000);
    solver.require(in(one, 0, 1));
    assertThat(solver.ask(in(one, 0, 2))).isInstanceOf(Answer.None.class);
    solver.require(in(one, 0, 2));
    assertThat(solver.ask()).isNotInstanceOf(Answer.Found.class);
    SecondSolver denied = new SecondSolver(one, 1000);
    denied.require(Condition.FALSE);
    assertThat(denied.ask()).isInstanceOf(Answer.Open.class);
  }

  @Test
  void a_state_found_is_such_as_was_asked_for() {
    List<Quantity> two = pigeons(2, 3);
    SecondSolver solver = new SecondSolver(two, 1000);
    solver.require(Condition.any(in(two, 0, 0), Condition.not(in(two, 1, 0, 2))));
    List<Integer> found = ((Answer.Found) solver.ask(in(two, 0, 1, 2), in(two, 1, 1, 2))).values();
    assertThat(found.get(0)).isNotZero();
    assertThat(found.get(1)).isEqualTo(1);
    assertThat(solver.ask(in(two, 0, 1), in(two, 1, 2))).isInstanceOf(Answer.None.class);
    assertThat(solver.ask()).isInstanceOf(Answer.Found.class);
  }
}
