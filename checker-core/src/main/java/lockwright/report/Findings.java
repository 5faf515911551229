package lockwright.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.audit.Audited;
import lockwright.railway.Box;

/**
 * All that a check found of one box, and all that a report may show.
 *
 * @param digests SHA-256 of each file of the spec, by its name
 * @param audited one verdict a requirement, in the order of the box
 * @param decidedBy the engine that decided each target, by the target's id
 * @param solver name and version of the solver that searched
 * @param entries what was found of each entry of the locking table
 */
public record Findings(
    Box box,
    SortedMap<String, String> digests,
    List<Audited> audited,
    Map<String, String> decidedBy,
    String solver,
    Entries entries) {
  public Findings {
    digests = Collections.unmodifiableSortedMap(new TreeMap<>(digests));
    audited = List.copyOf(audited);
    decidedBy = Map.copyOf(decidedBy);
    if (audited.size() != box.requirements().size()) {
      throw new IllegalArgumentException(
          audited.size() + " verdicts for " + box.requirements().size() + " requirements");
    }
    if (entries.notTried().isEmpty() && entries.verdicts().size() != box.locking().size()) {
      throw new IllegalArgumentException(
          entries.verdicts().size() + " verdicts for " + box.locking().size() + " entries");
    }
  }

  /** Findings without a word on the entries of the table. */
  public Findings(
      Box box,
      SortedMap<String, String> digests,
      List<Audited> audited,
      Map<String, String> decidedBy,
      String solver) {
    this(box, digests, audited, decidedBy, solver, Entries.NOT_ASKED_FOR);
  }

  /** The same with what was found of the entries. */
  public Findings with(Entries found) {
    return new Findings(box, digests, audited, decidedBy, solver, found);
  }

  /** How many verdicts there are of each kind. */
  public Tally tally() {
    List<Tally> all = new ArrayList<>();
    audited.forEach(a -> all.add(a.fold(Tally.OF_ONE)));
    return all.stream().reduce(Tally.NONE, Tally::plus);
  }
}
