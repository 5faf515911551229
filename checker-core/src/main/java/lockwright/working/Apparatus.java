package lockwright.working;

import static java.util.Collections.disjoint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.words.Quantity;

/** What the positions mean: 2.2 of {@code docs/meaning.md}, a method a line of its table. */
final class Apparatus {
  private final Box box;
  private final Quantities quantities;

  Apparatus(Box box, Quantities quantities) {
    this.box = box;
    this.quantities = quantities;
  }

  /** The arm is off, where off is the danger: its lever is not fully N, and no control holds it. */
  Condition off(String signal) {
    return given(signal, l -> true, "M", "R");
  }

  /** 4.3: the same, by levers with which it goes off into a section. */
  Condition offInto(String section, String signal) {
    return given(signal, w -> Quantities.goesOffInto(box, w, signal, section), "M", "R");
  }

  /** The arm is off, where off is the goal: its lever is fully R, and no control holds it. */
  Condition surelyOff(String signal) {
    return given(signal, l -> true, "R");
  }

  /** 2.9: all that the control of the arm needs is met; always, where it has none. */
  private Condition controlled(String signal) {
    return Condition.all(
        box.controls().ofArm(signal).map(ArmControl::needs).orElse(List.of()).stream()
            .map(this::met)
            .toList());
  }

  /** 2.9: what a lever lock or an arm control needs is so. */
  Condition met(Contact contact) {
    if (contact instanceof Contact.ArmAtDanger arm) {
      return Condition.not(off(arm.signal()));
    } else if (contact instanceof Contact.ArmOff arm) {
      return surelyOff(arm.signal());
    }
    return quantities.is(Quantity.condition(((Contact.Outside) contact).condition()), "met");
  }

  /** 2.7: the arm is off for what passes these tracks, where that is the goal. */
  Condition surelyOffFor(String signal, List<String> tracks) {
    return given(
        signal, l -> l.slotted() || l.ways().isEmpty() || !disjoint(l.ways(), tracks), "R");
  }

  /**
   * 2.7: one of these levers of the arm stands so; of slotted ones all; and no control holds it on.
   */
  private Condition given(String signal, Predicate<Work.OfSignal> which, String... positions) {
    List<Condition> stand = new ArrayList<>();
    boolean slotted = false;
    for (Lever lever : box.frame().levers()) {
      if (lever.work() instanceof Work.OfSignal work
          && work.signal().equals(signal)
          && which.test(work)) {
        stand.add(lever(lever.id(), positions));
        slotted |= work.slotted();
      }
    }
    return Condition.all(slotted ? Condition.all(stand) : Condition.any(stand), controlled(signal));
  }

  Condition lies(String points, Lie lie) {
    return are(points, lie == Lie.NORMAL ? "N" : "R");
  }

  Condition lieNeitherWay(String points) {
    return are(points, "M");
  }

  /** 2.8: where they are taken by their lever, or where they stood as their rod broke. */
  private Condition are(String points, String position) {
    if (box.layout().points(points).sprung()) {
      return position.equals("N") ? Condition.TRUE : Condition.FALSE; // 2.3
    }
    Quantity own = Quantity.points(points);
    Condition taken = quantities.is(quantities.has(own) ? own : positionOf(points), position);
    Quantity rod = Quantity.rod(points);
    if (!quantities.has(rod)) {
      return taken;
    }
    return Condition.any(
        quantities.is(rod, "broken at " + position),
        Condition.all(taken, quantities.is(rod, "whole")));
  }

  /** Their lever stands at M; where they have none, they do. */
  Condition leverPartWay(String points) {
    return box.frame()
        .ofPoints(points)
        .map(l -> lever(l.id(), "M"))
        .orElseGet(() -> lieNeitherWay(points));
  }

  /**
   * What moves points: their lever; or a ground frame, or a hand, which gives them a position of
   * their own.
   */
  private Quantity positionOf(String points) {
    if (box.layout().pointsOfGroundFrames().containsKey(points)
        || box.layout().points(points).byHand()) {
      return Quantity.points(points);
    }
    return box.frame()
        .ofPoints(points)
        .map(l -> Quantity.lever(l.id()))
        .orElseThrow(() -> new IllegalArgumentException("nothing works points " + points));
  }

