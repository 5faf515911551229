package lockwright.proof.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Moment;
import lockwright.proof.Problem;
import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.verdict.Verdict;

/**
 * Looks for traces of 0, 1, 2, ... transitions by unrolling the system (A. Biere et al., *Symbolic
 * Model Checking without BDDs*, 1999), with the invariants known so far as a help. A target is not
 * asked for before {@link Landmarks} have it possible. The first found is a shortest; of those, the
 * one whose transitions come first in order is given, then the one whose first state does. It never
 * proves a target unreachable.
 *
 * <p>Of one moment, a state is a movement nearer than a making; so where a target may be reached by
 * either, its states are asked for first.
 *
 * @param depth the longest trace looked for; a target for which a trace is known is followed up to
 *     its length
 */
public record ShortestTraces(int depth) implements Engine {
  @Override
  public String name() {
    return "shortest traces";
  }

  @Override
  public Knowledge improve(Problem problem, Knowledge known) {
    try (Solver solver = problem.solvers().open()) {
      Unrolled unrolled = new Unrolled(problem.system(), solver, known.invariants());
      Landmarks landmarks = new Landmarks(problem.system());
      Knowledge result = known;
      String limit = "no trace of up to " + depth + " movements";
      for (int moment = 0; ; moment++) {
        List<Target> wanted = wanted(problem, result, moment);
        if (wanted.isEmpty()) {
          break;
        }
        int now = moment;
        Stage stage = new Stage(problem, unrolled, landmarks, solver, moment);
        result =
            stage.reach(
                wanted.stream().filter(t -> landmarks.fewest(t).transitions() <= now).toList(),
                result);
        if (stage.limitMet) {
          limit = "limit met after all traces of " + moment + " movements";
          break;
        }
        if (moment % 5 == 4) {
          problem.progress().accept(name() + ": all of " + moment + " movements looked at");
        }
        unrolled.extend();
      }
      for (Target target : result.open(problem.system())) {
        result = result.with(target.name(), new Verdict.Unknown(limit), name());
      }
      return result;
    }
  }

  /** The open targets that may still be reached within their bound at that moment. */
  private List<Target> wanted(Problem problem, Knowledge known, int moment) {
    List<Target> wanted = new ArrayList<>();
    for (Target target : known.open(problem.system())) {
      int bound =
          known
              .verdicts()
              .get(target.name())
              .fold(n -> -1, reached -> reached.trace().transitions().size(), unknown -> depth);
      if (moment + (target.states().equals(Term.FALSE) ? 1 : 0) <= bound) {
        wanted.add(target);
      }
    }
    return wanted;
  }

  /** The questions asked of one moment. */
  private final class Stage {
    private final Problem problem;
    private final Unrolled unrolled;
    private final Landmarks landmarks;
    private final Solver solver;
    private final int moment;
    private boolean limitMet;

    Stage(Problem problem, Unrolled unrolled, Landmarks landmarks, Solver solver, int moment) {
      this.problem = problem;
      this.unrolled = unrolled;
      this.landmarks = landmarks;
      this.solver = solver;
      this.moment = moment;
    }

    Knowledge reach(List<Target> wanted, Knowledge known) {
      Map<Target, int[]> left = new LinkedHashMap<>();
      wanted.forEach(t -> left.put(t, unrolled.reachedNow(t)));
      Knowledge result = known;
      for (Target target : wanted) {
        if (!limitMet && moment > 0 && landmarks.fewest(target).transitions() == moment) {
          result = reachByFewest(target, left.remove(target), result);
        }
      }
      Map<Target, int[]> states = new LinkedHashMap<>();
      left.forEach((t, reached) -> states.put(t, new int[] {reached[0]}));
      states.keySet().removeIf(t -> t.states().equals(Term.FALSE) || t.makings().isEmpty());
      List<Target> either = List.copyOf(states.keySet());
      result = sweep(states, result);
      left.keySet().removeIf(t -> either.contains(t) && !states.containsKey(t));
      return sweep(left, result);
    }

    /** Finds all of the targets that are reached, and takes them out. */
    private Knowledge sweep(Map<Target, int[]> left, Knowledge known) {
      Knowledge result = known;
      while (!left.isEmpty() && !limitMet) {
        Answer answer = solver.check(anyOf(left.values()));
        if (answer != Answer.SATISFIABLE) {
          limitMet = answer == Answer.UNKNOWN;
          return result;
        }
        Target target =
            left.keySet().stream()
                .filter(t -> Arrays.stream(left.get(t)).anyMatch(unrolled::holds))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the model reaches no target"));
        result = found(target, left.remove(target), List.of(), result);
      }
      return result;
    }

    /** There is no room for other transitions than the fewest need: so only these are asked for. */
    private Knowledge reachByFewest(Target target, int[] reached, Knowledge known) {
      int only = noOthers(landmarks.fewest(target).making());
      Answer answer = solver.check(anyOf(List.of(reached)), only);
      limitMet = answer == Answer.UNKNOWN;
      return answer == Answer.SATISFIABLE ? found(target, reached, List.of(only), known) : known;
    }

    private Knowledge found(Target target, int[] reached, List<Integer> sure, Knowledge known) {
      Verdict verdict = new FirstInOrder(unrolled, solver, moment, sure).find(target, reached);
      limitMet = verdict instanceof Verdict.Unknown;
      return known.with(target.name(), verdict, name());
    }

    /** A literal that no transition but these is made. */
    private int noOthers(Set<Integer> making) {
      int only = solver.variable();
      for (int time = 0; time < moment; time++) {
        int[] made = unrolled.made(time);
        for (int t = 0; t < made.length; t++) {
          if (!making.contains(t)) {
            solver.clause(-only, -made[t]);
          }
        }
      }
      return only;
    }

    private int anyOf(Collection<int[]> literals) {
      int any = solver.variable();
      List<Integer> clause = new ArrayList<>(List.of(-any));
      literals.forEach(some -> Arrays.stream(some).forEach(clause::add));
      solver.clause(Moment.ints(clause));
      return any;
    }
  }
}
