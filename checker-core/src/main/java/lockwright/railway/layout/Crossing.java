package lockwright.railway.layout;

import java.util.List;
import lockwright.spec.Span;

/** Two ways that cross on the level and share the crossing: the tracks at the ends of each way. */
public record Crossing(
    String id, String label, List<String> firstWay, List<String> secondWay, Span at) {}
