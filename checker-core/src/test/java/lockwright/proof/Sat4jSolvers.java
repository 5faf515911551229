package lockwright.proof;

import java.util.Arrays;
import lockwright.solver.Solver;
import lockwright.solver.Solvers;
import org.sat4j.core.VecInt;
import org.sat4j.minisat.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.ISolver;
import org.sat4j.specs.IVecInt;
import org.sat4j.specs.TimeoutException;

/** The solver port on Sat4j, so that the engines are tried on a solver of another make too. */
public final class Sat4jSolvers implements Solvers {
  @Override
  public Solver open() {
    return new OnSat4j();
  }

  @Override
  public void close() {
    // Each solver has its own.
  }

  private static final class OnSat4j implements Solver {
    private final ISolver solver = SolverFactory.newDefault();
    private boolean contradiction;
    private int[] core;
    private int ordered = -1;
    private boolean[] model;

    OnSat4j() {
      // A limit in seconds, the default, starts a thread for each question.
      solver.setTimeoutOnConflicts(Integer.MAX_VALUE);
    }

    @Override
    public int variable() {
      return solver.nextFreeVarId(true);
    }

    @Override
    public void clause(int... literals) {
      try {
        solver.addClause(new VecInt(literals.clone()));
      } catch (ContradictionException e) {
        contradiction = true;
      }
    }

    @Override
    public Answer check(int... assumptions) {
      if (contradiction) {
        core = new int[0];
        return Answer.UNSATISFIABLE;
      }
      // Its order of variables is made anew for new variables only, and not for each question.
      solver.setKeepSolverHot(solver.nVars() == ordered);
      ordered = solver.nVars();
      try {
        if (solver.isSatisfiable(new VecInt(assumptions.clone()))) {
          int[] literals = solver.model();
          model = new boolean[solver.nVars() + 1];
          Arrays.stream(literals).filter(l -> l > 0).forEach(l -> model[l] = true);
          return Answer.SATISFIABLE;
        }
      } catch (TimeoutException e) {
        return Answer.UNKNOWN;
      }
      IVecInt explanation = solver.unsatExplanation();
      core =
          explanation == null
              ? new int[0]
              : Arrays.copyOf(explanation.toArray(), explanation.size());
      return Answer.UNSATISFIABLE;
    }

    @Override
    public boolean value(int variable) {
      return variable < model.length && model[variable];
    }

    @Override
    public int[] core() {
      return core.clone();
    }

    @Override
    public void close() {
      // It holds nothing but memory.
    }
  }
}
