package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.locking.Entry;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/** The movements of levers and of points of ground frames: 2 and 3 of {@code docs/meaning.md}. */
final class FrameMovements {
  private final Box box;
  private final Quantities quantities;
  private final Apparatus apparatus;
  private final Locking locking;
  private final Strokes strokes;
  private final OutsideConditions conditions;

  FrameMovements(
      Box box, Quantities quantities, Apparatus apparatus, Locking locking, Strokes strokes) {
    this.box = box;
    this.quantities = quantities;
    this.apparatus = apparatus;
    this.locking = locking;
    this.strokes = strokes;
    this.conditions = new OutsideConditions(box, quantities, apparatus);
  }

  List<Movement> all() {
    List<Movement> all = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      if (lever.work().moves()) {
        strokes.all().forEach(s -> all.add(ofLever(lever, s)));
      }
    }
    for (String points : Quantities.pointsBesideLevers(box)) {
      boolean byHand = box.layout().points(points).byHand();
      strokes.all().forEach(s -> all.add(byHand ? byHand(points, s) : ofPoints(points, s)));
    }
    for (String crossing : Quantities.lockedGates(box)) {
      strokes.all().forEach(s -> all.add(ofGates(crossing, s)));
    }
    for (String points : Quantities.electricPoints(box)) {
      if (strokes == Strokes.PARTED) {
        strokes.all().forEach(s -> all.add(driven(points, s)));
      }
    }
    for (String points : Quantities.brokenRods(box)) {
      if (strokes == Strokes.PARTED) {
        List.of(Position.values()).forEach(at -> all.add(breakage(points, at)));
      }
    }
    return all;
  }

  private Movement ofLever(Lever lever, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.lever(lever.id());
    List<Need> needs = new ArrayList<>();
    List<Effect> effects = new ArrayList<>(List.of(move(quantity, stroke)));
    needs.add(stands(quantity, stroke));
    for (Entry entry : locking.naming(lever.id())) {
      needs.add(Need.entry(keeps(entry, quantity, stroke), entry));
    }
    if (stroke.from() == Position.N) {
      middle(lever, needs);
      rules(lever, needs);
      needs.addAll(new Wires(box, apparatus, strokes).needs(lever));
      leavesNormal(lever, needs, effects);
    }
    turns(lever, stroke, effects);
    conditions.lock(lever.id(), stroke.from(), needs, effects);
    answers(lever, stroke, needs, effects);
    plunger(lever, stroke, needs);
    if (stroke.from() == Position.R && lever.work() instanceof Work.OfRelease release) {
      leavesReversed(release, needs);
    }
    if (lever.work() instanceof Work.OfGateLock lock && stroke.from() == out(lock)) {
      needs.add(
          Need.rule(
              quantities.is(Quantity.gates(lock.levelCrossing()), "N"),
              "the lock goes in only with the gates of "
                  + lock.levelCrossing()
                  + " across the road"));
    }
    return new Movement(
        new Event.LeverMoves(lever.id(), stroke.from(), stroke.to()), needs, effects);
  }

  /** 2.7: the other way of a push-pull lever is at N, and so the lever in the middle. */
  private void middle(Lever lever, List<Need> needs) {
    for (Lever other : box.frame().levers()) {
      String number = Lever.number(lever.id());
      if (!other.equals(lever)
          && !number.equals(lever.id())
          && number.equals(Lever.number(other.id()))) {
        needs.add(
            Need.itself(
                quantities.is(Quantity.lever(other.id()), "N"),
                "lever " + number + " is one lever, and has to come back to the middle first"));
      }
    }
  }

  /** 3.1: what the stroke leads to, and leads through, is not forbidden by the entry. */
  private Condition keeps(Entry entry, Quantity lever, Strokes.Stroke stroke) {
    Condition forbidden = locking.forbidden(entry);
    return Condition.all(
        stroke.through().stream()
            .map(p -> forbidden.before(List.of(quantities.set(lever, p.name()))))
            .map(Condition::not)
            .toList());
  }

  /** 3.4: what a lever needs to start. */
  private void rules(Lever lever, List<Need> needs) {
    for (Entry entry : locking.rulesUnder(lever.id())) {
      needs.add(Need.entry(lets(entry), entry));
    }
  }

  /** 3.4: a rule lets its lever start. */
  Condition lets(Entry rule) {
    String other = rule.others().get(0);
    Condition met =
        rule.kind() == Entry.Kind.STARTS_ONLY_WITH_NORMAL
            ? apparatus.lever(other, "N")
            : quantities.is(Quantity.turn(rule.lever(), other), "come");
    return Condition.any(met, Condition.not(locking.conditions(rule)));
  }

  /** 3.4: a turn is awaited from the start of one lever, and comes with the strokes of another. */
  private void turns(Lever lever, Strokes.Stroke stroke, List<Effect> effects) {
    if (stroke.from() == Position.N) {
      locking
          .awaited(lever.id())
          .forEach(
              other ->
                  effects.add(quantities.set(Quantity.turn(lever.id(), other), "pull awaited")));
    }
    for (String waiting : locking.awaiting(lever.id())) {
      Quantity turn = Quantity.turn(waiting, lever.id());
      int pull = turn.values().indexOf("pull awaited");
      int back = turn.values().indexOf("return awaited");
      int come = turn.values().indexOf("come");
      switch (stroke.to()) {
        case R -> effects.add(quantities.map(turn, v -> v == pull ? back : v));
        case N -> effects.add(quantities.map(turn, v -> v == back ? come : v));
        case M -> {
          if (stroke.from() == Position.R) {
            // It stood at R as the other left N.
            effects.add(quantities.map(turn, v -> v == pull ? back : v));
          }
        }
      }
    }
  }

  /** 3.3, token locks; 4.3, the going off of a section signal. */
  private void leavesNormal(Lever lever, List<Need> needs, List<Effect> effects) {
    for (Section section : box.sections()) {
      String name = section.name();
      if (section.release().filter(r -> r.levers().contains(lever.id())).isPresent()) {
        Quantity release = Quantity.release(name);
        needs.add(
            Need.rule(
                quantities.is(release, "given"),
                "lever " + lever.id() + " leaves N only with the release of " + name + " given"));
        effects.add(quantities.set(release, "locked"));
      }
      boolean controlled =
          lever.work() instanceof Work.OfSignal work
              && box.controls().ofArm(work.signal()).isPresent();
      if (!controlled
          && Quantities.sectionSignals(box, name).stream()
              .anyMatch(s -> Quantities.goesOffInto(box, lever.work(), s, name))) {
        effects.add(quantities.set(Quantity.freshTokens(name, section.tokens()), "0"));
        for (Section.Lock lock : section.locks()) {
          Quantity in = Quantity.lock(name, lock.groundFrame());
          int usedUp = in.values().indexOf("fresh");
          int now = in.values().indexOf("other");
          effects.add(quantities.map(in, v -> v == usedUp ? now : v));
        }
      }
    }
  }

  /** 2.3: a release held while its ground frame is open. */
  private void leavesReversed(Work.OfRelease release, List<Need> needs) {
    GroundFrame groundFrame = box.layout().groundFrame(release.groundFrame());
    if (release.heldWhileOpen()) {
      for (String points : groundFrame.points()) {
        needs.add(
            Need.rule(
                quantities.is(Quantity.points(points), "N"),
                "the release is held until points " + points + " lie normal"));
      }
    }
  }

  /** 2.3: points of a ground frame move while its release is given. */
  private Movement ofPoints(String points, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.points(points);
    GroundFrame groundFrame = box.layout().pointsOfGroundFrames().get(points);
    return new Movement(
        new Event.PointsMove(points, stroke.from(), stroke.to()),
        List.of(
            stands(quantity, stroke),
            Need.rule(
                apparatus.releaseGiven(groundFrame.id()),
                "points " + points + " move only with the release of their ground frame given")),
        List.of(move(quantity, stroke)));
  }

  /** 2.3: points worked by hand move at any time, but not with a bolt of them in. */
  private Movement byHand(String points, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.points(points);
    return new Movement(
        new Event.PointsMove(points, stroke.from(), stroke.to()),
        List.of(
            stands(quantity, stroke),
            Need.rule(
                Condition.not(apparatus.bolted(points)),
                "points " + points + " do not move with their bolt in")),
        List.of(move(quantity, stroke)));
  }

  /** 2.3: the plunger of a bolt enters points worked by hand only where they lie. */
  private void plunger(Lever lever, Strokes.Stroke stroke, List<Need> needs) {
    if (!(lever.work() instanceof Work.OfBolt bolt)
        || stroke.to() != (bolt.normallyIn() ? Position.N : Position.R)) {
      return;
    }
    for (String points : bolt.points()) {
      if (box.layout().points(points).byHand()) {
        needs.add(
            Need.rule(
                Condition.not(apparatus.lieNeitherWay(points)),
                "the bolt does not enter points " + points + ", which lie neither way"));
      }
    }
  }

  /** 2.4: gates move while their lock is out. */
  private Movement ofGates(String crossing, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.gates(crossing);
    Lever lever = box.frame().ofLevelCrossing(crossing);
    Position out = out((Work.OfGateLock) lever.work());
    return new Movement(
        new Event.GatesMove(crossing, stroke.from(), stroke.to()),
        List.of(
            stands(quantity, stroke),
            Need.rule(
                apparatus.lever(lever.id(), out.name()),
                "the gates of " + crossing + " move only with their lock out")),
        List.of(move(quantity, stroke)));
  }

  /** 2.8: the stroke ends with the answer of the points; a whole one takes them with it. */
  private void answers(Lever lever, Strokes.Stroke stroke, List<Need> needs, List<Effect> effects) {
    for (String points : Quantities.answering(box, lever.id())) {
      Quantity quantity = Quantity.points(points);
      if (strokes == Strokes.WHOLE) {
        effects.add(move(quantity, stroke));
      } else if (stroke.to() != Position.M) {
        needs.add(
            Need.rule(
                quantities.is(quantity, stroke.to().name()),
                "the stroke of lever "
                    + lever.id()
                    + " is checked until points "
                    + points
                    + " lie "
                    + (stroke.to() == Position.N ? "normal" : "reverse")));
      }
    }
  }

  /** 2.8: the current moves points while their lever is at M. */
  private Movement driven(String points, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.points(points);
    Lever lever = box.frame().ofPoints(points).orElseThrow();
    return new Movement(
        new Event.PointsMove(points, stroke.from(), stroke.to()),
        List.of(
            stands(quantity, stroke),
            Need.rule(
                apparatus.lever(lever.id(), "M"),
                "points " + points + " move only with lever " + lever.id() + " part-way")),
        List.of(move(quantity, stroke)));
  }

  /** 2.8: a rod breaks, once, wherever the lever has the points. */
  private Movement breakage(String points, Position at) {
    Quantity rod = Quantity.rod(points);
    Lever lever = box.frame().ofPoints(points).orElseThrow();
    return new Movement(
        new Event.RodBreaks(points, at),
        List.of(
            Need.rule(quantities.is(rod, "whole"), "the rod of " + points + " is broken already"),
            Need.rule(
                apparatus.lever(lever.id(), at.name()),
                "lever " + lever.id() + " is not at " + at)),
        List.of(quantities.set(rod, "broken at " + at)));
  }

  /** Where the lever of a gate lock stands with the lock out. */
  private static Position out(Work.OfGateLock lock) {
    return lock.normallyIn() ? Position.R : Position.N;
  }

  private Need stands(Quantity quantity, Strokes.Stroke stroke) {
    return Need.itself(
        quantities.is(quantity, stroke.from().name()),
        quantity.key() + " is not at " + stroke.from());
  }

  private Effect move(Quantity quantity, Strokes.Stroke stroke) {
    return quantities.set(quantity, stroke.to().name());
  }
}
