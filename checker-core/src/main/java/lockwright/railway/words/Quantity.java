package lockwright.railway.words;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Something that can be said of a box at one moment, by the name that certificates and traces use,
 * and the values that it can take, in order. Which quantities a box has, and how they change, is
 * not said here.
 */
public record Quantity(String key, List<String> values) {
  private static final List<String> POSITIONS = List.of("N", "M", "R");
  private static final List<String> NO_YES = List.of("no", "yes");

  public Quantity {
    values = List.copyOf(values);
  }

  public static Quantity lever(String lever) {
    return new Quantity("lever " + lever, POSITIONS);
  }

  /** The position of points of a ground frame. */
  public static Quantity points(String points) {
    return new Quantity("points " + points, POSITIONS);
  }

  /** Gates with a gate lock: across the road at N, across the line at R. */
  public static Quantity gates(String levelCrossing) {
    return new Quantity("gates " + levelCrossing, POSITIONS);
  }

  /** The rod of points that may break: whole, or where the points stood as it broke. */
  public static Quantity rod(String points) {
    return new Quantity(
        "rod of " + points, List.of("whole", "broken at N", "broken at M", "broken at R"));
  }

  /** For a lever that may not start again before another: what of that is still to come. */
  public static Quantity turn(String lever, String before) {
    return new Quantity(
        "turn of " + lever + " after " + before, List.of("come", "pull awaited", "return awaited"));
  }

  public static Quantity phase(String section) {
    return new Quantity("section " + section + ": phase", List.of("in", "out"));
  }

  public static Quantity tokensIn(String section, String instrument, int tokens) {
    return count("section " + section + ": tokens in " + instrument, tokens);
  }

  public static Quantity tokensOut(String section, int tokens) {
    return count("section " + section + ": tokens out", tokens);
  }

  public static Quantity freshTokens(String section, int tokens) {
    return count("section " + section + ": fresh tokens", tokens);
  }

  public static Quantity plunging(String section, String instrument) {
    return new Quantity("section " + section + ": plunging at " + instrument, NO_YES);
  }

  public static Quantity withdrawal(String section, String instrument) {
    return new Quantity("section " + section + ": withdrawal at " + instrument, NO_YES);
  }

  public static Quantity release(String section) {
    return new Quantity("section " + section + ": release", List.of("locked", "given"));
  }

  /**
   * The lock of a ground frame that tokens of the section release: which kind of token is in it.
   */
  public static Quantity lock(String section, String groundFrame) {
    return new Quantity(
        "section " + section + ": lock of " + groundFrame, List.of("empty", "fresh", "other"));
  }

  public static Quantity irregularWithdrawal(String section) {
    return new Quantity("section " + section + ": irregular withdrawal", List.of("unused", "used"));
  }

  /** Something outside that lever locks and arm controls need. */
  public static Quantity condition(String condition) {
    return new Quantity("condition " + condition, List.of("unmet", "met"));
  }

  private static Quantity count(String key, int most) {
    return new Quantity(key, IntStream.rangeClosed(0, most).mapToObj(Integer::toString).toList());
  }

  /** As a record's, but many times faster before it is compiled well: quantities are map keys. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Quantity o && key.equals(o.key) && values.equals(o.values);
  }

  @Override
  public int hashCode() {
    return key.hashCode();
  }
}
