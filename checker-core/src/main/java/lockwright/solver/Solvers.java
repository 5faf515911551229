package lockwright.solver;

/** Opens solvers of one make. */
public interface Solvers {
  Solver open();
}
