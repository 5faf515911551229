package lockwright.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A guarded transition. Variables without an effect keep their value; the names are unique. */
public record Transition(String name, Term guard, List<Effect> effects) {
  public Transition {
    effects = List.copyOf(effects);
  }

  /**
   * A variable's value afterwards, for each value before: one of some, where it is not known which.
   * Which one is left open for each variable by itself.
   */
  public record Effect(int variable, List<Set<Integer>> next) {
    public Effect {
      next = next.stream().map(some -> (Set<Integer>) new TreeSet<>(some)).toList();
      if (next.stream().anyMatch(Set::isEmpty)) {
        throw new IllegalArgumentException("an effect without a value afterwards");
      }
    }

    /** With one value afterwards for each before. */
    public static Effect of(int variable, List<Integer> next) {
      return new Effect(variable, next.stream().map(Set::of).toList());
    }

    /** The values before from which each value afterwards is among these, or only one may be. */
    private Among before(Among among, boolean surely) {
      List<Integer> values = new ArrayList<>();
      for (int value = 0; value < next.size(); value++) {
        Set<Integer> some = next.get(value);
        if (surely
            ? among.values().containsAll(some)
            : some.stream().anyMatch(among.values()::contains)) {
          values.add(value);
        }
      }
      return new Among(variable, values);
    }
  }

  /** The state afterwards, the guard is not looked at; where it is left open, one such state. */
  public int[] after(int[] state) {
    return after(state, List.of());
  }

  /** The same; what is left open is chosen so that these hold, where they can. */
  public int[] after(int[] state, List<Among> wanted) {
    int[] after = state.clone();
    for (Effect effect : effects) {
      Set<Integer> some = effect.next().get(state[effect.variable()]);
      after[effect.variable()] =
          some.stream()
              .filter(
                  value ->
                      wanted.stream()
                          .filter(a -> a.variable() == effect.variable())
                          .allMatch(a -> a.values().contains(value)))
              .findFirst()
              .orElseGet(() -> some.iterator().next());
    }
    return after;
  }

  /**
   * What must hold before for {@code among} to hold afterwards, whatever is left open; the same
   * object if untouched.
   */
  public Among before(Among among) {
    return before(among, true);
  }

  /** What must hold before so that {@code among} may hold afterwards; the same if untouched. */
  public Among leadingInto(Among among) {
    return before(among, false);
  }

  /** Whether a variable with this value may be {@code among} afterwards. */
  public boolean mayLead(int value, Among among) {
    for (Effect effect : effects) {
      if (effect.variable() == among.variable()) {
        return effect.next().get(value).stream().anyMatch(among.values()::contains);
      }
    }
    return among.values().contains(value);
  }

  private Among before(Among among, boolean surely) {
    for (Effect effect : effects) {
      if (effect.variable() == among.variable()) {
        return effect.before(among, surely);
      }
    }
    return among;
  }

  /**
   * What must hold before for {@code term} to hold afterwards; the guard is not part of it.
   *
   * @throws IllegalStateException if an effect leaves open what it speaks of
   */
  public Term before(Term term) {
    if (term instanceof Term.Is is) {
      return touches(is.variable()) ? before(is) : term;
    } else if (term instanceof Term.Not not) {
      return Term.not(before(not.term()));
    } else if (term instanceof Term.And and) {
      return Term.and(and.terms().stream().map(this::before).toList());
    } else if (term instanceof Term.Or or) {
      return Term.or(or.terms().stream().map(this::before).toList());
    }
    throw new IllegalArgumentException("a term of no known kind: " + term);
  }

  private Term before(Term.Is is) {
    Among value = new Among(is.variable(), List.of(is.value()));
    Among before = before(value);
    if (!before.equals(leadingInto(value))) {
      throw new IllegalStateException(name + " leaves variable " + is.variable() + " open");
    }
    return Term.or(before.values().stream().map(v -> Term.is(is.variable(), v)).toList());
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
