package lockwright.report.picture;

import java.util.List;

/**
 * Something that has room kept for it along a piece, above the line or below it.
 *
 * @param from how far its near end is from the end of the level part of the piece; of a name, which
 *     stands between what is at both ends, nothing
 */
record Spot(Piece piece, boolean above, Side near, double from, double width, Object what) {

  /** The name of a track, in lines. */
  record Name(List<String> lines) {}
}
