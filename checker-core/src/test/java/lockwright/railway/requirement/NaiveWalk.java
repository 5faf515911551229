package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Leg;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.TrackEnd;

/**
 * `docs/meaning.md` 1.3 to 1.7 once more, written for the tests and sharing no code with what it
 * checks: a layout is a set of edges from the end where a track is left to the end where the next
 * is entered, all sequences of edges are written down, and those that are routes are picked out.
 * All results are text.
 */
final class NaiveWalk {
  /** From one end to another; over: "", "x x1", "p p2 N facing". */
  record Edge(TrackEnd left, TrackEnd entered, String over, List<String> words) {
    Edge(TrackEnd left, TrackEnd entered, String over) {
      this(left, entered, over, List.of(over.split(" ")));
    }

    String at(int word) {
      return word < words.size() ? words.get(word) : "";
    }

    boolean facing() {
      return at(3).equals("facing");
    }
  }

  record Found(String signal, String name, List<Edge> edges, String end, Set<String> traps) {
    List<String> tracks() {
      return edges.stream().map(e -> e.entered().track()).toList();
    }

    /** "p2 N facing", in order. */
    List<String> points() {
      return edges.stream()
          .map(Edge::over)
          .filter(o -> o.startsWith("p "))
          .map(o -> o.substring(2))
          .toList();
    }

    List<String> crossings() {
      return edges.stream()
          .map(Edge::over)
          .filter(o -> o.startsWith("x "))
          .map(o -> o.substring(2))
          .toList();
    }

    @Override
    public String toString() {
      return name + " of " + signal + ": " + tracks() + points() + crossings() + end + traps;
    }
  }

  private final Layout layout;
  private final List<Edge> edges = new ArrayList<>();
  private final Map<TrackEnd, List<Edge>> onward;
  private final Map<TrackEnd, List<List<Edge>>> sequences = new HashMap<>();
  private final Map<TrackEnd, Map<Arm, String>> endings = new HashMap<>();
  private final List<Found> routes;
  private final List<String> conflicts;

  NaiveWalk(Layout layout) {
    this.layout = layout;
    List<TrackEnd> ends =
        layout.tracks().stream()
            .flatMap(t -> Stream.of(new TrackEnd(t.id(), 0), new TrackEnd(t.id(), 1)))
            .toList();
    for (TrackEnd a : ends) {
      for (TrackEnd b : ends) {
        String over = over(layout.at(a), layout.at(b), b);
        if (over != null) {
          edges.add(new Edge(a, b, over));
        }
      }
    }
    this.onward = edges.stream().collect(Collectors.groupingBy(Edge::left));
    this.routes = findRoutes();
    this.conflicts = findConflicts();
  }

  List<Found> routes() {
    return routes;
  }

  /** The conflicts: "first | second | possible opposed | sorted things shared". */
  List<String> conflicts() {
    return conflicts;
  }

  List<Edge> onward(TrackEnd left) {
    return onward.getOrDefault(left, List.of());
  }

  /** Whether a vehicle that leaves one end comes to the other: over no spring. */
  static boolean leads(Layout layout, TrackEnd from, TrackEnd to) {
    String over = over(layout.at(from), layout.at(to), to);
    return over != null && !barred(layout, new Edge(from, to, over));
  }

  private static boolean barred(Layout layout, Edge edge) {
    return edge.facing() && edge.at(2).equals("R") && isSprung(layout, edge.at(1));
  }

  static boolean isSprung(Layout layout, String points) {
    return layout.points().stream().anyMatch(p -> p.id().equals(points) && p.sprung());
  }

  static String over(Attachment a, Attachment b, TrackEnd to) {
    if (a.equals(new Attachment.Joint(to))) {
      return "";
    }
    if (a instanceof Attachment.AtCrossing x && x.across().equals(to)) {
      return "x " + x.crossing();
    }
    if (a instanceof Attachment.AtPoints p
        && b instanceof Attachment.AtPoints q
        && p.points().equals(q.points())
        && (p.leg() == Leg.TOE) != (q.leg() == Leg.TOE)) {
      Leg leg = p.leg() == Leg.TOE ? q.leg() : p.leg();
      return "p "
          + p.points()
          + (leg == Leg.NORMAL ? " N" : " R")
          + (p.leg() == Leg.TOE ? " facing" : " trailing");
    }
    return null;
  }

