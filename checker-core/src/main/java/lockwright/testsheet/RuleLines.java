package lockwright.testsheet;

import java.util.List;

/**
 * The lines that try what holds levers besides the table, and arms.
 *
 * @param notTried what could not be tried
 */
public record RuleLines(List<RuleLine> lines, List<NotTried> notTried) {
  public RuleLines {
    lines = List.copyOf(lines);
    notTried = List.copyOf(notTried);
  }

  /** What is not tried so, and why. */
  public record NotTried(RuleTrial trial, String why) {}

  /** How many things are each tried wanting. */
  public long triedWanting() {
    return lines.stream().filter(l -> !l.free()).count();
  }

  public long notTriedWanting() {
    return notTried.stream().filter(n -> n.trial().wanting().isPresent()).count();
  }

  /** Movements of the set-ups, and the levers that are tried and free. */
  int movements() {
    return lines.stream().mapToInt(RuleLine::movements).sum();
  }
}
