package lockwright.proof.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lockwright.system.Among;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;

/**
 * How many transitions it takes at least to reach a target. What cannot be so at the beginning has
 * to be brought about, by a transition whose guard may in turn ask for what cannot be so at the
 * beginning: facts that every trace passes (J. Hoffmann, J. Porteous and L. Sebastia, *Ordered
 * Landmarks in Planning*, 2004). Those that no two have a transition in common for are counted.
 */
final class Landmarks {
  private final TransitionSystem system;
  private final Map<Integer, Set<Integer>> beginning;
  private final Map<String, Fewest> found = new HashMap<>();

  Landmarks(TransitionSystem system) {
    this.system = system;
    this.beginning = values(system.initial());
  }

  /**
   * A least number of transitions.
   *
   * @param making the transitions that bring about what was counted: a trace of just that many has
   *     no other, since each is then needed for one thing
   */
  record Fewest(int transitions, Set<Integer> making) {}

  /** No trace to a state of the target is shorter; nought for a target reached by making. */
  Fewest fewest(Target target) {
    return target.makings().isEmpty()
        ? found.computeIfAbsent(target.name(), name -> toStates(target))
        : new Fewest(0, Set.of());
  }

  private Fewest toStates(Target target) {
    Set<Among> passed = new LinkedHashSet<>();
    Deque<Among> open = new ArrayDeque<>(facts(target.states()));
    int fewest = 0;
    Set<Integer> counted = new HashSet<>();
    while (!open.isEmpty()) {
      Among fact = open.remove();
      if (mayBegin(fact) || !passed.add(fact)) {
        continue;
      }
      List<Integer> making = making(fact);
      open.addAll(neededBy(making));
      if (making.stream().noneMatch(counted::contains)) {
        counted.addAll(making);
        fewest++;
      }
    }
    return new Fewest(fewest, counted);
  }

  private boolean mayBegin(Among fact) {
    Set<Integer> values = beginning.get(fact.variable());
    return values == null || fact.values().stream().anyMatch(values::contains);
  }

  /** The transitions that can bring a fact about. */
  private List<Integer> making(Among fact) {
    return IntStream.range(0, system.transitions().size())
        .filter(t -> system.transitions().get(t).effects().stream().anyMatch(e -> makes(e, fact)))
        .boxed()
        .toList();
  }

  private static boolean makes(Transition.Effect effect, Among fact) {
    return effect.variable() == fact.variable()
        && IntStream.range(0, effect.next().size())
            .anyMatch(
                v ->
                    !fact.values().contains(v)
                        && effect.next().get(v).stream().anyMatch(fact.values()::contains));
  }

  /** What the guards of all these transitions ask for. */
  private Set<Among> neededBy(List<Integer> making) {
    Set<Among> needed = new LinkedHashSet<>();
    for (int i = 0; i < making.size(); i++) {
      List<Among> guard = facts(system.transitions().get(making.get(i)).guard());
      if (i == 0) {
        needed.addAll(guard);
      } else {
        needed.retainAll(guard);
      }
    }
    return needed;
  }

  private List<Among> facts(Term term) {
    return values(term).entrySet().stream().map(e -> new Among(e.getKey(), e.getValue())).toList();
  }

  /** The values that single variables have wherever the term holds, as far as it tells. */
  private Map<Integer, Set<Integer>> values(Term term) {
    Map<Integer, Set<Integer>> values = new TreeMap<>();
    List<Term> terms = term instanceof Term.And and ? and.terms() : List.of(term);
    for (Term one : terms) {
      if (one instanceof Term.And) {
        values(one).forEach((v, some) -> narrow(values, v, some));
      } else {
        ofOne(one instanceof Term.Not not ? not.term() : one)
            .ifPresent(
                a ->
                    narrow(values, a.variable(), one instanceof Term.Not ? others(a) : a.values()));
      }
    }
    return values;
  }

  private static void narrow(
      Map<Integer, Set<Integer>> values, int variable, Collection<Integer> some) {
    values.computeIfAbsent(variable, v -> new TreeSet<>(some)).retainAll(some);
  }

  /** A term that tells which values one variable has, and tells it exactly. */
  private static Optional<Among> ofOne(Term term) {
    if (term instanceof Term.Is is) {
      return Optional.of(new Among(is.variable(), List.of(is.value())));
    }
    if (term instanceof Term.Or or && !or.terms().isEmpty()) {
      List<Integer> values = new ArrayList<>();
      Integer variable = null;
      for (Term one : or.terms()) {
        if (!(one instanceof Term.Is is) || (variable != null && variable != is.variable())) {
          return Optional.empty();
        }
        variable = is.variable();
        values.add(is.value());
      }
      return Optional.of(new Among(variable, values));
    }
    return Optional.empty();
  }

  private List<Integer> others(Among among) {
    return IntStream.range(0, system.variables().get(among.variable()).size())
        .filter(v -> !among.values().contains(v))
        .boxed()
        .toList();
  }
}
