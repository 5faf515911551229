package lockwright.railway.layout;

/** Points on a flank path, and the lie in which they lead a vehicle away from the route. */
public record FlankPoints(String points, Lie lie) {}
