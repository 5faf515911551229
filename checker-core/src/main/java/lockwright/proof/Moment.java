package lockwright.proof;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import lockwright.solver.Solver;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Term;
import lockwright.system.Variable;

/**
 * The state at one moment, as booleans of a solver: one a value of a variable, of which exactly one
 * holds; for a variable of two values, one boolean.
 */
public final class Moment {
  private final Solver solver;
  private final int[][] literals;
  private final Map<Term, Integer> defined = new IdentityHashMap<>();
  private final int truth;

  public Moment(Solver solver, List<Variable> variables) {
    this.solver = solver;
    truth = solver.variable();
    solver.clause(truth);
    literals = new int[variables.size()][];
    for (int v = 0; v < literals.length; v++) {
      literals[v] = oneOf(variables.get(v).size());
    }
  }

  private int[] oneOf(int size) {
    int[] one = new int[size];
    if (size == 1) {
      one[0] = truth;
    } else if (size == 2) {
      one[1] = solver.variable();
      one[0] = -one[1];
    } else {
      for (int value = 0; value < size; value++) {
        one[value] = solver.variable();
      }
      solver.clause(one);
      atMostOne(solver, one);
    }
    return one;
  }

  /** Adds that at most one of some literals holds: pair by pair if few, else along a ladder. */
  public static void atMostOne(Solver solver, int... some) {
    if (some.length <= 6) {
      for (int i = 0; i < some.length; i++) {
        for (int j = 0; j < i; j++) {
          solver.clause(-some[i], -some[j]);
        }
      }
      return;
    }
    int before = some[0];
    for (int i = 1; i < some.length; i++) {
      solver.clause(-some[i], -before);
      if (i + 1 < some.length) {
        int upTo = solver.variable();
        solver.clause(-before, upTo);
        solver.clause(-some[i], upTo);
        before = upTo;
      }
    }
  }

  public int literal(int variable, int value) {
    return literals[variable][value];
  }

  /** The literals of a variable's values, in order. */
  public int[] literals(int variable) {
    return literals[variable].clone();
  }

  /** The state that the solver has just found. */
  public int[] state() {
    int[] state = new int[literals.length];
    for (int v = 0; v < state.length; v++) {
      for (int value = 0; value < literals[v].length; value++) {
        int literal = literals[v][value];
        if (solver.value(Math.abs(literal)) == literal > 0) {
          state[v] = value;
        }
      }
    }
    return state;
  }

  /** A literal that is true just if the term holds. Terms are told apart by identity. */
  public int literal(Term term) {
    Integer known = defined.get(term);
    if (known == null) {
      known = define(term);
      defined.put(term, known);
    }
    return known;
  }

  private int define(Term term) {
    if (term instanceof Term.Is is) {
      return literal(is.variable(), is.value());
    }
    if (term instanceof Term.Not not) {
      return -literal(not.term());
    }
    boolean and = term instanceof Term.And;
    List<Term> parts = and ? ((Term.And) term).terms() : ((Term.Or) term).terms();
    if (parts.isEmpty()) {
      return and ? truth : -truth;
    }
    int sign = and ? 1 : -1;
    int whole = solver.variable();
    int[] back = new int[parts.size() + 1];
    for (int i = 0; i < parts.size(); i++) {
      int part = sign * literal(parts.get(i));
      solver.clause(-whole, part);
      back[i] = -part;
    }
    back[parts.size()] = whole;
    solver.clause(back);
    return sign * whole;
  }

  /** The literals of which one must hold for the clause to hold. */
  public List<Integer> disjuncts(Clause clause) {
    List<Integer> some = new ArrayList<>();
    clause.among().forEach(a -> some.addAll(disjuncts(a)));
    return some;
  }

  private List<Integer> disjuncts(Among among) {
    int[] all = literals[among.variable()];
    if (among.values().size() == all.length) {
      return List.of(truth);
    }
    if (among.values().size() == all.length - 1) {
      int missing = among.complement(all.length).values().first();
      return List.of(-all[missing]);
    }
    return among.values().stream().map(value -> all[value]).toList();
  }

  /** The literals that must all hold for the variable to have one of the values. */
  public List<Integer> conjuncts(Among among) {
    return disjuncts(among.complement(literals[among.variable()].length)).stream()
        .map(literal -> -literal)
        .toList();
  }

  /** Adds a clause, under a condition if one is given. */
  public void add(Clause clause, int... unless) {
    List<Integer> some = disjuncts(clause);
    for (int literal : unless) {
      some.add(literal);
    }
    solver.clause(ints(some));
  }

  public static int[] ints(List<Integer> some) {
    return some.stream().mapToInt(Integer::intValue).toArray();
  }
}
