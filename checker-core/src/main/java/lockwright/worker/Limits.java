package lockwright.worker;

/**
 * What a search may use.
 *
 * @param seconds of wall-clock time; when they are over, the search is broken off
 * @param effort the solver's own measure for one question, the same on every machine; 0 for no
 *     limit
 * @param depth the longest trace looked for before the complete engine is asked
 */
public record Limits(int seconds, int effort, int depth) {
  public Limits {
    if (seconds < 1 || effort < 0 || depth < 0) {
      throw new IllegalArgumentException(
          "seconds "
              + seconds
              + " (1 or more), effort "
              + effort
              + " (0 or more), depth "
              + depth
              + " (0 or more)");
    }
  }

  /** Five minutes, no limit of effort, traces of 16 movements. */
  public static Limits usual() {
    return new Limits(300, 0, 16);
  }
}
