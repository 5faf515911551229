package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.names.Claim;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Sat4jSolvers;
import lockwright.proof.Search;
import lockwright.proof.search.ShortestTraces;
import lockwright.proof.written.WrittenInvariants;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.solver.Solvers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every entry of the proved examples is there for a reason: left out, it breaks a requirement,
 * which is named, with a sequence that the audit has replayed. Playing finds most; the rest is
 * searched. The few that others imply say so in their note.
 *
 * <p>Of a large table, a random but fixed sample of the entries is left out in each build, and all
 * of them, which takes half a minute, by {@code mvn test -pl checker-core
 * -Dtest=EachEntryIsNeededTest -Dlockwright.everyEntry=true}.
 */
class EachEntryIsNeededTest {
  private static final int LARGE = 100;
  private static final int SAMPLE = 36;

  @ParameterizedTest
  @ValueSource(strings = {"quillby", "brindlewick", "corlhaven", "pellowmere", "merrowdyke"})
  void leaving_any_entry_out_breaks_a_named_requirement(String example) {
    Box box = Boxes.example("proved/" + example);
    PlayedTrials trials = PlayedTrials.of(box);
    List<Entry> implied = new ArrayList<>();
    List<String> unneeded = new ArrayList<>();
    for (Entry entry : leftOut(box)) {
      Optional<String> broken = trials.needed(entry).map(n -> n.breaks().get(0).requirement().id());
      if (broken.isEmpty()) {
        List<Entry> rest = box.locking().stream().filter(e -> e != entry).toList();
        broken =
            broken(box.withLocking(rest), safety(box)).stream()
                .map(b -> b.requirement().id())
                .findFirst();
      }
      if (broken.isPresent()) {
        System.out.println("without '" + entry.words() + "': " + broken.get() + " breaks");
      } else if (entry.note().startsWith("implied by ")) {
        implied.add(entry);
      } else {
        unneeded.add(entry.words());
      }
    }
    assertThat(unneeded).isEmpty();
    assertThat(implied).hasSizeLessThanOrEqualTo(3);
  }

  private static List<Entry> leftOut(Box box) {
    if (box.locking().size() < LARGE || Boolean.getBoolean("lockwright.everyEntry")) {
      return box.locking();
    }
    List<Entry> shuffled = new ArrayList<>(box.locking());
    Collections.shuffle(shuffled, new Random(70));
    return shuffled.subList(0, SAMPLE);
  }

  @Test
  void without_the_bolt_under_the_home_signal_the_distant_is_wrong_too() {
    Box box = Boxes.example("proved/quillby");
    List<Entry> rest =
        box.locking().stream().filter(e -> !e.words().equals("2 released by 9")).toList();
    assertThat(rest).hasSize(box.locking().size() - 1);
    Set<String> wrong = Set.of("points bolted: signal 2, points W", "distant follows: signal 1");
    assertThat(broken(box.withLocking(rest), wrong))
        .extracting(b -> b.requirement().id())
        .containsExactlyInAnyOrderElementsOf(wrong);
  }

  private static Set<String> safety(Box box) {
    return box.requirements().stream()
        .filter(r -> !r.possibility())
        .map(Requirement::id)
        .collect(Collectors.toSet());
  }

  /** Those of some requirements that are broken; searched and audited as in the main flow. */
  private static List<Audited.Broken> broken(Box box, Set<String> some) {
    Encoded all = Encoder.parted(box);
    Set<String> others =
        all.system().targets().stream()
            .map(t -> t.name())
            .filter(n -> !some.contains(n))
            .collect(Collectors.toSet());
    Encoded encoded = all.without(others);
    Knowledge known;
    try (Solvers solvers = new Sat4jSolvers()) {
      known =
          new Search(List.of(new WrittenInvariants(), new ShortestTraces(17)))
              .run(new Problem(encoded.system(), solvers, p -> {}));
    }
    TreeMap<String, Claim> claims = new TreeMap<>(encoded.names().claims(known.verdicts()));
    claims.values().removeIf(c -> !(c instanceof Claim.Reached));
    return Auditor.audit(box, new Claims(claims, new TreeMap<>(), new TreeMap<>())).stream()
        .filter(Audited.Broken.class::isInstance)
        .map(Audited.Broken.class::cast)
        .toList();
  }
}
