package lockwright.working;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/** What breaks and what shows a requirement: 6 and 7 of {@code docs/meaning.md}. */
final class Breaches {
  private final Box box;
  private final Quantities quantities;
  private final Apparatus apparatus;
  private final List<Movement> movements;

  Breaches(Box box, Quantities quantities, Apparatus apparatus, List<Movement> movements) {
    this.box = box;
    this.quantities = quantities;
    this.apparatus = apparatus;
    this.movements = movements;
  }

  Breach of(Requirement requirement) {
    if (requirement instanceof Requirement.PointsSet r) {
      return state(pointsSet(r));
    } else if (requirement instanceof Requirement.PointsBolted r) {
      return state(
          Condition.all(
              apparatus.off(r.signal()),
              apparatus.oneLies(r.routes()),
              Condition.not(apparatus.bolted(r.points()))));
    } else if (requirement instanceof Requirement.BoltAndPointsAgree r) {
      return state(
          Condition.all(
              apparatus.lieNeitherWay(r.points()),
              apparatus.leverPartWay(r.points()),
              apparatus.boltNotOut(r.points())));
    } else if (requirement instanceof Requirement.RouteHeld r) {
      return routeHeld(r.route());
    } else if (requirement instanceof Requirement.PointsHeldInRear r) {
      return heldInRear(r);
    } else if (requirement instanceof Requirement.FlankProtected r) {
      return state(new Flanks(apparatus).broken(r));
    } else if (requirement instanceof Requirement.NoConflict r) {
      return state(noConflict(r));
    } else if (requirement instanceof Requirement.OverlapSet r) {
      return state(new Overlaps(apparatus).lacking(r));
    } else if (requirement instanceof Requirement.OverlapsApart r) {
      return state(new Overlaps(apparatus).meet(r));
    } else if (requirement instanceof Requirement.BoxClosed r) {
      return state(boxClosed(r));
    } else if (requirement instanceof Requirement.DistantFollows r) {
      return state(distantFollows(r));
    } else if (requirement instanceof Requirement.ReleaseHome r) {
      return state(
          Condition.all(
              apparatus.off(r.signal()),
              apparatus.oneLies(r.routes()),
              Condition.not(apparatus.releaseHome(r.groundFrame()))));
    } else if (requirement instanceof Requirement.RoadClosed r) {
      return state(
          Condition.all(
              apparatus.off(r.signal()),
              apparatus.oneLies(r.routes()),
              Condition.not(apparatus.roadClosed(r.levelCrossing()))));
    } else if (requirement instanceof Requirement.OneTokenOut r) {
      return state(tokensOut(r.section(), 2));
    } else if (requirement instanceof Requirement.SectionSignalEarned r) {
      return earned(r);
    } else if (requirement instanceof Requirement.SectionSignalsApart r) {
      return state(Condition.all(apparatus.off(r.first()), apparatus.off(r.second())));
    } else if (requirement instanceof Requirement.SidingLocked r) {
      return state(sidingNotLocked(r));
    } else if (requirement instanceof Requirement.PointsToPoints r) {
      return state(
          Condition.all(oneLies(r.first(), r.firstLie()), oneLies(r.second(), r.secondLie())));
    }
    throw new IllegalArgumentException(requirement.id() + " is not a requirement of safety");
  }

  Condition goal(Requirement requirement) {
    if (requirement instanceof Requirement.RouteCanBeCleared r) {
      return signalled(r.route());
    } else if (requirement instanceof Requirement.LeverCanBeMoved r) {
      return apparatus.lever(r.lever(), "R");
    }
    throw new IllegalArgumentException(requirement.id() + " is not a possibility");
  }

