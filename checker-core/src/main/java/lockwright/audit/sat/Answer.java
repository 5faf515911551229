package lockwright.audit.sat;

import java.util.List;

/** What the second solver says of a question. */
public sealed interface Answer {
  /** No state is such. */
  record None() implements Answer {}

  /** Such a state: the index of the value of each quantity. Tried against the question. */
  record Found(List<Integer> values) implements Answer {}

  /** Neither: a limit was met, or the solver failed. */
  record Open(String reason) implements Answer {}
}
