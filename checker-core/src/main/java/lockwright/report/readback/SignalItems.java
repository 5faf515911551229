package lockwright.report.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.FlankTrap;
import lockwright.railway.layout.NotSignalled;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.SprungWays;

/** Each signal, its routes or what a distant speaks for, and the paths that are not signalled. */
final class SignalItems {
  private final Box box;
  private final List<Item> items = new ArrayList<>();

  private SignalItems(Box box) {
    this.box = box;
  }

  static List<Item> of(Box box) {
    SignalItems all = new SignalItems(box);
    box.layout().signals().forEach(all::signal);
    box.notSignalled().forEach(all::notSignalled);
    return all.items;
  }

  private void signal(Signal signal) {
    add(signal, "arm", Words.arm(signal.arm()) + PlanItems.label(signal.id(), signal.label()));
    add(signal, "stands at", signal.stands().track() + " > " + signal.into() + alsoThere(signal));
    List<String> levers = box.frame().giving(signal.id()).stream().map(Lever::id).toList();
    String several =
        levers.size() < 2
            ? ""
            : box.frame().slotted(signal.id())
                ? ": slotted, off only while all are over"
                : ": each for some of its routes, off while one is over";
    String given = levers.isEmpty() ? "none" : Words.list(levers) + several;
    add(
        signal,
        levers.size() > 1 ? "levers" : "lever",
        signal.fixed() ? "none: fixed, always on" : given);
    add(signal, "for", signal.ways().isEmpty() ? "all ways" : Words.list(signal.ways()));
    if (signal.arm() == Arm.DISTANT) {
      box.distantPaths().stream()
          .filter(p -> p.distant().equals(signal.id()))
          .forEach(p -> distant(signal, p));
      return;
    }
    List<Route> routes = box.routesOf(signal.id());
    if (routes.isEmpty()) {
      add(signal, "routes", "NONE: the arm leads nowhere, and nothing is checked of it");
    }
    SprungWays.of(box.layout(), signal)
        .forEach(
            p ->
                add(
                    signal,
                    "no route by",
                    "points " + p + " R: they are sprung, and are not passed facing to reverse"));
    add(signal, "conflicts with", Words.list(ConflictItems.with(box, signal.id())));
    routes.forEach(r -> route(signal, r));
  }

  private String alsoThere(Signal signal) {
    List<String> others =
        box.layout().post(signal.stands()).stream()
            .map(Signal::id)
            .filter(id -> !id.equals(signal.id()))
            .toList();
    return others.isEmpty() ? "" : ", on one post with " + Words.list(others);
  }

  private void distant(Signal signal, DistantPath path) {
    add(
        signal,
        "speaks for",
        path.posts().isEmpty()
            ? "NO STOP SIGNAL: never to be off"
            : path.posts().stream()
                .map(
                    arms ->
                        arms.isEmpty() ? "NONE THAT ADMITS ITS PATH" : String.join(" or ", arms))
                .collect(Collectors.joining(", then ", "signal ", "")));
    // 2.3: a distant asks no bolt of sprung points.
    path.facing().forEach(p -> points(signal.id(), "signal", p, !signal.fixed() && !p.sprung()));
  }

  private void route(Signal signal, Route route) {
    items.add(new Item("route", route.name(), "passes", Words.list(route.tracks())));
    if (box.frame().giving(signal.id()).size() > 1) {
      String levers = Words.list(box.giving(route).stream().map(Lever::id).toList());
      items.add(new Item("route", route.name(), "levers", levers));
    }
    route.points().forEach(p -> points(route.name(), "route", p, signal.arm().running()));
    route.crossings().stream()
        .distinct()
        .forEach(c -> items.add(new Item("route", route.name(), "crossing", c)));
    for (FlankTrap trap : route.flankTraps()) {
      String lie = Words.lie(trap.lie()) + ", for the trap";
      items.add(new Item("route", route.name(), "flank trap " + trap.points(), lie));
    }
    items.add(new Item("route", route.name(), "ends at", Words.end(route.end())));
    for (Beyond beyond : Beyond.of(box.layout(), route)) {
      items.add(new Item("route", route.name(), "overlap", Words.list(beyond.tracks())));
      beyond.points().forEach(p -> overlap(route, p));
    }
  }

  private void overlap(Route route, PointsOnRoute passed) {
    items.add(
        new Item(
            "route", route.name(), "overlap, points " + passed.points(), Words.passed(passed)));
  }

  private void points(String name, String kind, PointsOnRoute passed, boolean running) {
    boolean bolted = running && passed.facing() && onPassengerLine(passed.points());
    String bolt = bolted ? ", on a passenger line: must be bolted" : "";
    items.add(new Item(kind, name, "points " + passed.points(), Words.passed(passed) + bolt));
  }

  private boolean onPassengerLine(String points) {
    return box.layout().track(box.layout().points(points).toe()).passenger();
  }

  private void notSignalled(NotSignalled path) {
    String points =
        path.points().stream()
            .map(p -> p.points() + " " + Words.lie(p.lie()))
            .collect(Collectors.joining(", "));
    items.add(
        new Item(
            "paths not signalled",
            "",
            "past " + String.join(", ", path.signals()),
            Words.list(path.tracks()) + (points.isEmpty() ? "" : "; by points " + points)));
  }

  private void add(Signal signal, String what, String value) {
    items.add(new Item("signal", signal.id(), what, value));
  }
}
