package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.pdr.PropertyDirected;
import lockwright.proof.search.ShortestTraces;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.solver.Solvers;
import lockwright.system.Target;
import lockwright.verdict.Verdict;
import lockwright.working.BruteForce;

/**
 * One of the engines alone on a requirement of a box, against brute force over the second reading:
 * what it decides is right, and what it leaves open it may leave open. The written invariants come
 * first of all engines, so when all search together they search alone.
 */
final class EnginesAlone {
  private static final int DEPTH = 5;

  private EnginesAlone() {}

  /**
   * Has one of the requirements of safety, or of what these speak about, searched by one of them.
   */
  static void agree(Box box, BruteForce brute, Solvers solvers, Random random) {
    Encoded encoded = Encoder.parted(box);
    List<String> names = encoded.system().targets().stream().map(Target::name).toList();
    String one = names.get(random.nextInt(names.size()));
    Set<String> others = new HashSet<>(names);
    others.remove(one);
    Problem problem = new Problem(encoded.without(others).system(), solvers, progress -> {});
    Engine engine = random.nextBoolean() ? new ShortestTraces(DEPTH) : new PropertyDirected();
    Knowledge known = engine.improve(problem, Knowledge.none(problem.system()));
    agrees(engine, one, known.verdicts().get(one), shortest(box, brute, one));
  }

  private static OptionalInt shortest(Box box, BruteForce brute, String target) {
    for (Requirement requirement : box.checked()) {
      if (!requirement.possibility()) {
        if (requirement.id().equals(target)) {
          return brute.shortest(requirement);
        }
        for (Subject subject : requirement.speaksAbout()) {
          if (subject.id().equals(target)) {
            return brute.shortest(subject);
          }
        }
      }
    }
    throw new IllegalArgumentException("no requirement of safety speaks of: " + target);
  }

  private static void agrees(Engine engine, String target, Verdict verdict, OptionalInt shortest) {
    String what = engine.name() + " on " + target;
    if (verdict instanceof Verdict.Never) {
      assertThat(shortest).as(what).isEmpty();
    } else if (verdict instanceof Verdict.Reached reached) {
      int length = reached.trace().transitions().size();
      assertThat(shortest).as(what).isPresent();
      if (reached.shortest()) {
        assertThat(length).as(what).isEqualTo(shortest.getAsInt());
      } else {
        assertThat(length).as(what).isGreaterThanOrEqualTo(shortest.getAsInt());
      }
    } else {
      assertThat(engine).as(what).isNotInstanceOf(PropertyDirected.class);
      if (engine instanceof ShortestTraces) {
        assertThat(shortest.orElse(Integer.MAX_VALUE)).as(what).isGreaterThan(DEPTH);
      }
    }
  }
}
