package lockwright.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import lockwright.working.Effect;
import lockwright.working.Movement;
import lockwright.working.Need;
import lockwright.working.State;

/**
 * Checks an invariant by trying all combinations of values of the quantities that it speaks of, and
 * of those others that a movement or a target speaks of. Other quantities make no difference.
 *
 * <p>Of values that neither the invariant nor what a movement makes of them can tell apart, one is
 * tried for all ({@link ValueClasses}). Where the movement leads out of the invariant from it, and
 * what the movement needs does tell them apart, each of them is tried.
 */
final class Enumeration implements Checker {
  /** Where there are more combinations than this, or more to try, it is for the second solver. */
  private static final long MOST_WORK = 1L << 22;

  private static final int MOST_BEGINNINGS = 1 << 18;

  private final Invariant invariant;
  private final List<Quantity> quantities;
  private final BitSet own;
  private final ValueClasses classes;
  private final Combinations combinations;
  private final List<Trying> trying;
  private BitSet inside;

  Enumeration(Invariant invariant) {
    this.invariant = invariant;
    this.quantities = invariant.working().quantities();
    this.own = new BitSet();
    invariant.clauses().forEach(c -> c.mentions(own));
    List<Movement> movements =
        invariant.working().movements().stream()
            .filter(m -> !invariant.touchedBy(m).isEmpty())
            .toList();
    this.classes = classes(invariant, movements);
    this.combinations = new Combinations(classes, own);
    this.trying = movements.stream().map(Trying::new).toList();
  }

  /** What the clauses tell apart, before and after a movement, and which of its effects it has. */
  private static ValueClasses classes(Invariant invariant, List<Movement> movements) {
    ValueClasses classes = new ValueClasses(invariant.working().quantities());
    invariant.clauses().forEach(classes::tellApart);
    for (Movement movement : movements) {
      for (Effect effect : movement.effects()) {
        classes.tellApart(effect.when());
        invariant.clauses().forEach(c -> classes.tellApart(c, effect));
      }
    }
    return classes;
  }

  /** One movement, and the order in which to ask of it. */
  private final class Trying {
    private final Movement movement;
    private final Open open;
    private final boolean effectsOpen;

    Trying(Movement movement) {
      this.movement = movement;
      List<Condition> whens = movement.effects().stream().map(Effect::when).toList();
      open = new Open(movement.requires().stream().map(Need::condition).toList(), whens);
      BitSet others = Invariant.mentions(Condition.all(whens));
      others.andNot(own);
      effectsOpen = !others.isEmpty();
    }

    /** Whether it leads out of the invariant from the values: such as are left there. */
    boolean leaves(int[] values) {
      if (!open.here().evaluate(values) || (!effectsOpen && !leadsOut(values))) {
        return false;
      }
      return open.find(values, () -> !effectsOpen || leadsOut(values));
    }

    /** Where effects hang on quantities that the invariant does not speak of: with these values. */
    private boolean leadsOut(int[] values) {
      return !inside().get(combinations.number(movement.after(values)));
    }
  }

  /**
   * Conditions of which some can be told from the classes of the own quantities: these here. The
   * others are tried with all values of the own quantities, of the class at hand, and of the other
   * quantities.
   */
  private final class Open {
    private final Condition here;
    private final Condition elsewhere;
    private final BitSet members = new BitSet();
    private final BitSet others;
    private final Combinations ofOthers;

    /**
     * @param besides what else has to be told apart in the other quantities
     */
    Open(List<Condition> conditions, List<Condition> besides) {
      List<Condition> told = new ArrayList<>();
      List<Condition> open = new ArrayList<>();
      for (Condition condition : conditions) {
        BitSet named = Invariant.mentions(condition);
        named.andNot(own);
        (named.isEmpty() && classes.tell(condition) ? told : open).add(condition);
      }
      here = Condition.all(told);
      elsewhere = Condition.all(open);
      others = Invariant.mentions(elsewhere);
      besides.forEach(c -> c.mentions(others));
      members.or(others);
      members.and(own);
      others.andNot(own);
      ValueClasses outside = new ValueClasses(quantities);
      open.forEach(outside::tellApart);
      besides.forEach(outside::tellApart);
      ofOthers = new Combinations(outside, others);
    }

    Condition here() {
      return here;
    }

    long count(int[] values) {
      return Combinations.times(ofOthers.count(), ofMembers(values).count());
    }

    /** At most so many, whatever the values. */
    long most() {
      long most = ofOthers.count();
      for (int q = members.nextSetBit(0); q >= 0; q = members.nextSetBit(q + 1)) {
        most = Combinations.times(most, classes.largest(q));
      }
      return most;
    }

    private Combinations ofMembers(int[] values) {
      return new Combinations(classes, members, values);
    }

    /** Finds values, of the same classes, with which the conditions hold and what is wanted. */
    boolean find(int[] values, BooleanSupplier wanted) {
      int[] before = values.clone();
      BooleanSupplier both = () -> elsewhere.evaluate(values) && wanted.getAsBoolean();
      if (ofMembers(values).find(values, () -> ofOthers.find(values, both))) {
        return true;
      }
      System.arraycopy(before, 0, values, 0, values.length);
      return false;
    }
  }

  /** Whether {@link #begins} and {@link #keeps} are little work. */
  boolean affordable() {
    return combinations.count() <= MOST_WORK
        && fewBeginnings()
        && littleWork(trying.stream().map(t -> t.open).toList());
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
        && littleWork(List.of(new Open(List.of(target), List.of())));
  }

  private boolean littleWork(List<Open> all) {
    long most = 0;
    for (Open open : all) {
      most = Combinations.plus(most, Combinations.times(open.most(), inside().cardinality()));
    }
    if (most <= MOST_WORK) {
      return true;
    }
    long[] work = {0};
    int[] values = new int[quantities.size()];
    return !findInside(
        values,
        () -> {
          for (Open open : all) {
            work[0] = Combinations.plus(work[0], open.count(values));
          }
          return work[0] > MOST_WORK;
        });
  }

  @Override
  public Outcome begins() {
    BitSet tried = new BitSet();
    for (State beginning : invariant.working().beginnings()) {
      if (first(combinations.number(beginning.indices()), tried)) {
        for (Condition clause : invariant.clauses()) {
          if (!clause.evaluate(beginning)) {
            return new Outcome.Fails("in the beginning " + beginning + " not " + clause);
          }
        }
      }
    }
    return holds();
  }

  @Override
  public Outcome keeps() {
    int[] from = new int[quantities.size()];
    Trying[] found = {null};
    if (!findInside(from, () -> (found[0] = firstOf(from)) != null)) {
      return holds();
    }
    Movement movement = found[0].movement;
    BitSet named = Invariant.mentions(movement.needs());
    named.or(own);
    return new Outcome.Fails(
        movement.event().key()
            + " leads out of the invariant from "
            + invariant.words(from, named));
  }

  private Trying firstOf(int[] values) {
    for (Trying one : trying) {
      if (one.leaves(values)) {
        return one;
      }
    }
    return null;
  }

  @Override
  public Outcome excludes(Condition target) {
    BitSet named = Invariant.mentions(target);
    named.and(own);
    Combinations shared = new Combinations(classes, named);
    BitSet tried = new BitSet();
    Open open = new Open(List.of(target), List.of());
    int[] values = new int[quantities.size()];
    BooleanSupplier reached = () -> open.here().evaluate(values) && open.find(values, () -> true);
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
