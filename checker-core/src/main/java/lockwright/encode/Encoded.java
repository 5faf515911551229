package lockwright.encode;

import java.util.Set;
import lockwright.encode.names.Names;
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
}
