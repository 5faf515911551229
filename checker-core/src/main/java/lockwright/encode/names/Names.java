package lockwright.encode.names;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;

/** The quantity of each variable and the event of each transition of a system, by index. */
public record Names(List<Quantity> quantities, List<Event> events) {
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
