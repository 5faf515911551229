package lockwright.report;

import lockwright.railway.frame.Lever;

/** What is done with a lever, in words: "pull 5 West points", "push 7", "replace 5". */
public final class LeverWords {
  private static final String NORMAL = "N";
  private static final String PART_WAY = "M";

  private LeverWords() {}

  /**
   * A movement.
   *
   * @param lever its id; of a push-pull lever the way
   * @param label perhaps empty
   * @param from N, M or R
   * @param to N, M or R
   */
  public static String of(String lever, String label, String from, String to) {
    boolean over = from.equals(NORMAL) || from.equals(PART_WAY) && !to.equals(NORMAL);
    String named = Lever.number(lever) + (label.isEmpty() ? "" : " " + label);
    String far =
        to.equals(PART_WAY) ? " part-way" : from.equals(PART_WAY) ? " the rest of the way" : "";
    return isWay(lever) && !over
        ? "put " + named + " back" + far + " to the middle"
        : verb(lever, over) + " " + named + far;
  }

  /** Whether the id is of one way of a push-pull lever. */
  public static boolean isWay(String lever) {
    return Lever.otherWay(lever).isPresent();
  }

  /** The number of the lever, without the way. */
  public static String number(String lever) {
    return Lever.number(lever);
  }

  /** "pull", "push" or "replace"; of a push-pull lever that comes back, "put back". */
  public static String verb(String lever, boolean over) {
    if (over) {
      return lever.endsWith(Lever.PUSH) ? "push" : "pull";
    }
    return isWay(lever) ? "put back" : "replace";
  }
}
