package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.encode.Restoring;
import lockwright.proof.Engine;
import lockwright.proof.Knowledge;
import lockwright.proof.Problem;
import lockwright.proof.Sat4jSolvers;
import lockwright.proof.Search;
import lockwright.proof.merged.MergedValues;
import lockwright.railway.Box;
import lockwright.railway.layout.Points;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Findings;
import lockwright.solver.Solvers;
import lockwright.solver.z3.Z3Solvers;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Verdict;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.working.BruteForce;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * The whole flow on random boxes, engines together, against brute force over the second reading:
 * the verdict, the shortest length and emptiness of every requirement must agree. In every third
 * box some of the written invariants are withheld, so that the complete engine has its share of the
 * work. In each, one engine searches one requirement alone too. Whether the frame can be restored
 * is searched in every fourth, and else in {@link RandomRestoringProperties}. Every eightieth is
 * searched on Z3, the others on a solver that is faster on boxes so small. As many boxes are tried
 * at once as there are processors.
 */
@Tag("long")
class RandomBoxesProperties {
  private static final Map<String, Integer> VERDICTS = new ConcurrentSkipListMap<>();
  private static final Map<String, Integer> ENGINES = new ConcurrentSkipListMap<>();
  private static final Map<String, Integer> RESTORING = new ConcurrentSkipListMap<>();

  /** How many boxes have both of two forms of entry; with itself, how many have the form at all. */
  private static final Map<String, Integer> PAIRS = new ConcurrentSkipListMap<>();

  /** Verdicts on sidings locked by token: few boxes have one. */
  private static final Map<String, Integer> SIDINGS = new ConcurrentSkipListMap<>();

  private static final Map<String, Integer> ADVICE = new ConcurrentSkipListMap<>();
  private static final Map<String, Integer> FLANKS = new ConcurrentSkipListMap<>();
  private static final Map<String, Integer> OVERLAPS = new ConcurrentSkipListMap<>();

  private static final Found NOT_ASKED =
      new Found(Map.of(Restoring.TARGET, new Verdict.Unknown("not asked")), Map.of(), "");

  private static final AtomicInteger BOXES = new AtomicInteger();

  /** How many boxes have points worked by hand. */
  private static final AtomicInteger BY_HAND = new AtomicInteger();

  /** How many have sprung points. */
  private static final AtomicInteger SPRUNG = new AtomicInteger();

  private static final String EITHER = "either of two";
  private static final String CONDITIONAL = "conditional";
  private static final String HOLDING = "conditional and holding";

  @Property(tries = 20, seed = "1889", shrinking = ShrinkingMode.OFF)
  void the_flow_agrees_with_brute_force(@ForAll @Size(100) List<Long> seeds) {
    seeds.parallelStream().forEach(RandomBoxesProperties::tried);
  }

  private static void tried(long seed) {
    try {
      flowAgreesWithBruteForce(seed);
    } catch (Exception | AssertionError e) {
      throw new AssertionError("the box of " + seed, e);
    }
  }

  private static void flowAgreesWithBruteForce(long seed) throws Exception {
    Random random = new Random(seed);
    Box box = RandomBox.of(random);
    boolean withhold = random.nextInt(3) == 0;
    boolean onZ3 = random.nextInt(80) == 0;
    boolean restoring = Math.floorMod(seed, 4) == 0;
    boolean merging = Math.floorMod(seed, 6) == 0;
    Check check =
        new Check(
            new Limits(120, 0, 6),
            (job, progress) ->
                restoring || !asksToRestore(job)
                    ? search(withhold ? without(job, random) : job, onZ3, merging)
                    : NOT_ASKED,
            progress -> {});

    Findings findings = check.run(box, new TreeMap<>(Map.of("random", Long.toString(seed))));

    BruteForce parted = BruteForce.of(Working.parted(box));
    BruteForce whole = BruteForce.of(Working.whole(box));
    for (Audited audited :
        Stream.concat(findings.audited().stream(), findings.advice().stream()).toList()) {
      Requirement requirement = audited.requirement();
      String expected =
          restoring || !(requirement instanceof Requirement.FrameCanBeRestored)
              ? expected(requirement, requirement.possibility() ? whole : parted)
              : "undecided: not asked";
      assertThat(audited.fold(Said.INSTANCE)).as(requirement.id()).isEqualTo(expected);
      if (!requirement.possibility()) {
        String verdict = expected.replaceAll("[^a-z]", "");
        VERDICTS.merge(verdict, 1, Integer::sum);
        if (requirement instanceof Requirement.PointsToPoints) {
          boolean asked = findings.audited().contains(audited);
          ADVICE.merge((asked ? "asked: " : "advice: ") + verdict, 1, Integer::sum);
        }
        if (requirement instanceof Requirement.SidingLocked) {
          SIDINGS.merge(verdict, 1, Integer::sum);
        }
        if (requirement instanceof Requirement.OverlapSet
            || requirement instanceof Requirement.OverlapsApart) {
          OVERLAPS.merge(requirement.name() + ": " + verdict, 1, Integer::sum);
        }
        if (requirement instanceof Requirement.FlankProtected f) {
          boolean away =
              f.flanks().stream()
                  .anyMatch(r -> r.paths().stream().anyMatch(p -> !p.away().isEmpty()));
          FLANKS.merge((away ? "by points: " : "by signals: ") + verdict, 1, Integer::sum);
        }
      }
    }
    try (Solvers solvers = onZ3 ? Z3Solvers.unlimited() : new Sat4jSolvers()) {
      EnginesAlone.agree(box, parted, solvers, random);
    }
    findings.decidedBy().values().forEach(e -> ENGINES.merge(e, 1, Integer::sum));
    countPairs(box);
    BOXES.incrementAndGet();
    if (box.layout().points().stream().anyMatch(Points::byHand)) {
      BY_HAND.incrementAndGet();
    }
    if (box.layout().points().stream().anyMatch(Points::sprung)) {
      SPRUNG.incrementAndGet();
    }
  }

