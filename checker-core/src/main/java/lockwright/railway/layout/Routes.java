package lockwright.railway.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where the arms of a layout can lead, and where none can; `docs/meaning.md` 1.3. */
public final class Routes {
  private Routes() {}

  /** All routes, in order of the signals in the plan, then of the points passed. */
  public static List<Route> of(Layout layout) {
    List<Route> routes = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      if (signal.arm() != Arm.DISTANT) {
        List<Path> admitted =
            Path.from(layout, signal.stands(), signal.arm()).stream()
                .filter(p -> p.passesOneOf(signal.ways()))
                .toList();
        admitted.forEach(p -> routes.add(route(layout, signal, p, admitted)));
      }
    }
    return routes;
  }

  /**
   * The paths from a post that no arm of one kind there admits, in order of the first such arm,
   * then of the points passed.
   */
  public static List<NotSignalled> missing(Layout layout) {
    List<NotSignalled> missing = new ArrayList<>();
    for (Signal signal : layout.signals()) {
      List<Signal> alike =
          layout.post(signal.stands()).stream().filter(s -> s.arm() == signal.arm()).toList();
      if (signal.arm() != Arm.DISTANT && alike.get(0).equals(signal)) {
        Path.from(layout, signal.stands(), signal.arm()).stream()
            .filter(p -> alike.stream().noneMatch(s -> p.passesOneOf(s.ways())))
            .map(p -> new NotSignalled(ids(alike), p.tracks(), p.points()))
            .forEach(missing::add);
      }
    }
    return missing;
  }

  private static Route route(Layout layout, Signal signal, Path path, List<Path> admitted) {
    return new Route(
        name(signal, path, admitted),
        signal.id(),
        path.tracks(),
        path.points(),
        path.crossings(),
        path.end(),
        Flank.of(layout, path));
  }

  /** Two paths of an arm differ in points passed facing, so these tell them apart. */
  private static String name(Signal signal, Path path, List<Path> admitted) {
    String name = signal.id() + " to " + last(path);
    if (admitted.stream().filter(p -> last(p).equals(last(path))).count() == 1) {
      return name;
    }
    return path.points().stream()
        .filter(PointsOnRoute::facing)
        .map(p -> p.points() + (p.lie() == Lie.NORMAL ? " N" : " R"))
        .collect(Collectors.joining(", ", name + " by ", ""));
  }

  private static String last(Path path) {
    return path.tracks().get(path.tracks().size() - 1);
  }

  private static List<String> ids(List<Signal> signals) {
    return signals.stream().map(Signal::id).toList();
  }
}
