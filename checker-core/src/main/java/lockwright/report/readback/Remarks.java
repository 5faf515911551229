package lockwright.report.readback;

import java.util.List;
import java.util.stream.Stream;

/** What every read-back says, whatever the box. */
final class Remarks {
  private Remarks() {}

  static final String PURPOSE =
      "For the person who compares the spec with the signalling plan and the locking table on paper."
          + " What follows is read from the files of the spec, or derived from its layout. N and R are"
          + " the normal and reverse positions of points and levers.";

  /** What this version does not check; `docs/meaning.md` 1.5 and 9. */
  static List<Item> notChecked() {
    return Stream.of(
            "vehicles that come into a route another way than by the flanks listed",
            "trains and their movement",
            "that a track circuit or a treadle follows the trains; controls of arms that"
                + " stay on, once on, until the lever is back",
            "bolts and detection of sprung points; padlocks and clips on points",
            "double-line block; road signals, barriers and wickets of level crossings",
            "collars, loss of power, other boxes",
            "that a shunting arm into a single-line section is earned by a token",
            "bolts, traps and routes of points out in a section")
        .map(s -> new Item("this version", "", "does not check", s))
        .toList();
  }
}
