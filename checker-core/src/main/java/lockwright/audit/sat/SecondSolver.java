package lockwright.audit.sat;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import org.sat4j.core.VecInt;
import org.sat4j.minisat.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.ISolver;
import org.sat4j.specs.TimeoutException;

/**
 * Asks whether a state of a box can be such and such. Gives {@link Answer.None} only where the
 * solver says so; whatever goes wrong is {@link Answer.Open}. Not for use by several threads.
 */
public final class SecondSolver {
  private final ISolver solver = SolverFactory.newDefault();
  private final Clauses clauses;
  private final List<Condition> required = new ArrayList<>();
  private String fault;

  /**
   * @param conflicts how many conflicts the solver may meet for one question: a limit that does not
   *     hang on the speed of the machine
   */
  public SecondSolver(List<Quantity> quantities, int conflicts) {
    solver.setTimeoutOnConflicts(conflicts);
    clauses = new Clauses(quantities, () -> solver.nextFreeVarId(true), this::add);
  }

  /** From now on only states in which this holds are asked for. */
  public void require(Condition condition) {
    required.add(condition);
    add(new int[] {clauses.literal(condition)});
  }

  /** A state in which all of these hold, and all that is required. */
  public Answer ask(Condition... wanted) {
    int[] literals = new int[wanted.length];
    for (int i = 0; i < wanted.length; i++) {
      literals[i] = clauses.literal(wanted[i]);
    }
    if (fault != null) {
      return new Answer.Open(fault);
    }
    try {
      return solver.isSatisfiable(new VecInt(literals)) ? found(wanted) : new Answer.None();
    } catch (TimeoutException e) {
      return new Answer.Open("the second solver met its limit of conflicts");
    } catch (RuntimeException e) {
      return new Answer.Open("the second solver failed: " + e);
    }
  }

  private Answer found(Condition... wanted) {
    int[] state = new int[clauses.quantities()];
    List<Integer> values = new ArrayList<>();
    for (int q = 0; q < state.length; q++) {
      for (int v = 0; v < clauses.values(q); v++) {
        if (solver.model(clauses.variable(q, v))) {
          state[q] = v;
        }
      }
      values.add(state[q]);
    }
    for (Condition condition : wanted) {
      if (!condition.evaluate(state)) {
        return new Answer.Open("the second solver gave a state that is not such");
      }
    }
    for (Condition condition : required) {
      if (!condition.evaluate(state)) {
        return new Answer.Open("the second solver gave a state that is not such");
      }
    }
    return new Answer.Found(values);
  }

  private void add(int[] clause) {
    try {
      solver.addClause(new VecInt(clause));
    } catch (ContradictionException e) {
      fault = "the second solver was given a contradiction";
    } catch (RuntimeException e) {
      fault = "the second solver failed: " + e;
    }
  }
}