  /** Every sequence of edges from an end that enters no track twice, long and short. */
  private List<List<Edge>> sequences(List<Edge> so, TrackEnd left) {
    List<List<Edge>> all = new ArrayList<>();
    for (Edge edge : onward(left)) {
      if (barred(layout, edge)) {
        continue;
      }
      if (so.stream().noneMatch(e -> e.entered().track().equals(edge.entered().track()))) {
        List<Edge> more = Stream.concat(so.stream(), Stream.of(edge)).toList();
        all.add(more);
        all.addAll(sequences(more, edge.entered().opposite()));
      }
    }
    return all;
  }

  /** What an arm's path ends at, at an end; empty text: nothing. */
  private String ending(TrackEnd end, Arm arm) {
    return endings
        .computeIfAbsent(end, e -> new HashMap<>())
        .computeIfAbsent(arm, a -> findEnding(end, a));
  }

  private String findEnding(TrackEnd end, Arm arm) {
    Set<Arm> enders =
        arm == Arm.STOP ? Set.of(Arm.STOP) : Set.of(Arm.STOP, Arm.SHUNTING, Arm.CALLING_ON);
    List<String> ids =
        layout.signals().stream()
            .filter(s -> s.stands().equals(end) && enders.contains(s.arm()))
            .map(Signal::id)
            .toList();
    if (!ids.isEmpty()) {
      return " signals " + ids;
    }
    if (arm != Arm.STOP && layout.limitsOfShunt().contains(end)) {
      return " limit of shunt";
    }
    Attachment at = layout.at(end);
    return at instanceof Attachment.AtLimit l
        ? " " + l.limit()
        : at instanceof Attachment.InSection s ? " section " + s.section() : "";
  }

  /** The paths for an arm's kind from an end, before any `for:`, in order of the ways taken. */
  private List<List<Edge>> paths(TrackEnd post, Arm arm) {
    return sequences.computeIfAbsent(post, p -> sequences(List.of(), p)).stream()
        .filter(
            s -> {
              Edge last = s.get(s.size() - 1);
              return s.stream().filter(e -> ends(e, arm)).findFirst().stream()
                  .anyMatch(e -> e == last);
            })
        .sorted(
            Comparator.comparing(
                (List<Edge> s) ->
                    s.stream()
                        .filter(Edge::facing)
                        .map(e -> e.at(2))
                        .collect(Collectors.joining())))
        .toList();
  }

  private boolean ends(Edge edge, Arm arm) {
    return !ending(edge.entered().opposite(), arm).isEmpty();
  }

  private static boolean admits(Signal signal, List<Edge> path) {
    return signal.ways().isEmpty()
        || path.stream().anyMatch(e -> signal.ways().contains(e.entered().track()));
  }

  private List<Found> findRoutes() {
    List<Found> all = new ArrayList<>();
    for (Signal s : layout.signals()) {
      if (s.arm() == Arm.DISTANT) {
        continue;
      }
      List<List<Edge>> mine =
          paths(s.stands(), s.arm()).stream().filter(p -> admits(s, p)).toList();
      for (List<Edge> path : mine) {
        TrackEnd last = path.get(path.size() - 1).entered();
        long alike =
            mine.stream()
                .filter(p -> p.get(p.size() - 1).entered().track().equals(last.track()))
                .count();
        String by =
            alike == 1
                ? ""
                : path.stream()
                    .filter(Edge::facing)
                    .map(e -> e.at(1) + " " + e.at(2))
                    .collect(Collectors.joining(", ", " by ", ""));
        all.add(
            new Found(
                s.id(),
                s.id() + " to " + last.track() + by,
                path,
                ending(last.opposite(), s.arm()),
                traps(path)));
      }
    }
    return all;
  }

  List<String> notSignalled() {
    List<String> all = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (Signal s : layout.signals()) {
      if (s.arm() == Arm.DISTANT || !done.add(s.stands() + " " + s.arm())) {
        continue;
      }
      List<Signal> there =
          layout.signals().stream()
              .filter(o -> o.stands().equals(s.stands()) && o.arm() == s.arm())
              .toList();
      for (List<Edge> path : paths(s.stands(), s.arm())) {
        if (there.stream().noneMatch(o -> admits(o, path))) {
          Found found = new Found("", "", path, "", Set.of());
          all.add(there.stream().map(Signal::id).toList() + "" + found.tracks() + found.points());
        }
      }
    }
    return all;
  }

