package lockwright.encode;

import java.util.List;
import lockwright.railway.words.Event;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.Transition.Effect;

/** A transition under construction, with the event that it stands for. */
record Movement(Event event, Term guard, List<Effect> effects) {
  Transition transition() {
    return new Transition(event.key(), guard, effects);
  }
}
