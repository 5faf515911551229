package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
import lockwright.solver.Solvers;
import lockwright.solver.z3.Z3Solvers;
import lockwright.system.Target;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Verdict;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each engine alone on every example and published case, on two makes of solver: none contradicts
 * another. On a large box they are asked every twelfth target, on a very large one every 48th,
 * another share for each box, and on parted strokes or on whole ones in turn. Property directed
 * reachability is slow to find a long trace, so of these it is asked only the requirements of
 * safety, and the search for traces only short ones.
 */
class EnginesOnAllBoxesTest {
  private static final int LARGE = 30;
  private static final int SHARES = 12;
  private static final int VERY_LARGE = 300;
  private static final int FEWER_SHARES = 48;

  static Stream<Path> boxes() throws IOException {
    return Boxes.all().stream();
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void no_engine_contradicts_another(Path folder) throws IOException {
    Box box = Boxes.read(folder);
    boolean large = Encoder.parted(box).system().targets().size() > LARGE;
    boolean even = Boxes.all().indexOf(folder) % 2 == 0;
    List<Encoded> readings = new ArrayList<>();
    if (!large || even) {
      readings.add(Encoder.parted(box));
    }
    if (!large || !even) {
      readings.add(Encoder.whole(box));
    }
    for (Encoded encoded : readings) {
      Encoded asked = large ? share(encoded, folder) : encoded;
      TransitionSystem system = asked.system();
      TransitionSystem some = large ? safety(asked, box) : system;
      Map<String, String> decided = new HashMap<>();
      try (Solvers z3 = Z3Solvers.unlimited();
          Solvers sat4j = new Sat4jSolvers()) {
        alone(new WrittenInvariants(), system, z3, decided);
        alone(new ShortestTraces(large ? 4 : 7), system, z3, decided);
        alone(new PropertyDirected(), some, large ? z3 : sat4j, decided);
      }
      assertThat(decided.keySet())
          .as("the complete engine decides all")
          .containsAll(some.targets().stream().map(Target::name).toList());
    }
  }

  /** With every twelfth target, or fewer. */
  private static Encoded share(Encoded encoded, Path folder) throws IOException {
    List<String> all = encoded.system().targets().stream().map(Target::name).toList();
    int shares = all.size() < VERY_LARGE ? SHARES : FEWER_SHARES;
    int offset = Boxes.all().indexOf(folder) % shares;
    return encoded.without(
        IntStream.range(0, all.size())
            .filter(i -> i % shares != offset)
            .mapToObj(all::get)
            .collect(Collectors.toSet()));
  }

  /** With the requirements of safety alone. */
  private static TransitionSystem safety(Encoded encoded, Box box) {
    Set<String> safety =
        box.requirements().stream()
            .filter(r -> !r.possibility())
            .map(Requirement::id)
            .collect(Collectors.toSet());
    return encoded
        .without(
            encoded.system().targets().stream()
                .map(Target::name)
                .filter(name -> !safety.contains(name))
                .collect(Collectors.toSet()))
        .system();
  }

  private static void alone(
      Engine engine, TransitionSystem system, Solvers solvers, Map<String, String> decided) {
    Knowledge known = engine.improve(new Problem(system, solvers, p -> {}), Knowledge.none(system));
    known
        .verdicts()
        .forEach(
            (target, verdict) -> {
              String word =
                  verdict.fold(never -> "never", reached -> "reached", unknown -> "unknown");
              if (!word.equals("unknown")) {
                String before = decided.putIfAbsent(target, word);
                assertThat(before == null ? word : before)
                    .as(engine.name() + " on " + target)
                    .isEqualTo(word);
              }
              if (verdict instanceof Verdict.Reached reached) {
                assertThat(plays(system, target, reached)).as(target).isTrue();
              }
            });
  }

  private static boolean plays(TransitionSystem system, String name, Verdict.Reached reached) {
    int[] state = reached.trace().first().stream().mapToInt(Integer::intValue).toArray();
    boolean plays = system.initial().holds(state);
    int[] before = state;
    for (int transition : reached.trace().transitions()) {
      plays &= system.transitions().get(transition).guard().holds(state);
      before = state;
      state = system.transitions().get(transition).after(state);
    }
    int[] last = state;
    int[] lastButOne = before;
    List<Integer> made = reached.trace().transitions();
    return plays
        && system.targets().stream()
            .filter(t -> t.name().equals(name))
            .anyMatch(
                t ->
                    t.states().holds(last)
                        || t.makings().stream()
                            .anyMatch(
                                m ->
                                    !made.isEmpty()
                                        && m.transition() == made.get(made.size() - 1)
                                        && m.when().holds(lastButOne)));
  }
}
