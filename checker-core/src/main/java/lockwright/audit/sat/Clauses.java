package lockwright.audit.sat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import lockwright.railway.words.Quantity;
import lockwright.working.Condition;

/**
 * Conditions as clauses. Each value of each quantity is a variable, of which exactly one is true;
 * each joined condition gets a variable that is true exactly when it holds (G. S. Tseitin, On the
 * complexity of derivation in propositional calculus, 1968; from memory).
 */
final class Clauses {
  /** Up to so many values, each two are excluded by a clause of their own. */
  private static final int PAIRS = 6;

  private final IntSupplier newVariable;
  private final Consumer<int[]> add;
  private final List<int[]> variables = new ArrayList<>();
  private final Map<Condition, Integer> joined = new IdentityHashMap<>();
  private final Map<List<Object>, Integer> sets = new HashMap<>();
  private final int truth;

  /**
   * @param newVariable gives a variable that was not used before
   * @param add takes a clause: variables, negative where negated
   */
  Clauses(List<Quantity> quantities, IntSupplier newVariable, Consumer<int[]> add) {
    this.newVariable = newVariable;
    this.add = add;
    truth = newVariable.getAsInt();
    add.accept(new int[] {truth});
    for (Quantity quantity : quantities) {
      int[] ofValues = new int[quantity.values().size()];
      for (int v = 0; v < ofValues.length; v++) {
        ofValues[v] = newVariable.getAsInt();
      }
      variables.add(ofValues);
      exactlyOne(ofValues);
    }
  }

  /** At most one: pair by pair if there are few values, else along a ladder. */
  private void exactlyOne(int[] ofValues) {
    add.accept(ofValues.clone());
    if (ofValues.length <= PAIRS) {
      for (int i = 0; i < ofValues.length; i++) {
        for (int j = i + 1; j < ofValues.length; j++) {
          add.accept(new int[] {-ofValues[i], -ofValues[j]});
        }
      }
      return;
    }
    int earlier = ofValues[0];
    for (int i = 1; i < ofValues.length; i++) {
      add.accept(new int[] {-ofValues[i], -earlier});
      int upToHere = newVariable.getAsInt();
      add.accept(new int[] {-earlier, upToHere});
      add.accept(new int[] {-ofValues[i], upToHere});
      earlier = upToHere;
    }
  }

  /** The variable that is true when the quantity has the value, both by index. */
  int variable(int quantity, int value) {
    return variables.get(quantity)[value];
  }

  int quantities() {
    return variables.size();
  }

  int values(int quantity) {
    return variables.get(quantity).length;
  }

  /** A literal that is true exactly when the condition holds. */
  int literal(Condition condition) {
    if (condition instanceof Condition.Known known) {
      return known.holds() ? truth : -truth;
    } else if (condition instanceof Condition.Not not) {
      return -literal(not.part());
    } else if (condition instanceof Condition.OneOf one) {
      return oneOf(one.at(), one.values());
    }
    Integer known = joined.get(condition);
    if (known == null) {
      known = join(condition);
      joined.put(condition, known);
    }
    return known;
  }

  private int join(Condition condition) {
    if (condition instanceof Condition.All all) {
      return -or(all.parts().stream().mapToInt(p -> -literal(p)).toArray());
    } else if (condition instanceof Condition.Any any) {
      return or(any.parts().stream().mapToInt(this::literal).toArray());
    }
    throw new IllegalArgumentException("a condition of no known kind: " + condition);
  }

  private int oneOf(int quantity, BitSet values) {
    return sets.computeIfAbsent(
        List.of(quantity, values),
        k -> {
          int[] ofValues = values.stream().map(v -> variable(quantity, v)).toArray();
          return ofValues.length == 1 ? ofValues[0] : or(ofValues);
        });
  }

  /** A variable that is true exactly when one of these is. */
  private int or(int[] literals) {
    int result = newVariable.getAsInt();
    int[] some = new int[literals.length + 1];
    some[0] = -result;
    for (int i = 0; i < literals.length; i++) {
      some[i + 1] = literals[i];
      add.accept(new int[] {-literals[i], result});
    }
    add.accept(some);
    return result;
  }
}
