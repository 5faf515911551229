package lockwright.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lockwright.proof.Knowledge;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;
import lockwright.system.Variable;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Jobs and answers come through the files as they went in, and no byte may be another. */
class WireProperties {
  private static Path folder;

  @BeforeContainer
  static void create() throws IOException {
    folder = Files.createTempDirectory("wire");
  }

  @AfterContainer
  static void delete() {
    Folders.delete(folder);
  }

  @Property(tries = 200)
  void a_job_survives(@ForAll("jobs") Job job) throws IOException {
    Path file = folder.resolve("job.json");
    assertThat(Wire.read(file, Wire.write(job, file), Job.class)).isEqualTo(job);
    assertThat(folder.toFile().list()).doesNotContain("job.json.part");
  }

  @Property(tries = 200)
  void what_was_found_survives(@ForAll("verdicts") List<Verdict> verdicts) throws IOException {
    Map<String, Verdict> byTarget = new LinkedHashMap<>();
    Map<String, String> by = new LinkedHashMap<>();
    List<Target> targets = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      String name = "target " + targets.size();
      targets.add(new Target(name, Term.TRUE, List.of(), true));
      byTarget.put(name, verdict);
      if (!(verdict instanceof Verdict.Unknown)) {
        by.put(name, "engine " + targets.size() % 3);
      }
    }
    TransitionSystem system =
        new TransitionSystem(List.of(), Term.TRUE, List.of(), targets, List.of());
    Path file = folder.resolve("answer.json");
    Answer answer = Answer.of(new Knowledge(List.of(), byTarget, by), "digest", "a solver");
    Answer read = Wire.read(file, Wire.write(answer, file), Answer.class);
    assertThat(read).isEqualTo(answer);
    Found found = read.found(system, "digest");
    assertThat(found).isEqualTo(new Found(byTarget, by, "a solver"));
    assertThat(found.verdicts().keySet()).containsExactlyElementsOf(byTarget.keySet());
  }

  @Property(tries = 200)
  void a_file_of_which_one_bit_is_another_is_refused(
      @ForAll("jobs") Job job, @ForAll double place, @ForAll byte bit) throws IOException {
    Path file = folder.resolve("flipped.json");
    String digest = Wire.write(job, file);
    byte[] bytes = Files.readAllBytes(file);
    int at = (int) (Math.abs(place % 1) * bytes.length);
    bytes[at] ^= (byte) (1 << (bit & 7));
    Files.write(file, bytes);
    assertThatThrownBy(() -> Wire.read(file, digest, Job.class))
        .isInstanceOf(IOException.class)
        .hasMessage("flipped.json is not what was written");
  }

  @Provide
  Arbitrary<Job> jobs() {
    Arbitrary<Limits> limits =
        Combinators.combine(
                Arbitraries.integers().greaterOrEqual(1),
                Arbitraries.integers().greaterOrEqual(0),
                Arbitraries.integers().greaterOrEqual(0))
            .as(Limits::new);
    return Combinators.combine(systems(), limits).as(Job::new);
  }

  private static Arbitrary<TransitionSystem> systems() {
    return Combinators.combine(
            names()
                .flatMap(
                    all ->
                        Arbitraries.integers()
                            .between(0, 9)
                            .list()
                            .ofSize(all.size())
                            .map(sizes -> zip(all, sizes))),
            terms(),
            names().flatMap(all -> each(all, WireProperties::transition)),
            names().flatMap(all -> each(all, WireProperties::target)),
            clauses())
        .as(TransitionSystem::new);
  }

  private static List<Variable> zip(List<String> names, List<Integer> sizes) {
    List<Variable> variables = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      variables.add(new Variable(names.get(i), sizes.get(i) + 1));
    }
    return variables;
  }

  private static <T> Arbitrary<List<T>> each(
      List<String> names, Function<String, Arbitrary<T>> make) {
    return Combinators.combine(names.stream().map(make).toList()).as(all -> all);
  }

  private static Arbitrary<Transition> transition(String name) {
    Arbitrary<Transition.Effect> effects =
        Combinators.combine(small(), small().set().ofMinSize(1).ofMaxSize(2).list().ofMaxSize(4))
            .as(Transition.Effect::new);
    return Combinators.combine(terms(), effects.list().ofMaxSize(3))
        .as((guard, some) -> new Transition(name, guard, some));
  }

  private static Arbitrary<Target> target(String name) {
    Arbitrary<Target.Making> makings = Combinators.combine(small(), terms()).as(Target.Making::new);
    return Combinators.combine(terms(), makings.list().ofMaxSize(3), Arbitraries.of(true, false))
        .as((states, some, ordered) -> new Target(name, states, some, ordered));
  }

  private static Arbitrary<Term> terms() {
    return Arbitraries.integers().between(0, 4).flatMap(WireProperties::terms);
  }

  /** Made without the static methods, so that the forms which these drop are tried too. */
  private static Arbitrary<Term> terms(int depth) {
    Arbitrary<Term> is = Combinators.combine(small(), small()).as(Term.Is::new);
    if (depth == 0) {
      return is;
    }
    Arbitrary<Term> below = terms(depth - 1);
    Arbitrary<List<Term>> some = below.list().ofMaxSize(3);
    return Arbitraries.oneOf(
        is, below.map(Term.Not::new), some.map(Term.And::new), some.map(Term.Or::new));
  }

  /** Any characters at all, but for halves of a pair, which UTF-8 does not have. */
  private static Arbitrary<List<String>> names() {
    return Arbitraries.strings()
        .all()
        .ofMaxLength(12)
        .filter(s -> s.chars().noneMatch(c -> Character.isSurrogate((char) c)))
        .list()
        .uniqueElements()
        .ofMaxSize(4);
  }

  private static Arbitrary<Integer> small() {
    return Arbitraries.integers().between(0, 300);
  }

  private static Arbitrary<List<Clause>> clauses() {
    Arbitrary<Clause> clause =
        small()
            .set()
            .ofMaxSize(4)
            .flatMap(
                variables ->
                    each(
                        variables.stream().sorted().map(Object::toString).toList(),
                        v ->
                            small()
                                .set()
                                .ofMaxSize(3)
                                .map(values -> new Among(Integer.parseInt(v), values))))
            .map(Clause::new);
    return clause.list().ofMaxSize(4);
  }

  @Provide
  Arbitrary<List<Verdict>> verdicts() {
    Arbitrary<Verdict> never = clauses().map(Verdict.Never::new);
    Arbitrary<Verdict> reached =
        Combinators.combine(
                small().list().ofMaxSize(5),
                small().list().ofMaxSize(5),
                Arbitraries.of(true, false))
            .as((first, all, shortest) -> new Verdict.Reached(new Trace(first, all), shortest));
    Arbitrary<Verdict> unknown =
        Arbitraries.strings().ascii().ofMaxLength(20).map(Verdict.Unknown::new);
    return Arbitraries.oneOf(never, reached, unknown).list().ofMaxSize(6);
  }
}
