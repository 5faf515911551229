package lockwright.encode.names;

/** What the search says of one target (a breach, a goal, a subject). Only a claim until audited. */
public sealed interface Claim {
  /** The target can never come about, because of this certificate. */
  record Never(Certificate certificate) implements Claim {}

  /**
   * The target comes about by this run.
   *
   * @param shortest whether no shorter run exists, as the search says
   */
  record Reached(Run run, boolean shortest) implements Claim {}

  /** Neither was found; the reason names the limit that was met. */
  record Unknown(String reason) implements Claim {}
}
