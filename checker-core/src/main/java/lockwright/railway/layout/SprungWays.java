package lockwright.railway.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where an arm cannot lead since sprung points would be passed facing to their reverse leg. */
public final class SprungWays {
  private final Layout layout;
  private final Signal signal;

  /** For each end of a track come to, which sprung points had to be passed so, if any. */
  private final Map<TrackEnd, Optional<String>> come = new HashMap<>();

  private final Set<String> met = new LinkedHashSet<>();

  private SprungWays(Layout layout, Signal signal) {
    this.layout = layout;
    this.signal = signal;
    Deque<TrackEnd> toGo = new ArrayDeque<>();
    Deque<TrackEnd> barred = new ArrayDeque<>();
    onward(signal.stands(), Optional.empty(), toGo, barred);
    while (!toGo.isEmpty() || !barred.isEmpty()) {
      // All that is come to without passing them so goes first.
      TrackEnd enters = toGo.isEmpty() ? barred.remove() : toGo.remove();
      onward(enters.opposite(), come.get(enters), toGo, barred);
    }
  }

  private void onward(
      TrackEnd leaves, Optional<String> by, Deque<TrackEnd> toGo, Deque<TrackEnd> barred) {
    boolean ends =
        signal.arm() != Arm.DISTANT
            && !leaves.equals(signal.stands())
            && Path.endAt(layout, signal.arm(), leaves).isPresent();
    if (ends) {
      return;
    }
    for (Step step : Step.outOf(layout, leaves)) {
      Optional<String> here =
          step.points().filter(PointsOnRoute::barred).map(PointsOnRoute::points);
      if (by.isEmpty()) {
        here.ifPresent(met::add);
      }
      Optional<String> all = by.or(() -> here);
      if (come.putIfAbsent(step.enters(), all) == null) {
        (all.isEmpty() ? toGo : barred).add(step.enters());
      }
    }
  }

  /** The sprung points that an arm leads to facing, in the order in which they are come to. */
  public static List<String> of(Layout layout, Signal signal) {
    return List.copyOf(new SprungWays(layout, signal).met);
  }

  /** Those that alone keep the arm from leading over a track; none, where it does lead there. */
  public static Optional<String> barring(Layout layout, Signal signal, String track) {
    SprungWays ways = new SprungWays(layout, signal);
    List<Optional<String>> there =
        ways.come.entrySet().stream()
            .filter(e -> e.getKey().track().equals(track))
            .map(Map.Entry::getValue)
            .toList();
    return there.stream().anyMatch(Optional::isEmpty)
        ? Optional.empty()
        : there.stream().flatMap(Optional::stream).sorted().findFirst();
  }
}
