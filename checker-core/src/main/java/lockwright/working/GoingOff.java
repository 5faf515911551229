package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.section.Section;
import lockwright.railway.words.Quantity;

/**
 * The going off of section signals that have an arm control, by whatever movement: 4.3 of {@code
 * docs/meaning.md}.
 */
final class GoingOff {
  private final Box box;
  private final Quantities quantities;
  private final Apparatus apparatus;

  GoingOff(Box box, Quantities quantities, Apparatus apparatus) {
    this.box = box;
    this.quantities = quantities;
    this.apparatus = apparatus;
  }

  /** An arm is on before the movement, and off after it. */
  static Condition by(Movement movement, Condition off) {
    Condition after = off.before(movement.effects());
    return after.equals(off) ? Condition.FALSE : Condition.all(Condition.not(off), after);
  }

  /** The movement, with what the going off of such signals does to fresh tokens. */
  Movement with(Movement movement) {
    List<Effect> effects = new ArrayList<>(movement.effects());
    for (Section section : box.sections()) {
      Condition goesOff =
          Condition.any(
              Quantities.sectionSignals(box, section.name()).stream()
                  .filter(s -> box.controls().ofArm(s).isPresent())
                  .map(s -> by(movement, apparatus.offInto(section.name(), s)))
                  .toList());
      if (!goesOff.equals(Condition.FALSE)) {
        usedUp(section, goesOff, effects);
      }
    }
    return effects.size() == movement.effects().size()
        ? movement
        : new Movement(movement.event(), movement.requires(), effects);
  }

  private void usedUp(Section section, Condition goesOff, List<Effect> effects) {
    Effect none = quantities.set(Quantity.freshTokens(section.name(), section.tokens()), "0");
    if (effects.stream().anyMatch(e -> e.at() == none.at())) {
      return; // Another signal of the section goes off with this movement anyway.
    }
    effects.add(new Effect(none.at(), none.becomes(), goesOff));
    for (Section.Lock lock : section.locks()) {
      Quantity in = Quantity.lock(section.name(), lock.groundFrame());
      int fresh = in.values().indexOf("fresh");
      int other = in.values().indexOf("other");
      Effect used = quantities.map(in, v -> v == fresh ? other : v);
      effects.add(new Effect(used.at(), used.becomes(), goesOff));
    }
  }
}
