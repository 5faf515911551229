package lockwright.system;

import java.util.List;
import java.util.TreeSet;

/** A guarded transition. Variables without an effect keep their value; the names are unique. */
public record Transition(String name, Term guard, List<Effect> effects) {
  public Transition {
    effects = List.copyOf(effects);
  }

  /** A variable's value afterwards, for each value before. */
  public record Effect(int variable, List<Integer> next) {
    public Effect {
      next = List.copyOf(next);
    }
  }

  /** The state afterwards; the guard is not looked at. */
  public int[] after(int[] state) {
    int[] after = state.clone();
    for (Effect effect : effects) {
      after[effect.variable()] = effect.next().get(state[effect.variable()]);
    }
    return after;
  }

  /** What must hold before for {@code among} to hold afterwards; the same object if untouched. */
  public Among before(Among among) {
    for (Effect effect : effects) {
      if (effect.variable() == among.variable()) {
        TreeSet<Integer> values = new TreeSet<>();
        for (int value = 0; value < effect.next().size(); value++) {
          if (among.values().contains(effect.next().get(value))) {
            values.add(value);
          }
        }
        return new Among(among.variable(), values);
      }
    }
    return among;
  }

  /** What must hold before for {@code term} to hold afterwards; the guard is not part of it. */
  public Term before(Term term) {
    if (term instanceof Term.Is is) {
      return touches(is.variable())
          ? Term.or(
              before(new Among(is.variable(), List.of(is.value()))).values().stream()
                  .map(value -> Term.is(is.variable(), value))
                  .toList())
          : term;
    } else if (term instanceof Term.Not not) {
      return Term.not(before(not.term()));
    } else if (term instanceof Term.And and) {
      return Term.and(and.terms().stream().map(this::before).toList());
    } else if (term instanceof Term.Or or) {
      return Term.or(or.terms().stream().map(this::before).toList());
    }
    throw new IllegalArgumentException("a term of no known kind: " + term);
  }

  public boolean touches(int variable) {
    for (Effect effect : effects) {
      if (effect.variable() == variable) {
        return true;
      }
    }
    return false;
  }
}
