package lockwright.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Verdict;

/**
 * What has been found so far: clauses that together hold initially and are kept by every
 * transition, a verdict for each target by its name, and the engine that gave it.
 */
public record Knowledge(
    List<Clause> invariants, Map<String, Verdict> verdicts, Map<String, String> decidedBy) {
  public Knowledge {
    invariants = List.copyOf(invariants);
    verdicts = new LinkedHashMap<>(verdicts);
    decidedBy = new LinkedHashMap<>(decidedBy);
  }

  /** Nothing yet. */
  public static Knowledge none(TransitionSystem system) {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    for (Target target : system.targets()) {
      verdicts.put(target.name(), new Verdict.Unknown("not searched for"));
    }
    return new Knowledge(List.of(), verdicts, Map.of());
  }

  /** The targets for which neither a certificate nor a shortest trace is known. */
  public List<Target> open(TransitionSystem system) {
    return system.targets().stream()
        .filter(
            t ->
                verdicts
                    .get(t.name())
                    .fold(never -> false, reached -> !reached.shortest(), unknown -> true))
        .toList();
  }

  public Knowledge withInvariants(List<Clause> more) {
    List<Clause> all = new ArrayList<>(invariants);
    more.stream().filter(c -> !invariants.contains(c)).forEach(all::add);
    return new Knowledge(all, verdicts, decidedBy);
  }

  /** The same with all invariants as the certificate of each proof. */
  Knowledge withOneCertificate() {
    Verdict.Never never = new Verdict.Never(invariants);
    Map<String, Verdict> all = new LinkedHashMap<>(verdicts);
    all.replaceAll((target, verdict) -> verdict instanceof Verdict.Never ? never : verdict);
    return new Knowledge(invariants, all, decidedBy);
  }

  /**
   * With a verdict more. Fails if it contradicts a decided one: one of two engines is then wrong.
   */
  public Knowledge with(String target, Verdict verdict, String engine) {
    Verdict before = verdicts.get(target);
    boolean contradicts =
        verdict.fold(
            never -> before instanceof Verdict.Reached,
            reached -> before instanceof Verdict.Never,
            unknown -> false);
    if (contradicts) {
      throw new IllegalStateException(
          "the engines "
              + decidedBy.get(target)
              + " and "
              + engine
              + " contradict each other on "
              + target);
    }
    if (verdict instanceof Verdict.Unknown && !(before instanceof Verdict.Unknown)) {
      return this;
    }
    Map<String, Verdict> all = new LinkedHashMap<>(verdicts);
    all.put(target, verdict);
    Map<String, String> by = new LinkedHashMap<>(decidedBy);
    if (!(verdict instanceof Verdict.Unknown)) {
      by.put(target, engine);
    }
    return new Knowledge(invariants, all, by);
  }
}
