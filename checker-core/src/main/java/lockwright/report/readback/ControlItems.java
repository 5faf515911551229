package lockwright.report.readback;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.LeverLock;
import lockwright.railway.control.OutsideCondition;

/** What acts on levers and arms from outside the frame. */
final class ControlItems {
  private ControlItems() {}

  static List<Item> of(Box box) {
    List<Item> items = new ArrayList<>();
    for (OutsideCondition c : box.controls().conditions()) {
      items.add(
          new Item(
              "conditions",
              "",
              c.name(),
              c.kind().words()
                  + ": "
                  + Words.list(c.of())
                  + (c.onePull() ? "; for one pull" : "")));
    }
    for (LeverLock lock : box.controls().leverLocks()) {
      say(items, lock.lever(), "to leave N", lock.leavingNormal());
      say(items, lock.lever(), "to leave R", lock.leavingReversed());
    }
    for (ArmControl control : box.controls().armControls()) {
      items.add(
          new Item(
              "arm controls", "", control.signal(), "off only with " + words(control.needs())));
    }
    return items;
  }

  private static void say(List<Item> items, String lever, String what, List<Contact> needs) {
    if (!needs.isEmpty()) {
      items.add(new Item("lever lock", lever, what, "needs " + words(needs)));
    }
  }

  private static String words(List<Contact> needs) {
    return Words.list(needs.stream().map(Contact::words).toList());
  }
}
