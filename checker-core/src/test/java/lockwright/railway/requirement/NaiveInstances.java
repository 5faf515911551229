package lockwright.railway.requirement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.Layout;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Signal;
import lockwright.railway.section.Section;

/** The table of `docs/meaning.md` 6 once more, for the tests: each instance as a line of text. */
final class NaiveInstances {
  private NaiveInstances() {}

  static List<String> of(NaiveWalk walk, Layout layout, Frame frame, List<Section> sections) {
    List<NaiveWalk.Found> routes = walk.routes();
    List<String> conflicts = walk.conflicts();
    List<String> distants = walk.distants();
    List<String> all = new ArrayList<>();
    for (Signal s : layout.signals()) {
      List<String> own = names(routes, s, "");
      if (s.arm() == Arm.DISTANT) {
        continue;
      }
      List<String> divided = new ArrayList<>();
      for (Lever l : frame.levers()) {
        if (l.work() instanceof Work.OfSignal w
            && w.signal().equals(s.id())
            && !w.ways().isEmpty()) {
          List<String> its =
              routes.stream()
                  .filter(r -> r.signal().equals(s.id()))
                  .filter(r -> !Collections.disjoint(r.tracks(), w.ways()))
                  .map(NaiveWalk.Found::name)
                  .toList();
          divided.add("points set: signal " + s.id() + ", lever " + l.id() + " " + its);
        }
      }
      all.addAll(divided.isEmpty() ? List.of("points set: signal " + s.id() + " " + own) : divided);
    }
    for (Signal s : layout.signals()) {
      for (Points p : layout.points()) {
        List<String> own = new ArrayList<>(names(routes, s, p.id() + " N facing"));
        own.addAll(names(routes, s, p.id() + " R facing"));
        boolean running = s.arm() == Arm.STOP || s.arm() == Arm.CALLING_ON;
        if (running && !own.isEmpty() && passenger(layout, p.id())) {
          all.add(
              "points bolted: signal " + s.id() + ", points " + p.id() + " " + new TreeSet<>(own));
        }
      }
    }
    for (Points p : layout.points()) {
      for (Lever l : frame.levers()) {
        if (l.work() instanceof Work.OfBolt b && b.points().contains(p.id())) {
          all.add("bolt and points agree: points " + p.id());
        }
      }
    }
    routes.forEach(r -> all.add("route held: route " + r.name()));
    for (Signal s : layout.signals()) {
      if (s.arm() == Arm.STOP) {
        walk.trailingInRear(s).stream()
            .filter(p -> !NaiveWalk.isSprung(layout, p))
            .forEach(p -> all.add("points held in rear: signal " + s.id() + ", points " + p));
      }
    }
    all.addAll(new NaiveFlank(walk, layout).instances());
    noConflict(layout, frame, routes, conflicts, all);
    all.addAll(new NaiveOverlaps(walk, layout).instances());
    for (Signal s : layout.signals()) {
      if (s.arm() == Arm.DISTANT && !s.fixed()) {
        String path = distants.stream().filter(d -> d.startsWith(s.id() + " ")).findFirst().get();
        List<String> bolted = new ArrayList<>();
        String facing = path.substring(path.lastIndexOf('[') + 1, path.length() - 1);
        for (String one : facing.isEmpty() ? new String[0] : facing.split(", ")) {
          if (passenger(layout, one.split(" ")[0])
              && !NaiveWalk.isSprung(layout, one.split(" ")[0])) {
            bolted.add(one.split(" ")[0]);
          }
        }
        all.add("distant follows: signal " + s.id() + " " + path + bolted);
      }
    }
    for (Signal s : layout.signals()) {
      for (GroundFrame g : layout.groundFrames()) {
        List<String> own =
            routes.stream()
                .filter(r -> r.signal().equals(s.id()))
                .filter(
                    r -> r.points().stream().anyMatch(p -> g.points().contains(p.split(" ")[0])))
                .map(NaiveWalk.Found::name)
                .toList();
        if (!own.isEmpty()) {
          all.add("release home: signal " + s.id() + ", ground frame " + g.id() + " " + own);
        }
      }
    }
    for (Signal s : layout.signals()) {
      for (LevelCrossing c : layout.levelCrossings()) {
        List<String> own = new ArrayList<>();
        for (NaiveWalk.Found r : routes) {
          if (r.signal().equals(s.id()) && !Collections.disjoint(r.tracks(), c.tracks())) {
            own.add(r.name());
          }
        }
        if (!own.isEmpty()) {
          all.add("road closed: signal " + s.id() + ", level crossing " + c.id() + " " + own);
        }
      }
    }
    for (Lever l : frame.levers()) {
      if (l.work() instanceof Work.OfClosing c
          && all.stream().noneMatch(r -> r.startsWith("no conflict") && r.endsWith("e" + l.id()))) {
        all.add("box closed: lever " + l.id() + " " + c.signals());
      }
    }
    sections.forEach(s -> all.add("one token out: section " + s.name()));
    sections(layout, sections, routes, all);
    for (Section s : sections) {
      for (GroundFrame g : layout.groundFrames()) {
        if (s.locks().contains(new Section.Lock(g.id(), true))) {
          all.add("siding locked: ground frame " + g.id() + ", section " + s.name());
        }
      }
    }
    routes.forEach(r -> all.add("route can be cleared: route " + r.name()));
    for (Lever l : frame.levers()) {
      if (!(l.work() instanceof Work.Spare) && !(l.work() instanceof Work.OutOfUse)) {
        all.add("lever can be moved: lever " + l.id());
      }
    }
    if (all.stream().anyMatch(r -> r.startsWith("lever can be moved: "))) {
      all.add("frame can be restored: all levers");
    }
    return all;
  }

