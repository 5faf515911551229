package lockwright.audit;

import java.util.BitSet;
import java.util.List;
import lockwright.audit.sat.Answer;
import lockwright.audit.sat.SecondSolver;
import lockwright.working.Condition;
import lockwright.working.Movement;
import lockwright.working.Working;

/**
 * Checks an invariant by questions to the second solver. Before each kind of question it makes sure
 * that the solver finds the ordinary states, so that it does not deny everything.
 */
final class Solving implements Checker {
  /** For one question; far more than an ordinary one meets. */
  private static final int CONFLICTS = 200_000;

  private final Invariant invariant;
  private final Working working;
  private SecondSolver inside;

  Solving(Invariant invariant) {
    this.invariant = invariant;
    this.working = invariant.working();
  }

  /** No beginning, and not the invariant. */
  @Override
  public Outcome begins() {
    SecondSolver solver = new SecondSolver(working.quantities(), CONFLICTS);
    solver.require(working.beginning());
    Outcome outcome = ordinary(solver);
    return outcome instanceof Outcome.Holds
        ? none(solver, "a beginning is not in the invariant", Condition.not(invariant.whole()))
        : outcome;
  }

  /** No movement with the invariant, what the movement needs, and not the invariant after it. */
  @Override
  public Outcome keeps() {
    Outcome outcome = ordinary(inside());
    for (Movement movement : working.movements()) {
      List<Condition> touched = invariant.touchedBy(movement);
      if (outcome instanceof Outcome.Holds && !touched.isEmpty()) {
        outcome =
            none(
                inside(),
                movement.event().key() + " leads out of the invariant",
                movement.needs(),
                Condition.not(Condition.all(touched).before(movement.effects())));
      }
    }
    return outcome;
  }

  /** Not the invariant and the target. */
  @Override
  public Outcome excludes(Condition target) {
    Outcome outcome = ordinary(inside());
    return outcome instanceof Outcome.Holds
        ? none(inside(), "the invariant does not exclude the target", target)
        : outcome;
  }

  private SecondSolver inside() {
    if (inside == null) {
      inside = new SecondSolver(working.quantities(), CONFLICTS);
      invariant.clauses().forEach(inside::require);
    }
    return inside;
  }

  /** Holds if there are states such as the solver has to keep to. */
  private static Outcome ordinary(SecondSolver solver) {
    Answer answer = solver.ask();
    if (answer instanceof Answer.Open open) {
      return new Outcome.Open(open.reason());
    }
    return answer instanceof Answer.None
        ? new Outcome.Open("the second solver finds no state at all")
        : new Outcome.Holds(CheckedBy.SECOND_SOLVER);
  }

  /** Holds if there is no such state. */
  private Outcome none(SecondSolver solver, String fault, Condition... question) {
    Answer answer = solver.ask(question);
    if (answer instanceof Answer.None) {
      return new Outcome.Holds(CheckedBy.SECOND_SOLVER);
    } else if (answer instanceof Answer.Found found) {
      int[] values = found.values().stream().mapToInt(v -> v).toArray();
      BitSet named = Invariant.mentions(invariant.whole());
      List.of(question).forEach(q -> q.mentions(named));
      return new Outcome.Fails(fault + ": " + invariant.words(values, named));
    }
    return new Outcome.Open(((Answer.Open) answer).reason());
  }
}
