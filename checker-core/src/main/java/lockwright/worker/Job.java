package lockwright.worker;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Search;
import lockwright.proof.merged.MergedValues;
import lockwright.proof.pdr.PropertyDirected;
import lockwright.proof.search.ShortestTraces;
import lockwright.proof.written.WrittenInvariants;
import lockwright.solver.z3.Z3Solvers;
import lockwright.system.TransitionSystem;

/** One search: a system, and what it may use. */
public record Job(TransitionSystem system, Limits limits) {
  /** None, one, or more: so counts are told apart first. */
  private static final int MERGED_FROM = 2;

  /** The engines, in the order in which they are asked. To add one, add a line. */
  public static List<Engine> engines(Limits limits) {
    List<Engine> engines = new ArrayList<>();
    engines.add(new MergedValues(MERGED_FROM, ofOne(limits)));
    engines.addAll(ofOne(limits));
    return engines;
  }

  /** The engines that search one system, as it stands. */
  private static List<Engine> ofOne(Limits limits) {
    List<Engine> engines = new ArrayList<>();
    engines.add(new WrittenInvariants());
    engines.add(new ShortestTraces(limits.depth()));
    engines.add(new PropertyDirected());
    // Follows the traces that the engine before has found, to the shortest.
    engines.add(new ShortestTraces(limits.depth()));
    return engines;
  }

  /** Searches in this thread. */
  public Knowledge run(Consumer<String> progress) {
    long deadline = System.nanoTime() + limits.seconds() * 1_000_000_000L;
    try (Z3Solvers solvers = new Z3Solvers(limits.effort(), deadline)) {
      return new Search(engines(limits)).run(new Problem(system, solvers, progress));
    }
  }
}
