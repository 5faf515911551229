package lockwright.railway.frame;

/** How a lever, or points of a ground frame, stands: normal, part-way, reversed. */
public enum Position {
  N,
  M,
  R
}
