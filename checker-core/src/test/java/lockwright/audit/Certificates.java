package lockwright.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Fact;
import lockwright.railway.words.Quantity;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;

/** Certificates written by hand, and the plainest way of checking one. For tests. */
final class Certificates {
  private Certificates() {}

  /** A clause a line: "lever 1 is N or lever 3 is R". */
  static Certificate certificate(String... clauses) {
    return new Certificate(
        Arrays.stream(clauses)
            .map(c -> Arrays.stream(c.split(" or ")).map(Certificates::fact).toList())
            .toList());
  }

  private static Fact fact(String words) {
    boolean is = !words.contains(" is not ");
    String[] parts = words.split(is ? " is " : " is not ");
    return new Fact(parts[0], parts[1], is);
  }

  static boolean in(Certificate certificate, State state) {
    return certificate.clauses().stream()
        .allMatch(
            c ->
                c.stream()
                    .anyMatch(f -> f.value().equals(state.values().get(f.quantity())) == f.is()));
  }

  static boolean begins(Working working, Certificate certificate) {
    for (State state : working.beginnings()) {
      if (!in(certificate, state)) {
        return false;
      }
    }
    return true;
  }

  /** Plays every movement from every state of the certificate that there can be. */
  static boolean keeps(Working working, Certificate certificate) {
    for (State state : all(working)) {
      if (in(certificate, state)) {
        for (Movement movement : working.movements()) {
          if (working.free(state, movement.event())
              && !in(certificate, working.make(state, movement.event()))) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** All states, whether they can be reached or not. */
  static List<State> all(Working working) {
    List<State> all = new ArrayList<>();
    working.beginnings().forEach(b -> all.add(b));
    State any = all.get(0);
    all.clear();
    all.add(any);
    for (Quantity quantity : working.quantities()) {
      List<State> more = new ArrayList<>();
      for (State state : all) {
        for (String value : quantity.values()) {
          SortedMap<String, String> values = state.values();
          values.put(quantity.key(), value);
          more.add(working.state(values));
        }
      }
      all.clear();
      all.addAll(more);
    }
    return all;
  }
}
