package lockwright.proof.pdr;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Variable;

/** A set of states: each of some variables has one of some values. In order of the variables. */
record Cube(List<Among> parts) {
  Cube {
    parts = List.copyOf(parts);
  }

  static Cube of(int[] state) {
    List<Among> parts = new ArrayList<>();
    for (int v = 0; v < state.length; v++) {
      parts.add(new Among(v, List.of(state[v])));
    }
    return new Cube(parts);
  }

  boolean has(int[] state) {
    for (Among part : parts) {
      if (!part.values().contains(state[part.variable()])) {
        return false;
      }
    }
    return true;
  }

  /** Whether a transition may lead here from a state; its guard is not looked at. */
  boolean mayFollow(int[] state, Transition transition) {
    for (Among part : parts) {
      if (!transition.mayLead(state[part.variable()], part)) {
        return false;
      }
    }
    return true;
  }

  /** That a state is not in it. */
  Clause negation(List<Variable> variables) {
    return new Clause(
        parts.stream().map(p -> p.complement(variables.get(p.variable()).size())).toList());
  }

  /** Where it must be before a transition that leads here; a part without values: nowhere. */
  Cube before(Transition transition) {
    return new Cube(parts.stream().map(transition::leadingInto).toList());
  }

  boolean touchedBy(Transition transition) {
    return parts.stream().anyMatch(p -> transition.touches(p.variable()));
  }

  /** The index of a part without values, so that no state is in the cube; -1 if there is none. */
  int nowhere() {
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).values().isEmpty()) {
        return i;
      }
    }
    return -1;
  }

  /** The index of a part whose values a term plainly excludes, by a value asked for; or -1. */
  int firstApart(Term term) {
    if (term instanceof Term.Is is) {
      for (int i = 0; i < parts.size(); i++) {
        if (parts.get(i).variable() == is.variable()
            && !parts.get(i).values().contains(is.value())) {
          return i;
        }
      }
    } else if (term instanceof Term.And and) {
      for (Term one : and.terms()) {
        int apart = firstApart(one);
        if (apart >= 0) {
          return apart;
        }
      }
    }
    return -1;
  }

  /** Whether, part by part with the same variables, some part has no value of the other's. */
  boolean apart(Cube other) {
    for (int i = 0; i < parts.size(); i++) {
      if (Collections.disjoint(parts.get(i).values(), other.parts.get(i).values())) {
        return true;
      }
    }
    return false;
  }

  /** Whether every state of the other is one of this. */
  boolean contains(Cube other) {
    for (Among part : parts) {
      boolean within =
          other.parts.stream()
              .anyMatch(
                  o -> o.variable() == part.variable() && part.values().containsAll(o.values()));
      if (!within) {
        return false;
      }
    }
    return true;
  }

  /** The indices of the parts on variables that a cube has parts on. */
  BitSet partsOf(Cube other) {
    BitSet indices = new BitSet();
    for (int i = 0; i < parts.size(); i++) {
      int variable = parts.get(i).variable();
      if (other.parts.stream().anyMatch(p -> p.variable() == variable)) {
        indices.set(i);
      }
    }
    return indices;
  }

  /** Of the parts, those with these indices. */
  Cube only(BitSet indices) {
    return new Cube(indices.stream().mapToObj(parts::get).toList());
  }

  Cube without(int index) {
    List<Among> rest = new ArrayList<>(parts);
    rest.remove(index);
    return new Cube(rest);
  }

  Cube with(int index, Among part) {
    List<Among> changed = new ArrayList<>(parts);
    changed.set(index, part);
    return new Cube(changed);
  }
}
