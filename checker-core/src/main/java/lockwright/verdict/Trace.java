package lockwright.verdict;

import java.util.List;

/**
 * A run of a transition system: the first state, one value a variable, and transitions by index.
 */
public record Trace(List<Integer> first, List<Integer> transitions) {
  public Trace {
    first = List.copyOf(first);
    transitions = List.copyOf(transitions);
  }
}
