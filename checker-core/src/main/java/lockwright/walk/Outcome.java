package lockwright.walk;

/** What came of looking for a walk. */
public sealed interface Outcome {
  /** There is one, and none with fewer movements. */
  record Found(Walk walk) implements Outcome {}

  /**
   * There is none, however long.
   *
   * @param states how many were looked at, which are all that matter
   */
  record Never(int states) implements Outcome {}

  /**
   * A limit was met.
   *
   * @param movements there is none of so many movements or fewer; nothing is known of longer ones
   */
  record NotWithin(int movements) implements Outcome {}
}
