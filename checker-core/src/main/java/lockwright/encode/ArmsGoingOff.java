package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.section.Section;
import lockwright.railway.words.Quantity;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/**
 * The section signals that an arm control may put off while their lever stands still;
 * `docs/meaning.md` 4.3. What a transition does to one variable never hangs on another, so a
 * movement by which such a signal may go off becomes two: one with which it does, one with which it
 * does not.
 */
record ArmsGoingOff(Apparatus apparatus) {
  /** The movements, in their order; those of one event stand together. */
  List<Movement> split(List<Movement> movements) {
    List<Movement> all = movements;
    for (Section section : apparatus.box().sections()) {
      List<Movement> next = new ArrayList<>();
      all.forEach(m -> split(m, section, next));
      all = next;
    }
    return all;
  }

  private void split(Movement movement, Section section, List<Movement> to) {
    List<Term> ways = new ArrayList<>();
    for (String signal : SectionCoder.signals(section, apparatus.box())) {
      if (apparatus.isControlled(signal)) {
        ways.add(goesOff(movement, section.name(), signal));
      }
    }
    Term some = Term.or(ways);
    Quantity fresh = Quantity.freshTokens(section.name(), section.tokens());
    if (some.equals(Term.FALSE) || movement.changes(apparatus.words().index(fresh))) {
      to.add(movement);
      return;
    }
    List<Effect> does = new ArrayList<>(movement.effects());
    does.add(apparatus.words().set(fresh, "0"));
    section
        .locks()
        .forEach(
            l ->
                does.add(
                    apparatus
                        .words()
                        .replace(
                            Quantity.lock(section.name(), l.groundFrame()), "fresh", "other")));
    to.add(movement.only(Term.not(some), movement.effects(), ""));
    to.add(movement.only(some, does, " (a signal to " + section.name() + " goes off)"));
  }

  /** That the signal is on, and is off after the movement; never, if it changes nothing of it. */
  Term goesOff(Movement movement, String section, String signal) {
    Term off = apparatus.offInto(section, signal);
    Term then = movement.transition().before(off);
    return then.equals(off) ? Term.FALSE : Term.and(Term.not(off), then);
  }
}
