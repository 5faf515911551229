package lockwright.proof.pdr;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import lockwright.system.Among;
import lockwright.system.Term;
import lockwright.system.Variable;

/**
 * The states around a state that all satisfy what it satisfies: found by walking the terms, with no
 * question asked of a solver. Where one of several parts of a term suffices, the one is kept that
 * speaks of the fewest variables not spoken of before.
 */
final class Around {
  private final int[] state;
  private final List<Variable> variables;
  private final Map<Integer, TreeSet<Integer>> kept = new TreeMap<>();

  Around(int[] state, List<Variable> variables) {
    this.state = state.clone();
    this.variables = variables;
  }

  Cube cube() {
    List<Among> parts = new ArrayList<>();
    kept.forEach((variable, values) -> parts.add(new Among(variable, List.copyOf(values))));
    return new Cube(parts);
  }

  /** That the variable has one of the values. */
  void keep(Among among) {
    if (!among.values().contains(state[among.variable()])) {
      throw new IllegalStateException("a state does not satisfy what the solver said it does");
    }
    if (among.values().size() == variables.get(among.variable()).size()) {
      return;
    }
    kept.computeIfAbsent(among.variable(), v -> new TreeSet<>(among.values()))
        .retainAll(among.values());
  }

  /** That the term holds. */
  void keep(Term term) {
    keep(term, true);
  }

  private void keep(Term term, boolean holds) {
    if (term instanceof Term.Is is) {
      Among value = new Among(is.variable(), List.of(is.value()));
      keep(holds ? value : value.complement(variables.get(is.variable()).size()));
    } else if (term instanceof Term.Not not) {
      keep(not.term(), !holds);
    } else if (term instanceof Term.And and) {
      keep(and.terms(), holds, holds);
    } else if (term instanceof Term.Or or) {
      keep(or.terms(), holds, !holds);
    } else {
      throw new IllegalArgumentException("a term of no known kind: " + term);
    }
  }

  private void keep(List<Term> terms, boolean hold, boolean all) {
    if (all) {
      terms.forEach(term -> keep(term, hold));
      return;
    }
    Term one =
        terms.stream()
            .filter(term -> term.holds(state) == hold)
            .min(Comparator.comparingInt(this::newVariables))
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "a state does not satisfy what the solver said it does"));
    keep(one, hold);
  }

  private int newVariables(Term term) {
    BitSet mentioned = new BitSet();
    term.mentions(mentioned);
    kept.keySet().forEach(mentioned::clear);
    return mentioned.cardinality();
  }
}
