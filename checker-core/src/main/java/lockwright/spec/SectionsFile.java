package lockwright.spec;

import java.util.List;
import java.util.Optional;

/**
 * `sections.yaml` as written, in its order. What is missing here has been told as a problem, or may
 * be left out by the author; then the default of `docs/spec.md` holds.
 */
public record SectionsFile(List<Section> sections) {
  /**
   * A single-line section.
   *
   * @param working electric token, electric tablet or electric staff
   * @param phaseReverses at the end, or at the start
   * @param irregular never, once or any
   * @param within tracks whose open ends lie out in the section
   * @param locks those of ground frames that its tokens release
   */
  public record Section(
      Written name,
      Optional<Written> track,
      Optional<Written> working,
      Optional<Integer> tokens,
      List<Written> instruments,
      List<Written> unattended,
      List<Consent> consent,
      boolean plungeWhileWithdrawing,
      Optional<Written> phaseReverses,
      Optional<Written> irregular,
      Optional<Release> release,
      List<Written> within,
      List<Lock> locks) {}

  /** The instruments whose consent one needs. */
  public record Consent(Written instrument, List<Written> of) {}

  /** Whether a token is held in the lock of a ground frame while its points are open. */
  public record Lock(Written groundFrame, boolean heldWhileOpen) {}

  /**
   * The release that a withdrawal here gives.
   *
   * @param lasts until used, until put in here, or until put in
   * @param begins either, locked or given
   */
  public record Release(List<Written> levers, Optional<Written> lasts, Optional<Written> begins) {}
}
