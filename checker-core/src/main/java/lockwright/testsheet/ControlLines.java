package lockwright.testsheet;

import java.util.List;

/**
 * The lines that try lever locks and arm controls.
 *
 * @param notTried what could not be tried
 */
public record ControlLines(List<ControlLine> lines, List<NotTried> notTried) {
  public ControlLines {
    lines = List.copyOf(lines);
    notTried = List.copyOf(notTried);
  }

  /** A lock or control that is not tried so, and why. */
  public record NotTried(ControlTrial trial, String why) {}

  /** How many things that a lock or a control needs are each tried wanting. */
  public long needsTried() {
    return lines.stream().filter(l -> !l.free()).count();
  }

  public long needsNotTried() {
    return notTried.stream().filter(n -> n.trial().lacking().isPresent()).count();
  }

  /** Movements of the set-ups, and the levers that are tried and free. */
  int movements() {
    return lines.stream().mapToInt(ControlLine::movements).sum();
  }
}
