package lockwright.system;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * A condition on a state. Build with the static methods, which drop what is trivially true or
 * false.
 */
public sealed interface Term {
  Term TRUE = new And(List.of());
  Term FALSE = new Or(List.of());

  /** Whether it holds in a state, one value a variable. */
  boolean holds(int[] state);

  /** Adds the variables that it speaks of. */
  void mentions(BitSet variables);

  /** The variable (by index) has the value. */
  record Is(int variable, int value) implements Term {
    @Override
    public boolean holds(int[] state) {
      return state[variable] == value;
    }

    @Override
    public void mentions(BitSet variables) {
      variables.set(variable);
    }
  }

  record Not(Term term) implements Term {
    @Override
    public boolean holds(int[] state) {
      return !term.holds(state);
    }

    @Override
    public void mentions(BitSet variables) {
      term.mentions(variables);
    }
  }

  record And(List<Term> terms) implements Term {
    public And {
      terms = List.copyOf(terms);
    }

    @Override
    public boolean holds(int[] state) {
      return terms.stream().allMatch(t -> t.holds(state));
    }

    @Override
    public void mentions(BitSet variables) {
      terms.forEach(t -> t.mentions(variables));
    }
  }

  record Or(List<Term> terms) implements Term {
    public Or {
      terms = List.copyOf(terms);
    }

    @Override
    public boolean holds(int[] state) {
      return terms.stream().anyMatch(t -> t.holds(state));
    }

    @Override
    public void mentions(BitSet variables) {
      terms.forEach(t -> t.mentions(variables));
    }
  }

  static Term is(int variable, int value) {
    return new Is(variable, value);
  }

  static Term not(Term term) {
    if (term.equals(TRUE)) {
      return FALSE;
    }
    if (term.equals(FALSE)) {
      return TRUE;
    }
    return term instanceof Not n ? n.term() : new Not(term);
  }

  static Term and(List<Term> terms) {
    List<Term> kept = new ArrayList<>();
    for (Term term : terms) {
      if (term.equals(FALSE)) {
        return FALSE;
      }
      if (term instanceof And and) {
        kept.addAll(and.terms());
      } else {
        kept.add(term);
      }
    }
    return kept.size() == 1 ? kept.get(0) : new And(kept);
  }

  static Term and(Term... terms) {
    return and(Arrays.asList(terms));
  }

  static Term or(List<Term> terms) {
    List<Term> kept = new ArrayList<>();
    for (Term term : terms) {
      if (term.equals(TRUE)) {
        return TRUE;
      }
      if (term instanceof Or or) {
        kept.addAll(or.terms());
      } else {
        kept.add(term);
      }
    }
    return kept.size() == 1 ? kept.get(0) : new Or(kept);
  }

  static Term or(Term... terms) {
    return or(Arrays.asList(terms));
  }
}
