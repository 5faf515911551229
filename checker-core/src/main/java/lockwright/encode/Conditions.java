package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.control.Contact;
import lockwright.railway.control.LeverLock;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event.ConditionChanges;
import lockwright.railway.words.Quantity;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/** What comes and goes outside the frame, and the lever locks; `docs/meaning.md` 2.9. */
record Conditions(Box box, Vocabulary words) {
  void declare() {
    box.controls().conditions().forEach(c -> words.add(Quantity.condition(c.name())));
  }

  /** Both changes of each condition, in the order of the file. */
  List<Movement> movements() {
    List<Movement> movements = new ArrayList<>();
    for (OutsideCondition condition : box.controls().conditions()) {
      for (boolean met : new boolean[] {true, false}) {
        Quantity quantity = Quantity.condition(condition.name());
        movements.add(
            new Movement(
                new ConditionChanges(condition.name(), met),
                words.is(quantity, met ? "unmet" : "met"),
                List.of(words.set(quantity, met ? "met" : "unmet"))));
      }
    }
    return movements;
  }

  /** What the electric lock of a lever asks of a stroke, and what a stroke uses up. */
  void atStart(String lever, Strokes.Stroke stroke, List<Term> needs, List<Effect> does) {
    Apparatus apparatus = new Apparatus(box, words);
    for (LeverLock lock : box.controls().leverLocks()) {
      if (!lock.lever().equals(lever)) {
        continue;
      }
      if (stroke.from() == Position.R) {
        lock.leavingReversed().forEach(c -> needs.add(apparatus.makes(c)));
      } else if (stroke.from() == Position.N) {
        for (Contact contact : lock.leavingNormal()) {
          needs.add(apparatus.makes(contact));
          usedUp(contact, does);
        }
      }
    }
  }

  private void usedUp(Contact contact, List<Effect> does) {
    box.controls().conditions().stream()
        .filter(OutsideCondition::onePull)
        .map(OutsideCondition::name)
        .filter(name -> contact.equals(new Contact.Outside(name)))
        .forEach(name -> does.add(words.set(Quantity.condition(name), "unmet")));
  }
}
