package lockwright.working;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/**
 * Every state of a small box that can be reached, breadth first, with the least number of movements
 * that leads to it: the oracle for everything cleverer. A state is packed into one long. Does not
 * change once made.
 */
public final class BruteForce {
  private static final int USUAL_LIMIT = 2_000_000;

  private final Working working;
  private final Movement[] movements;
  private final Condition[] needs;
  private final long[] weights;
  private final int[] sizes;
  private final int limit;
  private final Condition within;

  private long[] reached = new long[1 << 10];
  private int[] distances = new int[1 << 10];
  private int count;
  private int[] table = new int[1 << 12];
  private long transitions;

  private BruteForce(Working working, int limit, Condition within) {
    this.working = working;
    this.limit = limit;
    this.within = within;
    movements = working.movements().toArray(Movement[]::new);
    needs = Arrays.stream(movements).map(Movement::needs).toArray(Condition[]::new);
    List<Quantity> quantities = working.quantities();
    sizes = quantities.stream().mapToInt(q -> q.values().size()).toArray();
    weights = new long[sizes.length];
    long weight = 1;
    for (int i = sizes.length - 1; i >= 0; i--) {
      weights[i] = weight;
      weight = Math.multiplyExact(weight, (long) sizes[i]);
    }
    search();
  }

  /**
   * All states that can be reached.
   *
   * @throws IllegalStateException if there are more than two million
   */
  public static BruteForce of(Working working) {
    return of(working, USUAL_LIMIT, Condition.TRUE);
  }

  /**
   * All states that can be reached without leaving those within the condition.
   *
   * @throws IllegalStateException if there are more than the limit
   */
  public static BruteForce of(Working working, int limit, Condition within) {
    return new BruteForce(working, limit, within);
  }

  /** How many states can be reached. */
  public int states() {
    return count;
  }

  /** How many movements can be made in them, each from each state counted once. */
  public long movements() {
    return transitions;
  }

  /** The least number of movements that breaks, or (for a possibility) shows, the requirement. */
  public OptionalInt shortest(Requirement requirement) {
    if (requirement instanceof Requirement.FrameCanBeRestored) {
      int first = restored().nextClearBit(0);
      return first < count ? OptionalInt.of(distances[first]) : OptionalInt.empty();
    }
    if (requirement.possibility()) {
      return shortest(working.goal(requirement));
    }
    Breach breach = working.breach(requirement);
    OptionalInt byState = shortest(breach.state());
    OptionalInt byMovement = shortest(forbidden(breach));
    if (byMovement.isEmpty()) {
      return byState;
    }
    int moved = byMovement.getAsInt() + 1;
    return OptionalInt.of(byState.isPresent() ? Math.min(moved, byState.getAsInt()) : moved);
  }

  /** Whether movements other than those at instruments lead from a state to all levers N. */
  public boolean restored(State state) {
    return restored().get(table[slot(pack(state.raw()))] - 1);
  }

  /**
   * The states of which that is so: backwards from all levers N, by one movement more each time.
   */
  private BitSet restored() {
    List<List<Integer>> before = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      before.add(new ArrayList<>());
    }
    BitSet restored = new BitSet();
    Deque<Integer> open = new ArrayDeque<>();
    int[] values = new int[sizes.length];
    for (int i = 0; i < count; i++) {
      unpack(reached[i], values);
      for (int m = 0; m < movements.length; m++) {
        boolean outside =
            movements[m].event() instanceof Event.AtInstrument
                || movements[m].event() instanceof Event.AtLock
                || movements[m].event() instanceof Event.ConditionChanges;
        if (!outside && needs[m].evaluate(values)) {
          before.get(table[slot(pack(movements[m].after(values)))] - 1).add(i);
        }
      }
      if (leversNormal(values)) {
        restored.set(i);
        open.add(i);
      }
    }
    while (!open.isEmpty()) {
      for (int i : before.get(open.remove())) {
        if (!restored.get(i)) {
          restored.set(i);
          open.add(i);
        }
      }
    }
    return restored;
  }

  private boolean leversNormal(int[] values) {
    for (int i = 0; i < values.length; i++) {
      Quantity quantity = working.quantities().get(i);
      if (quantity.key().startsWith("lever ") && !quantity.values().get(values[i]).equals("N")) {
        return false;
      }
    }
    return true;
  }

  /** The least number of movements by which the subject comes about. */
  public OptionalInt shortest(Subject subject) {
    return shortest(working.reaches(subject));
  }

  /** The least number of movements to a state in which the condition holds. */
  public OptionalInt shortest(Condition condition) {
    int[] values = new int[sizes.length];
    for (int i = 0; i < count; i++) {
      unpack(reached[i], values);
      if (condition.evaluate(values)) {
        return OptionalInt.of(distances[i]);
      }
    }
    return OptionalInt.empty();
  }

  /** Each state reached, in the order in which it was. */
  public void forEach(Consumer<State> each) {
    forEach(0, 1, each);
  }

  /** Of the states reached, in the order in which they were, one and each so many after it. */
  public void forEach(int first, int step, Consumer<State> each) {
    for (int i = first; i < count; i += step) {
      int[] values = new int[sizes.length];
      unpack(reached[i], values);
      each.accept(new State(working.quantities(), values));
    }
  }

  /** Where one of the forbidden movements is free and forbidden. */
  private Condition forbidden(Breach breach) {
    List<Condition> cases = new ArrayList<>();
    for (Map.Entry<Event, Condition> one : breach.movements().entrySet()) {
      Movement movement = working.movement(one.getKey()).orElseThrow();
      cases.add(Condition.all(one.getValue(), movement.needs()));
    }
    return Condition.any(cases);
  }

  private void search() {
    working.beginnings().forEach(b -> add(b.raw(), 0));
    int[] values = new int[sizes.length];
    for (int i = 0; i < count; i++) {
      unpack(reached[i], values);
      for (int m = 0; m < movements.length; m++) {
        if (needs[m].evaluate(values)) {
          int[] next = movements[m].after(values);
          if (within.evaluate(next)) {
            transitions++;
            add(next, distances[i] + 1);
          }
        }
      }
    }
  }

  private long pack(int[] values) {
    long packed = 0;
    for (int i = 0; i < values.length; i++) {
      packed += weights[i] * values[i];
    }
    return packed;
  }

  private void add(int[] values, int distance) {
    long packed = pack(values);
    int slot = slot(packed);
    if (table[slot] != 0) {
      return;
    }
    if (count == limit) {
      throw new IllegalStateException("more than " + limit + " states can be reached");
    }
    if (count == reached.length) {
      reached = Arrays.copyOf(reached, 2 * count);
      distances = Arrays.copyOf(distances, 2 * count);
    }
    reached[count] = packed;
    distances[count] = distance;
    table[slot] = ++count;
    if (2 * count > table.length) {
      table = new int[2 * table.length];
      for (int i = 0; i < count; i++) {
        table[slot(reached[i])] = i + 1;
      }
    }
  }

  /** Where the state stands in the table, or would stand: 0 there means that it is not in it. */
  private int slot(long packed) {
    int mask = table.length - 1;
    int slot = (int) ((packed * 0x9E3779B97F4A7C15L) >>> 40) & mask;
    while (table[slot] != 0 && reached[table[slot] - 1] != packed) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void unpack(long packed, int[] values) {
    long rest = packed;
    for (int i = values.length - 1; i >= 0; i--) {
      long quotient = rest / sizes[i];
      values[i] = (int) (rest - quotient * sizes[i]);
      rest = quotient;
    }
  }
}
