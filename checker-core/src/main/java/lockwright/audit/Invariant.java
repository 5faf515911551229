package lockwright.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Fact;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;
import lockwright.working.Effect;
import lockwright.working.Movement;
import lockwright.working.Working;

/** A certificate, read in the quantities of a working: what it says in each clause. */
record Invariant(Working working, List<Condition> clauses) {
  Invariant {
    clauses = List.copyOf(clauses);
  }

  /**
   * Reads a certificate.
   *
   * @throws Disagreement if it names a quantity or a value that the working does not know
   */
  static Invariant read(Working working, Certificate certificate) {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < working.quantities().size(); i++) {
      places.put(working.quantities().get(i).key(), i);
    }
    List<Condition> clauses = new ArrayList<>();
    for (List<Fact> clause : certificate.clauses()) {
      clauses.add(Condition.any(clause.stream().map(f -> read(working, places, f)).toList()));
    }
    return new Invariant(working, clauses);
  }

  private static Condition read(Working working, Map<String, Integer> places, Fact fact) {
    Integer place = places.get(fact.quantity());
    if (place == null) {
      throw new Disagreement("a certificate says '" + fact + "': the box has no such quantity");
    }
    Quantity quantity = working.quantities().get(place);
    int value = quantity.values().indexOf(fact.value());
    if (value < 0) {
      throw new Disagreement(
          "a certificate says '" + fact + "', but the values are " + quantity.values());
    }
    BitSet values = new BitSet();
    values.set(value);
    Condition is = Condition.oneOf(place, quantity, values);
    return fact.is() ? is : Condition.not(is);
  }

  Condition whole() {
    return Condition.all(clauses);
  }

  /** The clauses that the movement can touch; it leaves the others as they are. */
  List<Condition> touchedBy(Movement movement) {
    BitSet changed = new BitSet();
    movement.effects().stream().map(Effect::at).forEach(changed::set);
    return clauses.stream().filter(c -> mentions(c).intersects(changed)).toList();
  }

  static BitSet mentions(Condition condition) {
    BitSet quantities = new BitSet();
    condition.mentions(quantities);
    return quantities;
  }

  /** Some quantities and their values, in words. */
  String words(int[] values, BitSet quantities) {
    return quantities.stream()
        .mapToObj(working.quantities()::get)
        .map(q -> q.key() + " is " + q.values().get(values[working.quantities().indexOf(q)]))
        .toList()
        .toString();
  }
}
