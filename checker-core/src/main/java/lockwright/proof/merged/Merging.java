package lockwright.proof.merged;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Target.Making;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Transition.Effect;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;

/**
 * A system and a smaller one, in which the last values of the larger variables are merged into one.
 * Each state stands for all states that differ in merged values only.
 *
 * <p>The smaller system does whatever the other does, and perhaps more: a condition holds there if
 * it holds in one of the states stood for, and a transition leads to all that one of them is led
 * to. So a set of clauses that is inductive there is inductive here, and a trace there, of which
 * nothing shorter exists, is no longer than any here.
 */
final class Merging {
  private final TransitionSystem exact;
  private final int kept;
  private final TransitionSystem merged;
  private final Map<Term, Term> possible = new IdentityHashMap<>();
  private final Map<Term, Term> certain = new IdentityHashMap<>();

  /**
   * @param kept how many values are kept apart; those from this one on are one
   */
  Merging(TransitionSystem exact, int kept) {
    this.exact = exact;
    this.kept = kept;
    merged =
        new TransitionSystem(
            exact.variables().stream().map(v -> new Variable(v.name(), size(v))).toList(),
            possibly(exact.initial()),
            exact.transitions().stream().map(this::transition).toList(),
            exact.targets().stream().map(this::target).toList(),
            exact.candidates().stream().map(this::candidate).flatMap(Optional::stream).toList());
  }

  /** Whether there is anything to merge. */
  static boolean merges(TransitionSystem system, int kept) {
    return system.variables().stream().anyMatch(v -> v.size() > kept + 1);
  }

  TransitionSystem merged() {
    return merged;
  }

  private int size(Variable variable) {
    return Math.min(variable.size(), kept + 1);
  }

  private int merged(int value) {
    return Math.min(value, kept);
  }

  /** The values that one of the smaller system stands for. */
  private List<Integer> members(int variable, int value) {
    int size = exact.variables().get(variable).size();
    return value < kept ? List.of(value) : IntStream.range(kept, size).boxed().toList();
  }

  private Set<Integer> merged(Collection<Integer> values) {
    Set<Integer> some = new TreeSet<>();
    values.forEach(v -> some.add(merged(v)));
    return some;
  }

  private Transition transition(Transition transition) {
    List<Effect> effects = new ArrayList<>();
    for (Effect effect : transition.effects()) {
      List<Set<Integer>> next = new ArrayList<>();
      for (int v = 0; v < size(exact.variables().get(effect.variable())); v++) {
        Set<Integer> some = new TreeSet<>();
        members(effect.variable(), v).forEach(m -> some.addAll(merged(effect.next().get(m))));
        next.add(some);
      }
      effects.add(new Effect(effect.variable(), next));
    }
    return new Transition(transition.name(), possibly(transition.guard()), effects);
  }

  private Target target(Target target) {
    return new Target(
        target.name(),
        possibly(target.states()),
        target.makings().stream().map(m -> new Making(m.transition(), possibly(m.when()))).toList(),
        target.ordered());
  }

  /** What the clause says of the states stood for, or nothing if it says nothing. */
  private Optional<Clause> candidate(Clause clause) {
    List<Among> parts = new ArrayList<>();
    for (Among among : clause.among()) {
      Among wider = new Among(among.variable(), merged(among.values()));
      if (wider.values().size() == size(exact.variables().get(among.variable()))) {
        return Optional.empty();
      }
      parts.add(wider);
    }
    return Optional.of(new Clause(parts));
  }

  /** A clause of the smaller system, said of this one: of just the states stood for. */
  Clause exactly(Clause clause) {
    return new Clause(
        clause.among().stream()
            .map(
                a ->
                    new Among(
                        a.variable(),
                        a.values().stream()
                            .flatMap(v -> members(a.variable(), v).stream())
                            .toList()))
            .toList());
  }

  /** Holds where the term holds in one at least of the states stood for, perhaps elsewhere too. */
  private Term possibly(Term term) {
    Term known = possible.get(term);
    if (known == null) {
      known = term instanceof Term.Is is ? merged(is) : joined(term, true);
      possible.put(term, known);
    }
    return known;
  }

  /** Holds only where the term holds in all of the states stood for. */
  private Term certainly(Term term) {
    Term known = certain.get(term);
    if (known == null) {
      known = term instanceof Term.Is is ? any(List.of(is)) : joined(term, false);
      certain.put(term, known);
    }
    return known;
  }

  private Term merged(Term.Is is) {
    return Term.is(is.variable(), merged(is.value()));
  }

  private Term joined(Term term, boolean possible) {
    if (term instanceof Term.Not not) {
      return Term.not(possible ? certainly(not.term()) : possibly(not.term()));
    } else if (term instanceof Term.And and) {
      return Term.and(parts(and.terms(), possible, t -> true));
    } else if (term instanceof Term.Or or && possible) {
      return Term.or(parts(or.terms(), true, t -> true));
    } else if (term instanceof Term.Or or) {
      List<Term> parts = new ArrayList<>(parts(or.terms(), false, t -> !(t instanceof Term.Is)));
      parts.add(
          any(
              or.terms().stream()
                  .filter(t -> t instanceof Term.Is)
                  .map(t -> (Term.Is) t)
                  .toList()));
      return Term.or(parts);
    }
    throw new IllegalArgumentException("a term of no known kind: " + term);
  }

  private List<Term> parts(List<Term> terms, boolean possible, Predicate<Term> which) {
    Set<Term> parts = new LinkedHashSet<>();
    terms.stream()
        .filter(which)
        .map(t -> possible ? possibly(t) : certainly(t))
        .forEach(parts::add);
    return List.copyOf(parts);
  }

  /** Holds where all values that a value stands for are among these. */
  private Term any(List<Term.Is> some) {
    Map<Integer, Set<Integer>> values = new HashMap<>();
    some.forEach(is -> values.computeIfAbsent(is.variable(), v -> new TreeSet<>()).add(is.value()));
    Set<Term> all = new LinkedHashSet<>();
    for (Term.Is is : some) {
      if (values.get(is.variable()).containsAll(members(is.variable(), merged(is.value())))) {
        all.add(merged(is));
      }
    }
    return Term.or(List.copyOf(all));
  }
}
