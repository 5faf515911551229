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
    Optional<String> lever = box.frame().ofSignal(signal).map(Lever::id);
    Optional<ArmControl> control = box.controls().ofArm(signal);
    if (lever.isEmpty() || control.isEmpty()) {
      return Optional.empty();
    }
    for (Contact need : control.get().needs()) {
      Working with = Working.parted(box.withControls(locking(box, lever.get(), need)));
      Played again = Played.of(with, breach.run());
      if (!again.followsRules()) {
        String words =
            "lever lock: lever " + lever.get() + " needs " + need.words() + ", normal to reverse";
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
