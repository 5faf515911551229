package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.control.Contact;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/** Conditions from outside, and the lever locks that need them: 2.9 of {@code docs/meaning.md}. */
final class OutsideConditions {
  private final Box box;
  private final Quantities quantities;
  private final Apparatus apparatus;

  OutsideConditions(Box box, Quantities quantities, Apparatus apparatus) {
    this.box = box;
    this.quantities = quantities;
    this.apparatus = apparatus;
  }

  /** Each comes and goes at any time. */
  List<Movement> all() {
    List<Movement> all = new ArrayList<>();
    for (OutsideCondition condition : box.controls().conditions()) {
      all.add(change(condition, "unmet", "met"));
      all.add(change(condition, "met", "unmet"));
    }
    return all;
  }

  private Movement change(OutsideCondition condition, String from, String to) {
    Quantity quantity = Quantity.condition(condition.name());
    return new Movement(
        new Event.ConditionChanges(condition.name(), to.equals("met")),
        List.of(
            Need.rule(quantities.is(quantity, from), quantity.key() + " is " + to + " already")),
        List.of(quantities.set(quantity, to)));
  }

  /** Adds what a lever needs to leave an end, and that it uses a release up. */
  void lock(String lever, Position from, List<Need> needs, List<Effect> effects) {
    if (from == Position.M || box.controls().ofLever(lever).isEmpty()) {
      return;
    }
    boolean normal = from == Position.N;
    List<Contact> contacts =
        box.controls()
            .ofLever(lever)
            .map(l -> normal ? l.leavingNormal() : l.leavingReversed())
            .orElseThrow();
    for (Contact contact : contacts) {
      needs.add(
          Need.rule(
              apparatus.met(contact),
              "lever " + lever + " leaves " + from + " only with " + words(contact)));
      if (normal
          && contact instanceof Contact.Outside outside
          && box.controls().condition(outside.condition()).onePull()) {
        effects.add(quantities.set(Quantity.condition(outside.condition()), "unmet"));
      }
    }
  }

  /** "the release of Holm: Holm accepts". */
  private String words(Contact contact) {
    if (!(contact instanceof Contact.Outside outside)) {
      return contact.words();
    }
    OutsideCondition condition = box.controls().condition(outside.condition());
    return "the "
        + condition.kind().words()
        + " "
        + condition.name()
        + " ("
        + String.join(", ", condition.of())
        + ")";
  }
}
