package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonTypeName;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;

/**
 * A lever of the frame.
 *
 * @param detection points that the wire of its arm detects; null if there are none
 */
record LeverPart(String id, String label, Work work, List<String> detection, Place at) {

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  sealed interface Work {}

  /**
   * @param ways the tracks under "for", where several levers are each for some routes of the arm
   * @param slotted true, where the arm is off only while its other levers are over too; else null
   */
  @JsonTypeName("signal")
  record Signal(String signal, @JsonProperty("for") List<String> ways, Boolean slotted)
      implements Work {}

  @JsonTypeName("points")
  record Points(List<String> points, List<String> economicalLock) implements Work {}

  /**
   * @param normal "in" or "out"
   */
  @JsonTypeName("bolt")
  record Bolt(List<String> points, String normal) implements Work {}

  @JsonTypeName("release")
  record Release(String groundFrame, boolean heldWhileOpen) implements Work {}

  /**
   * @param normal "across the road" or "across the line"
   */
  @JsonTypeName("gates")
  record Gates(String levelCrossing, String normal) implements Work {}

  /**
   * @param normal "in" or "out"
   */
  @JsonTypeName("gate lock")
  record GateLock(String levelCrossing, String normal) implements Work {}

  @JsonTypeName("wickets")
  record Wickets(String levelCrossing) implements Work {}

  /**
   * @param signals those of the through lines
   */
  @JsonTypeName("closing")
  record Closing(List<String> signals) implements Work {}

  @JsonTypeName("spare")
  record Spare() implements Work {}

  @JsonTypeName("out of use")
  record OutOfUse(String was) implements Work {}

  static LeverPart of(Box box, Lever lever) {
    List<String> detected = box.frame().connections().detected(lever.id());
    return new LeverPart(
        lever.id(),
        lever.label(),
        work(lever.work()),
        detected.isEmpty() ? null : detected,
        Place.of(lever.at()));
  }

  private static Work work(lockwright.railway.frame.Work work) {
    if (work instanceof lockwright.railway.frame.Work.OfSignal w) {
      return new Signal(
          w.signal(), w.ways().isEmpty() ? null : w.ways(), w.slotted() ? true : null);
    } else if (work instanceof lockwright.railway.frame.Work.OfPoints w) {
      return new Points(w.points(), w.economical());
    } else if (work instanceof lockwright.railway.frame.Work.OfBolt w) {
      return new Bolt(w.points(), w.normallyIn() ? "in" : "out");
    } else if (work instanceof lockwright.railway.frame.Work.OfRelease w) {
      return new Release(w.groundFrame(), w.heldWhileOpen());
    } else if (work instanceof lockwright.railway.frame.Work.OfGates w) {
      return new Gates(
          w.levelCrossing(), w.normallyAcrossRoad() ? "across the road" : "across the line");
    } else if (work instanceof lockwright.railway.frame.Work.OfGateLock w) {
      return new GateLock(w.levelCrossing(), w.normallyIn() ? "in" : "out");
    } else if (work instanceof lockwright.railway.frame.Work.OfWickets w) {
      return new Wickets(w.levelCrossing());
    } else if (work instanceof lockwright.railway.frame.Work.OfClosing w) {
      return new Closing(w.signals());
    } else if (work instanceof lockwright.railway.frame.Work.OutOfUse w) {
      return new OutOfUse(w.was());
    }
    return new Spare();
  }
}
