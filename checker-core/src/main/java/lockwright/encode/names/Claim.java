package lockwright.encode.names;

import java.util.List;
import java.util.Optional;
import lockwright.railway.words.Event;

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

  /**
   * The frame is never stuck, because of this certificate.
   *
   * @param ways ways back, besides the single strokes to N
   */
  record Restorable(List<List<Event>> ways, Certificate certificate) implements Claim {
    public Restorable {
      ways = ways.stream().map(List::copyOf).toList();
    }
  }

  /**
   * This run ends where strokes alone do not lead to all levers N, because of this certificate of
   * what they do lead to from there.
   *
   * @param helped the same run, gone on with to all levers N by events of the sections too
   */
  record Stranded(Run run, Certificate noWayBack, Optional<Run> helped) implements Claim {}

  /** Neither was found; the reason names the limit that was met. */
  record Unknown(String reason) implements Claim {}
}
