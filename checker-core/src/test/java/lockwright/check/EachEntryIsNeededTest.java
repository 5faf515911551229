package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.names.Claim;
import lockwright.proof.Engine;
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

/**
 * Every entry of the proved example is there for a reason: left out, it breaks a requirement, which
 * is named, with a sequence that the audit has replayed. The few that others imply say so in their
 * note.
 */
class EachEntryIsNeededTest {
  private static final List<Engine> THOROUGH =
      List.of(new WrittenInvariants(), new ShortestTraces(17));

  @Test
  void leaving_any_entry_out_breaks_a_named_requirement() {
    Box box = Boxes.example("proved/quillby");
    List<String> implied = new ArrayList<>();
    List<String> unneeded = new ArrayList<>();
    for (Entry entry : box.locking()) {
      List<Entry> rest = box.locking().stream().filter(e -> e != entry).toList();
      List<Audited.Broken> broken =
          broken(box.withLocking(rest), List.of(new WrittenInvariants(), new ShortestTraces(6)));
      if (broken.isEmpty()) {
        broken = broken(box.withLocking(rest), THOROUGH);
      }
      if (!broken.isEmpty()) {
        System.out.println(
            "without '"
                + entry.words()
                + "': "
                + broken.get(0).requirement().id()
                + " breaks after "
                + broken.get(0).played().steps().size()
                + " movements");
      } else if (entry.note().startsWith("implied by ")) {
        implied.add(entry.words());
      } else {
        unneeded.add(entry.words());
      }
    }
    assertThat(unneeded).isEmpty();
    assertThat(implied).hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void without_the_bolt_under_the_home_signal_the_distant_is_wrong_too() {
    Box box = Boxes.example("proved/quillby");
    List<Entry> rest =
        box.locking().stream().filter(e -> !e.words().equals("2 released by 9")).toList();
    assertThat(rest).hasSize(box.locking().size() - 1);
    assertThat(broken(box.withLocking(rest), THOROUGH))
        .extracting(b -> b.requirement().id())
        .contains("points bolted: signal 2, points W", "distant follows: signal 1");
  }

  /** The breaches of a box that has some; searched and audited as in the main flow. */
  private static List<Audited.Broken> broken(Box box, List<Engine> engines) {
    Set<String> safety =
        box.requirements().stream()
            .filter(r -> !r.possibility())
            .map(Requirement::id)
            .collect(Collectors.toSet());
    Encoded all = Encoder.parted(box);
    Set<String> subjects =
        all.system().targets().stream()
            .map(t -> t.name())
            .filter(n -> !safety.contains(n))
            .collect(Collectors.toSet());
    Encoded encoded = all.without(subjects);
    Knowledge known;
    try (Solvers solvers = new Sat4jSolvers()) {
      known = new Search(engines).run(new Problem(encoded.system(), solvers, p -> {}));
    }
    TreeMap<String, Claim> claims = new TreeMap<>(encoded.names().claims(known.verdicts()));
    claims.values().removeIf(c -> !(c instanceof Claim.Reached));
    return Auditor.audit(box, new Claims(claims, new TreeMap<>(), new TreeMap<>())).stream()
        .filter(Audited.Broken.class::isInstance)
        .map(Audited.Broken.class::cast)
        .toList();
  }
}
