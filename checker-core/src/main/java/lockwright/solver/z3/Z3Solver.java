package lockwright.solver.z3;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.Expr;
import com.microsoft.z3.Model;
import com.microsoft.z3.Params;
import com.microsoft.z3.Status;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.solver.Solver;

/**
 * Z3's solver for finite domains, which is several times faster on these questions than its
 * default.
 */
final class Z3Solver implements Solver {
  private final Context context;
  private final com.microsoft.z3.Solver solver;
  private final Params params;
  private final long deadline;
  private final List<BoolExpr> positive = new ArrayList<>();
  private final List<BoolExpr> negative = new ArrayList<>();
  private final Map<Expr<?>, Integer> literals = new HashMap<>();
  private long timeout = Long.MAX_VALUE;
  private Model model;
  private boolean modelToBeHad;
  private int[] core;

  Z3Solver(Context context, int effort, long deadline) {
    this.context = context;
    this.deadline = deadline;
    solver = context.mkSolver("QF_FD");
    params = context.mkParams();
    params.add("random_seed", 1);
    // Compacting a model takes Z3 longer than making it, and each is looked at once.
    params.add("compact", false);
    if (effort > 0) {
      params.add("rlimit", effort);
    }
    solver.setParameters(params);
  }

  @Override
  public int variable() {
    int number = positive.size() + 1;
    BoolExpr constant = context.mkBoolConst("b" + number);
    BoolExpr negation = context.mkNot(constant);
    positive.add(constant);
    negative.add(negation);
    literals.put(constant, number);
    literals.put(negation, -number);
    return number;
  }

  @Override
  public void clause(int... clause) {
    modelToBeHad = false;
    model = null;
    BoolExpr[] terms = terms(clause);
    solver.add(new BoolExpr[] {terms.length == 1 ? terms[0] : context.mkOr(terms)});
  }

  @Override
  public Answer check(int... assumptions) {
    modelToBeHad = false;
    model = null;
    core = null;
    long left = (deadline - System.nanoTime()) / 1_000_000;
    if (left <= 0) {
      return Answer.UNKNOWN;
    }
    if (left < Integer.MAX_VALUE && timeout - left > 500) {
      timeout = left;
      params.add("timeout", (int) left);
      solver.setParameters(params);
    }
    Status status = solver.check(terms(assumptions));
    switch (status) {
      case SATISFIABLE:
        modelToBeHad = true;
        return Answer.SATISFIABLE;
      case UNSATISFIABLE:
        BoolExpr[] found = solver.getUnsatCore();
        core = new int[found.length];
        for (int i = 0; i < found.length; i++) {
          core[i] = literals.get(found[i]);
        }
        return Answer.UNSATISFIABLE;
      default:
        return Answer.UNKNOWN;
    }
  }

  @Override
  public boolean value(int variable) {
    // Making the model takes longer than most answers, and many are not looked at.
    if (model == null) {
      if (!modelToBeHad) {
        throw new IllegalStateException("no model since the last clause or check");
      }
      model = solver.getModel();
    }
    // A boolean that the model leaves open may have either value; false is as good as true.
    return model.evaluate(positive.get(variable - 1), true).isTrue();
  }

  @Override
  public int[] core() {
    return core.clone();
  }

  @Override
  public void close() {
    solver.reset();
  }

  private BoolExpr[] terms(int[] some) {
    BoolExpr[] terms = new BoolExpr[some.length];
    for (int i = 0; i < some.length; i++) {
      terms[i] = some[i] > 0 ? positive.get(some[i] - 1) : negative.get(-some[i] - 1);
    }
    return terms;
  }
}
