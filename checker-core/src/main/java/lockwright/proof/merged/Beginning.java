package lockwright.proof.merged;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lockwright.system.Target;
import lockwright.system.Target.Making;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Transition.Effect;
import lockwright.system.TransitionSystem;

/**
 * The state from which given transitions can be made, one after another, to a target; of several,
 * the first in order of the variables and their values. One variable after another gets a value, as
 * long as that excludes nothing that is needed on the way.
 */
final class Beginning {
  /** How many values are tried before it is given up: other engines may find one then. */
  private static final int MOST_TRIED = 20_000;

  private static final int OPEN = -1;

  /** Whether something holds, while some variables have no value yet. */
  private enum Truth {
    YES,
    NO,
    OPEN
  }

  /**
   * That a term holds after some of the transitions.
   *
   * @param now what each value of a variable at the beginning has become by then; null for a
   *     variable that no transition has touched
   */
  private record Then(Term term, int[][] now) {}

  private final TransitionSystem system;
  private final int[] values;

  /** For each variable what is needed that speaks of it: one at least of some. */
  private final List<List<List<Then>>> speakingOf = new ArrayList<>();

  private int tried;

  private Beginning(TransitionSystem system) {
    this.system = system;
    values = new int[system.variables().size()];
    Arrays.fill(values, OPEN);
    system.variables().forEach(v -> speakingOf.add(new ArrayList<>()));
  }

  /** Nothing where there is none, or none is found with little trying. */
  static Optional<List<Integer>> of(
      TransitionSystem system, Target target, List<Integer> transitions) {
    Beginning beginning = new Beginning(system);
    return beginning.need(target, transitions) && beginning.settle(0)
        ? Optional.of(Arrays.stream(beginning.values).boxed().toList())
        : Optional.empty();
  }

  /** False if something needed holds never. */
  private boolean need(Target target, List<Integer> transitions) {
    int[][] now = new int[values.length][];
    boolean possible = needEach(system.initial(), now);
    List<Then> arriving = new ArrayList<>();
    for (int i = 0; i < transitions.size(); i++) {
      Transition transition = system.transitions().get(transitions.get(i));
      possible &= needEach(transition.guard(), now);
      if (i == transitions.size() - 1) {
        for (Making making : target.makings()) {
          if (making.transition() == transitions.get(i)) {
            arriving.add(new Then(making.when(), now));
          }
        }
      }
      now = after(transition, now);
    }
    arriving.add(new Then(target.states(), now));
    return possible & need(arriving);
  }

  private boolean needEach(Term term, int[][] now) {
    boolean possible = true;
    for (Term one : term instanceof Term.And and ? and.terms() : List.of(term)) {
      possible &= need(List.of(new Then(one, now)));
    }
    return possible;
  }

  private boolean need(List<Then> some) {
    BitSet variables = new BitSet();
    some.forEach(then -> then.term().mentions(variables));
    variables.stream().forEach(v -> speakingOf.get(v).add(some));
    return possible(some);
  }

  private int[][] after(Transition transition, int[][] now) {
    int[][] after = now.clone();
    for (Effect effect : transition.effects()) {
      int size = effect.next().size();
      int[] then = new int[size];
      for (int value = 0; value < size; value++) {
        int before = now[effect.variable()] == null ? value : now[effect.variable()][value];
        if (effect.next().get(before).size() != 1) {
          throw new IllegalStateException(transition.name() + " leaves open what comes of it");
        }
        then[value] = effect.next().get(before).iterator().next();
      }
      after[effect.variable()] = then;
    }
    return after;
  }

  /** Gives this variable and all after it their first values, or finds that there are none. */
  private boolean settle(int variable) {
    if (variable == values.length) {
      return true;
    }
    for (int value = 0; value < system.variables().get(variable).size(); value++) {
      if (++tried > MOST_TRIED) {
        break;
      }
      values[variable] = value;
      if (speakingOf.get(variable).stream().allMatch(this::possible) && settle(variable + 1)) {
        return true;
      }
    }
    values[variable] = OPEN;
    return false;
  }

  private boolean possible(List<Then> some) {
    for (Then then : some) {
      if (truth(then.term(), then.now()) != Truth.NO) {
        return true;
      }
    }
    return false;
  }

  private Truth truth(Term term, int[][] now) {
    if (term instanceof Term.Is is) {
      int value = values[is.variable()];
      if (value == OPEN) {
        return Truth.OPEN;
      }
      int then = now[is.variable()] == null ? value : now[is.variable()][value];
      return then == is.value() ? Truth.YES : Truth.NO;
    } else if (term instanceof Term.Not not) {
      return switch (truth(not.term(), now)) {
        case YES -> Truth.NO;
        case NO -> Truth.YES;
        case OPEN -> Truth.OPEN;
      };
    } else if (term instanceof Term.And and) {
      return joined(and.terms(), now, Truth.NO, Truth.YES);
    } else if (term instanceof Term.Or or) {
      return joined(or.terms(), now, Truth.YES, Truth.NO);
    }
    throw new IllegalArgumentException("a term of no known kind: " + term);
  }

  /** The one truth if a part has it, the other if all parts have that. */
  private Truth joined(List<Term> terms, int[][] now, Truth one, Truth other) {
    Truth all = other;
    for (Term term : terms) {
      Truth truth = truth(term, now);
      if (truth == one) {
        return one;
      } else if (truth == Truth.OPEN) {
        all = Truth.OPEN;
      }
    }
    return all;
  }
}
