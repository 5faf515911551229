package lockwright.spec;

import java.util.List;
import java.util.Optional;

/**
 * `plan.yaml` as written, in its order. What is missing here has been told as a problem. Names are
 * well formed and unlike each other, but may name nothing. Labels are empty where none is written.
 */
public record PlanFile(
    Optional<Written> box,
    List<Track> tracks,
    List<Pair> joints,
    List<Points> points,
    List<Crossing> crossings,
    List<Signal> signals,
    List<Limit> limits,
    List<Pair> limitsOfShunt,
    List<GroundFrame> groundFrames,
    List<LevelCrossing> levelCrossings,
    List<Written> passenger,
    List<Overlaps> overlaps) {
  /** The word that stands for the leg of trap points that leads off the road. */
  public static final String TRAP = "trap";

  public record Track(Written id, String label) {}

  /** Two tracks: {@code a + b} or {@code a > b}. */
  public record Pair(Written first, Written second) {}

  /** Worked by what: {@code by hand}, {@code by spring}, or nothing written. */
  public record Points(
      Written id,
      String label,
      Optional<Written> toe,
      Optional<Written> normal,
      Optional<Written> reverse,
      Optional<Written> worked) {
    public boolean byHand() {
      return worked.filter(w -> w.text().equals("by hand")).isPresent();
    }

    public boolean sprung() {
      return worked.filter(w -> w.text().equals("by spring")).isPresent();
    }
  }

  public record Crossing(Written id, Optional<Pair> first, Optional<Pair> second) {}

  /** The arm is one of: stop, distant, shunting, calling-on. */
  public record Signal(
      Written id,
      String label,
      Optional<Pair> at,
      Optional<Written> arm,
      List<Written> ways,
      Optional<Written> fixed) {
    /** Whether it is a fixed distant. */
    public boolean isFixed() {
      return fixed.isPresent() && arm.filter(a -> a.text().equals("distant")).isPresent();
    }
  }

  /** The kind is one of: block, buffer stop, limit of plan. */
  public record Limit(Written track, Optional<Written> kind) {}

  /** A stop signal, and each overlap permitted beyond it as its tracks. */
  public record Overlaps(Written signal, List<List<Written>> tracks) {}

  public record GroundFrame(
      Written id, String label, List<Written> points, boolean byLeverAndToken) {}

  public record LevelCrossing(Written id, String label, List<Written> tracks) {}
}