  private static boolean asksToRestore(Job job) {
    return job.system().targets().stream().anyMatch(t -> t.name().equals(Restoring.TARGET));
  }

  private static void countPairs(Box box) {
    List<String> forms =
        box.locking().stream().flatMap(RandomBoxesProperties::forms).distinct().sorted().toList();
    for (int i = 0; i < forms.size(); i++) {
      for (int j = i; j < forms.size(); j++) {
        PAIRS.merge(forms.get(i) + " + " + forms.get(j), 1, Integer::sum);
      }
    }
  }

  private static Stream<String> forms(Entry entry) {
    List<String> forms = new ArrayList<>(List.of(entry.kind().words()));
    if (entry.others().size() > 1) {
      forms.add(EITHER);
    }
    if (!entry.when().isEmpty()) {
      forms.add(entry.holds() ? HOLDING : CONDITIONAL);
    }
    return forms.stream();
  }

  private static Found search(Job job, boolean onZ3, boolean merging) {
    Knowledge known =
        onZ3
            ? job.run(progress -> {})
            : new Search(engines(job, merging))
                .run(new Problem(job.system(), new Sat4jSolvers(), progress -> {}));
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }

  /**
   * The engines as they are; or first with all values of a variable but the first merged, even of
   * levers, so that what is found with values merged is often found wanting.
   */
  private static List<Engine> engines(Job job, boolean merging) {
    List<Engine> engines = new ArrayList<>();
    if (merging) {
      engines.add(new MergedValues(1, Job.engines(job.limits())));
    }
    engines.addAll(Job.engines(job.limits()));
    return engines;
  }

  private static Job without(Job job, Random random) {
    TransitionSystem s = job.system();
    return new Job(
        new TransitionSystem(
            s.variables(),
            s.initial(),
            s.transitions(),
            s.targets(),
            s.candidates().stream().filter(c -> random.nextInt(3) == 0).toList()),
        job.limits());
  }

  private static String expected(Requirement requirement, BruteForce brute) {
    OptionalInt shortest = brute.shortest(requirement);
    if (requirement instanceof Requirement.FrameCanBeRestored) {
      return shortest.isPresent() ? "stranded" : "shown";
    }
    if (requirement.possibility()) {
      return shortest.isPresent() ? "shown by " + shortest.getAsInt() : "impossible";
    }
    if (shortest.isPresent()) {
      return "broken by " + shortest.getAsInt();
    }
    return requirement.speaksAbout().stream().anyMatch(s -> brute.shortest(s).isEmpty())
        ? "empty"
        : "proved";
  }

  /** What the flow says, with the length of shortest runs. */
  private enum Said implements Audited.Cases<String> {
    INSTANCE;

    @Override
    public String proved(Audited.Proved proved) {
      return "proved";
    }

    @Override
    public String empty(Audited.Empty empty) {
      return "empty";
    }

    @Override
    public String broken(Audited.Broken broken) {
      return (broken.shortest() ? "broken by " : "not shortest: ") + broken.played().steps().size();
    }

    @Override
    public String undecided(Audited.Undecided undecided) {
      return "undecided: " + undecided.reason();
    }

    @Override
    public String shown(Audited.Shown shown) {
      return (shown.shortest() ? "shown by " : "not shortest: ") + shown.played().steps().size();
    }

