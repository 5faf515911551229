package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Sat4jSolvers;
import lockwright.proof.pdr.PropertyDirected;
import lockwright.proof.search.ShortestTraces;
import lockwright.proof.written.WrittenInvariants;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.solver.Solvers;
import lockwright.solver.z3.Z3Solvers;
import lockwright.verdict.Verdict;
import lockwright.working.BruteForce;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/**
 * Each engine alone on random boxes, every twentieth on Z3, the others on a solver of another make,
 * against brute force over the second reading: what it decides is right, and what it leaves open it
 * may leave open.
 */
class RandomBoxesAloneProperties {
  private static final int DEPTH = 5;
  private static final int TARGETS = 1;

  @Property(tries = 2000, seed = "1892", shrinking = ShrinkingMode.OFF)
  void no_engine_contradicts_brute_force(@ForAll long seed) {
    Random random = new Random(seed);
    Box box = RandomBox.of(random);
    Encoded encoded = few(Encoder.parted(box), random);
    BruteForce brute = BruteForce.of(Working.parted(box));
    Map<String, OptionalInt> shortest = new HashMap<>();
    for (Requirement requirement : box.requirements()) {
      if (!requirement.possibility()) {
        shortest.put(requirement.id(), brute.shortest(requirement));
        for (Subject subject : requirement.speaksAbout()) {
          shortest.computeIfAbsent(subject.id(), id -> brute.shortest(subject));
        }
      }
    }
    try (Solvers solvers = random.nextInt(20) == 0 ? Z3Solvers.unlimited() : new Sat4jSolvers()) {
      tryEngines(new Problem(encoded.system(), solvers, progress -> {}), shortest);
    }
  }

  private static void tryEngines(Problem problem, Map<String, OptionalInt> shortest) {
    for (Engine engine :
        List.of(new WrittenInvariants(), new ShortestTraces(DEPTH), new PropertyDirected())) {
      Knowledge known = engine.improve(problem, Knowledge.none(problem.system()));
      known
          .verdicts()
          .forEach((target, verdict) -> agrees(engine, target, verdict, shortest.get(target)));
    }
  }

  private static Encoded few(Encoded encoded, Random random) {
    List<String> names =
        new ArrayList<>(encoded.system().targets().stream().map(t -> t.name()).toList());
    Collections.shuffle(names, random);
    return encoded.without(
        Set.copyOf(names.subList(Math.min(TARGETS, names.size()), names.size())));
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
