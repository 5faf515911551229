package lockwright.proof.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lockwright.proof.Moment;
import lockwright.solver.Solver;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;

/**
 * A system unrolled: moments 0 to n, and between each two the one transition that is made.
 *
 * <p>Of two neighbouring transitions that do not depend on each other, the one earlier in order is
 * made first. That loses no state, and not the trace that comes first in order, since exchanging
 * the two would give an earlier one.
 */
final class Unrolled {
  private final TransitionSystem system;
  private final Solver solver;
  private final List<Clause> invariants;
  private final List<Moment> moments = new ArrayList<>();
  private final List<int[]> made = new ArrayList<>();
  private final List<List<Integer>> laterDependents;

  Unrolled(TransitionSystem system, Solver solver, List<Clause> invariants) {
    this.system = system;
    this.solver = solver;
    this.invariants = invariants;
    laterDependents = laterDependents();
    solver.clause(moment().literal(system.initial()));
  }

  TransitionSystem system() {
    return system;
  }

  Moment moment(int time) {
    return moments.get(time);
  }

  /** For each transition, the literal that it is made between {@code time} and the next moment. */
  int[] made(int time) {
    return made.get(time);
  }

  boolean holds(int literal) {
    return solver.value(Math.abs(literal)) == literal > 0;
  }

  private Moment moment() {
    Moment moment = new Moment(solver, system.variables());
    invariants.forEach(moment::add);
    moments.add(moment);
    return moment;
  }

  /** Adds a moment. */
  void extend() {
    Moment before = moments.get(moments.size() - 1);
    Moment after = moment();
    int[] some = new int[system.transitions().size()];
    for (int t = 0; t < some.length; t++) {
      some[t] = solver.variable();
      Transition transition = system.transitions().get(t);
      solver.clause(-some[t], before.literal(transition.guard()));
      for (Transition.Effect effect : transition.effects()) {
        for (int value = 0; value < effect.next().size(); value++) {
          List<Integer> clause = new ArrayList<>();
          clause.add(-some[t]);
          clause.add(-before.literal(effect.variable(), value));
          effect.next().get(value).forEach(v -> clause.add(after.literal(effect.variable(), v)));
          solver.clause(Moment.ints(clause));
        }
      }
    }
    solver.clause(some);
    if (!made.isEmpty()) {
      inOrder(made.get(made.size() - 1), some);
    }
    Moment.atMostOne(solver, some);
    made.add(some);
    keep(before, after, some);
  }

  /** A variable that no transition made touches keeps its value. */
  private void keep(Moment before, Moment after, int[] some) {
    for (int v = 0; v < system.variables().size(); v++) {
      Variable variable = system.variables().get(v);
      List<Integer> touching = new ArrayList<>();
      for (int t = 0; t < some.length; t++) {
        if (system.transitions().get(t).touches(v)) {
          touching.add(some[t]);
        }
      }
      for (int value = 0; value < variable.size(); value++) {
        List<Integer> clause = new ArrayList<>(touching);
        clause.add(-before.literal(v, value));
        clause.add(after.literal(v, value));
        solver.clause(Moment.ints(clause));
      }
    }
  }

  /** After a transition comes no earlier one, unless that depends on it. */
  private void inOrder(int[] before, int[] some) {
    int upTo = before[0];
    for (int t = 0; t < some.length; t++) {
      if (t > 0) {
        int next = solver.variable();
        solver.clause(-next, upTo, before[t]);
        upTo = next;
      }
      List<Integer> clause = new ArrayList<>(List.of(-some[t], upTo));
      laterDependents.get(t).forEach(later -> clause.add(before[later]));
      solver.clause(Moment.ints(clause));
    }
  }

  private List<List<Integer>> laterDependents() {
    List<BitSet> reads = new ArrayList<>();
    List<BitSet> writes = new ArrayList<>();
    for (Transition transition : system.transitions()) {
      BitSet written = new BitSet();
      transition.effects().forEach(e -> written.set(e.variable()));
      BitSet read = (BitSet) written.clone();
      transition.guard().mentions(read);
      reads.add(read);
      writes.add(written);
    }
    List<List<Integer>> all = new ArrayList<>();
    for (int t = 0; t < reads.size(); t++) {
      List<Integer> dependents = new ArrayList<>();
      for (int later = t + 1; later < reads.size(); later++) {
        if (writes.get(t).intersects(reads.get(later))
            || reads.get(t).intersects(writes.get(later))) {
          dependents.add(later);
        }
      }
      all.add(dependents);
    }
    return all;
  }

  /**
   * For the last moment: the literals that a target is reached there: as a state, which is the
   * first, and by making each of its transitions from there.
   */
  int[] reachedNow(Target target) {
    Moment last = moments.get(moments.size() - 1);
    int[] literals = new int[1 + target.makings().size()];
    literals[0] = last.literal(target.states());
    for (int m = 0; m < target.makings().size(); m++) {
      Target.Making making = target.makings().get(m);
      literals[1 + m] = solver.variable();
      Term guard = system.transitions().get(making.transition()).guard();
      solver.clause(-literals[1 + m], last.literal(guard));
      solver.clause(-literals[1 + m], last.literal(making.when()));
    }
    return literals;
  }
}
