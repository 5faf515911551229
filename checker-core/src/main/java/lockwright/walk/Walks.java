package lockwright.walk;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lockwright.railway.Box;
import lockwright.railway.section.Section;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Looks for walks of fewest movements.
 *
 * <ol>
 *   <li>Look only at the levers, and at what of their turns is to come. What the whole box can do,
 *       can be done so.
 *   <li>Search. If there is no walk, there is none in the whole box either.
 *   <li>Play the walk on the whole box. If it can be played, it is a shortest one.
 *   <li>Else look also at the section, points or gates that the first movement which is not free
 *       speaks of, and search again.
 * </ol>
 */
public final class Walks {
  /** How many states a search looks at where nothing else is said. */
  public static final int USUAL = 200_000;

  private final Box box;
  private final Working working;
  private final List<Movement> movements;
  private final int most;
  private final BitSet levers = new BitSet();
  private final BitSet first = new BitSet();

  /**
   * @param working gives the quantities
   * @param movements those that may be made
   * @param most how many states a search may look at
   */
  public Walks(Box box, Working working, List<Movement> movements, int most) {
    this.box = box;
    this.working = working;
    this.movements = List.copyOf(movements);
    this.most = most;
    List<Quantity> all = working.quantities();
    for (int i = 0; i < all.size(); i++) {
      levers.set(i, all.get(i).key().startsWith("lever "));
      first.set(i, levers.get(i) || all.get(i).key().startsWith("turn of "));
    }
  }

  /**
   * A walk of fewest movements to a state with all of this.
   *
   * @param from where it may begin; the first that serves
   */
  public Outcome shortest(List<State> from, List<Condition> goal) {
    List<int[]> starts = from.stream().map(State::indices).toList();
    BitSet kept = (BitSet) first.clone();
    while (true) {
      Projection projection = new Projection(movements, kept);
      Search.Result result = new Search(projection, goal, levers, most).from(starts);
      if (result instanceof Search.Result.None none) {
        return new Outcome.Never(none.states());
      } else if (result instanceof Search.Result.Limit limit) {
        return new Outcome.NotWithin(limit.movements());
      }
      Search.Result.Path path = (Search.Result.Path) result;
      int[] values = starts.get(path.start()).clone();
      Optional<Condition> lacking = Optional.empty();
      for (Movement movement : path.movements()) {
        int[] now = values;
        lacking =
            movement.requires().stream()
                .map(Need::condition)
                .filter(c -> !c.evaluate(now))
                .findFirst();
        if (lacking.isPresent()) {
          break;
        }
        values = movement.after(values);
      }
      int[] end = values;
      lacking = lacking.or(() -> goal.stream().filter(c -> !c.evaluate(end)).findFirst());
      if (lacking.isEmpty()) {
        return new Outcome.Found(
            new Walk(
                from.get(path.start()),
                path.movements().stream().map(Movement::event).toList(),
                state(end)));
      }
      BitSet more = projection.missing(lacking.get());
      if (more.isEmpty()) {
        throw new IllegalStateException("not free, though all of it was looked at: " + lacking);
      }
      more.stream().forEach(i -> kept.or(together(i)));
    }
  }

  /**
   * All quantities of a section go together, and with the conditions on which the going off of its
   * signals hangs; any other stands alone.
   */
  private BitSet together(int quantity) {
    List<Quantity> all = working.quantities();
    BitSet group = new BitSet();
    group.set(quantity);
    for (Section section : box.sections()) {
      String prefix = "section " + section.name() + ": ";
      if (all.get(quantity).key().startsWith(prefix)) {
        IntStream.range(0, all.size())
            .filter(i -> ofSection(all.get(i).key(), prefix))
            .forEach(group::set);
      }
    }
    return group;
  }

  private boolean ofSection(String key, String prefix) {
    return key.startsWith(prefix)
        || (key.startsWith("condition ") && !box.controls().armControls().isEmpty());
  }

  private State state(int[] values) {
    Map<String, String> named = new HashMap<>();
    List<Quantity> all = working.quantities();
    for (int i = 0; i < values.length; i++) {
      named.put(all.get(i).key(), all.get(i).values().get(values[i]));
    }
    return working.state(named);
  }

  /**
   * Beginnings, no more than so many: first the one in which every instrument has tokens, as far as
   * there are enough; the others in their order.
   */
  public static List<State> beginnings(Box box, Working working, int most) {
    List<State> all = new ArrayList<>();
    int best = 0;
    int bestScore = -1;
    for (State state : working.beginnings()) {
      if (all.size() == most) {
        break;
      }
      int score = score(box, state);
      if (score > bestScore) {
        best = all.size();
        bestScore = score;
      }
      all.add(state);
    }
    all.add(0, all.remove(best));
    return all;
  }

  /** The more, the more even the tokens lie; among equals, the more are here. */
  private static int score(Box box, State state) {
    Map<String, String> values = state.values();
    int score = 0;
    for (Section s : box.sections()) {
      int least = s.tokens();
      int here = 0;
      for (Section.Instrument e : s.instruments()) {
        int in = Integer.parseInt(values.get(tokensIn(s, e.name())));
        least = Math.min(least, in);
        here = e.name().equals(s.here()) ? in : here;
      }
      score += least * (s.tokens() + 1) + here;
    }
    return score;
  }

  private static String tokensIn(Section s, String instrument) {
    return Quantity.tokensIn(s.name(), instrument, s.tokens()).key();
  }
}
