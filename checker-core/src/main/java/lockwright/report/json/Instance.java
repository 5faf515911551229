package lockwright.report.json;

import java.util.List;

/**
 * A requirement instance and its verdict. What does not go with the verdict is null, and not
 * written.
 *
 * @param kind "safety" or "possibility"
 * @param decidedBy the engine
 * @param proof for the verdicts proved, empty and impossible
 * @param sequence for the verdicts broken and shown, but where the frame can be restored
 * @param restoring for both of these verdicts on whether the frame can be restored
 * @param reason for the verdict undecided
 * @param assumptions the ids of those that a proof or a possibility shown rests on
 * @param expectation if its author expects or waives something
 * @param apart of points to points: the points, and the routes that meet
 * @param asked if it would be advice, had its author not asked for it
 */
record Instance(
    String id,
    String name,
    String subject,
    String kind,
    Concerns concerns,
    String verdict,
    String decidedBy,
    Proof proof,
    Sequence sequence,
    Restoring restoring,
    String reason,
    List<String> assumptions,
    ExpectationPart expectation,
    Apart apart,
    AskedFor asked) {

  /** Points that should not lie so together: two lots, and the pairs of routes that meet. */
  record Apart(List<Lying> lies, List<Meeting> meetings) {}

  /**
   * Points of one lever.
   *
   * @param lie "normal" or "reverse"
   */
  record Lying(List<String> points, String lie) {}

  /**
   * Two routes in conflict.
   *
   * @param where what they share, in words
   */
  record Meeting(String first, String second, String where) {}

  record AskedFor(String reason, Place at) {}

  /** The same, of an advice: with one of its words in place of the verdict. */
  Instance advised(String word) {
    return new Instance(
        id,
        name,
        subject,
        kind,
        concerns,
        word,
        decidedBy,
        proof,
        sequence,
        restoring,
        reason,
        assumptions,
        expectation,
        apart,
        asked);
  }

  /**
   * @param certificate by its digest
   * @param witnesses one for each subject, for the verdict proved
   * @param never one or more, for the verdict empty
   */
  record Proof(
      String certificate, List<String> checkedBy, List<Witness> witnesses, List<Absent> never) {}

  /**
   * @param certificate by its digest: that the frame is never stuck; or that it is not restored
   *     from where the sequence ends
   * @param ways for the verdict shown: the ways back besides single strokes, each in its movements
   * @param helped for the verdict broken: the sequence gone on with, also at instruments, to all
   *     levers N
   */
  record Restoring(
      String certificate, List<String> checkedBy, List<List<EventPart>> ways, String helped) {}

  /** A subject, and the run that comes to it. */
  record Witness(String subject, String decidedBy, String run) {}

  /** A subject that never comes about. */
  record Absent(String subject, String decidedBy, String certificate, List<String> checkedBy) {}

  /**
   * @param shortest whether the search says that none is shorter; that is not audited
   * @param breaksBy for a breach: "state", or "movement" if the last movement is the forbidden one
   * @param missing for a breach, if a draft was found
   */
  record Sequence(String run, boolean shortest, String breaksBy, Missing missing) {}

  /**
   * A draft of what may be missing.
   *
   * @param entry for a requirement that locking can keep
   * @param stopsAt the movement that would not be free, from 1; 0 for the beginning
   */
  record Missing(String words, EntryPart entry, int stopsAt) {}
}
