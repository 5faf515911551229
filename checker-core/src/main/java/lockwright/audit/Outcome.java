package lockwright.audit;

/** What one check of a certificate came to. */
sealed interface Outcome {
  /** It is as claimed. */
  record Holds(CheckedBy by) implements Outcome {}

  /** It is not as claimed, for this reason. */
  record Fails(String words) implements Outcome {}

  /** It could not be found out. */
  record Open(String reason) implements Outcome {}
}