  /**
   * Every trap from which a vehicle, let through, could run unhindered into the side of the path.
   */
  private Set<String> traps(List<Edge> path) {
    Set<String> tracks = path.stream().map(e -> e.entered().track()).collect(Collectors.toSet());
    Set<String> passed = path.stream().map(e -> e.at(1)).collect(Collectors.toSet());
    Set<TrackEnd> sides = new HashSet<>();
    for (Edge taken : path) {
      for (Edge edge : edges) {
        if (!taken.over().isEmpty()
            && edge.at(0).equals(taken.at(0))
            && edge.at(1).equals(taken.at(1))) {
          Stream.of(edge.left(), edge.entered())
              .filter(e -> !e.equals(taken.left()) && !e.equals(taken.entered()))
              .forEach(sides::add);
        }
      }
    }
    Set<String> traps = new TreeSet<>();
    for (Edge over : edges) {
      if (over.facing()
          && trap(over)
          && !passed.contains(over.at(1))
          && runsInto(over.entered().opposite(), sides, tracks, passed, Set.of())) {
        traps.add(over.at(1) + " " + (over.at(2).equals("N") ? "R" : "N"));
      }
    }
    return traps;
  }

  private boolean trap(Edge over) {
    return layout.points().stream()
        .anyMatch(p -> p.id().equals(over.at(1)) && p.trap().isPresent());
  }

  private boolean runsInto(
      TrackEnd leaving,
      Set<TrackEnd> sides,
      Set<String> route,
      Set<String> passed,
      Set<TrackEnd> been) {
    boolean halted =
        layout.signals().stream()
            .anyMatch(s -> s.stands().equals(leaving) && s.arm() != Arm.DISTANT);
    if (halted || route.contains(leaving.track()) || been.contains(leaving)) {
      return false;
    }
    if (sides.contains(leaving)) {
      return true;
    }
    Set<TrackEnd> more = new HashSet<>(been);
    more.add(leaving);
    return onward(leaving).stream()
        .filter(e -> !(e.facing() && trap(e) && !passed.contains(e.at(1))))
        .anyMatch(e -> runsInto(e.entered().opposite(), sides, route, passed, more));
  }

  /** Points trailing from which one may run on to the arm and pass no other stop arm on the way. */
  List<String> trailingInRear(Signal arm) {
    Set<String> ids = new HashSet<>();
    edges.stream()
        .filter(e -> !e.over().isEmpty() && e.at(0).equals("p") && !e.facing())
        .filter(e -> comesTo(e, arm.stands(), Set.of()))
        .forEach(e -> ids.add(e.at(1)));
    return layout.points().stream().map(Points::id).filter(ids::contains).toList();
  }

  private boolean comesTo(Edge edge, TrackEnd post, Set<Edge> been) {
    TrackEnd head = edge.entered().opposite();
    if (head.equals(post)) {
      return true;
    }
    Set<Edge> more = new HashSet<>(been);
    return more.add(edge)
        && layout.post(head).stream().noneMatch(s -> s.arm() == Arm.STOP)
        && onward(head).stream().anyMatch(e -> comesTo(e, post, more));
  }

  private static boolean opposed(Found a, Found b) {
    return a.edges().stream()
        .allMatch(
            e ->
                b.edges().stream()
                    .noneMatch(
                        f ->
                            f.entered().equals(e.entered())
                                || !e.over().isEmpty() && f.over().equals(e.over())
                                || e.at(0).equals("x") && f.at(1).equals(e.at(1))));
  }

