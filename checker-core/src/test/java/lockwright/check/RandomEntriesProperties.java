package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import lockwright.audit.EntryVerdict;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Sat4jSolvers;
import lockwright.proof.Search;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Findings;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.working.BruteForce;
import lockwright.working.Condition;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * Each entry of random boxes that hold, left out alone, against brute force: which requirements
 * break and after how many movements, and whether the box without the entry makes any movement more
 * than the box with it.
 */
class RandomEntriesProperties {
  private static final Map<String, Integer> KINDS = new TreeMap<>();
  private static final int MOST_STATES = 400;
  private static int boxes;

  @Property(tries = 200, seed = "1874", shrinking = ShrinkingMode.OFF)
  void the_trials_agree_with_brute_force(@ForAll long seed) throws Exception {
    Box box = RandomBox.of(new Random(seed));
    Optional<BruteForce> small = small(box);
    if (small.isEmpty() || !holds(box, small.get())) {
      return;
    }
    BruteForce brute = small.get();
    Limits limits = new Limits(120, 0, 6);
    Searcher searcher = (job, progress) -> search(job);
    Findings checked = new Check(limits, searcher, p -> {}).run(box, new TreeMap<>());
    Findings findings = new EntryTrials(limits, searcher, p -> {}).run(checked);

    assertThat(findings.entries().verdicts()).hasSameSizeAs(box.locking());
    for (int i = 0; i < box.locking().size(); i++) {
      String said = findings.entries().verdicts().get(i).fold(Said.INSTANCE);
      assertThat(said).as(box.locking().get(i).words()).isEqualTo(expected(box, brute, i));
      String of = box.locking().get(i).kind().ofMovement() ? " rule" : " lock";
      KINDS.merge(said.replaceAll("[^a-z].*", "") + of, 1, Integer::sum);
    }
    boxes++;
  }

  /** All states, of a box that is worth the time. */
  private static Optional<BruteForce> small(Box box) {
    try {
      return Optional.of(BruteForce.of(Working.parted(box), MOST_STATES, Condition.TRUE));
    } catch (IllegalStateException e) {
      return Optional.empty();
    }
  }

  private static boolean holds(Box box, BruteForce parted) {
    BruteForce whole = BruteForce.of(Working.whole(box));
    for (Requirement r : box.requirements()) {
      if (r instanceof Requirement.FrameCanBeRestored) {
        if (whole.shortest(r).isPresent()) {
          return false;
        }
      } else if (r.possibility()
          ? whole.shortest(r).isEmpty()
          : parted.shortest(r).isPresent()
              || r.speaksAbout().stream().anyMatch(s -> parted.shortest(s).isEmpty())) {
        return false;
      }
    }
    return box.requirements().stream().anyMatch(r -> !r.possibility());
  }

  private static String expected(Box box, BruteForce with, int left) {
    List<Entry> rest = new ArrayList<>(box.locking());
    Entry entry = rest.remove(left);
    BruteForce without = BruteForce.of(Working.parted(box.withLocking(rest)));
    Map<String, Integer> breaks = new TreeMap<>();
    for (Requirement r : box.requirements()) {
      OptionalInt shortest = r.possibility() ? OptionalInt.empty() : without.shortest(r);
      shortest.ifPresent(n -> breaks.put(r.id(), n));
    }
    Map<String, Integer> advice = new TreeMap<>();
    for (Requirement r : box.advice()) {
      if (with.shortest(r).isEmpty()
          && r.speaksAbout().stream().allMatch(s -> with.shortest(s).isPresent())) {
        without.shortest(r).ifPresent(n -> advice.put(r.id(), n));
      }
    }
    if (!breaks.isEmpty()) {
      return "needed " + breaks + advice;
    } else if (!advice.isEmpty()) {
      return "by advice " + advice;
    }
    // With the turn of a rule that is left out still counted, so that the states compare.
    BruteForce watched = BruteForce.of(Working.parted(box, entry));
    boolean same = watched.states() == with.states() && watched.movements() == with.movements();
    return same ? "implied" : "spare";
  }

  private static Found search(Job job) {
    Knowledge known =
        new Search(Job.engines(job.limits()))
            .run(new Problem(job.system(), new Sat4jSolvers(), progress -> {}));
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }

  private static Map<String, Integer> lengths(List<EntryVerdict.Break> breaks) {
    Map<String, Integer> lengths = new TreeMap<>();
    breaks.forEach(b -> lengths.put(b.requirement().id(), b.run().played().steps().size()));
    return lengths;
  }

  private enum Said implements EntryVerdict.Cases<String> {
    INSTANCE;

    @Override
    public String needed(EntryVerdict.Needed needed) {
      return "needed "
          + lengths(needed.breaks())
          + lengths(needed.advice())
          + (needed.open().isEmpty() ? "" : " open " + needed.open());
    }

    @Override
    public String neededByAdvice(EntryVerdict.NeededByAdvice needed) {
      return "by advice " + lengths(needed.advice());
    }

    @Override
    public String implied(EntryVerdict.Implied implied) {
      return "implied";
    }

    @Override
    public String notNeeded(EntryVerdict.NotNeeded notNeeded) {
      return "spare";
    }

    @Override
    public String undecided(EntryVerdict.Undecided undecided) {
      return "undecided " + undecided.reasons();
    }
  }

  @AfterContainer
  static void every_verdict_occurs_for_locks_and_rules() {
    System.out.println("entries of " + boxes + " random boxes, each left out: " + KINDS);
    assertThat(KINDS)
        .containsKeys("needed lock", "implied lock", "spare lock", "implied rule", "spare rule");
  }
}
