package lockwright.solver.z3;

import com.microsoft.z3.Context;
import com.microsoft.z3.Version;
import lockwright.solver.Solver;
import lockwright.solver.Solvers;

/**
 * Solvers on Z3. Each has a context of its own, to be used and closed by the thread that opened it.
 *
 * @param effort Z3's resource limit for one question, the same on every machine; 0 for none
 * @param deadline the {@link System#nanoTime()} after which questions are answered by unknown
 */
public record Z3Solvers(int effort, long deadline) implements Solvers {
  /** Without limits. */
  public static Z3Solvers unlimited() {
    return new Z3Solvers(0, System.nanoTime() + Long.MAX_VALUE / 2);
  }

  @Override
  public Solver open() {
    return new Z3Solver(new Context(), effort, deadline);
  }

  /** The version of Z3, as it gives it. Throws {@link LinkageError} where the natives do not load. */
  public static String version() {
    return Version.getString();
  }
}
