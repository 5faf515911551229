package lockwright.system;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Variables, the states in which it may begin, transitions and targets. The order of the
 * transitions is that in which sequences of equal length are preferred.
 *
 * @param candidates clauses that may be invariants; nothing depends on their being so
 */
public record TransitionSystem(
    List<Variable> variables,
    Term initial,
    List<Transition> transitions,
    List<Target> targets,
    List<Clause> candidates) {
  public TransitionSystem {
    variables = List.copyOf(variables);
    transitions = List.copyOf(transitions);
    targets = List.copyOf(targets);
    candidates = List.copyOf(candidates);
    Set<String> names = new HashSet<>();
    List<String> all = new ArrayList<>();
    variables.forEach(v -> all.add("variable " + v.name()));
    transitions.forEach(t -> all.add("transition " + t.name()));
    targets.forEach(t -> all.add("target " + t.name()));
    for (String name : all) {
      if (!names.add(name)) {
        throw new IllegalArgumentException("named twice: " + name);
      }
    }
  }

  /** The condition under which a target is reached, or its transition can be made at once. */
  public Term imminent(Target target) {
    List<Term> ways = new ArrayList<>();
    ways.add(target.states());
    for (Target.Making making : target.makings()) {
      ways.add(Term.and(transitions.get(making.transition()).guard(), making.when()));
    }
    return Term.or(ways);
  }
}
