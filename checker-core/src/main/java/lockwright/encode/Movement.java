package lockwright.encode;

import java.util.List;
import lockwright.railway.words.Event;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Transition.Effect;

/**
 * A transition under construction, with the event that it stands for.
 *
 * @param which of several transitions for one event it is; empty for one alone, or the first
 */
record Movement(Event event, String which, Term guard, List<Effect> effects) {
  Movement(Event event, Term guard, List<Effect> effects) {
    this(event, "", guard, effects);
  }

  /** One of the cases of this movement. */
  Movement only(Term when, List<Effect> does, String name) {
    return new Movement(event, which + name, Term.and(guard, when), does);
  }

  boolean changes(int variable) {
    return effects.stream().anyMatch(e -> e.variable() == variable);
  }

  Transition transition() {
    return new Transition(event.key() + which, guard, effects);
  }
}
