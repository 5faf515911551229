package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;

/** The combinations that the locking table forbids: 3.1 and 3.2 of {@code docs/meaning.md}. */
final class Locking {
  private final Box box;
  private final Apparatus apparatus;
  private final boolean allPiecesHold;

  /**
   * @param allPiecesHold whether every entry with conditions holds its levers, marked or not
   */
  Locking(Box box, Apparatus apparatus, boolean allPiecesHold) {
    this.box = box;
    this.apparatus = apparatus;
    this.allPiecesHold = allPiecesHold;
  }

  /** The entries that name a lever, as any of their levers, in the order of the table. */
  List<Entry> naming(String lever) {
    return box.locking().stream().filter(e -> leversOf(e).contains(lever)).toList();
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
    List<Condition> combination = new ArrayList<>(List.of(row(entry)));
    for (Entry.Condition when : entry.when()) {
      combination.add(
          switch (when.position()) {
            case N -> apparatus.lever(when.lever(), "N", "M");
            case R -> apparatus.lever(when.lever(), "M", "R");
            case M -> throw new IllegalArgumentException("a condition is on N or R");
          });
    }
    combinations.add(Condition.all(combination));
    if (entry.holds() || (allPiecesHold && !entry.when().isEmpty())) {
      Condition notNormal = apparatus.lever(entry.lever(), "M", "R");
      entry.others().forEach(b -> combinations.add(partWay(notNormal, b)));
      entry.when().forEach(c -> combinations.add(partWay(notNormal, c.lever())));
    }
    return Condition.any(combinations);
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
    };
  }

  private Condition partWay(Condition while_, String lever) {
    return Condition.all(while_, apparatus.lever(lever, "M"));
  }
}
