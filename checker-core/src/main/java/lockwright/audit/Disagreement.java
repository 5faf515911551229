package lockwright.audit;

/**
 * The search and the audit disagree: a run that cannot be played, or a certificate that does not
 * prove what it should. A fault of this program, never of the user's, and never to be passed over:
 * nothing that the same search says can be believed. The message has all that is known.
 */
public final class Disagreement extends RuntimeException {
  Disagreement(String message) {
    super(message);
  }
}
