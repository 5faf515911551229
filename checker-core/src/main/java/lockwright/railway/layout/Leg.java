package lockwright.railway.layout;

/** The three ends of points. */
public enum Leg {
  TOE,
  NORMAL,
  REVERSE
}
