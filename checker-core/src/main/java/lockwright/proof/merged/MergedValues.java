package lockwright.proof.merged;

import java.util.List;
import java.util.Optional;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;

/**
 * Lets other engines search a smaller system first, in which a variable with many values has only a
 * few: nought, one, and so on, and 'more'. Where a value more becomes one less, it is left open
 * whether it is then one of the few. (E. M. Clarke, O. Grumberg and D. E. Long, *Model Checking and
 * Abstraction*, 1994.)
 *
 * <ol>
 *   <li>What is never reached there is never reached: the same clauses prove it.
 *   <li>What is reached there may not be, or not so. Its transitions are tried as they stand, from
 *       each state that may begin. If they lead to the target, the trace is the one that was looked
 *       for: a shorter one, or one earlier in order, would have been found there too.
 *   <li>All else is left to the engines after this one, with the clauses as a help.
 * </ol>
 *
 * <p>A verdict is put down to the engine that found it.
 *
 * @param kept how many values of a variable are kept apart, from nought on; a variable is left as
 *     it is if it has at most one more
 */
public record MergedValues(int kept, List<Engine> engines) implements Engine {
  public MergedValues {
    engines = List.copyOf(engines);
    if (kept < 1) {
      throw new IllegalArgumentException("keeps no value apart: " + kept);
    }
  }

  @Override
  public String name() {
    return "merged values";
  }

  @Override
  public Knowledge improve(Problem problem, Knowledge known) {
    List<Target> open = known.open(problem.system());
    if (open.isEmpty() || !Merging.merges(problem.system(), kept)) {
      return known;
    }
    TransitionSystem system = only(open, problem.system());
    Merging merging = new Merging(system, kept);
    Knowledge found = searched(problem, merging.merged());
    Knowledge result =
        known.withInvariants(found.invariants().stream().map(merging::exactly).toList());
    for (Target target : open) {
      Optional<Verdict> verdict = exactly(system, target, found, result.invariants());
      if (verdict.isPresent()) {
        result = result.with(target.name(), verdict.get(), found.decidedBy().get(target.name()));
      }
    }
    return result;
  }

  private static TransitionSystem only(List<Target> open, TransitionSystem s) {
    return new TransitionSystem(s.variables(), s.initial(), s.transitions(), open, s.candidates());
  }

  private Knowledge searched(Problem problem, TransitionSystem merged) {
    Problem smaller = new Problem(merged, problem.solvers(), problem.progress());
    Knowledge found = Knowledge.none(merged);
    for (Engine engine : engines) {
      int open = found.open(merged).size();
      if (open > 0) {
        problem.progress().accept(engine.name() + ", values merged: " + open + " open");
        found = engine.improve(smaller, found);
      }
    }
    return found;
  }

  /** What a verdict on the smaller system says of this one, if anything. */
  private static Optional<Verdict> exactly(
      TransitionSystem system, Target target, Knowledge found, List<Clause> invariants) {
    return found
        .verdicts()
        .get(target.name())
        .fold(
            never -> Optional.of(new Verdict.Never(invariants)),
            reached ->
                Beginning.of(system, target, reached.trace().transitions())
                    .map(
                        first ->
                            new Verdict.Reached(
                                new Trace(first, reached.trace().transitions()),
                                reached.shortest())),
            unknown -> Optional.empty());
  }
}
