package lockwright.report.picture;

import com.fasterxml.jackson.databind.JsonNode;

/** A place where tracks meet or end, and where it is drawn. */
final class Node {
  /** What a place is; CUT is where a track is cut in two that cannot be drawn in one. */
  enum Kind {
    JOINT,
    POINTS,
    CROSSING,
    LIMIT,
    SECTION,
    CUT
  }

  final Kind kind;

  /** The name of points, crossing, limit or section; the number of a cut. */
  final String name;

  /** Of points, crossing or section, as in the result; else null. */
  final JsonNode thing;

  /** The line that goes straight through here, or ends here. */
  Line line;

  double x;

  /** Where the author wants it; null if he does not say. */
  Given given;

  Node(Kind kind, String name, JsonNode thing) {
    this.kind = kind;
    this.name = name;
    this.thing = thing;
  }

  /** Whether tracks end here. */
  boolean ends() {
    return kind == Kind.LIMIT || kind == Kind.SECTION || kind == Kind.CUT;
  }

  /** Whether the line goes on to something that is named: a block, or a section out on the line. */
  boolean named() {
    return kind == Kind.LIMIT && (name.equals("block") || name.startsWith("section "));
  }

  /** Whether the line goes on beyond the plan, so that it is drawn to the edge. */
  boolean goesOn() {
    return kind == Kind.SECTION || (kind == Kind.LIMIT && !name.equals("buffer stop"));
  }
}