  Condition reaches(Subject subject) {
    if (subject instanceof Subject.SignalOff s) {
      return apparatus.surelyOff(s.signal());
    } else if (subject instanceof Subject.RouteSignalled s) {
      return Condition.any(s.routes().stream().map(this::signalled).toList());
    } else if (subject instanceof Subject.Bolted s) {
      return apparatus.bolted(s.points());
    } else if (subject instanceof Subject.PartWay s) {
      return apparatus.lieNeitherWay(s.points());
    } else if (subject instanceof Subject.PointsLie s) {
      return oneLies(s.points(), s.lie());
    } else if (subject instanceof Subject.LeverReversed s) {
      return apparatus.lever(s.lever(), "R");
    } else if (subject instanceof Subject.FrameOpen s) {
      return apparatus.open(s.groundFrame());
    } else if (subject instanceof Subject.TokenOut s) {
      return tokensOut(s.section(), 1);
    }
    throw new IllegalArgumentException("a subject of no known kind: " + subject.id());
  }

  /** The arm is off for the route, where that is the goal, and the route lies. */
  private Condition signalled(Route route) {
    return Condition.all(
        apparatus.surelyOffFor(route.signal(), route.tracks()), apparatus.lies(route));
  }

  private static Breach state(Condition condition) {
    return new Breach(condition, Map.of());
  }

  private Condition pointsSet(Requirement.PointsSet r) {
    List<Condition> wrong = new ArrayList<>();
    wrong.add(apparatus.off(r.signal()));
    r.lever().ifPresent(l -> wrong.add(apparatus.lever(l, "M", "R")));
    for (Route route : r.routes()) {
      wrong.add(Condition.not(Condition.all(apparatus.lies(route), apparatus.trapsLie(route))));
    }
    return Condition.all(wrong);
  }

  private Breach routeHeld(Route route) {
    Set<String> levers = new TreeSet<>();
    Set<String> ownPoints = new TreeSet<>();
    Set<String> groundFrames = new TreeSet<>();
    for (PointsOnRoute p : route.points()) {
      moves(p.points(), levers, ownPoints);
      if (p.facing()) {
        box.frame().ofBolt(p.points()).map(Lever::id).ifPresent(levers::add);
      }
      GroundFrame groundFrame = box.layout().pointsOfGroundFrames().get(p.points());
      if (groundFrame != null) {
        box.frame()
            .ofRelease(groundFrame.id())
            .map(Lever::id)
            .ifPresentOrElse(levers::add, () -> groundFrames.add(groundFrame.id()));
      }
    }
    Set<String> gates = new TreeSet<>();
    for (LevelCrossing crossing : box.layout().levelCrossings()) {
      if (crossing.isOn(route)) {
        levers.add(box.frame().ofLevelCrossing(crossing.id()).id());
        gates.add(crossing.id());
      }
    }
    route.flankTraps().forEach(t -> moves(t.points(), levers, ownPoints));
    Condition signalled = Condition.all(apparatus.off(route.signal()), apparatus.lies(route));
    Map<Event, Condition> forbidden = new LinkedHashMap<>();
    for (Movement movement : movements) {
      if (movement.event() instanceof Event.LeverMoves m && levers.contains(m.lever())
          || movement.event() instanceof Event.PointsMove p && ownPoints.contains(p.points())
          || movement.event() instanceof Event.GatesMove g && gates.contains(g.levelCrossing())
          || movement.event() instanceof Event.AtLock a && groundFrames.contains(a.groundFrame())) {
        forbidden.put(movement.event(), signalled);
      }
    }
    return new Breach(Condition.FALSE, forbidden);
  }

  private Breach heldInRear(Requirement.PointsHeldInRear r) {
    Set<String> levers = new TreeSet<>();
    Set<String> ownPoints = new TreeSet<>();
    moves(r.points(), levers, ownPoints);
    Condition off = apparatus.off(r.signal());
    Map<Event, Condition> forbidden = new LinkedHashMap<>();
    for (Movement movement : movements) {
      if (movement.event() instanceof Event.LeverMoves m && levers.contains(m.lever())
          || movement.event() instanceof Event.PointsMove p && ownPoints.contains(p.points())) {
        forbidden.put(movement.event(), off);
      }
    }
    return new Breach(Condition.all(off, apparatus.lieNeitherWay(r.points())), forbidden);
  }

  /**
   * Adds what moves the points: a lever, and the points themselves where they move by themselves.
   */
  private void moves(String points, Set<String> levers, Set<String> ownPoints) {
    box.frame().ofPoints(points).map(Lever::id).ifPresent(levers::add);
    if (quantities.has(Quantity.points(points))) {
      ownPoints.add(points);
    }
  }

