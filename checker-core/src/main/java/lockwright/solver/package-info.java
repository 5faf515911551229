/**
 * The port to a satisfiability solver: clauses over numbered booleans. Start at {@link
 * lockwright.solver.Solver}. May import nothing of ours; a solver of one make lives in a room
 * below.
 */
package lockwright.solver;
