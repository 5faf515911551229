package lockwright.railway.layout;

/** Points that a route passes, how they must lie, and whether they are passed facing. */
public record PointsOnRoute(String points, Lie lie, boolean facing) {}
