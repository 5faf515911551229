package lockwright.report.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.encode.names.Fact;
import lockwright.railway.words.Quantity;

/**
 * Reads a clause of a certificate: facts joined by " or ". Names of the author may have such words
 * in them, so only known quantities and values are looked for. Where a clause can be read in two
 * ways, either does: what is read is audited.
 */
final class ClauseReader {
  private static final String OR = " or ";

  private final Map<String, Fact> facts = new HashMap<>();

  ClauseReader(Collection<Quantity> quantities) {
    for (Quantity quantity : quantities) {
      for (String value : quantity.values()) {
        for (boolean is : new boolean[] {true, false}) {
          Fact fact = new Fact(quantity.key(), value, is);
          facts.put(fact.toString(), fact);
        }
      }
    }
  }

  /**
   * The facts of a clause; none for an empty line.
   *
   * @throws IllegalArgumentException if it cannot be read so
   */
  List<Fact> read(String clause) {
    if (clause.isEmpty()) {
      return List.of();
    }
    return from(clause, 0)
        .orElseThrow(() -> new IllegalArgumentException("no clause of this box: " + clause));
  }

  private Optional<List<Fact>> from(String clause, int start) {
    int end = clause.indexOf(OR, start);
    while (end >= 0) {
      Fact fact = facts.get(clause.substring(start, end));
      Optional<List<Fact>> rest = fact == null ? Optional.empty() : from(clause, end + OR.length());
      if (rest.isPresent()) {
        List<Fact> all = new ArrayList<>(List.of(fact));
        all.addAll(rest.get());
        return Optional.of(all);
      }
      end = clause.indexOf(OR, end + 1);
    }
    return Optional.ofNullable(facts.get(clause.substring(start))).map(List::of);
  }
}
