package lockwright.report.json;

import lockwright.railway.layout.Conflict;

/**
 * Two conflicting routes, by their names, and what they share, in words.
 *
 * @param canLieTogether whether they need no points in two positions
 * @param opposed whether they can, and pass all that they share in opposite directions
 */
record ConflictPart(
    String first, String second, String reason, boolean canLieTogether, boolean opposed) {
  static ConflictPart of(Conflict conflict) {
    return new ConflictPart(
        conflict.first().name(),
        conflict.second().name(),
        conflict.reason(),
        conflict.possible(),
        conflict.opposed());
  }
}