  private static String closing(Frame frame, String pair) {
    for (Lever l : frame.levers()) {
      if (l.work() instanceof Work.OfClosing c
          && c.signals().containsAll(List.of(pair.split(" and ")))) {
        return l.id();
      }
    }
    return "";
  }

  private static void noConflict(
      Layout layout,
      Frame frame,
      List<NaiveWalk.Found> routes,
      List<String> conflicts,
      List<String> all) {
    Map<String, String> signalOf = new HashMap<>();
    routes.forEach(r -> signalOf.put(r.name(), r.signal()));
    Map<String, List<String>> between = new HashMap<>();
    for (String conflict : conflicts) {
      String[] parts = conflict.split(" \\| ");
      String pair = signalOf.get(parts[0]) + " and " + signalOf.get(parts[1]);
      between.computeIfAbsent(pair, p -> new ArrayList<>()).add(parts[2]);
    }
    List<Signal> signals = layout.signals();
    for (int i = 0; i < signals.size(); i++) {
      for (int j = i + 1; j < signals.size(); j++) {
        String pair = signals.get(i).id() + " and " + signals.get(j).id();
        List<String> found = between.getOrDefault(pair, List.of());
        int pairs =
            names(routes, signals.get(i), "").size() * names(routes, signals.get(j), "").size();
        boolean every = found.size() == pairs;
        if (!found.isEmpty() && (every || found.stream().anyMatch(f -> f.startsWith("true")))) {
          String closing = found.contains("true opposed") ? closing(frame, pair) : "";
          all.add("no conflict: signals " + pair + " " + found.size() + " " + every + closing);
        }
      }
    }
  }

  private static void sections(
      Layout layout, List<Section> sections, List<NaiveWalk.Found> routes, List<String> all) {
    Set<String> ends = new TreeSet<>();
    routes.forEach(r -> ends.add(r.signal() + r.end()));
    List<Signal> stops =
        layout.signals().stream()
            .filter(s -> s.arm() == Arm.STOP || s.arm() == Arm.CALLING_ON)
            .toList();
    for (Signal s : stops) {
      for (Section section : sections) {
        if (ends.contains(s.id() + " section " + section.name())) {
          all.add("section signal earned: signal " + s.id() + ", section " + section.name());
        }
      }
    }
    for (Section section : sections) {
      List<String> own =
          stops.stream()
              .map(Signal::id)
              .filter(id -> ends.contains(id + " section " + section.name()))
              .toList();
      for (String a : own) {
        own.stream()
            .skip(own.indexOf(a) + 1)
            .forEach(
                b ->
                    all.add(
                        "section signals apart: signals "
                            + a
                            + " and "
                            + b
                            + ", section "
                            + section.name()));
      }
    }
  }

  private static boolean passenger(Layout layout, String points) {
    return layout.points().stream()
        .filter(p -> p.id().equals(points))
        .map(Points::toe)
        .anyMatch(
            toe -> layout.tracks().stream().anyMatch(t -> t.id().equals(toe) && t.passenger()));
  }

  private static List<String> names(List<NaiveWalk.Found> routes, Signal signal, String points) {
    return routes.stream()
        .filter(
            r ->
                r.signal().equals(signal.id()) && (points.isEmpty() || r.points().contains(points)))
        .map(NaiveWalk.Found::name)
        .toList();
  }
}
