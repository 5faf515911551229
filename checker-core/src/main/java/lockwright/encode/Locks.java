package lockwright.encode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Term;

/** The locking as forbidden combinations of positions; `docs/meaning.md` 3.1 and 3.2. */
final class Locks {
  private static final Set<Position> NOT_N = Set.of(Position.M, Position.R);
  private static final Set<Position> NOT_R = Set.of(Position.N, Position.M);
  private static final Set<Position> AT_M = Set.of(Position.M);

  private final List<Map<String, Set<Position>>> forbidden = new ArrayList<>();

  /**
   * @param allHold whether entries with conditions hold their levers though not marked so
   */
  Locks(List<Entry> entries, boolean allHold) {
    for (Entry entry : entries) {
      if (entry.kind().ofMovement()) {
        continue;
      }
      forbid(entry);
      if (entry.holds() || (allHold && !entry.when().isEmpty())) {
        held(entry).forEach(b -> forbidden.add(Map.of(entry.lever(), NOT_N, b, AT_M)));
      }
    }
  }

  private void forbid(Entry entry) {
    Map<String, Set<Position>> together = new LinkedHashMap<>();
    switch (entry.kind()) {
      case RELEASED_BY -> {
        together.put(entry.lever(), NOT_N);
        entry.others().forEach(b -> together.put(b, NOT_R));
      }
      case LOCKS -> {
        together.put(entry.lever(), NOT_N);
        together.put(entry.others().get(0), NOT_N);
      }
      case LOCKS_BOTH_WAYS -> {
        together.put(entry.lever(), NOT_N);
        together.put(entry.others().get(0), AT_M);
      }
      case WHILE_NORMAL_LOCKS_BOTH_WAYS -> {
        together.put(entry.lever(), NOT_R);
        together.put(entry.others().get(0), AT_M);
      }
      case STARTS_ONLY_WITH_NORMAL, NOT_AGAIN_BEFORE ->
          throw new IllegalArgumentException("no combination: " + entry.words());
    }
    for (Entry.Condition condition : entry.when()) {
      Set<Position> met = condition.position() == Position.N ? NOT_R : NOT_N;
      together.merge(condition.lever(), met, Locks::both);
    }
    forbidden.add(together);
  }

  private static Set<Position> both(Set<Position> one, Set<Position> other) {
    return Set.copyOf(one.stream().filter(other::contains).toList());
  }

  private static List<String> held(Entry entry) {
    List<String> levers = new ArrayList<>(entry.others());
    entry.when().forEach(c -> levers.add(c.lever()));
    return levers.stream().distinct().toList();
  }

  /**
   * That no lock stops a stroke of a lever: none of the combinations that it leads to is forbidden.
   */
  Term allow(String lever, Strokes.Stroke stroke, Vocabulary words) {
    List<Term> locks = new ArrayList<>();
    for (Map<String, Set<Position>> together : forbidden) {
      Set<Position> own = together.get(lever);
      if (own != null && stroke.through().stream().anyMatch(own::contains)) {
        List<Term> others = new ArrayList<>();
        together.forEach(
            (other, positions) -> {
              if (!other.equals(lever)) {
                others.add(Term.or(positions(other, positions, words)));
              }
            });
        locks.add(Term.not(Term.and(others)));
      }
    }
    return Term.and(locks);
  }

  /** That one of the combinations stands. */
  Term stand(Vocabulary words) {
    List<Term> combinations = new ArrayList<>();
    for (Map<String, Set<Position>> together : forbidden) {
      List<Term> levers = new ArrayList<>();
      together.forEach(
          (lever, positions) -> levers.add(Term.or(positions(lever, positions, words))));
      combinations.add(Term.and(levers));
    }
    return Term.or(combinations);
  }

  private static List<Term> positions(String lever, Set<Position> positions, Vocabulary words) {
    return positions.stream().sorted().map(p -> words.is(Quantity.lever(lever), p)).toList();
  }

  /** Each combination, as the clause that it does not come about. */
  List<Clause> clauses(Vocabulary words) {
    List<Clause> clauses = new ArrayList<>();
    for (Map<String, Set<Position>> together : forbidden) {
      Map<Integer, Among> parts = new TreeMap<>();
      together.forEach(
          (lever, positions) -> {
            Quantity quantity = Quantity.lever(lever);
            List<Integer> allowed =
                IntStream.range(0, 3)
                    .filter(p -> !positions.contains(Position.values()[p]))
                    .boxed()
                    .toList();
            parts.put(words.index(quantity), new Among(words.index(quantity), allowed));
          });
      clauses.add(new Clause(List.copyOf(parts.values())));
    }
    return clauses;
  }
}
