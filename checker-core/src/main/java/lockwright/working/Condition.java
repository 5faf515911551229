package lockwright.working;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import lockwright.railway.words.Quantity;

/**
 * Something that is true or false of a state: that a quantity has one of some values, or such
 * conditions joined. Values are given as indices into {@link Quantity#values()}, quantities as
 * indices into {@link Working#quantities()}. A condition may share parts; it never changes.
 */
public sealed interface Condition {
  /** Holds always. */
  Condition TRUE = new Known(true);

  /** Holds never. */
  Condition FALSE = new Known(false);

  /** Whether it holds, given the index of the value of each quantity, in their order. */
  boolean evaluate(int[] values);

  default boolean evaluate(State state) {
    return evaluate(state.raw());
  }

  /** What must hold before these effects for this to hold after them. */
  Condition before(List<Effect> effects);

  /** Adds the indices of the quantities that it speaks of. */
  void mentions(BitSet quantities);

  /** The same whatever the state. */
  record Known(boolean holds) implements Condition {
    @Override
    public boolean evaluate(int[] values) {
      return holds;
    }

    @Override
    public Condition before(List<Effect> effects) {
      return this;
    }

    @Override
    public void mentions(BitSet quantities) {}

    @Override
    public String toString() {
      return holds ? "always" : "never";
    }
  }

  /** The quantity has one of these values: at least one, and not all. */
  record OneOf(int at, Quantity quantity, BitSet values) implements Condition {
    public OneOf {
      values = (BitSet) values.clone();
      if (values.isEmpty() || values.length() > quantity.values().size()) {
        throw new IllegalArgumentException(quantity.key() + " has no values " + values);
      }
    }

    /** A copy: whoever changes it changes nothing here. */
    @Override
    public BitSet values() {
      return (BitSet) values.clone();
    }

    @Override
    public boolean evaluate(int[] state) {
      return values.get(state[at]);
    }

    @Override
    public Condition before(List<Effect> effects) {
      for (Effect effect : effects) {
        if (effect.at() == at) {
          BitSet from = new BitSet();
          for (int v = 0; v < quantity.values().size(); v++) {
            from.set(v, values.get(effect.becomes().get(v)));
          }
          return any(all(effect.when(), oneOf(at, quantity, from)), all(not(effect.when()), this));
        }
      }
      return this;
    }

    @Override
    public void mentions(BitSet quantities) {
      quantities.set(at);
    }

    @Override
    public String toString() {
      return quantity.key()
          + " is "
          + values.stream().mapToObj(quantity.values()::get).collect(Collectors.joining(" or "));
    }
  }

  /** All of the parts hold. */
  record All(List<Condition> parts) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public boolean evaluate(int[] values) {
      for (Condition part : parts) {
        if (!part.evaluate(values)) {
          return false;
        }
      }
      return true;
    }

    @Override
    public Condition before(List<Effect> effects) {
      return all(parts.stream().map(p -> p.before(effects)).toList());
    }

    @Override
    public void mentions(BitSet quantities) {
      parts.forEach(p -> p.mentions(quantities));
    }

    @Override
    public String toString() {
      return parts.stream().map(Condition::toString).collect(Collectors.joining(" and ", "(", ")"));
    }
  }

  /** One of the parts holds, or several. */
  record Any(List<Condition> parts) implements Condition {
    public Any {
      parts = List.copyOf(parts);
    }

    @Override
    public boolean evaluate(int[] values) {
      for (Condition part : parts) {
        if (part.evaluate(values)) {
          return true;
        }
      }
      return false;
    }

    @Override
    public Condition before(List<Effect> effects) {
      return any(parts.stream().map(p -> p.before(effects)).toList());
    }

    @Override
    public void mentions(BitSet quantities) {
      parts.forEach(p -> p.mentions(quantities));
    }

    @Override
    public String toString() {
      return parts.stream().map(Condition::toString).collect(Collectors.joining(" or ", "(", ")"));
    }
  }

  /** The part does not hold. */
  record Not(Condition part) implements Condition {
    @Override
    public boolean evaluate(int[] values) {
      return !part.evaluate(values);
    }

    @Override
    public Condition before(List<Effect> effects) {
      return not(part.before(effects));
    }

    @Override
    public void mentions(BitSet quantities) {
      part.mentions(quantities);
    }

    @Override
    public String toString() {
      return "not " + part;
    }
  }

  /** The quantity has one of these values; {@link #TRUE} or {@link #FALSE} for all or none. */
  static Condition oneOf(int at, Quantity quantity, BitSet values) {
    if (values.isEmpty()) {
      return FALSE;
    }
    return values.cardinality() == quantity.values().size()
        ? TRUE
        : new OneOf(at, quantity, values);
  }

  /** All of these hold; always, where there are none. */
  static Condition all(List<Condition> parts) {
    List<Condition> left = new ArrayList<>();
    for (Condition part : parts) {
      if (part.equals(FALSE)) {
        return FALSE;
      }
      if (!part.equals(TRUE)) {
        left.add(part);
      }
    }
    return left.isEmpty() ? TRUE : left.size() == 1 ? left.get(0) : new All(left);
  }

  static Condition all(Condition... parts) {
    return all(List.of(parts));
  }

  /** One of these holds; never, where there are none. */
  static Condition any(List<Condition> parts) {
    List<Condition> left = new ArrayList<>();
    for (Condition part : parts) {
      if (part.equals(TRUE)) {
        return TRUE;
      }
      if (!part.equals(FALSE)) {
        left.add(part);
      }
    }
    return left.isEmpty() ? FALSE : left.size() == 1 ? left.get(0) : new Any(left);
  }

  static Condition any(Condition... parts) {
    return any(List.of(parts));
  }

  static Condition not(Condition part) {
    if (part instanceof Known known) {
      return known.holds() ? FALSE : TRUE;
    }
    if (part instanceof Not twice) {
      return twice.part();
    }
    if (part instanceof OneOf one) {
      BitSet others = one.values();
      others.flip(0, one.quantity().values().size());
      return oneOf(one.at(), one.quantity(), others);
    }
    return new Not(part);
  }
}
