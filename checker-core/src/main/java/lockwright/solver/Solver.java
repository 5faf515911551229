package lockwright.solver;

/**
 * An incremental satisfiability solver. Booleans are numbered from 1; a literal is a boolean's
 * number, negative for its negation. Not for several threads.
 */
public interface Solver extends AutoCloseable {
  /** The answers; {@code UNKNOWN} when a limit was met, and never to be taken for either other. */
  enum Answer {
    SATISFIABLE,
    UNSATISFIABLE,
    UNKNOWN
  }

  /** A new boolean. */
  int variable();

  /** Adds a clause for good. An empty one makes everything unsatisfiable. */
  void clause(int... literals);

  /** Whether all clauses can hold together with the literals assumed. */
  Answer check(int... assumptions);

  /** After {@code SATISFIABLE}, until the next clause or check: whether a boolean is true. */
  boolean value(int variable);

  /** After {@code UNSATISFIABLE}: those of the literals assumed that suffice for it. */
  int[] core();

  @Override
  void close();
}