    @Override
    public String impossible(Audited.Impossible impossible) {
      return "impossible";
    }

    @Override
    public String restorable(Audited.Restorable restorable) {
      RESTORING.merge(
          restorable.ways().isEmpty() ? "single strokes" : "ways back", 1, Integer::sum);
      return "shown";
    }

    @Override
    public String stranded(Audited.Stranded stranded) {
      RESTORING.merge("stranded", 1, Integer::sum);
      return "stranded";
    }
  }

  @BeforeContainer
  static void none_is_counted() {
    VERDICTS.clear();
    ENGINES.clear();
    RESTORING.clear();
    PAIRS.clear();
    SIDINGS.clear();
    ADVICE.clear();
    FLANKS.clear();
    OVERLAPS.clear();
    BOXES.set(0);
    BY_HAND.set(0);
    SPRUNG.set(0);
  }

  @AfterContainer
  static void every_kind_of_verdict_and_engine_has_a_tenth() {
    System.out.println(
        BOXES
            + " random boxes; verdicts on safety: "
            + shares(VERDICTS)
            + "; decided by: "
            + shares(ENGINES)
            + "; restoring: "
            + shares(RESTORING));
    assertThat(VERDICTS).containsOnlyKeys("proved", "empty", "brokenby");
    assertThat(ENGINES).hasSize(3);
    assertThat(RESTORING).containsKeys("single strokes", "ways back");
    for (Map<String, Integer> counts : List.of(VERDICTS, ENGINES)) {
      int all = counts.values().stream().mapToInt(Integer::intValue).sum();
      assertThat(counts.values()).allSatisfy(n -> assertThat(10 * n).isGreaterThanOrEqualTo(all));
    }
  }

  @AfterContainer
  static void some_points_are_worked_by_hand_and_some_are_sprung() {
    System.out.println("boxes with points worked by hand: " + BY_HAND + ", sprung: " + SPRUNG);
    assertThat(BY_HAND).hasValueGreaterThan(50);
    assertThat(SPRUNG).hasValueGreaterThan(50);
  }

  @AfterContainer
  static void sidings_are_proved_in_some_boxes_and_broken_in_others() {
    System.out.println("sidings locked by token: " + SIDINGS);
    for (String seen : List.of("proved", "brokenby")) {
      assertThat(SIDINGS.getOrDefault(seen, 0)).as(seen).isGreaterThanOrEqualTo(5);
    }
  }

  @AfterContainer
  static void points_are_held_apart_in_some_boxes_and_not_in_others() {
    System.out.println("points to points: " + ADVICE);
    for (String seen :
        List.of("advice: proved", "advice: brokenby", "asked: proved", "asked: brokenby")) {
      assertThat(ADVICE.getOrDefault(seen, 0)).as(seen).isGreaterThanOrEqualTo(5);
    }
  }

  @AfterContainer
  static void flanks_are_proved_in_some_boxes_and_broken_in_others() {
    System.out.println("flanks protected: " + FLANKS);
    assertThat(FLANKS)
        .containsKeys("by points: proved", "by points: brokenby", "by signals: proved");
    assertThat(FLANKS.values()).allMatch(n -> n >= 5);
  }

  @AfterContainer
  static void overlaps_are_proved_in_some_boxes_and_broken_in_others() {
    System.out.println("overlaps: " + OVERLAPS);
    // Two arms off with their overlaps lying against each other are rarer: ReadingsAgreeProperties.
    for (String seen :
        List.of("overlap set: brokenby", "overlap set: proved", "overlaps apart: proved")) {
      assertThat(OVERLAPS.getOrDefault(seen, 0)).as(seen).isGreaterThanOrEqualTo(3);
    }
  }

  @AfterContainer
  static void every_two_forms_of_entry_are_together_in_some_boxes() {
    System.out.println("boxes with both of two forms of entry: " + PAIRS);
    List<String> forms =
        Stream.concat(
                Stream.of(Entry.Kind.values()).map(Entry.Kind::words),
                Stream.of(EITHER, CONDITIONAL, HOLDING))
            .sorted()
            .toList();
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < forms.size(); i++) {
      for (int j = i; j < forms.size(); j++) {
        pairs.add(forms.get(i) + " + " + forms.get(j));
      }
    }
    assertThat(PAIRS.keySet()).containsExactlyInAnyOrderElementsOf(pairs);
    assertThat(PAIRS.values()).allMatch(n -> n >= 3);
  }

  private static String shares(Map<String, Integer> counts) {
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    return counts.entrySet().stream()
        .map(e -> e.getKey() + " " + e.getValue() + " (" + 100 * e.getValue() / all + " %)")
        .collect(Collectors.joining(", "));
  }
}
