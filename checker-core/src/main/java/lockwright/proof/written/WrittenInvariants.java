package lockwright.proof.written;

import java.util.List;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.verdict.Verdict;

/**
 * Of the candidate clauses of a system, finds the largest set that is inductive, and proves with it
 * what it can. (C. Flanagan and K. R. M. Leino, *Houdini, an annotation assistant for ESC/Java*,
 * 2001.)
 *
 * <ol>
 *   <li>Drop the candidates that do not hold initially.
 *   <li>In a round, ask for each transition: can it be made from a state in which all candidates
 *       hold that stood at the beginning of the round, to one in which one does not? Drop those
 *       that do not hold there, and ask again.
 *   <li>When a round drops none, those left are invariants. A target that none of the states that
 *       they allow reaches is never reached.
 * </ol>
 *
 * It never finds a trace.
 */
public final class WrittenInvariants implements Engine {
  @Override
  public String name() {
    return "written invariants";
  }

  @Override
  public Knowledge improve(Problem problem, Knowledge known) {
    List<Clause> left =
        problem.system().candidates().stream()
            .distinct()
            .filter(c -> !known.invariants().contains(c))
            .toList();
    while (true) {
      try (Solver solver = problem.solvers().open()) {
        Round round = new Round(problem.system(), solver, known.invariants(), left);
        if (!round.drop()) {
          return unknown(problem, known);
        }
        if (round.left().size() == left.size()) {
          return proofs(problem, known, round);
        }
        left = round.left();
      }
    }
  }

  private Knowledge proofs(Problem problem, Knowledge known, Round last) {
    Knowledge result = known.withInvariants(last.left());
    problem.progress().accept(name() + ": " + result.invariants().size() + " invariants");
    for (Target target : result.open(problem.system())) {
      Answer answer = last.reaches(target);
      if (answer == Answer.UNSATISFIABLE) {
        result = result.with(target.name(), new Verdict.Never(result.invariants()), name());
      }
    }
    return result;
  }

  private Knowledge unknown(Problem problem, Knowledge known) {
    Knowledge result = known;
    for (Target target : known.open(problem.system())) {
      result =
          result.with(
              target.name(), new Verdict.Unknown("limit met while keeping invariants"), name());
    }
    return result;
  }
}
