package lockwright.solver.z3;

import com.microsoft.z3.Context;
import com.microsoft.z3.Version;
import lockwright.solver.Solver;
import lockwright.solver.Solvers;

/** Solvers on Z3, which share one context. */
public final class Z3Solvers implements Solvers {
  private final Context context = new Context();
  private final int effort;
  private final long deadline;

  /**
   * @param effort Z3's resource limit for one question, the same on every machine; 0 for none
   * @param deadline the {@link System#nanoTime()} after which questions are answered by unknown
   */
  public Z3Solvers(int effort, long deadline) {
    this.effort = effort;
    this.deadline = deadline;
  }

  /** Without limits. */
  public static Z3Solvers unlimited() {
    return new Z3Solvers(0, System.nanoTime() + Long.MAX_VALUE / 2);
  }

  @Override
  public Solver open() {
    return new Z3Solver(context, effort, deadline);
  }

  @Override
  public void close() {
    context.close();
  }

  /**
   * The version of Z3, as it gives it. Throws {@link LinkageError} where the natives do not load.
   */
  public static String version() {
    return Version.getString();
  }
}
