package lockwright.encode.names;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;

/** The quantity of each variable and the event of each transition of a system, by index. */
public record Names(List<Quantity> quantities, List<Event> events) {
  /** The target, in a box without one of its entries, of what that entry forbids. */
  public static final String FORBIDDEN_BY_ENTRY = "what the entry left out forbids";

  public Names {
    quantities = List.copyOf(quantities);
    events = List.copyOf(events);
  }

  /** The claims on all targets; a certificate shared by verdicts is shared by their claims. */
  public Map<String, Claim> claims(Map<String, Verdict> verdicts) {
    Map<List<Clause>, Certificate> certificates = new IdentityHashMap<>();
    Map<String, Claim> claims = new LinkedHashMap<>();
    verdicts.forEach(
        (target, verdict) ->
            claims.put(
                target,
                verdict.fold(
                    never ->
                        new Claim.Never(
                            certificates.computeIfAbsent(never.certificate(), this::certificate)),
                    reached -> new Claim.Reached(run(reached.trace()), reached.shortest()),
                    unknown -> new Claim.Unknown(unknown.reason()))));
    return claims;
  }

  /**
   * A certificate as clauses on the variables.
   *
   * @throws IllegalArgumentException if it speaks of what is not there
   */
  public List<Clause> clauses(Certificate certificate) {
    return certificate.clauses().stream().map(this::clause).toList();
  }

  private Clause clause(List<Fact> facts) {
    Map<Integer, TreeSet<Integer>> among = new TreeMap<>();
    for (Fact fact : facts) {
      int variable = indexOf(fact.quantity());
      List<String> values = quantities.get(variable).values();
      TreeSet<Integer> some = among.computeIfAbsent(variable, v -> new TreeSet<>());
      for (int v = 0; v < values.size(); v++) {
        if (values.get(v).equals(fact.value()) == fact.is()) {
          some.add(v);
        }
      }
    }
    List<Among> parts = new ArrayList<>();
    among.forEach((variable, some) -> parts.add(new Among(variable, some)));
    return new Clause(parts);
  }

  private int indexOf(String key) {
    for (int v = 0; v < quantities.size(); v++) {
      if (quantities.get(v).key().equals(key)) {
        return v;
      }
    }
    throw new IllegalArgumentException("no variable is " + key);
  }

  private Certificate certificate(List<Clause> clauses) {
    return new Certificate(clauses.stream().map(this::facts).toList());
  }

  private List<Fact> facts(Clause clause) {
    List<Fact> facts = new ArrayList<>();
    for (Among among : clause.among()) {
      Quantity quantity = quantities.get(among.variable());
      int size = quantity.values().size();
      if (among.values().size() == size - 1 && size > 2) {
        int missing = among.complement(size).values().first();
        facts.add(new Fact(quantity.key(), quantity.values().get(missing), false));
      } else {
        among
            .values()
            .forEach(v -> facts.add(new Fact(quantity.key(), quantity.values().get(v), true)));
      }
    }
    return facts;
  }

  private Run run(Trace trace) {
    SortedMap<String, String> beginning = new TreeMap<>();
    for (int v = 0; v < quantities.size(); v++) {
      Quantity quantity = quantities.get(v);
      beginning.put(quantity.key(), quantity.values().get(trace.first().get(v)));
    }
    return new Run(beginning, trace.transitions().stream().map(events::get).toList());
  }
}
