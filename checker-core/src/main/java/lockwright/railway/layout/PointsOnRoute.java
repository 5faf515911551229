package lockwright.railway.layout;

/**
 * Points that a route passes, over the leg of this lie, and whether they are passed facing.
 *
 * @param sprung whether a spring holds them normal: passed trailing they may lie as they like, and
 *     facing they are only passed normal, so that nothing is asked of their lie
 */
public record PointsOnRoute(String points, Lie lie, boolean facing, boolean sprung) {
  /** Points that are not sprung. */
  public PointsOnRoute(String points, Lie lie, boolean facing) {
    this(points, lie, facing, false);
  }

  /** Whether no vehicle passes them so, since the spring holds them the other way. */
  boolean barred() {
    return sprung && facing && lie == Lie.REVERSE;
  }
}
