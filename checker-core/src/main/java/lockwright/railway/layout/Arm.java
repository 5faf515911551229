package lockwright.railway.layout;

/** The kinds of arm; `docs/meaning.md` 1.2. */
public enum Arm {
  STOP,
  DISTANT,
  SHUNTING,
  CALLING_ON;

  /** Whether the arm may be cleared for a passenger train. */
  public boolean running() {
    return this == STOP || this == CALLING_ON;
  }

  /** Whether the arm is a shunting or calling-on arm. */
  public boolean subsidiary() {
    return this == SHUNTING || this == CALLING_ON;
  }
}
