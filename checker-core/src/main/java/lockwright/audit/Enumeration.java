package lockwright.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;

/**
 * Checks an invariant by trying all combinations of values of the quantities that it speaks of, and
 * of those others that a movement or a target speaks of. Other quantities make no difference.
 */
final class Enumeration implements Checker {
  /** Where there are more combinations than this, or more to try, it is for the second solver. */
  private static final long MOST_WORK = 1L << 22;

  private static final int MOST_BEGINNINGS = 1 << 18;

  private final Invariant invariant;
  private final List<Quantity> quantities;
  private final BitSet own;
  private final Combinations combinations;
  private BitSet inside;

  Enumeration(Invariant invariant) {
    this.invariant = invariant;
    this.quantities = invariant.working().quantities();
    this.own = new BitSet();
    invariant.clauses().forEach(c -> c.mentions(own));
    this.combinations = new Combinations(quantities, own);
  }

  /** Whether {@link #begins} and {@link #keeps} are little work. */
  boolean affordable() {
    if (combinations.count() > MOST_WORK || !fewBeginnings()) {
      return false;
    }
    long work = 0;
    for (Movement movement : invariant.working().movements()) {
      if (!invariant.touchedBy(movement).isEmpty()) {
        work = Combinations.plus(work, others(movement.dependsOn()).count());
      }
    }
    return Combinations.times(inside().cardinality(), work) <= MOST_WORK;
  }

  private boolean fewBeginnings() {
    int count = 0;
    for (State ignored : invariant.working().beginnings()) {
      if (++count > MOST_BEGINNINGS) {
        return false;
      }
    }
    return true;
  }

  /** Whether {@link #excludes} is little work. */
  boolean affordable(Condition target) {
    return combinations.count() <= MOST_WORK
        && Combinations.times(inside().cardinality(), others(target).count()) <= MOST_WORK;
  }

  /** The combinations of the quantities that this speaks of and the invariant does not. */
  private Combinations others(Condition condition) {
    return others(Invariant.mentions(condition));
  }

  private Combinations others(BitSet mentioned) {
    BitSet others = (BitSet) mentioned.clone();
    others.andNot(own);
    return new Combinations(quantities, others);
  }

  @Override
  public Outcome begins() {
    for (State beginning : invariant.working().beginnings()) {
      for (Condition clause : invariant.clauses()) {
        if (!clause.evaluate(beginning)) {
          return new Outcome.Fails("in the beginning " + beginning + " not " + clause);
        }
      }
    }
    return holds();
  }

  @Override
  public Outcome keeps() {
    int[] from = new int[quantities.size()];
    List<Movement> movements =
        invariant.working().movements().stream()
            .filter(m -> !invariant.touchedBy(m).isEmpty())
            .toList();
    List<BooleanSupplier> leaves = movements.stream().map(m -> leaves(m, from)).toList();
    int[] found = {-1};
    if (!findInside(from, () -> (found[0] = firstOf(leaves)) >= 0)) {
      return holds();
    }
    Movement movement = movements.get(found[0]);
    BitSet named = Invariant.mentions(movement.needs());
    named.or(own);
    return new Outcome.Fails(
        movement.event().key()
            + " leads out of the invariant from "
            + invariant.words(from, named));
  }

  private static int firstOf(List<BooleanSupplier> questions) {
    for (int i = 0; i < questions.size(); i++) {
      if (questions.get(i).getAsBoolean()) {
        return i;
      }
    }
    return -1;
  }

  /** Whether the movement leads out of the invariant from the values: such as are left there. */
  private BooleanSupplier leaves(Movement movement, int[] values) {
    List<Condition> inner = new ArrayList<>();
    List<Condition> outer = new ArrayList<>();
    for (Need need : movement.requires()) {
      BitSet named = Invariant.mentions(need.condition());
      named.andNot(own);
      (named.isEmpty() ? inner : outer).add(need.condition());
    }
    Condition here = Condition.all(inner);
    Condition elsewhere = Condition.all(outer);
    Combinations others = others(movement.dependsOn());
    if (movement.effects().stream().anyMatch(e -> others(e.when()).count() > 1)) {
      return () ->
          here.evaluate(values) && others.find(values, () -> leaves(movement, elsewhere, values));
    }
    return () ->
        here.evaluate(values)
            && !inside().get(combinations.number(movement.after(values)))
            && others.find(values, () -> elsewhere.evaluate(values));
  }

  /**
   * Where effects hang on quantities that the invariant does not speak of: with each value of them.
   */
  private boolean leaves(Movement movement, Condition elsewhere, int[] values) {
    return elsewhere.evaluate(values) && !inside().get(combinations.number(movement.after(values)));
  }

  @Override
  public Outcome excludes(Condition target) {
    BitSet named = Invariant.mentions(target);
    named.and(own);
    Combinations shared = new Combinations(quantities, named);
    BitSet tried = new BitSet();
    Combinations others = others(target);
    int[] values = new int[quantities.size()];
    BooleanSupplier reached = () -> others.find(values, () -> target.evaluate(values));
    if (findInside(values, () -> first(shared.number(values), tried) && reached.getAsBoolean())) {
      named.or(Invariant.mentions(target));
      named.or(own);
      return new Outcome.Fails("the invariant does not exclude " + invariant.words(values, named));
    }
    return holds();
  }

  /** Whether a number was not there before; it is now. */
  private static boolean first(int number, BitSet numbers) {
    boolean first = !numbers.get(number);
    numbers.set(number);
    return first;
  }

  /** Puts one combination of the invariant after another into the values, until one is wanted. */
  private boolean findInside(int[] values, BooleanSupplier wanted) {
    BitSet all = inside();
    for (int n = all.nextSetBit(0); n >= 0; n = all.nextSetBit(n + 1)) {
      combinations.put(n, values);
      if (wanted.getAsBoolean()) {
        return true;
      }
    }
    return false;
  }

  /** The numbers of the combinations that are in the invariant. */
  private BitSet inside() {
    if (inside == null) {
      inside = combinations.where(invariant.clauses(), quantities.size());
    }
    return inside;
  }

  private static Outcome holds() {
    return new Outcome.Holds(CheckedBy.ALL_COMBINATIONS);
  }
}
