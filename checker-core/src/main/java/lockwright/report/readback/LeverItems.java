package lockwright.report.readback;

import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.requirement.Requirement;

/** What each lever works. */
final class LeverItems {
  private LeverItems() {}

  static List<Item> of(Box box) {
    return box.frame().levers().stream()
        .map(
            l ->
                new Item(
                    "levers",
                    "",
                    l.id(),
                    work(l.work())
                        + connections(box, l)
                        + order(box, l)
                        + PlanItems.label(l.id(), l.label())))
        .toList();
  }

  private static String connections(Box box, Lever lever) {
    List<String> detected = box.frame().connections().detected(lever.id());
    List<String> rods =
        box.frame().connections().brokenRods().stream()
            .filter(p -> box.frame().ofPoints(p).equals(Optional.of(lever)))
            .toList();
    boolean electric = box.frame().connections().electric().contains(lever.id());
    return (electric ? ", worked electrically, with indication locking" : "")
        + (detected.isEmpty() ? "" : ", with detection of points " + Words.list(detected))
        + (rods.isEmpty()
            ? ""
            : ", where it is asked what if the rod breaks of " + Words.list(rods));
  }

  /** Of a closing lever: whether it goes over after its signals, or they after it. */
  private static String order(Box box, Lever lever) {
    if (!(lever.work() instanceof Work.OfClosing)) {
      return "";
    }
    boolean last =
        box.requirements().stream()
            .anyMatch(r -> r instanceof Requirement.BoxClosed c && c.lever().equals(lever.id()));
    return last
        ? "; its signals go off first, and it goes over last"
        : "; it goes over first, since some of these have opposed routes";
  }

  private static String work(Work work) {
    if (work instanceof Work.OfSignal signal) {
      String routes = signal.ways().isEmpty() ? "" : ", for " + Words.list(signal.ways());
      return "signal " + signal.signal() + routes + (signal.slotted() ? ", slotted" : "");
    }
    if (work instanceof Work.OfPoints points) {
      String lock =
          points.economical().isEmpty()
              ? ""
              : ", with economical lock of " + Words.list(points.economical());
      return "points " + Words.list(points.points()) + lock;
    }
    if (work instanceof Work.OfBolt bolt) {
      return "bolt of points "
          + Words.list(bolt.points())
          + (bolt.normallyIn() ? ": in at N, out at R" : ": out at N, in at R");
    }
    if (work instanceof Work.OfRelease release) {
      return "release of ground frame "
          + release.groundFrame()
          + (release.heldWhileOpen() ? ", held while it is open" : ", not held while it is open");
    }
    if (work instanceof Work.OfGates gates) {
      return "gates of level crossing "
          + gates.levelCrossing()
          + (gates.normallyAcrossRoad()
              ? ": across the road at N, across the line at R"
              : ": across the line at N, across the road at R");
    }
    if (work instanceof Work.OfGateLock lock) {
      return "gate lock of level crossing "
          + lock.levelCrossing()
          + (lock.normallyIn() ? ": in at N, out at R" : ": out at N, in at R");
    }
    if (work instanceof Work.OfWickets wickets) {
      return "wickets of level crossing " + wickets.levelCrossing();
    }
    if (work instanceof Work.OfClosing closing) {
      return "closing lever: box switched out at R, through signals "
          + Words.list(closing.signals());
    }
    if (work instanceof Work.OutOfUse out) {
      return "out of use, was " + out.was();
    }
    return "spare";
  }
}
