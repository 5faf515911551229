package lockwright.audit;

import lockwright.working.Condition;

/**
 * One way of checking an invariant: that every beginning is in it, that every movement keeps it,
 * and that it excludes what should never come about.
 */
sealed interface Checker permits Enumeration, Solving {
  Outcome begins();

  Outcome keeps();

  Outcome excludes(Condition target);
}
