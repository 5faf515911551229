package lockwright.solver;

/**
 * Opens solvers of one make. To be used, with its solvers, by one thread, and closed after them.
 */
public interface Solvers extends AutoCloseable {
  Solver open();

  @Override
  void close();
}
