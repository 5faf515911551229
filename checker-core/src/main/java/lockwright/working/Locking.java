package lockwright.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;

/** The combinations that the locking table forbids: 3.1 and 3.2 of {@code docs/meaning.md}. */
final class Locking {
  private final Box box;
  private final Apparatus apparatus;
  private final boolean allPiecesHold;
  private final List<Entry> present;
  private final Map<String, List<Entry>> naming = new HashMap<>();

  /**
   * @param allPiecesHold whether every entry with conditions holds its levers, marked or not
   */
  Locking(Box box, Apparatus apparatus, boolean allPiecesHold) {
    this(box, apparatus, allPiecesHold, Optional.empty());
  }

  /**
   * @param leftOut an entry that holds nothing (10); of two alike, one still does
   * @throws IllegalArgumentException if the table has no such entry
   */
  Locking(Box box, Apparatus apparatus, boolean allPiecesHold, Optional<Entry> leftOut) {
    this.box = box;
    this.apparatus = apparatus;
    this.allPiecesHold = allPiecesHold;
    int at = leftOut.map(box.locking()::indexOf).orElse(box.locking().size());
    if (at < 0) {
      throw new IllegalArgumentException("not in the table: " + leftOut.get().words());
    }
    present =
        IntStream.range(0, box.locking().size())
            .filter(i -> i != at)
            .mapToObj(box.locking()::get)
            .toList();
    for (Entry entry : present) {
      if (!entry.kind().ofMovement()) {
        leversOf(entry)
            .forEach(l -> naming.computeIfAbsent(l, lever -> new ArrayList<>()).add(entry));
      }
    }
  }

  /** The entries of 3.1 that name a lever, as any of their levers, in the order of the table. */
  List<Entry> naming(String lever) {
    return List.copyOf(naming.getOrDefault(lever, List.of()));
  }

  /** The rules of movement, 3.4, that stand under a lever. */
  List<Entry> rulesUnder(String lever) {
    return present.stream().filter(e -> e.kind().ofMovement() && e.lever().equals(lever)).toList();
  }

  /** The levers that this one, once it has started, waits for; also if the rule is left out. */
  List<String> awaited(String lever) {
    return box.locking().stream()
        .filter(e -> e.kind() == Entry.Kind.NOT_AGAIN_BEFORE && e.lever().equals(lever))
        .map(e -> e.others().get(0))
        .distinct()
        .toList();
  }

  /** The levers that may start again only when this one has had its turn. */
  List<String> awaiting(String lever) {
    return box.locking().stream()
        .filter(e -> e.kind() == Entry.Kind.NOT_AGAIN_BEFORE && e.others().contains(lever))
        .map(Entry::lever)
        .distinct()
        .toList();
  }

  static Set<String> leversOf(Entry entry) {
    Set<String> levers = new TreeSet<>(entry.others());
    levers.add(entry.lever());
    entry.when().forEach(c -> levers.add(c.lever()));
    return levers;
  }

  /** The combinations that one entry forbids. */
  Condition forbidden(Entry entry) {
    List<Condition> combinations = new ArrayList<>();
    combinations.add(Condition.all(row(entry), conditions(entry)));
    if (entry.holds() || (allPiecesHold && !entry.when().isEmpty())) {
      Condition notNormal = apparatus.lever(entry.lever(), "M", "R");
      entry.others().forEach(b -> combinations.add(partWay(notNormal, b)));
      entry.when().forEach(c -> combinations.add(partWay(notNormal, c.lever())));
    }
    return Condition.any(combinations);
  }

  /** The conditions of an entry hold, or may: a lever part-way satisfies either. */
  Condition conditions(Entry entry) {
    List<Condition> all = new ArrayList<>();
    for (Entry.Condition when : entry.when()) {
      all.add(
          switch (when.position()) {
            case N -> apparatus.lever(when.lever(), "N", "M");
            case R -> apparatus.lever(when.lever(), "M", "R");
            case M -> throw new IllegalArgumentException("a condition is on N or R");
          });
    }
    return Condition.all(all);
  }

  /** The row of the table in 3.1, without conditions. */
  private Condition row(Entry entry) {
    String a = entry.lever();
    return switch (entry.kind()) {
      case RELEASED_BY -> {
        List<Condition> notReversed = new ArrayList<>(List.of(apparatus.lever(a, "M", "R")));
        entry.others().forEach(b -> notReversed.add(apparatus.lever(b, "N", "M")));
        yield Condition.all(notReversed);
      }
      case LOCKS ->
          Condition.all(
              apparatus.lever(a, "M", "R"), apparatus.lever(entry.others().get(0), "M", "R"));
      case LOCKS_BOTH_WAYS -> partWay(apparatus.lever(a, "M", "R"), entry.others().get(0));
      case WHILE_NORMAL_LOCKS_BOTH_WAYS ->
          partWay(apparatus.lever(a, "N", "M"), entry.others().get(0));
      case STARTS_ONLY_WITH_NORMAL, NOT_AGAIN_BEFORE -> Condition.FALSE;
    };
  }

  private Condition partWay(Condition while_, String lever) {
    return Condition.all(while_, apparatus.lever(lever, "M"));
  }
}
