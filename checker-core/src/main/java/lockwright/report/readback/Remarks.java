package lockwright.report.readback;

import java.util.List;
import java.util.stream.Stream;
import lockwright.report.Cautions;

/** What every read-back says, whatever the box. */
final class Remarks {
  private Remarks() {}

  static final String PURPOSE =
      "For the person who compares the spec with the signalling plan and the locking table on paper."
          + " What follows is read from the files of the spec, or derived from its layout. N and R are"
          + " the normal and reverse positions of points and levers.";

  /** What this version does not check; `docs/meaning.md` 1.5 and 9. */
  static List<Item> notChecked() {
    return Stream.concat(
            Stream.of("vehicles that come into a route another way than by the flanks listed"),
            Cautions.LEFT_OUT.stream())
        .map(s -> new Item("this version", "", "does not check", s))
        .toList();
  }
}
