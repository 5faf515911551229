package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.encode.Encoder;
import lockwright.proof.Engine;
import lockwright.proof.Problem;
import lockwright.proof.Search;
import lockwright.proof.merged.MergedValues;
import lockwright.proof.pdr.PropertyDirected;
import lockwright.proof.search.ShortestTraces;
import lockwright.proof.written.WrittenInvariants;
import lockwright.railway.Box;
import lockwright.solver.z3.Z3Solvers;
import lockwright.system.TransitionSystem;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is found with the counts merged is what is found with all of them exact, to the movement.
 */
class ManyTokensTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"token-siding", "token-siding-without-consent", "e5-staffs", "calling-on-proved"})
  void merged_counts_change_no_verdict_and_no_sequence(String name, @TempDir Path work)
      throws Exception {
    Box box = TokensBenchmark.with(4, Path.of("src/test/resources/boxes").resolve(name), work);
    for (TransitionSystem system :
        List.of(Encoder.parted(box).system(), Encoder.whole(box).system())) {
      for (int kept : new int[] {1, 2}) {
        assertThat(found(system, kept)).as("%d kept", kept).isEqualTo(found(system, 0));
      }
    }
  }

  private static Map<String, String> found(TransitionSystem system, int kept) {
    List<Engine> exactly =
        List.of(
            new WrittenInvariants(),
            new ShortestTraces(9),
            new PropertyDirected(),
            new ShortestTraces(9));
    List<Engine> engines = new ArrayList<>();
    if (kept > 0) {
      engines.add(new MergedValues(kept, exactly));
    }
    engines.addAll(exactly);
    Map<String, String> found = new TreeMap<>();
    try (Z3Solvers solvers = Z3Solvers.unlimited()) {
      new Search(engines)
          .run(new Problem(system, solvers, p -> {}))
          .verdicts()
          .forEach((target, v) -> found.put(target, said(system, target, v)));
    }
    return found;
  }

  private static String said(
      TransitionSystem system, String target, lockwright.verdict.Verdict verdict) {
    boolean ordered =
        system.targets().stream().anyMatch(t -> t.name().equals(target) && t.ordered());
    return verdict.fold(
        never -> "never",
        reached ->
            ordered
                ? reached.toString()
                : "after " + reached.trace().transitions().size() + reached.shortest(),
        unknown -> "unknown");
  }
}
