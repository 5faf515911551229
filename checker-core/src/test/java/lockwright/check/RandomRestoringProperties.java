package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import lockwright.audit.Audited;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.audit.Played;
import lockwright.encode.Encoder;
import lockwright.encode.names.Claim;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Sat4jSolvers;
import lockwright.proof.Search;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.locking.Entry;
import lockwright.railway.locking.Entry.Kind;
import lockwright.railway.requirement.Requirement;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.working.BruteForce;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * Restoring the frame on random boxes whose tables have more of what keeps levers away from normal,
 * against brute force: whether it is restored from every state; else, the sequence to where it is
 * not ends just there.
 */
class RandomRestoringProperties {
  private static final Map<String, Integer> FOUND = new TreeMap<>();

  @Property(tries = 75, seed = "1902", shrinking = ShrinkingMode.OFF)
  void it_is_restored_just_where_brute_force_restores_it(@ForAll long seed) throws Exception {
    Random random = new Random(seed);
    Box box = keeping(RandomBox.of(random), random);
    Requirement restored = box.requirements().get(box.requirements().size() - 1);
    Claim claim =
        new Restoration(
                new Limits(120, 0, 6), (job, p) -> search(job), p -> {}, box, Encoder.whole(box))
            .claim();
    Claims claims = new Claims(Map.of(), Map.of(), Map.of(restored.id(), claim));
    List<Audited> audited = Auditor.audit(box, claims);
    Audited verdict = audited.get(box.requirements().size() - 1);

    Working working = Working.whole(box);
    BruteForce all = BruteForce.of(working);
    if (all.shortest(restored).isEmpty()) {
      assertThat(verdict).isInstanceOf(Audited.Restorable.class);
      int ways = ((Audited.Restorable) verdict).ways().size();
      FOUND.merge(ways == 0 ? "single strokes" : ways == 1 ? "a way" : "ways", 1, Integer::sum);
    } else {
      assertThat(verdict).isInstanceOf(Audited.Stranded.class);
      Audited.Stranded stranded = (Audited.Stranded) verdict;
      List<Played.Step> steps = stranded.played().steps();
      Played.Step last = steps.get(steps.size() - 1);
      assertThat(all.restored(working.state(last.after()))).isFalse();
      assertThat(all.restored(working.state(last.before()))).isTrue();
      FOUND.merge(stranded.helped().isPresent() ? "helped" : "stranded", 1, Integer::sum);
    }
  }

  private static Found search(Job job) {
    Knowledge known =
        new Search(Job.engines(job.limits()))
            .run(new Problem(job.system(), new Sat4jSolvers(), progress -> {}));
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }

  /** With some bolts that stand in, as it were, and rules of when these are drawn again. */
  private static Box keeping(Box box, Random random) {
    List<String> levers =
        box.frame().levers().stream().filter(l -> l.work().moves()).map(Lever::id).toList();
    List<String> released =
        box.sections().stream()
            .flatMap(s -> s.release().stream())
            .flatMap(r -> r.levers().stream())
            .toList();
    List<Entry> entries = new ArrayList<>(box.locking());
    for (int i = 2 + random.nextInt(4); i > 0; i--) {
      String bolt = one(levers, random);
      add(entries, Kind.WHILE_NORMAL_LOCKS_BOTH_WAYS, bolt, one(levers, random));
      if (random.nextInt(3) > 0) {
        boolean token = !released.isEmpty() && random.nextInt(3) > 0;
        Kind rule = random.nextInt(3) > 0 ? Kind.NOT_AGAIN_BEFORE : Kind.STARTS_ONLY_WITH_NORMAL;
        add(entries, rule, bolt, one(token ? released : levers, random));
      }
    }
    return box.withLocking(entries);
  }

  private static String one(List<String> levers, Random random) {
    return levers.get(random.nextInt(levers.size()));
  }

  private static void add(List<Entry> entries, Kind kind, String lever, String other) {
    if (!lever.equals(other)) {
      entries.add(RandomBox.entry(kind, lever, List.of(other)));
    }
  }

  @AfterContainer
  static void everything_was_found_in_some() {
    System.out.println("restoring random boxes: " + FOUND);
    // That what others do may help is rare; RestoringAuditTest has a box for it.
    assertThat(FOUND).containsKeys("single strokes", "a way", "stranded");
    assertThat(FOUND.get("stranded")).isGreaterThanOrEqualTo(5);
  }
}
