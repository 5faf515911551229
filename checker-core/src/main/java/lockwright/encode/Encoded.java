package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Names;
import lockwright.system.Clause;
import lockwright.system.TransitionSystem;

/**
 * A box as a transition system, and the way back. The targets are named by the ids of the
 * requirements (their breaches, or for possibility their goals) and of the subjects.
 */
public record Encoded(TransitionSystem system, Names names) {
  /** The same without some of the targets, by their names. */
  public Encoded without(Set<String> targets) {
    return new Encoded(
        new TransitionSystem(
            system.variables(),
            system.initial(),
            system.transitions(),
            system.targets().stream().filter(t -> !targets.contains(t.name())).toList(),
            system.candidates()),
        names);
  }

  /** The same with the clauses of a certificate, of a box like it, as further candidates. */
  public Encoded trying(Certificate certificate) {
    List<Clause> candidates = new ArrayList<>(system.candidates());
    candidates.addAll(names.clauses(certificate));
    return new Encoded(
        new TransitionSystem(
            system.variables(),
            system.initial(),
            system.transitions(),
            system.targets(),
            candidates.stream().distinct().toList()),
        names);
  }
}
