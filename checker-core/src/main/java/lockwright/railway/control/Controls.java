package lockwright.railway.control;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The lever locks and arm controls of a box.
 *
 * @param conditions from outside, in the order written
 * @param leverLocks at most one a lever
 * @param armControls at most one an arm; no arm is proved for itself, also not by way of others
 */
public record Controls(
    List<OutsideCondition> conditions, List<LeverLock> leverLocks, List<ArmControl> armControls) {
  /** Of a box without any. */
  public static final Controls NONE = new Controls(List.of(), List.of(), List.of());

  public Controls {
    conditions = List.copyOf(conditions);
    leverLocks = List.copyOf(leverLocks);
    armControls = List.copyOf(armControls);
  }

  /** Whether a lever lock or an arm control needs another arm to stand so. */
  public boolean proveArms() {
    return Stream.of(
            leverLocks.stream().flatMap(l -> l.leavingNormal().stream()),
            leverLocks.stream().flatMap(l -> l.leavingReversed().stream()),
            armControls.stream().flatMap(c -> c.needs().stream()))
        .flatMap(needs -> needs)
        .anyMatch(c -> !(c instanceof Contact.Outside));
  }

  public OutsideCondition condition(String name) {
    return conditions.stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("condition " + name));
  }

  public Optional<LeverLock> ofLever(String lever) {
    return leverLocks.stream().filter(l -> l.lever().equals(lever)).findFirst();
  }

  public Optional<ArmControl> ofArm(String signal) {
    return armControls.stream().filter(c -> c.signal().equals(signal)).findFirst();
  }
}
