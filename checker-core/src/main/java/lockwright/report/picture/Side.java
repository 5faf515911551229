package lockwright.report.picture;

/** An end of a piece of line as drawn. */
enum Side {
  LEFT,
  RIGHT;

  Side other() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /** +1 to the right, -1 to the left. */
  int sign() {
    return this == RIGHT ? 1 : -1;
  }
}
