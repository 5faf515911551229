package lockwright.encode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;
import lockwright.system.Variable;

/** The variables of a system under construction, by the quantity each stands for. */
final class Vocabulary {
  private final Map<Quantity, Integer> indexes = new LinkedHashMap<>();

  /** Takes a quantity in; its values become 0, 1, ... in order. */
  void add(Quantity quantity) {
    if (indexes.putIfAbsent(quantity, indexes.size()) != null) {
      throw new IllegalArgumentException("twice: " + quantity.key());
    }
  }

  boolean has(Quantity quantity) {
    return indexes.containsKey(quantity);
  }

  List<Quantity> quantities() {
    return List.copyOf(indexes.keySet());
  }

  List<Variable> variables() {
    return indexes.keySet().stream().map(q -> new Variable(q.key(), q.values().size())).toList();
  }

  int index(Quantity quantity) {
    Integer index = indexes.get(quantity);
    if (index == null) {
      throw new IllegalArgumentException("no variable for " + quantity.key());
    }
    return index;
  }

  Term is(Quantity quantity, String value) {
    return Term.is(index(quantity), value(quantity, value));
  }

  Term is(Quantity quantity, Position position) {
    return is(quantity, position.name());
  }

  Term isNot(Quantity quantity, Position position) {
    return Term.not(is(quantity, position));
  }

  /** That a count is one of those that the predicate accepts. */
  Term count(Quantity quantity, IntPredicate accepted) {
    return Term.or(
        IntStream.range(0, quantity.values().size())
            .filter(accepted)
            .mapToObj(value -> Term.is(index(quantity), value))
            .toList());
  }

  Among among(Quantity quantity, IntPredicate accepted) {
    return new Among(
        index(quantity),
        IntStream.range(0, quantity.values().size()).filter(accepted).boxed().toList());
  }

  Among among(Quantity quantity, String... values) {
    List<Integer> numbers = new ArrayList<>();
    for (String value : values) {
      numbers.add(value(quantity, value));
    }
    return new Among(index(quantity), numbers);
  }

  Effect set(Quantity quantity, String value) {
    int next = value(quantity, value);
    return effect(quantity, before -> next);
  }

  /** Adds to a count; at its ends, where the guard must not allow it, the count stays. */
  Effect add(Quantity quantity, int more) {
    int most = quantity.values().size() - 1;
    return effect(quantity, before -> Math.max(0, Math.min(most, before + more)));
  }

  /** Exchanges the two values of a quantity. */
  Effect flip(Quantity quantity) {
    return effect(quantity, before -> 1 - before);
  }

  /** Changes one value into another; any other stays. */
  Effect replace(Quantity quantity, String one, String other) {
    int from = value(quantity, one);
    int to = value(quantity, other);
    return effect(quantity, before -> before == from ? to : before);
  }

  private Effect effect(Quantity quantity, IntUnaryOperator next) {
    return Effect.of(
        index(quantity), IntStream.range(0, quantity.values().size()).map(next).boxed().toList());
  }

  private static int value(Quantity quantity, String value) {
    int number = quantity.values().indexOf(value);
    if (number < 0) {
      throw new IllegalArgumentException(quantity.key() + " is never " + value);
    }
    return number;
  }
}
