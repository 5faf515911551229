package lockwright.proof.pdr;

import java.util.List;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.solver.Solver;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.verdict.Verdict;

/**
 * Property directed reachability, one target at a time: it either proves a target unreachable or
 * finds a trace. (A. R. Bradley, *SAT-Based Model Checking without Unrolling*, 2011; N. Een, A.
 * Mishchenko and R. Brayton, *Efficient Implementation of Property Directed Reachability*, 2011.)
 * It stops when a layer equals the next, when a trace is complete, or at a limit of the solver.
 *
 * <p>The transitions have no primed variables: since their effects are functions of one variable
 * each, what must hold before a transition is written down by substitution, and only those
 * transitions are asked about that touch a variable of the cube. Clauses of earlier proofs are
 * given to later ones.
 */
public final class PropertyDirected implements Engine {
  @Override
  public String name() {
    return "property directed reachability";
  }

  @Override
  public Knowledge improve(Problem problem, Knowledge known) {
    Knowledge result = known;
    for (Target target : known.open(problem.system())) {
      if (result.verdicts().get(target.name()) instanceof Verdict.Reached) {
        continue;
      }
      problem.progress().accept(name() + ": " + target.name());
      try (Solver solver = problem.solvers().open()) {
        Verdict verdict = new Run(problem.system(), target, result.invariants(), solver).decide();
        if (verdict instanceof Verdict.Never never) {
          List<Clause> certificate = never.certificate();
          result = result.withInvariants(certificate);
          verdict = new Verdict.Never(result.invariants());
        }
        result = result.with(target.name(), verdict, name());
      }
    }
    return result;
  }
}
