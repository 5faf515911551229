package lockwright.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.working.Working;

/**
 * A rule that would stop one sequence: an entry of the locking table, or in words a rule of a
 * section or a detector. Tried: with it the very sequence cannot be played. That it keeps the
 * requirement is not said, nor that it is what the locking should have.
 *
 * @param entry the entry, for a requirement that locking can keep; its place is that of its lever
 * @param words the entry as in a table, or the rule
 * @param stopsAt the number of the movement that would not be free, from 1; 0 for the beginning
 */
public record MissingEntry(Optional<Entry> entry, String words, int stopsAt) {

  /**
   * The first such rule in the order in which a fitter would look for it; empty if none is found.
   */
  public static Optional<MissingEntry> draft(Box box, Requirement requirement, Played breach) {
    if (requirement instanceof Requirement.OneTokenOut r) {
      return SectionAdvice.of(box, r.section(), Optional.empty(), breach);
    } else if (requirement instanceof Requirement.SectionSignalEarned r) {
      return SectionAdvice.of(box, r.section(), Optional.of(r.signal()), breach)
          .or(() -> ControlAdvice.of(box, r.signal(), breach));
    } else if (requirement instanceof Requirement.SidingLocked r) {
      return SectionAdvice.of(box, r.section(), Optional.empty(), breach);
    }
    for (Entry candidate : new Candidates(box, breach).of(requirement)) {
      List<Entry> entries = new ArrayList<>(box.locking());
      entries.add(candidate);
      Working with = Working.parted(box.withLocking(entries));
      Played again = Played.of(with, breach.run());
      if (!again.followsRules()) {
        return Optional.of(
            new MissingEntry(Optional.of(candidate), candidate.words(), stopsAt(again)));
      }
    }
    if (requirement instanceof Requirement.PointsSet r) {
      return DetectionAdvice.of(box, r.signal(), breach);
    } else if (requirement instanceof Requirement.PointsBolted r) {
      return DetectionAdvice.of(box, r.signal(), breach);
    }
    return Optional.empty();
  }

  /** Where a play stops following the rules. */
  static int stopsAt(Played played) {
    return played.begins() ? played.steps().indexOf(played.firstHeld().orElseThrow()) + 1 : 0;
  }
}
