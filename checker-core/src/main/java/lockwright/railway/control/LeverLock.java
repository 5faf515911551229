package lockwright.railway.control;

import java.util.List;
import lockwright.spec.Span;

/**
 * An electric lock on a lever, tested as the lever leaves an end and not after.
 *
 * @param leavingNormal what it needs to leave N; empty where it is not locked there
 * @param leavingReversed what it needs to leave R; empty where it is not locked there
 */
public record LeverLock(
    String lever, List<Contact> leavingNormal, List<Contact> leavingReversed, Span at) {
  public LeverLock {
    leavingNormal = List.copyOf(leavingNormal);
    leavingReversed = List.copyOf(leavingReversed);
  }
}
