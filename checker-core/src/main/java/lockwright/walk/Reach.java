package lockwright.walk;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Where the levers of a box can come to from one state, and their turns with them, nearest first.
 * All else is not looked at, and hinders nothing: so the box itself perhaps comes to fewer.
 *
 * @param states the index of the value of each quantity; what is not looked at, as in the beginning
 * @param all whether these are all; else a limit was met
 * @param looked which quantities are looked at
 */
public record Reach(List<int[]> states, boolean all, BitSet looked) {
  public Reach {
    states = List.copyOf(states);
    looked = (BitSet) looked.clone();
  }

  /**
   * From a state.
   *
   * @param most how many states may be looked at
   */
  public static Reach of(Working working, State from, int most) {
    List<Quantity> quantities = working.quantities();
    BitSet looked = new BitSet();
    for (int i = 0; i < quantities.size(); i++) {
      String key = quantities.get(i).key();
      looked.set(i, key.startsWith("lever ") || key.startsWith("turn of "));
    }
    Search search =
        new Search(
            new Projection(working.movements(), looked),
            List.of(Condition.FALSE),
            new BitSet(),
            most);
    boolean all = search.from(List.of(from.indices())) instanceof Search.Result.None;
    int[] first = from.indices();
    List<int[]> states =
        search.reached().stream()
            .map(
                s ->
                    IntStream.range(0, s.length)
                        .map(i -> looked.get(i) ? s[i] : first[i])
                        .toArray())
            .toList();
    return new Reach(states, all, looked);
  }

  /** Whether a condition speaks of nothing else. */
  public boolean looksAt(Condition condition) {
    BitSet mentioned = new BitSet();
    condition.mentions(mentioned);
    mentioned.andNot(looked);
    return mentioned.isEmpty();
  }
}
