package lockwright.proof;

import java.util.List;

/**
 * Runs engines one after another, each on what the ones before left open. Which engines, and in
 * which order, is the caller's choice. In the end every proof has the same certificate: all
 * invariants found, which are inductive together.
 */
public record Search(List<Engine> engines) {
  public Search {
    engines = List.copyOf(engines);
  }

  /** The verdicts of all targets, unknown where no engine decided. */
  public Knowledge run(Problem problem) {
    Knowledge known = Knowledge.none(problem.system());
    for (Engine engine : engines) {
      int open = known.open(problem.system()).size();
      if (open == 0) {
        break;
      }
      problem.progress().accept(engine.name() + ": " + open + " open");
      known = engine.improve(problem, known);
    }
    return known.withOneCertificate();
  }
}
