package lockwright.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.audit.Audited;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;

/**
 * All that a check found of one box, and all that a report may show.
 *
 * @param digests SHA-256 of each file of the spec, by its name
 * @param audited one verdict a requirement, in the order of the box
 * @param advice one verdict for each advice of the box; it is in no count, and fails nothing
 * @param decidedBy the engine that decided each target, by the target's id
 * @param solver name and version of the solver that searched
 * @param entries what was found of each entry of the locking table
 * @param expectations what the author says of instances that fail
 */
public record Findings(
    Box box,
    SortedMap<String, String> digests,
    List<Audited> audited,
    List<Audited> advice,
    Map<String, String> decidedBy,
    String solver,
    Entries entries,
    Expectations expectations) {
  public Findings {
    digests = Collections.unmodifiableSortedMap(new TreeMap<>(digests));
    audited = List.copyOf(audited);
    advice = List.copyOf(advice);
    decidedBy = Map.copyOf(decidedBy);
    if (audited.size() != box.requirements().size()) {
      throw new IllegalArgumentException(
          audited.size() + " verdicts for " + box.requirements().size() + " requirements");
    }
    if (!requirements(audited).equals(box.requirements())
        || !requirements(advice).equals(box.advice())) {
      throw new IllegalArgumentException("verdicts on other requirements, or on other advice");
    }
    if (audited.stream().flatMap(a -> expectations.judge(a).stream()).count()
        != expectations.all().size()) {
      throw new IllegalArgumentException("something is expected of what the box does not have");
    }
    if (entries.notTried().isEmpty() && entries.verdicts().size() != box.locking().size()) {
      throw new IllegalArgumentException(
          entries.verdicts().size() + " verdicts for " + box.locking().size() + " entries");
    }
  }

  /** The same with what was found of the entries. */
  public Findings with(Entries found) {
    return new Findings(box, digests, audited, advice, decidedBy, solver, found, expectations);
  }

  /**
   * Those of a box of which nothing is expected, without a word on its entries.
   *
   * @param audited one verdict a requirement, and then one for each advice
   */
  public Findings(
      Box box,
      SortedMap<String, String> digests,
      List<Audited> audited,
      Map<String, String> decidedBy,
      String solver) {
    this(
        box,
        digests,
        audited.stream().limit(box.requirements().size()).toList(),
        audited.stream().skip(box.requirements().size()).toList(),
        decidedBy,
        solver,
        Entries.NOT_ASKED_FOR,
        Expectations.NONE);
  }

  private static List<Requirement> requirements(List<Audited> audited) {
    return audited.stream().map(Audited::requirement).toList();
  }

  /** The same verdicts, held against what the author expects and waives. */
  public Findings against(Expectations others) {
    return new Findings(box, digests, audited, advice, decidedBy, solver, entries, others);
  }

  /** How many verdicts there are of each kind, whatever is expected. */
  public Tally tally() {
    List<Tally> all = new ArrayList<>();
    audited.forEach(a -> all.add(a.fold(Tally.OF_ONE)));
    return all.stream().reduce(Tally.NONE, Tally::plus);
  }

  /** The box with the advice that it keeps, and no other: what its entries are tried for. */
  public Box keeping() {
    return box.advised(advice(Advised.KEPT).stream().map(Audited::requirement).toList());
  }

  /** Of the advice, those that this was found of. */
  public List<Audited> advice(Advised found) {
    return advice.stream().filter(a -> Advised.of(a) == found).toList();
  }

  /** What became of what is expected of this requirement, if anything is. */
  public Optional<Judgement> judgement(Audited of) {
    return expectations.judge(of);
  }

  /** All that became of what is expected, in the order of the box. */
  public List<Judgement> judgements() {
    return audited.stream().flatMap(a -> judgement(a).stream()).toList();
  }

  /**
   * Those that fail the build: with a verdict that does, unless that is expected or waived; and
   * those of which something is expected or waived that is not so, or is no longer to be.
   */
  public List<Audited> failing() {
    return audited.stream().filter(this::fails).toList();
  }

  private boolean fails(Audited one) {
    return judgement(one).map(j -> !j.holds()).orElse(Failing.of(one).isPresent());
  }

  /**
   * Whether the build may pass: nothing fails, and a requirement of safety is proved, for nothing
   * proves nothing.
   */
  public boolean passes() {
    return failing().isEmpty() && tally().proved() > 0;
  }
}
