package lockwright.railway.layout;

/** How points lie when fully home: for their normal or for their reverse leg. */
public enum Lie {
  NORMAL,
  REVERSE;

  public Lie other() {
    return this == NORMAL ? REVERSE : NORMAL;
  }
}
