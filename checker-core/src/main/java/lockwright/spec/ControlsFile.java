package lockwright.spec;

import java.util.List;
import java.util.Optional;

/**
 * `controls.yaml` as written, in its order. What is missing here has been told as a problem, or may
 * be left out by the author.
 */
public record ControlsFile(
    List<Condition> conditions, List<LeverLock> leverLocks, List<ArmControl> armControls) {
  /**
   * A condition from outside.
   *
   * @param kind track circuit, release, slot, treadle or time; its place is that of the key
   * @param of what is written for that key
   * @param onePull where `for: one pull` is written
   */
  public record Condition(
      Written name, Optional<Written> kind, List<Written> of, Optional<Written> onePull) {}

  /** What a lever needs: to leave N, to leave R, and for both. */
  public record LeverLock(
      Written lever, List<Need> leavingNormal, List<Need> leavingReversed, List<Need> both) {}

  public record ArmControl(Written signal, List<Need> needs) {}

  /** One thing that is needed: the name of a condition, or of a signal that is proved. */
  public record Need(Proves proves, Written written, Written name) {}

  /** What a need asks of. */
  public enum Proves {
    CONDITION,
    ARM_AT_DANGER,
    ARM_OFF
  }
}
