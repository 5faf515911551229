package lockwright.spec;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * `waivers.yaml` as written, in its order. What is missing here has been told as a problem.
 *
 * @param expected what the author knows to fail and to be right so
 * @param waived what somebody answers for until a date
 * @param exempted what is not asked for; without a verdict
 * @param asked what is advice, and asked for; without a verdict
 */
public record WaiversFile(
    List<Item> expected, List<Item> waived, List<Item> exempted, List<Item> asked) {
  /**
   * An instance of a requirement, by its id, and the verdict that it has.
   *
   * @param role who answers for it; waived only
   * @param until the last day; waived only
   */
  public record Item(
      Written id,
      Optional<Written> verdict,
      Optional<Written> reason,
      Optional<Written> role,
      Optional<LocalDate> until) {}
}