  private Condition noConflict(Requirement.NoConflict r) {
    Condition bothOff = Condition.all(apparatus.off(r.first()), apparatus.off(r.second()));
    Condition any = r.always() ? Condition.TRUE : oneLies(r.conflicts());
    if (r.closing().isEmpty()) {
      return Condition.all(bothOff, any);
    }
    Condition switchedOut = apparatus.lever(r.closing().get(), "R");
    return Condition.all(
        bothOff,
        Condition.any(
            Condition.all(any, Condition.not(switchedOut)),
            oneLies(r.conflicts().stream().filter(c -> !c.opposed()).toList())));
  }

  /** Some of the points lie so. */
  private Condition oneLies(List<String> points, Lie lie) {
    return Condition.any(points.stream().map(p -> apparatus.lies(p, lie)).toList());
  }

  private Condition oneLies(List<Conflict> conflicts) {
    return Condition.any(
        conflicts.stream()
            .map(c -> Condition.all(apparatus.lies(c.first()), apparatus.lies(c.second())))
            .toList());
  }

  private Condition boxClosed(Requirement.BoxClosed r) {
    return Condition.all(
        Condition.not(apparatus.lever(r.lever(), "N")),
        Condition.any(
            r.signals().stream().map(s -> Condition.not(apparatus.surelyOff(s))).toList()));
  }

  private Condition distantFollows(Requirement.DistantFollows r) {
    List<Condition> wrong = new ArrayList<>();
    if (r.path().posts().isEmpty()) {
      wrong.add(Condition.TRUE);
    }
    Iterator<List<String>> tracks = r.path().beyond().iterator();
    for (List<String> post : r.path().posts()) {
      List<String> along = tracks.next();
      wrong.add(
          Condition.not(
              Condition.any(
                  post.stream().map(arm -> apparatus.surelyOffFor(arm, along)).toList())));
    }
    for (PointsOnRoute p : r.path().facing()) {
      wrong.add(Condition.not(apparatus.lies(p.points(), p.lie())));
    }
    for (String points : r.passenger()) {
      wrong.add(Condition.not(apparatus.bolted(points)));
    }
    return Condition.all(apparatus.off(r.path().distant()), Condition.any(wrong));
  }

  private Breach earned(Requirement.SectionSignalEarned r) {
    Condition noneFresh =
        quantities.is(Quantity.freshTokens(r.section(), tokens(r.section())), "0");
    Map<Event, Condition> forbidden = new LinkedHashMap<>();
    if (box.controls().ofArm(r.signal()).isPresent()) {
      for (Movement movement : movements) {
        Condition goesOff = GoingOff.by(movement, apparatus.offInto(r.section(), r.signal()));
        if (!goesOff.equals(Condition.FALSE)) {
          forbidden.put(movement.event(), Condition.all(noneFresh, goesOff));
        }
      }
      return new Breach(Condition.FALSE, forbidden);
    }
    for (Movement movement : movements) {
      if (movement.event() instanceof Event.LeverMoves m
          && m.from() == Position.N
          && Quantities.goesOffInto(
              box, box.frame().lever(m.lever()).work(), r.signal(), r.section())) {
        forbidden.put(m, noneFresh);
      }
    }
    return new Breach(Condition.FALSE, forbidden);
  }

  private Condition sidingNotLocked(Requirement.SidingLocked r) {
    Condition free = Condition.not(apparatus.releaseHome(r.groundFrame()));
    return Condition.any(
        Condition.all(
            Condition.not(apparatus.closed(r.groundFrame())),
            apparatus.releaseHome(r.groundFrame())),
        Condition.all(free, tokensOut(r.section(), 2)));
  }

  private Condition tokensOut(String section, int least) {
    return quantities.satisfies(Quantity.tokensOut(section, tokens(section)), out -> out >= least);
  }

  private int tokens(String section) {
    return box.sections().stream()
        .filter(s -> s.name().equals(section))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no section " + section))
        .tokens();
  }
}
