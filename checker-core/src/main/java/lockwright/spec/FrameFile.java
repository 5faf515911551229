package lockwright.spec;

import java.util.List;
import java.util.Optional;

/**
 * `frame.yaml` as written, in its order. What is missing here has been told as a problem.
 *
 * @param detections of levers that work signals
 * @param brokenRods points whose rod may break
 * @param electric levers that work their points electrically
 */
public record FrameFile(
    List<Lever> levers,
    List<Detection> detections,
    List<Written> brokenRods,
    List<Written> electric) {
  /** The points that the wire of a lever detects; at least one. */
  public record Detection(Written lever, List<Written> points) {}

  /**
   * A lever and what it works; its number is well formed. The label is empty if none is written.
   */
  public record Lever(Written id, String label, Optional<Work> work) {}

  /** What a lever works, by name. */
  public sealed interface Work {}

  /**
   * @param ways the tracks under {@code for}; empty: none is written
   */
  public record OfSignal(Written signal, List<Written> ways, boolean slotted) implements Work {}

  public record OfPoints(List<Written> points, List<Written> economical) implements Work {}

  public record OfBolt(List<Written> points, boolean normallyIn) implements Work {}

  public record OfRelease(Written groundFrame, boolean heldWhileOpen) implements Work {}

  public record OfGates(Written levelCrossing, boolean normallyAcrossRoad) implements Work {}

  public record OfGateLock(Written levelCrossing, boolean normallyIn) implements Work {}

  public record OfWickets(Written levelCrossing) implements Work {}

  /**
   * @param signals those of the through lines
   */
  public record OfClosing(List<Written> signals) implements Work {}

  public record Spare() implements Work {}

  /**
   * @param was what it worked, in words
   */
  public record OutOfUse(String was) implements Work {}
}
