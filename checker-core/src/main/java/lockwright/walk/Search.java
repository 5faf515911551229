package lockwright.walk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.working.Condition;
import lockwright.working.Movement;

/**
 * The fewest movements to a goal within a projection, by best-first search: states in order of the
 * movements made and a number that are still needed at least, namely one for each lever that the
 * goal wants elsewhere (P. Hart, N. Nilsson, B. Raphael, <i>A Formal Basis for the Heuristic
 * Determination of Minimum Cost Paths</i>, 1968; a movement moves one lever). Among equals the
 * first found comes first, so the same input gives the same sequence.
 */
final class Search {
  private final Projection projection;
  private final List<Condition> goal;
  private final Map<Integer, List<Condition>> goalOfLevers = new TreeMap<>();
  private final int most;

  private final Map<Packed, Integer> places = new HashMap<>();
  private final List<Packed> states = new ArrayList<>();
  private final List<Integer> parents = new ArrayList<>();
  private final List<Movement> by = new ArrayList<>();
  private final List<Integer> made = new ArrayList<>();
  private final BitSet closed = new BitSet();
  private final SortedMap<Integer, Deque<Integer>> open = new TreeMap<>();

  /**
   * @param goal all of them are to hold
   * @param levers the indices of the quantities that are levers
   * @param most how many states may be looked at
   */
  Search(Projection projection, List<Condition> goal, BitSet levers, int most) {
    this.projection = projection;
    this.goal = projection.of(goal);
    this.most = most;
    for (Condition condition : this.goal) {
      if (condition instanceof Condition.OneOf one && levers.get(one.at())) {
        goalOfLevers.computeIfAbsent(one.at(), at -> new ArrayList<>()).add(one);
      }
    }
  }

  /** What came of it; the start is its index among the given ones. */
  sealed interface Result {
    record Path(int start, List<Movement> movements) implements Result {}

    record None(int states) implements Result {}

    record Limit(int movements) implements Result {}
  }

  Result from(List<int[]> starts) {
    Map<Integer, Integer> startOf = new HashMap<>();
    for (int i = 0; i < starts.size(); i++) {
      int before = states.size();
      add(projection.of(starts.get(i)), -1, null, 0);
      if (states.size() > before) {
        startOf.put(before, i);
      }
    }
    while (!open.isEmpty()) {
      int least = open.firstKey();
      int at = open.get(least).poll();
      if (open.get(least).isEmpty()) {
        open.remove(least);
      }
      if (closed.get(at)) {
        continue;
      }
      closed.set(at);
      int[] values = states.get(at).values();
      if (goal.stream().allMatch(c -> c.evaluate(values))) {
        return path(at, startOf);
      }
      for (Projection.Step step : projection.steps()) {
        if (step.free(values)) {
          add(step.after(values), at, step.movement(), made.get(at) + 1);
        }
      }
      if (states.size() > most) {
        return new Result.Limit(least - 1);
      }
    }
    return new Result.None(states.size());
  }

  /** All states come to, in the order in which they were, with what is not looked at as 0. */
  List<int[]> reached() {
    return states.stream().map(Packed::values).toList();
  }

  private void add(int[] values, int parent, Movement movement, int movements) {
    Packed packed = new Packed(values);
    Integer known = places.get(packed);
    if (known == null) {
      known = states.size();
      places.put(packed, known);
      states.add(packed);
      parents.add(parent);
      by.add(movement);
      made.add(movements);
    } else if (movements < made.get(known)) {
      parents.set(known, parent);
      by.set(known, movement);
      made.set(known, movements);
    } else {
      return;
    }
    open.computeIfAbsent(movements + stillNeeded(values), f -> new ArrayDeque<>()).add(known);
  }

  private int stillNeeded(int[] values) {
    int needed = 0;
    for (List<Condition> ofLever : goalOfLevers.values()) {
      if (ofLever.stream().anyMatch(c -> !c.evaluate(values))) {
        needed++;
      }
    }
    return needed;
  }

  private Result path(int end, Map<Integer, Integer> startOf) {
    List<Movement> movements = new ArrayList<>();
    int at = end;
    while (parents.get(at) >= 0) {
      movements.add(0, by.get(at));
      at = parents.get(at);
    }
    return new Result.Path(startOf.get(at), List.copyOf(movements));
  }
}
