package lockwright.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.FlankTrap;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.locking.Entry.Condition;
import lockwright.railway.locking.Entry.Kind;
import lockwright.railway.requirement.Requirement;

/** A locking table as one might write it for a box; entries left out, and random ones put in. */
final class RandomTable {
  private final Box box;
  private final Random random;
  private final List<Entry> entries = new ArrayList<>();

  RandomTable(Box box, Random random) {
    this.box = box;
    this.random = random;
  }

  List<Entry> entries() {
    box.frame().levers().forEach(this::bolt);
    box.frame().levers().forEach(this::closing);
    box.routes().forEach(this::route);
    box.requirements().forEach(this::heldInRear);
    box.conflicts().forEach(this::conflict);
    box.distantPaths().forEach(this::distant);
    int keep = new int[] {100, 100, 90, 70}[random.nextInt(4)];
    entries.removeIf(e -> random.nextInt(100) >= keep);
    int more = new int[] {0, 0, 1, 2, 3}[random.nextInt(5)];
    for (int i = 0; i < more; i++) {
      entries.add(anything());
    }
    return entries;
  }

  private void bolt(Lever lever) {
    if (lever.work() instanceof Work.OfBolt bolt) {
      Kind kind = bolt.normallyIn() ? Kind.WHILE_NORMAL_LOCKS_BOTH_WAYS : Kind.LOCKS_BOTH_WAYS;
      for (String points : bolt.points()) {
        box.frame()
            .ofPoints(points)
            .ifPresent(l -> add(RandomBox.entry(kind, lever.id(), List.of(l.id()))));
      }
    }
  }

  private void closing(Lever lever) {
    if (lever.work() instanceof Work.OfClosing closing) {
      for (String signal : closing.signals()) {
        box.frame()
            .ofSignal(signal)
            .ifPresent(l -> add(RandomBox.entry(Kind.RELEASED_BY, lever.id(), List.of(l.id()))));
      }
    }
  }

  private void route(Route route) {
    Optional<Lever> arm = box.frame().ofSignal(route.signal());
    if (arm.isEmpty()) {
      return;
    }
    String a = arm.get().id();
    boolean several = box.routesOf(route.signal()).size() > 1;
    for (PointsOnRoute points : route.points()) {
      Optional<Lever> lever = box.frame().ofPoints(points.points());
      if (lever.isPresent()) {
        String b = lever.get().id();
        if (several) {
          add(RandomBox.entry(Kind.LOCKS_BOTH_WAYS, a, List.of(b)));
        } else {
          add(needs(a, b, points.lie() == Lie.REVERSE));
        }
      } else {
        box.frame()
            .ofRelease("G")
            .ifPresent(l -> add(RandomBox.entry(Kind.LOCKS, a, List.of(l.id()))));
      }
      if (points.facing()) {
        box.frame()
            .ofBolt(points.points())
            .ifPresent(l -> add(needs(a, l.id(), !((Work.OfBolt) l.work()).normallyIn())));
      }
    }
    for (LevelCrossing crossing : box.layout().levelCrossings()) {
      if (route.tracks().stream().anyMatch(crossing.tracks()::contains)) {
        Lever gates = box.frame().ofLevelCrossing(crossing.id());
        addFor(route, needs(a, gates.id(), acrossRoadReversed(gates.work())));
      }
    }
    for (FlankTrap flank : route.flankTraps()) {
      box.frame()
          .ofPoints(flank.points())
          .filter(l -> !l.id().equals(a))
          .ifPresent(l -> addFor(route, needs(a, l.id(), flank.lie() == Lie.REVERSE)));
    }
  }

  private static boolean acrossRoadReversed(Work work) {
    return work instanceof Work.OfGates gates
        ? !gates.normallyAcrossRoad()
        : !((Work.OfGateLock) work).normallyIn();
  }

