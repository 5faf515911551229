package lockwright.proof.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Moment;
import lockwright.proof.Problem;
import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import lockwright.system.Target;
import lockwright.verdict.Verdict;

/**
 * Looks for traces of 0, 1, 2, ... transitions by unrolling the system (A. Biere et al., *Symbolic
 * Model Checking without BDDs*, 1999), with the invariants known so far as a help. The first found
 * is a shortest; of those, the one whose transitions come first in order is given, then the one
 * whose first state does. It never proves a target unreachable.
 *
 * <p>A target is reached by states or by makings, not by both: so the first found is a shortest.
 *
 * @param depth the longest trace looked for; a target for which a trace is known is followed up to
 *     its length
 */
public record ShortestTraces(int depth) implements Engine {
  @Override
  public String name() {
    return "shortest traces";
  }

  @Override
  public Knowledge improve(Problem problem, Knowledge known) {
    try (Solver solver = problem.solvers().open()) {
      Unrolled unrolled = new Unrolled(problem.system(), solver, known.invariants());
      Knowledge result = known;
      String limit = "no trace of up to " + depth + " movements";
      for (int moment = 0; ; moment++) {
        List<Target> wanted = wanted(problem, result, moment);
        if (wanted.isEmpty()) {
          break;
        }
        Stage stage = new Stage(problem, unrolled, solver, moment);
        result = stage.reach(wanted, result);
        if (stage.limitMet) {
          limit = "limit met after all traces of " + moment + " movements";
          break;
        }
        if (moment % 5 == 4) {
          problem.progress().accept(name() + ": all of " + moment + " movements looked at");
        }
        unrolled.extend();
      }
      for (Target target : result.open(problem.system())) {
        result = result.with(target.name(), new Verdict.Unknown(limit), name());
      }
      return result;
    }
  }

  /** The open targets that may still be reached within their bound at that moment. */
  private List<Target> wanted(Problem problem, Knowledge known, int moment) {
    List<Target> wanted = new ArrayList<>();
    for (Target target : known.open(problem.system())) {
      int bound =
          known
              .verdicts()
              .get(target.name())
              .fold(n -> -1, reached -> reached.trace().transitions().size(), unknown -> depth);
      if (moment + (target.makings().isEmpty() ? 0 : 1) <= bound) {
        wanted.add(target);
      }
    }
    return wanted;
  }

  /** The questions asked of one moment. */
  private final class Stage {
    private final Problem problem;
    private final Unrolled unrolled;
    private final Solver solver;
    private final int moment;
    private boolean limitMet;

    Stage(Problem problem, Unrolled unrolled, Solver solver, int moment) {
      this.problem = problem;
      this.unrolled = unrolled;
      this.solver = solver;
      this.moment = moment;
    }

    Knowledge reach(List<Target> wanted, Knowledge known) {
      Map<Target, int[]> left = new LinkedHashMap<>();
      wanted.forEach(t -> left.put(t, unrolled.reachedNow(t)));
      Knowledge result = known;
      while (!left.isEmpty()) {
        Answer answer = solver.check(anyOf(left.values()));
        if (answer != Answer.SATISFIABLE) {
          limitMet = answer == Answer.UNKNOWN;
          return result;
        }
        Target target =
            left.keySet().stream()
                .filter(t -> Arrays.stream(left.get(t)).anyMatch(unrolled::holds))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the model reaches no target"));
        Verdict verdict =
            new FirstInOrder(unrolled, solver, moment).find(target, left.remove(target));
        result = result.with(target.name(), verdict, name());
        if (verdict instanceof Verdict.Unknown) {
          limitMet = true;
          return result;
        }
      }
      return result;
    }

    private int anyOf(Collection<int[]> literals) {
      int any = solver.variable();
      List<Integer> clause = new ArrayList<>(List.of(-any));
      literals.forEach(some -> Arrays.stream(some).forEach(clause::add));
      solver.clause(Moment.ints(clause));
      return any;
    }
  }
}