  /** A bolt of the points is surely in; never, where they have none. */
  Condition bolted(String points) {
    return box.frame()
        .ofBolt(points)
        .map(l -> lever(l.id(), normallyIn(l) ? "N" : "R"))
        .or(() -> box.frame().ofEconomicalLock(points).map(l -> lever(l.id(), "N", "R")))
        .orElse(Condition.FALSE);
  }

  /** A bolt, on a lever of its own, is not surely out; never, where there is none. */
  Condition boltNotOut(String points) {
    return box.frame()
        .ofBolt(points)
        .map(l -> Condition.not(lever(l.id(), normallyIn(l) ? "R" : "N")))
        .orElse(Condition.FALSE);
  }

  private static boolean normallyIn(Lever lever) {
    return ((Work.OfBolt) lever.work()).normallyIn();
  }

  Condition releaseHome(String groundFrame) {
    return Condition.any(releasesStand(groundFrame, "N", "empty"));
  }

  Condition releaseGiven(String groundFrame) {
    return Condition.all(releasesStand(groundFrame, "R", "fresh", "other"));
  }

  /** 2.3: of the lever and the lock that a ground frame has, that each stands so. */
  private List<Condition> releasesStand(String groundFrame, String position, String... inLock) {
    List<Condition> each = new ArrayList<>();
    box.frame().ofRelease(groundFrame).ifPresent(l -> each.add(lever(l.id(), position)));
    box.releasing(groundFrame)
        .ifPresent(s -> each.add(quantities.is(Quantity.lock(s.name(), groundFrame), inLock)));
    if (each.isEmpty()) {
      throw new IllegalArgumentException("nothing releases ground frame " + groundFrame);
    }
    return each;
  }

  /** All points of the ground frame at N. */
  Condition closed(String groundFrame) {
    return Condition.all(
        box.layout().groundFrame(groundFrame).points().stream()
            .map(p -> lies(p, Lie.NORMAL))
            .toList());
  }

  /** Some points of the ground frame at R. */
  Condition open(String groundFrame) {
    return Condition.any(
        box.layout().groundFrame(groundFrame).points().stream()
            .map(p -> lies(p, Lie.REVERSE))
            .toList());
  }

  /** 2.4: the gates are locked across the road. */
  Condition roadClosed(String levelCrossing) {
    Lever lever = box.frame().ofLevelCrossing(levelCrossing);
    if (lever.work() instanceof Work.OfGates gates) {
      return lever(lever.id(), gates.normallyAcrossRoad() ? "N" : "R");
    }
    Work.OfGateLock lock = (Work.OfGateLock) lever.work();
    return Condition.all(
        lever(lever.id(), lock.normallyIn() ? "N" : "R"),
        quantities.is(Quantity.gates(levelCrossing), "N"));
  }

  /** Each points of the route lies as it needs. */
  Condition lies(Route route) {
    return lie(route.points());
  }

  /**
   * Each of these points lies as a train over them needs it; 2.3: of sprung ones it needs nothing.
   */
  Condition lie(List<PointsOnRoute> passed) {
    List<Condition> all = new ArrayList<>();
    for (PointsOnRoute p : passed) {
      if (!box.layout().points(p.points()).sprung()) {
        all.add(lies(p.points(), p.lie()));
      }
    }
    return Condition.all(all);
  }

  /** Each flank trap of the route lies for the trap. */
  Condition trapsLie(Route route) {
    return Condition.all(route.flankTraps().stream().map(t -> lies(t.points(), t.lie())).toList());
  }

  /** One of the routes lies. */
  Condition oneLies(List<Route> routes) {
    return Condition.any(routes.stream().map(this::lies).toList());
  }

  Condition lever(String lever, String... positions) {
    return quantities.is(Quantity.lever(lever), positions);
  }
}
