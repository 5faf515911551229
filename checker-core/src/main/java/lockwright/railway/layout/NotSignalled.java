package lockwright.railway.layout;

import java.util.List;

/** A path from a post that no arm of one kind there admits; listed in the read-back. */
public record NotSignalled(List<String> signals, List<String> tracks, List<PointsOnRoute> points) {}
