package lockwright.testsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;

/**
 * What there is to be tried of an entry, in order: each release for itself, both sides of each
 * lock, both ways in both positions, each condition for itself, and each lever that its piece
 * holds.
 */
final class Trials {
  private final Entry entry;
  private final String a;
  private final Map<String, Position> met = new HashMap<>();
  private final List<Trial> all = new ArrayList<>();

  private Trials(Entry entry) {
    this.entry = entry;
    this.a = entry.lever();
    entry.when().forEach(c -> met.put(c.lever(), c.position()));
  }

  static List<Trial> of(Entry entry) {
    Trials trials = new Trials(entry);
    switch (entry.kind()) {
      case RELEASED_BY -> trials.releasedBy();
      case LOCKS -> trials.locks();
      case LOCKS_BOTH_WAYS -> trials.bothWays(Position.R, Position.N);
      case WHILE_NORMAL_LOCKS_BOTH_WAYS -> trials.bothWays(Position.N, Position.R);
      case STARTS_ONLY_WITH_NORMAL -> trials.order();
      case NOT_AGAIN_BEFORE -> trials.rotation();
    }
    if (entry.holds()) {
      trials.piece();
    }
    return trials.all;
  }

  private void releasedBy() {
    Map<String, Position> none = others(Position.N);
    add(Aspect.RELEASE_WANTING, a, Position.N, none);
    for (String b : entry.others()) {
      Map<String, Position> one = with(none, b, Position.R);
      add(Aspect.RELEASED, a, Position.N, one);
      add(Aspect.BACK_LOCK, b, Position.R, with(one, a, Position.R));
    }
    for (String b : entry.others()) {
      entry.others().stream()
          .filter(d -> !d.equals(b))
          .findFirst()
          .ifPresent(
              d ->
                  add(
                      Aspect.OTHER_RELEASE,
                      b,
                      Position.R,
                      with(with(with(none, b, Position.R), d, Position.R), a, Position.R)));
    }
    conditions(a, Position.N, none);
    conditionLevers(with(none, a, Position.R));
  }

  private void locks() {
    String b = entry.others().get(0);
    add(Aspect.LOCK, a, Position.N, with(Map.of(), b, Position.R));
    add(Aspect.LOCK_OFF, a, Position.N, with(Map.of(), b, Position.N));
    add(Aspect.CONVERSE, b, Position.N, with(Map.of(), a, Position.R));
    add(Aspect.CONVERSE_OFF, b, Position.N, with(Map.of(), a, Position.N));
    conditions(a, Position.N, with(Map.of(), b, Position.R));
    conditionLevers(with(with(Map.of(), a, Position.R), b, Position.R));
  }

  /**
   * One lever holds another as it lies.
   *
   * @param holding where it stands while it does
   */
  private void bothWays(Position holding, Position not) {
    String b = entry.others().get(0);
    add(Aspect.HELD_NORMAL, b, Position.N, with(Map.of(), a, holding));
    add(Aspect.HELD_REVERSED, b, Position.R, with(Map.of(), a, holding));
    add(Aspect.FREE_NORMAL, b, Position.N, with(Map.of(), a, not));
    add(Aspect.FREE_REVERSED, b, Position.R, with(Map.of(), a, not));
    conditions(b, Position.N, with(Map.of(), a, holding));
    conditions(b, Position.R, with(Map.of(), a, holding));
  }

  private void order() {
    String b = entry.others().get(0);
    add(Aspect.ORDER, a, Position.N, with(Map.of(), b, Position.R));
    add(Aspect.ORDER_KEPT, a, Position.N, with(Map.of(), b, Position.N));
    add(Aspect.ORDER_OVER, b, Position.N, with(Map.of(), a, Position.R));
    conditions(a, Position.N, with(Map.of(), b, Position.R));
  }

  private void rotation() {
    add(Aspect.ROTATION, a, Position.N, Map.of());
    add(Aspect.ROTATION_KEPT, a, Position.N, Map.of());
  }

  /** 3.2: what the piece holds while its lever is not normal, whatever else stands how. */
  private void piece() {
    List<String> held = new ArrayList<>(entry.others());
    held.addAll(met.keySet().stream().sorted().toList());
    for (String b : held) {
      for (Position at : List.of(Position.N, Position.R)) {
        Aspect aspect = at == Position.N ? Aspect.PIECE_HOLDS_NORMAL : Aspect.PIECE_HOLDS_REVERSED;
        all.add(new Trial(entry, aspect, b, at, Map.of(a, Position.R, b, at)));
      }
    }
  }

  /** Each condition alone not met: the entry holds nothing. */
  private void conditions(String lever, Position from, Map<String, Position> stand) {
    for (Entry.Condition c : entry.when()) {
      Map<String, Position> without = with(met, stand);
      without.put(c.lever(), other(c.position()));
      without.put(lever, from);
      all.add(new Trial(entry, Aspect.CONDITION_NOT_MET, lever, from, without));
    }
  }

  /** Each condition lever, tried towards its condition, which the others stand against. */
  private void conditionLevers(Map<String, Position> stand) {
    for (Entry.Condition c : entry.when()) {
      Map<String, Position> without = with(met, stand);
      without.put(c.lever(), other(c.position()));
      all.add(new Trial(entry, Aspect.CONDITION_LEVER, c.lever(), other(c.position()), without));
    }
  }

  private void add(Aspect aspect, String lever, Position from, Map<String, Position> stand) {
    Map<String, Position> all = with(met, stand);
    all.put(lever, from);
    this.all.add(new Trial(entry, aspect, lever, from, all));
  }

  private Map<String, Position> others(Position position) {
    Map<String, Position> stand = new HashMap<>();
    entry.others().forEach(b -> stand.put(b, position));
    return stand;
  }

  private static Position other(Position position) {
    return position == Position.N ? Position.R : Position.N;
  }

  private static Map<String, Position> with(
      Map<String, Position> stand, String lever, Position position) {
    return with(stand, Map.of(lever, position));
  }

  private static Map<String, Position> with(
      Map<String, Position> stand, Map<String, Position> more) {
    Map<String, Position> all = new HashMap<>(stand);
    all.putAll(more);
    return all;
  }
}
