package lockwright.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.frame.Lever;
import lockwright.working.Working;

/** Whether what controls an arm would stop a sequence if it locked the lever too; tried. */
final class ControlAdvice {
  private ControlAdvice() {}

  static Optional<MissingEntry> of(Box box, String signal, Played breach) {
    List<Contact> needs = box.controls().ofArm(signal).map(ArmControl::needs).orElse(List.of());
    return box.frame().giving(signal).stream()
        .map(Lever::id)
        .flatMap(l -> of(box, l, needs, breach).stream())
        .findFirst();
  }

  private static Optional<MissingEntry> of(
      Box box, String lever, List<Contact> needs, Played breach) {
    for (Contact need : needs) {
      Working with = Working.parted(box.withControls(locking(box, lever, need)));
      Played again = Played.of(with, breach.run());
      if (!again.followsRules()) {
        String words =
            "lever lock: lever " + lever + " needs " + need.words() + ", normal to reverse";
        return Optional.of(new MissingEntry(Optional.empty(), words, MissingEntry.stopsAt(again)));
      }
    }
    return Optional.empty();
  }

  /** The controls, with one need more for the lever to leave N. */
  private static Controls locking(Box box, String lever, Contact need) {
    Controls all = box.controls();
    LeverLock old =
        all.ofLever(lever)
            .orElse(new LeverLock(lever, List.of(), List.of(), box.frame().lever(lever).at()));
    List<Contact> needs = new ArrayList<>(old.leavingNormal());
    needs.add(need);
    List<LeverLock> locks =
        new ArrayList<>(all.leverLocks().stream().filter(l -> !l.equals(old)).toList());
    locks.add(new LeverLock(lever, needs, old.leavingReversed(), old.at()));
    return new Controls(all.conditions(), locks, all.armControls());
  }
}