  private void heldInRear(Requirement requirement) {
    if (requirement instanceof Requirement.PointsHeldInRear r) {
      Optional<Lever> arm = box.frame().ofSignal(r.signal());
      Optional<Lever> points = box.frame().ofPoints(r.points());
      if (arm.isPresent() && points.isPresent()) {
        add(RandomBox.entry(Kind.LOCKS_BOTH_WAYS, arm.get().id(), List.of(points.get().id())));
      }
    }
  }

  private Entry needs(String a, String b, boolean reversed) {
    return RandomBox.entry(reversed ? Kind.RELEASED_BY : Kind.LOCKS, a, List.of(b));
  }

  private void conflict(Conflict conflict) {
    Optional<Lever> first = box.frame().ofSignal(conflict.first().signal());
    Optional<Lever> second = box.frame().ofSignal(conflict.second().signal());
    if (conflict.possible() && first.isPresent() && second.isPresent()) {
      Entry entry = RandomBox.entry(Kind.LOCKS, first.get().id(), List.of(second.get().id()));
      Optional<Lever> closing =
          box.frame().closing(conflict.first().signal(), conflict.second().signal());
      if (conflict.opposed() && closing.isPresent()) {
        add(RandomBox.when(entry, List.of(new Condition(closing.get().id(), Position.N)), false));
      } else {
        addFor(conflict.first(), entry);
      }
    }
  }

  /** An entry for one of several routes of an arm: when its points lie for it. */
  private void addFor(Route route, Entry entry) {
    List<Condition> conditions = new ArrayList<>();
    if (box.routesOf(route.signal()).size() > 1 && random.nextInt(3) > 0) {
      for (PointsOnRoute points : route.points()) {
        box.frame()
            .ofPoints(points.points())
            .filter(l -> !l.id().equals(entry.lever()) && !entry.others().contains(l.id()))
            .ifPresent(
                l ->
                    conditions.add(
                        new Condition(
                            l.id(), points.lie() == Lie.NORMAL ? Position.N : Position.R)));
      }
    }
    add(RandomBox.when(entry, conditions, !conditions.isEmpty() && random.nextInt(4) == 0));
  }

  private void distant(DistantPath path) {
    Optional<Lever> arm = box.frame().ofSignal(path.distant());
    if (arm.isEmpty()) {
      return;
    }
    String a = arm.get().id();
    for (List<String> post : path.posts()) {
      List<String> stops =
          post.stream().flatMap(s -> box.frame().ofSignal(s).stream()).map(Lever::id).toList();
      if (!stops.isEmpty()) {
        add(RandomBox.entry(Kind.RELEASED_BY, a, stops));
      }
    }
    for (PointsOnRoute points : path.facing()) {
      box.frame()
          .ofPoints(points.points())
          .ifPresent(l -> add(needs(a, l.id(), points.lie() == Lie.REVERSE)));
    }
  }

  private void add(Entry entry) {
    if (!entries.contains(entry)) {
      entries.add(entry);
    }
  }

  private Entry anything() {
    List<String> levers = new ArrayList<>(box.frame().levers().stream().map(Lever::id).toList());
    Collections.shuffle(levers, random);
    Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
    int others = kind == Kind.RELEASED_BY && levers.size() > 3 && random.nextInt(3) == 0 ? 2 : 1;
    Entry entry = RandomBox.entry(kind, levers.get(0), levers.subList(1, 1 + others));
    List<Condition> conditions = new ArrayList<>();
    int most = Math.min(2, levers.size() - 1 - others);
    int many = most > 0 && random.nextInt(3) == 0 ? 1 + random.nextInt(most) : 0;
    for (int i = 0; i < many; i++) {
      conditions.add(
          new Condition(
              levers.get(1 + others + i), random.nextBoolean() ? Position.N : Position.R));
    }
    boolean holds = !conditions.isEmpty() && random.nextInt(2) == 0 && !kind.ofMovement();
    return RandomBox.when(entry, conditions, holds);
  }
}
