package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lockwright.railway.layout.Beyond;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.layout.Signal;

/** The instances of `overlap set` and `overlaps apart`; `docs/meaning.md` 1.11. */
record OverlapInstances(Layout layout, List<Route> routes, List<Conflict> conflicts) {

  List<Requirement> set() {
    return routes.stream()
        .filter(r -> !Beyond.of(layout, r).isEmpty())
        .<Requirement>map(r -> new Requirement.OverlapSet(r, Beyond.of(layout, r)))
        .toList();
  }

  List<Requirement> apart() {
    List<Requirement> found = new ArrayList<>();
    List<Signal> signals = layout.signals();
    for (int i = 0; i < signals.size(); i++) {
      for (int j = i + 1; j < signals.size(); j++) {
        List<Requirement.OverlapsApart.Pair> pairs = pairs(signals.get(i), signals.get(j));
        if (!pairs.isEmpty()) {
          found.add(new Requirement.OverlapsApart(signals.get(i).id(), signals.get(j).id(), pairs));
        }
      }
    }
    return found;
  }

  private List<Requirement.OverlapsApart.Pair> pairs(Signal first, Signal second) {
    List<Requirement.OverlapsApart.Pair> pairs = new ArrayList<>();
    for (Route one : of(first)) {
      for (Route other : of(second)) {
        if (!ahead(one, other)
            && !ahead(other, one)
            && conflicts.stream()
                .noneMatch(c -> c.first().equals(one) && c.second().equals(other))) {
          pair(one, other, pairs);
        }
      }
    }
    return pairs;
  }

  private void pair(Route one, Route other, List<Requirement.OverlapsApart.Pair> pairs) {
    List<Beyond> beyondOne = Beyond.of(layout, one);
    List<Beyond> beyondOther = Beyond.of(layout, other);
    List<Requirement.OverlapsApart.Choice> apart = new ArrayList<>();
    boolean clash = false;
    for (Beyond a : orNone(beyondOne)) {
      for (Beyond b : orNone(beyondOther)) {
        if (Collections.disjoint(things(one, a), things(other, b))) {
          apart.add(new Requirement.OverlapsApart.Choice(a, b));
        } else {
          clash |= together(one, a, other, b);
        }
      }
    }
    if (clash) {
      pairs.add(new Requirement.OverlapsApart.Pair(one, beyondOne, other, beyondOther, apart));
    }
  }

  private List<Route> of(Signal signal) {
    return routes.stream().filter(r -> r.signal().equals(signal.id())).toList();
  }

  /** Whether one route begins at the post where another ends. */
  private static boolean ahead(Route one, Route other) {
    return other.end() instanceof Route.End.AtSignals end && end.signals().contains(one.signal());
  }

  private static List<Beyond> orNone(List<Beyond> overlaps) {
    return overlaps.isEmpty() ? List.of(new Beyond(List.of(), List.of(), List.of())) : overlaps;
  }

  private static Set<String> things(Route route, Beyond beyond) {
    Set<String> things = new HashSet<>();
    Stream.concat(route.tracks().stream(), beyond.tracks().stream())
        .forEach(t -> things.add("track " + t));
    Stream.concat(route.points().stream(), beyond.points().stream())
        .forEach(p -> things.add("points " + p.points()));
    Stream.concat(route.crossings().stream(), beyond.crossings().stream())
        .forEach(c -> things.add("crossing " + c));
    return things;
  }

  /** Whether no points are needed in two positions. */
  private static boolean together(Route one, Beyond a, Route other, Beyond b) {
    Map<String, Lie> lies = new HashMap<>();
    return Stream.of(one.needed(), a.needed(), other.needed(), b.needed())
        .flatMap(List<PointsOnRoute>::stream)
        .allMatch(
            p -> {
              Lie earlier = lies.putIfAbsent(p.points(), p.lie());
              return earlier == null || earlier == p.lie();
            });
  }
}
