package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Overlap;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.TrackEnd;

/** `docs/meaning.md` 1.11 once more, for the tests, over the edges of a {@link NaiveWalk}. */
final class NaiveOverlaps {
  private final NaiveWalk walk;
  private final Layout layout;

  NaiveOverlaps(NaiveWalk walk, Layout layout) {
    this.walk = walk;
    this.layout = layout;
  }

  /** "overlap set: route 1 to a [...]", then "overlaps apart: signals 1 and 2 [...]". */
  List<String> instances() {
    List<String> all = new ArrayList<>();
    for (NaiveWalk.Found r : walk.routes()) {
      if (!beyond(r).isEmpty()) {
        Set<String> words = beyond(r).stream().map(this::words).collect(sorted());
        all.add("overlap set: route " + r.name() + " " + words);
      }
    }
    List<Signal> signals = layout.signals();
    for (Signal s : signals) {
      for (Signal t : signals.subList(signals.indexOf(s) + 1, signals.size())) {
        Set<String> pairs = new TreeSet<>();
        for (NaiveWalk.Found a : walk.routes()) {
          for (NaiveWalk.Found b : walk.routes()) {
            if (a.signal().equals(s.id()) && b.signal().equals(t.id())) {
              pair(a, b, pairs);
            }
          }
        }
        if (!pairs.isEmpty()) {
          all.add("overlaps apart: signals " + s.id() + " and " + t.id() + " " + pairs);
        }
      }
    }
    return all;
  }

  private void pair(NaiveWalk.Found a, NaiveWalk.Found b, Set<String> pairs) {
    boolean conflict =
        walk.conflicts().stream().anyMatch(c -> c.startsWith(a.name() + " | " + b.name() + " | "));
    if (conflict || follows(a, b) || follows(b, a)) {
      return;
    }
    Set<String> apart = new TreeSet<>();
    boolean meet = false;
    for (List<NaiveWalk.Edge> x : choices(a)) {
      for (List<NaiveWalk.Edge> y : choices(b)) {
        List<NaiveWalk.Edge> one = Stream.concat(a.edges().stream(), x.stream()).toList();
        List<NaiveWalk.Edge> other = Stream.concat(b.edges().stream(), y.stream()).toList();
        if (one.stream().noneMatch(e -> other.stream().anyMatch(f -> share(e, f)))) {
          apart.add(words(x) + " and " + words(y));
        } else if (possible(Stream.concat(one.stream(), other.stream()).toList())) {
          meet = true;
        }
      }
    }
    if (meet) {
      pairs.add(a.name() + " | " + b.name() + " | " + apart);
    }
  }

  private static boolean share(NaiveWalk.Edge e, NaiveWalk.Edge f) {
    return e.entered().track().equals(f.entered().track())
        || !e.over().isEmpty() && e.at(0).equals(f.at(0)) && e.at(1).equals(f.at(1));
  }

  private boolean possible(List<NaiveWalk.Edge> both) {
    List<NaiveWalk.Edge> edges =
        both.stream().filter(e -> !NaiveWalk.isSprung(layout, e.at(1))).toList();
    Map<String, String> lies = new HashMap<>();
    edges.stream().filter(e -> e.at(0).equals("p")).forEach(e -> lies.put(e.at(1), e.at(2)));
    return edges.stream()
        .filter(e -> e.at(0).equals("p"))
        .allMatch(e -> lies.get(e.at(1)).equals(e.at(2)));
  }

  /** The second begins at the post where the first ends. */
  private boolean follows(NaiveWalk.Found first, NaiveWalk.Found second) {
    TrackEnd end = first.edges().get(first.edges().size() - 1).entered().opposite();
    return first.end().startsWith(" signals")
        && first
            .end()
            .substring(" signals [".length(), first.end().length() - 1)
            .contains(second.signal())
        && layout.signal(second.signal()).stands().equals(end);
  }

  private List<List<NaiveWalk.Edge>> choices(NaiveWalk.Found route) {
    return beyond(route).isEmpty() ? List.of(List.of()) : beyond(route);
  }

  List<List<NaiveWalk.Edge>> beyond(NaiveWalk.Found route) {
    List<List<NaiveWalk.Edge>> all = new ArrayList<>();
    TrackEnd end = route.edges().get(route.edges().size() - 1).entered().opposite();
    if (layout.signal(route.signal()).arm() == Arm.STOP) {
      for (Overlap overlap : layout.overlaps()) {
        if (layout.signal(overlap.signal()).stands().equals(end)) {
          List<NaiveWalk.Edge> edges = new ArrayList<>();
          TrackEnd at = end;
          for (String track : overlap.tracks()) {
            NaiveWalk.Edge next =
                walk.onward(at).stream()
                    .filter(e -> e.entered().track().equals(track))
                    .min(Comparator.comparing(e -> e.at(2))) // Normal, where both legs lead there.
                    .orElseThrow();
            edges.add(next);
            at = next.entered().opposite();
          }
          all.add(edges);
        }
      }
    }
    return all;
  }

  private String words(List<NaiveWalk.Edge> overlap) {
    return overlap.stream().map(e -> e.entered().track()).toList()
        + ""
        + overlap.stream()
            .filter(e -> e.at(0).equals("p"))
            .map(e -> e.at(1) + " " + e.at(2))
            .toList()
        + overlap.stream().filter(e -> e.at(0).equals("x")).map(e -> e.at(1)).toList();
  }

  private static java.util.stream.Collector<String, ?, TreeSet<String>> sorted() {
    return Collectors.toCollection(TreeSet::new);
  }
}
