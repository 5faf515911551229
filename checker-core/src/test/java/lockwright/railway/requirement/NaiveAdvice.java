package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.Points;

/**
 * `docs/meaning.md` 6.2 once more, for the tests: what each route cannot do without is written down
 * as levers and their ends, "7 R", and all is said of these.
 */
final class NaiveAdvice {
  private static final Pattern FLANK =
      Pattern.compile("(.*) at (?:points|crossing) [^\\[]*\\[([^]]*)\\]\\[([^]]*)\\]\\[[^]]*\\]");

  private final NaiveWalk walk;
  private final Layout layout;
  private final Frame frame;
  private final List<NaiveWalk.Found> routes;
  private final Set<String> flanks = new TreeSet<>();
  private final Map<String, Set<String>> needed = new HashMap<>();
  private final Map<String, String> conflicts = new HashMap<>();

  /**
   * @param instances among others those of `flank protected`, as {@link NaiveFlank} has them
   */
  NaiveAdvice(NaiveWalk walk, Layout layout, Frame frame, List<String> instances) {
    this.walk = walk;
    this.layout = layout;
    this.frame = frame;
    this.routes = walk.routes();
    for (String conflict : walk.conflicts()) {
      String[] parts = conflict.split(" \\| ");
      conflicts.put(parts[0] + " | " + parts[1], parts[2]);
      conflicts.put(parts[1] + " | " + parts[0], parts[2]);
    }
    for (String instance : instances) {
      if (!instance.startsWith("flank protected: ")) {
        continue;
      }
      int from = instance.indexOf('[');
      // Between two paths there is ", ", and so is there within one, but never after "]".
      flanks.addAll(
          List.of(instance.substring(from + 1, instance.length() - 1).split("(?<=\\]), ")));
    }
  }

  /** "points to points: points p1 N, points p2 and p3 R [1 to a | 2 to b, ...]". */
  List<String> instances() {
    List<String> ends = new ArrayList<>();
    for (Points p : layout.points()) {
      for (Lever l : frame.levers()) {
        if (l.work() instanceof Work.OfPoints w
            && w.points().contains(p.id())
            && !ends.contains(l.id() + " N")) {
          ends.add(l.id() + " N");
          ends.add(l.id() + " R");
        }
      }
    }
    List<List<String>> pairs = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      for (int j = i + 1; j < ends.size(); j++) {
        String a = ends.get(i);
        String b = ends.get(j);
        boolean normal = a.endsWith("N") && b.endsWith("N");
        boolean ways =
            a.endsWith("R")
                && b.endsWith("R")
                && Set.of(a, b).stream().map(e -> e.split("-")[0]).distinct().count() == 1;
        if (!lever(a).equals(lever(b))
            && !normal
            && !ways
            && !meetings(a, b).isEmpty()
            && heldApart(a, b)) {
          pairs.add(List.of(a, b));
        }
      }
    }
    List<String> all = new ArrayList<>();
    for (List<String> pair : pairs) {
      if (pairs.stream().noneMatch(other -> tooMuch(pair, other))) {
        String a = pair.get(0);
        String b = pair.get(1);
        all.add("points to points: " + words(a) + ", " + words(b) + " " + meetings(a, b));
      }
    }
    return all;
  }

  private boolean tooMuch(List<String> pair, List<String> other) {
    for (String held : pair) {
      for (String too : other) {
        if (lever(held).equals(lever(too)) && !held.equals(too)) {
          String rest = pair.get(1 - pair.indexOf(held));
          String more = other.get(1 - other.indexOf(too));
          boolean apart =
              lever(rest).equals(lever(more)) ? !rest.equals(more) : heldApart(rest, more);
          if (!apart) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private Set<String> meetings(String a, String b) {
    Set<String> all = new TreeSet<>();
    for (String conflict : walk.conflicts()) {
      String[] parts = conflict.split(" \\| ");
      NaiveWalk.Found one = route(parts[0]);
      NaiveWalk.Found other = route(parts[1]);
      Set<String> passed = new HashSet<>(passes(one));
      passed.addAll(passes(other));
      boolean twoWays = passed.stream().anyMatch(e -> passed.contains(turned(e)));
      if (parts[2].startsWith("true")
          && !twoWays
          && (passes(one).contains(a) && passes(other).contains(b)
              || passes(one).contains(b) && passes(other).contains(a))) {
        all.add(parts[0] + " | " + parts[1]);
      }
    }
    return all;
  }

  private boolean heldApart(String a, String b) {
    for (NaiveWalk.Found one : routes) {
      for (NaiveWalk.Found other : routes) {
        if (needs(one).contains(a) && needs(other).contains(b) && together(one, other)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean together(NaiveWalk.Found one, NaiveWalk.Found other) {
    if (one.signal().equals(other.signal())) {
      return one.name().equals(other.name());
    }
    String conflict = conflicts.get(one.name() + " | " + other.name());
    return conflict == null
        || conflict.endsWith(" opposed")
            && frame.levers().stream()
                .anyMatch(
                    l ->
                        l.work() instanceof Work.OfClosing c
                            && c.signals().contains(one.signal())
                            && c.signals().contains(other.signal()));
  }

  private Set<String> needs(NaiveWalk.Found route) {
    return needed.computeIfAbsent(route.name(), name -> findNeeds(route));
  }

  private Set<String> findNeeds(NaiveWalk.Found route) {
    Set<String> all = passes(route);
    route.traps().forEach(t -> all.addAll(end(t)));
    Set<String> overlaps = null;
    for (List<NaiveWalk.Edge> overlap : new NaiveOverlaps(walk, layout).beyond(route)) {
      Set<String> its = new HashSet<>();
      overlap.forEach(e -> its.addAll(e.at(0).equals("p") ? end(e.over().substring(2)) : Set.of()));
      if (overlaps == null) {
        overlaps = its;
      } else {
        overlaps.retainAll(its);
      }
    }
    all.addAll(overlaps == null ? Set.of() : overlaps);
    for (String flank : flanks) {
      Matcher path = FLANK.matcher(flank);
      if (path.matches()
          && path.group(1).equals(route.name())
          && path.group(3).isEmpty()
          && !path.group(2).isEmpty()) {
        List<Set<String>> away =
            List.of(path.group(2).split(", ")).stream().map(this::end).toList();
        Set<String> distinct = away.stream().flatMap(Set::stream).collect(Collectors.toSet());
        if (away.stream().noneMatch(Set::isEmpty) && distinct.size() == 1) {
          all.addAll(distinct);
        }
      }
    }
    return all;
  }

  private Set<String> passes(NaiveWalk.Found route) {
    return route.points().stream()
        .flatMap(p -> end(p).stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The lever of "p3 N facing" or "p3 N", and its end; none for points that no lever works. */
  private Set<String> end(String points) {
    String[] words = points.split(" ");
    for (Lever l : frame.levers()) {
      if (l.work() instanceof Work.OfPoints w && w.points().contains(words[0])) {
        return Set.of(l.id() + " " + words[1]);
      }
    }
    return Set.of();
  }

  private NaiveWalk.Found route(String name) {
    return routes.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  private static String lever(String end) {
    return end.split(" ")[0];
  }

  private static String turned(String end) {
    return lever(end) + (end.endsWith("N") ? " R" : " N");
  }

  private String words(String end) {
    List<String> points = new ArrayList<>();
    for (Points p : layout.points()) {
      if (end(p.id() + " N").contains(lever(end) + " N")) {
        points.add(p.id());
      }
    }
    return "points " + String.join(" and ", points) + end.substring(end.length() - 2);
  }
}
