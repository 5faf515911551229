package lockwright.proof.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lockwright.proof.Moment;
import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import lockwright.system.Target;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;

/**
 * Of the traces of a given length that reach a target, the one whose transitions come first in
 * order, and of those the one whose first state does. To be asked when one is known to exist.
 */
final class FirstInOrder {
  private final Unrolled unrolled;
  private final Solver solver;
  private final int moment;
  private final List<Integer> fixed = new ArrayList<>();
  private final List<int[]> choices = new ArrayList<>();
  private int[] chosen;

  /**
   * @param known literals that hold on every trace looked for
   */
  FirstInOrder(Unrolled unrolled, Solver solver, int moment, List<Integer> known) {
    this.unrolled = unrolled;
    this.solver = solver;
    this.moment = moment;
    fixed.addAll(known);
  }

  /**
   * Makes one choice after another, each as early in order as those before it leave possible. A
   * limit makes the verdict unknown.
   *
   * @param reached the literals of {@link Unrolled#reachedNow}
   */
  Verdict find(Target target, int[] reached) {
    for (int time = 0; time < moment; time++) {
      choices.add(unrolled.made(time));
    }
    choices.add(reached);
    for (int v = 0; v < unrolled.system().variables().size(); v++) {
      choices.add(unrolled.moment(0).literals(v));
    }
    fixed.add(anyOf(reached, reached.length));
    if (solver.check(Moment.ints(fixed)) != Answer.SATISFIABLE) {
      return limit();
    }
    chosen = chosen();
    if (target.ordered()) {
      for (int choice = 0; choice < choices.size(); choice++) {
        if (!settle(choice)) {
          return limit();
        }
      }
    }
    return new Verdict.Reached(trace(target), true);
  }

  private static Verdict limit() {
    return new Verdict.Unknown("limit met while ordering traces");
  }

  /** Asks, until the answer is no: what is fixed, and an earlier choice here. */
  private boolean settle(int choice) {
    int[] literals = choices.get(choice);
    while (chosen[choice] > 0) {
      fixed.add(anyOf(literals, chosen[choice]));
      Answer answer = solver.check(Moment.ints(fixed));
      fixed.remove(fixed.size() - 1);
      if (answer == Answer.UNKNOWN) {
        return false;
      }
      if (answer == Answer.UNSATISFIABLE) {
        break;
      }
      chosen = chosen();
    }
    fixed.add(literals[chosen[choice]]);
    return true;
  }

  /** A literal that implies that one of the first few literals holds. */
  private int anyOf(int[] literals, int few) {
    int any = solver.variable();
    int[] clause = Arrays.copyOf(literals, few + 1);
    clause[few] = -any;
    solver.clause(clause);
    return any;
  }

  /** What the solver's model chooses. */
  private int[] chosen() {
    int[] all = new int[choices.size()];
    for (int choice = 0; choice < all.length; choice++) {
      int[] literals = choices.get(choice);
      while (!unrolled.holds(literals[all[choice]])) {
        all[choice]++;
      }
    }
    return all;
  }

  private Trace trace(Target target) {
    List<Integer> all = Arrays.stream(chosen).boxed().toList();
    List<Integer> transitions = new ArrayList<>(all.subList(0, moment));
    if (chosen[moment] > 0) {
      transitions.add(target.makings().get(chosen[moment] - 1).transition());
    }
    return new Trace(all.subList(moment + 1, all.size()), transitions);
  }
}
