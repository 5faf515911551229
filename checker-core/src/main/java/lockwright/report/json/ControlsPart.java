package lockwright.report.json;

import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;

/** Lever locks and arm controls; each need in the words of the spec. */
record ControlsPart(
    List<Condition> conditions, List<LeverLock> leverLocks, List<ArmControl> armControls) {

  record Condition(String name, String kind, List<String> of, boolean forOnePull, Place at) {}

  record LeverLock(
      String lever, List<String> leavingNormal, List<String> leavingReversed, Place at) {}

  record ArmControl(String signal, List<String> needs, Place at) {}

  /** Null where nothing acts on the box from outside. */
  static ControlsPart of(Box box) {
    Controls controls = box.controls();
    if (controls.equals(Controls.NONE)) {
      return null;
    }
    return new ControlsPart(
        controls.conditions().stream()
            .map(
                c ->
                    new Condition(
                        c.name(), c.kind().words(), c.of(), c.onePull(), Place.of(c.at())))
            .toList(),
        controls.leverLocks().stream()
            .map(
                l ->
                    new LeverLock(
                        l.lever(),
                        words(l.leavingNormal()),
                        words(l.leavingReversed()),
                        Place.of(l.at())))
            .toList(),
        controls.armControls().stream()
            .map(c -> new ArmControl(c.signal(), words(c.needs()), Place.of(c.at())))
            .toList());
  }

  private static List<String> words(List<Contact> contacts) {
    return contacts.stream().map(Contact::words).toList();
  }
}