  private List<String> findConflicts() {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < routes.size(); i++) {
      for (int j = i + 1; j < routes.size(); j++) {
        Found a = routes.get(i);
        Found b = routes.get(j);
        Set<String> shared = shared(a, b);
        if (!a.signal().equals(b.signal()) && !shared.isEmpty()) {
          boolean possible =
              shared.stream().noneMatch(s -> s.endsWith(" and R)") || s.endsWith(" and N)"));
          boolean twoLegs = shared.stream().anyMatch(s -> s.endsWith(" (sprung; by both legs)"));
          String opposed = possible && !twoLegs && opposed(a, b) ? " opposed" : "";
          all.add(a.name() + " | " + b.name() + " | " + possible + opposed + " | " + shared);
        }
      }
    }
    return all;
  }

  private Set<String> shared(Found a, Found b) {
    Set<String> shared = new TreeSet<>();
    for (Edge e : a.edges()) {
      for (Edge f : b.edges()) {
        if (e.entered().track().equals(f.entered().track())) {
          shared.add("track " + e.entered().track());
        }
        if (!e.over().isEmpty() && e.at(0).equals(f.at(0)) && e.at(1).equals(f.at(1))) {
          shared.add(
              e.at(0).equals("x")
                  ? "crossing " + e.at(1)
                  : "points "
                      + e.at(1)
                      + (e.at(2).equals(f.at(2))
                          ? ""
                          : isSprung(layout, e.at(1))
                              ? " (sprung; by both legs)"
                              : " (" + e.at(2) + " and " + f.at(2) + ")"));
        }
      }
    }
    Edge first = a.edges().get(0);
    Edge other = b.edges().get(0);
    if (first.over().isEmpty()
        && first.left().equals(other.entered())
        && first.entered().equals(other.left())) {
      shared.add("joint " + first.left().track() + " + " + other.left().track() + " (opposed)");
    }
    return shared;
  }

  /** One text for each distant: "id posts facing". */
  List<String> distants() {
    return layout.signals().stream()
        .filter(s -> s.arm() == Arm.DISTANT)
        .map(this::distant)
        .toList();
  }

  private String distant(Signal signal) {
    List<Edge> path = undiverted(signal, List.of());
    List<TrackEnd> heads =
        Stream.concat(Stream.of(signal.stands()), path.stream().map(e -> e.entered().opposite()))
            .toList();
    List<Integer> withStop = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      TrackEnd head = heads.get(i);
      if (layout.signals().stream().anyMatch(s -> s.arm() == Arm.STOP && s.stands().equals(head))) {
        withStop.add(i);
      }
    }
    List<List<String>> posts = new ArrayList<>();
    List<List<String>> beyond = new ArrayList<>();
    int far = 0;
    for (int n = 0; n < withStop.size(); n++) {
      int from = withStop.get(n);
      int to = n + 1 < withStop.size() ? withStop.get(n + 1) : path.size();
      List<String> ids =
          layout.signals().stream()
              .filter(s -> s.arm() == Arm.STOP && s.stands().equals(heads.get(from)))
              .filter(s -> admits(s, path.subList(from, to)))
              .map(Signal::id)
              .toList();
      posts.add(ids);
      beyond.add(path.subList(from, to).stream().map(e -> e.entered().track()).toList());
      far = from;
    }
    List<String> facing =
        path.subList(0, far).stream()
            .filter(Edge::facing)
            .map(e -> e.at(1) + " " + e.at(2))
            .toList();
    return signal.id() + " " + posts + beyond + facing;
  }

  private List<Edge> undiverted(Signal signal, List<Edge> so) {
    TrackEnd head = so.isEmpty() ? signal.stands() : so.get(so.size() - 1).entered().opposite();
    Set<String> passed =
        so.stream().map(e -> e.entered().track()).collect(Collectors.toCollection(HashSet::new));
    passed.add(signal.stands().track());
    List<Edge> on = onward(head).stream().filter(e -> !barred(layout, e)).toList();
    Edge normal =
        on.stream().filter(e -> !e.at(2).equals("R") || !e.facing()).findFirst().orElse(null);
    Edge reverse =
        on.stream().filter(e -> e.at(2).equals("R") && e.facing()).findFirst().orElse(null);
    Set<String> byNormal = ledTo(normal, signal, passed);
    Set<String> byReverse = ledTo(reverse, signal, passed);
    Edge taken = !byNormal.equals(byReverse) && byReverse.containsAll(byNormal) ? reverse : normal;
    if (taken == null || passed.contains(taken.entered().track())) {
      return so;
    }
    return undiverted(signal, Stream.concat(so.stream(), Stream.of(taken)).toList());
  }

  /**
   * The tracks named that come after an edge: all edges that follow one another, until none is new.
   */
  private Set<String> ledTo(Edge first, Signal signal, Set<String> passed) {
    Set<Edge> after =
        Stream.ofNullable(first)
            .filter(e -> !passed.contains(e.entered().track()))
            .collect(Collectors.toCollection(HashSet::new));
    int size = -1;
    while (after.size() != size) {
      size = after.size();
      List<Edge> next =
          edges.stream()
              .filter(e -> !passed.contains(e.entered().track()) && !barred(layout, e))
              .filter(e -> after.stream().anyMatch(b -> b.entered().opposite().equals(e.left())))
              .toList();
      after.addAll(next);
    }
    return after.stream()
        .map(e -> e.entered().track())
        .filter(signal.ways()::contains)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
