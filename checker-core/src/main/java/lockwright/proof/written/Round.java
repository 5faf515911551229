package lockwright.proof.written;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.proof.Moment;
import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;

/**
 * One round: drops candidates that do not hold initially, or are not kept while all others hold.
 */
final class Round {
  private final TransitionSystem system;
  private final Solver solver;
  private final List<Clause> candidates;
  private final boolean[] dropped;
  private final int all;
  private final Moment moment;

  Round(TransitionSystem system, Solver solver, List<Clause> invariants, List<Clause> candidates) {
    this.system = system;
    this.solver = solver;
    this.candidates = candidates;
    dropped = new boolean[candidates.size()];
    moment = new Moment(solver, system.variables());
    invariants.forEach(moment::add);
    all = solver.variable();
    candidates.forEach(c -> moment.add(c, -all));
  }

  List<Clause> left() {
    List<Clause> left = new ArrayList<>();
    for (int c = 0; c < dropped.length; c++) {
      if (!dropped[c]) {
        left.add(candidates.get(c));
      }
    }
    return left;
  }

  /** False if a limit was met. */
  boolean drop() {
    if (!dropUnlessInitial()) {
      return false;
    }
    for (Transition transition : system.transitions()) {
      if (!dropUnlessKept(transition)) {
        return false;
      }
    }
    return true;
  }

  /** Asks: initial and not c1, or not c2, ... */
  private boolean dropUnlessInitial() {
    Map<Integer, Integer> violations = new LinkedHashMap<>();
    for (int c = 0; c < dropped.length; c++) {
      violations.put(c, violation(candidates.get(c)));
    }
    int initial = moment.literal(system.initial());
    while (true) {
      Answer answer = solver.check(anyOf(violations), initial);
      if (answer != Answer.SATISFIABLE) {
        return answer == Answer.UNSATISFIABLE;
      }
      int[] state = moment.state();
      for (int c = 0; c < dropped.length; c++) {
        dropped[c] |= !candidates.get(c).holds(state);
      }
    }
  }

  /** Asks: all candidates, guard of the transition, and after it not c1, or not c2, ... */
  private boolean dropUnlessKept(Transition transition) {
    Map<Integer, Clause> before = new LinkedHashMap<>();
    Map<Integer, Integer> violations = new LinkedHashMap<>();
    for (int c = 0; c < dropped.length; c++) {
      Clause clause = candidates.get(c);
      if (!dropped[c] && clause.among().stream().anyMatch(a -> transition.touches(a.variable()))) {
        before.put(c, new Clause(clause.among().stream().map(transition::before).toList()));
        violations.put(c, violation(before.get(c)));
      }
    }
    if (violations.isEmpty()) {
      return true;
    }
    int guard = moment.literal(transition.guard());
    while (true) {
      Answer answer = solver.check(all, anyOf(violations), guard);
      if (answer != Answer.SATISFIABLE) {
        return answer == Answer.UNSATISFIABLE;
      }
      int[] state = moment.state();
      before.forEach((c, clause) -> dropped[c] |= !clause.holds(state));
    }
  }

  /** A literal that implies that a clause does not hold. */
  private int violation(Clause clause) {
    int literal = solver.variable();
    for (int disjunct : moment.disjuncts(clause)) {
      solver.clause(-literal, -disjunct);
    }
    return literal;
  }

  /** A literal that implies one of the violations of candidates that are not dropped. */
  private int anyOf(Map<Integer, Integer> violations) {
    int any = solver.variable();
    List<Integer> clause = new ArrayList<>(List.of(-any));
    violations.forEach(
        (c, literal) -> {
          if (!dropped[c]) {
            clause.add(literal);
          }
        });
    solver.clause(Moment.ints(clause));
    return any;
  }

  /** Asks: all candidates and the target. Of use when none was dropped. */
  Answer reaches(Target target) {
    return solver.check(all, moment.literal(system.imminent(target)));
  }
}
