package lockwright.proof;

/** One way of searching. Engines are independent: any of them may be left out or run alone. */
public interface Engine {
  /** A short name, for progress and reports. */
  String name();

  /**
   * Adds what can be found to what is known. Decided verdicts stay as they are; a limit leaves a
   * target unknown.
   */
  Knowledge improve(Problem problem, Knowledge known);
}
