package lockwright.spec;

import java.util.List;

/**
 * `drawing.yaml` as written, in its order. What is missing here has been told as a problem. Names
 * may name nothing.
 */
public record DrawingFile(
    List<Spot> points,
    List<Spot> crossings,
    List<JointSpot> joints,
    List<Spot> ends,
    List<Level> tracks) {
  /** The place of what has this name. */
  public record Spot(Written name, Position position) {}

  /** The place where two tracks are joined. */
  public record JointSpot(Written name, PlanFile.Pair tracks, Position position) {}

  /** From the left, and from the top; 0 to 9999.99. */
  public record Position(double across, double down, Span at) {}

  /** How far down a track runs; 0 to 9999.99. */
  public record Level(Written track, double down) {}
}
