package lockwright.testsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;

/**
 * A box in which one lever lock, at one end of the lever, or one arm control lacks a contact. For
 * tests.
 *
 * @param of the lever and the end, or the arm
 * @param lever the half-stroke that the lock holds; empty for an arm
 */
record WithoutContact(String of, Optional<Event.LeverMoves> lever, Contact contact, Box box) {
  /** Every such box. */
  static List<WithoutContact> all(Box box) {
    Controls controls = box.controls();
    List<WithoutContact> all = new ArrayList<>();
    for (LeverLock lock : controls.leverLocks()) {
      for (Contact contact : lock.leavingNormal()) {
        LeverLock less =
            new LeverLock(
                lock.lever(),
                without(lock.leavingNormal(), contact),
                lock.leavingReversed(),
                lock.at());
        all.add(of(box, Position.N, contact, lock, less));
      }
      for (Contact contact : lock.leavingReversed()) {
        LeverLock less =
            new LeverLock(
                lock.lever(),
                lock.leavingNormal(),
                without(lock.leavingReversed(), contact),
                lock.at());
        all.add(of(box, Position.R, contact, lock, less));
      }
    }
    for (ArmControl control : controls.armControls()) {
      for (Contact contact : control.needs()) {
        ArmControl less =
            new ArmControl(control.signal(), without(control.needs(), contact), control.at());
        List<ArmControl> others = replaced(controls.armControls(), control, less);
        Controls wrong = new Controls(controls.conditions(), controls.leverLocks(), others);
        all.add(
            new WithoutContact(
                control.signal(), Optional.empty(), contact, box.withControls(wrong)));
      }
    }
    return all;
  }

  String words() {
    return of + " without " + contact.words();
  }

  /** Whether a line tries it wanting. */
  boolean triedOn(TestSheet sheet) {
    return sheet.rules().lines().stream().map(RuleLine::trial).anyMatch(this::isThis);
  }

  /** Whether it is named as not tried. */
  boolean namedOn(TestSheet sheet) {
    return sheet.rules().notTried().stream().map(RuleLines.NotTried::trial).anyMatch(this::isThis);
  }

  private boolean isThis(RuleTrial trial) {
    String key =
        trial.tried() instanceof RuleTrial.AtLever at
            ? key(at.lever(), at.from())
            : ((RuleTrial.AtArm) trial.tried()).control().signal();
    return key.equals(of) && trial.wanting().filter(this::speaksOfIt).isPresent();
  }

  /** "arm 2 at danger", "lever 1 leaves N only with the slot Holm slot (Holm)". */
  private boolean speaksOfIt(String wanting) {
    return lever.isEmpty()
        ? wanting.equals(contact.words())
        : wanting.contains(" only with ") && (wanting + " ").contains(" " + contact.words() + " ");
  }

  private static String key(String lever, Position from) {
    return "lever " + lever + " from " + from;
  }

  private static WithoutContact of(
      Box box, Position from, Contact contact, LeverLock lock, LeverLock less) {
    Controls controls = box.controls();
    List<LeverLock> others = replaced(controls.leverLocks(), lock, less);
    Controls wrong = new Controls(controls.conditions(), others, controls.armControls());
    return new WithoutContact(
        key(lock.lever(), from),
        Optional.of(new Event.LeverMoves(lock.lever(), from, Position.M)),
        contact,
        box.withControls(wrong));
  }

  private static List<Contact> without(List<Contact> all, Contact contact) {
    return all.stream().filter(c -> !c.equals(contact)).toList();
  }

  private static <T> List<T> replaced(List<T> all, T old, T by) {
    return all.stream().map(t -> t.equals(old) ? by : t).toList();
  }
}
