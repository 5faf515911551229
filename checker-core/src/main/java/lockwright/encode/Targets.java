package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event;
import lockwright.railway.words.Event.LeverMoves;
import lockwright.railway.words.Quantity;
import lockwright.system.Target;
import lockwright.system.Target.Making;
import lockwright.system.Term;

/** What breaks each requirement, or is its goal; `docs/meaning.md` 6 and 7. */
final class Targets {
  private final Apparatus apparatus;
  private final List<Movement> movements;

  Targets(Apparatus apparatus, List<Movement> movements) {
    this.apparatus = apparatus;
    this.movements = movements;
  }

  Target of(Requirement requirement) {
    List<Making> makings = List.of();
    Term states = Term.FALSE;
    if (requirement instanceof Requirement.PointsSet r) {
      states = pointsSet(r);
    } else if (requirement instanceof Requirement.PointsBolted r) {
      states =
          Term.and(
              apparatus.off(r.signal()),
              oneLies(r.routes()),
              Term.not(apparatus.bolted(r.points())));
    } else if (requirement instanceof Requirement.BoltAndPointsAgree r) {
      states =
          Term.and(
              apparatus.partWay(r.points()),
              apparatus.leverPartWay(r.points()),
              Term.not(apparatus.unbolted(r.points())));
    } else if (requirement instanceof Requirement.RouteHeld r) {
      makings = routeHeld(r.route());
    } else if (requirement instanceof Requirement.PointsHeldInRear r) {
      states = Term.and(apparatus.partWay(r.points()), apparatus.off(r.signal()));
      Set<Quantity> points = apparatus.movers(r.points());
      makings = makings(event -> points.contains(moved(event)), apparatus.off(r.signal()));
    } else if (requirement instanceof Requirement.FlankProtected r) {
      states = new Flanks(apparatus).open(r);
    } else if (requirement instanceof Requirement.NoConflict r) {
      states = noConflict(r);
    } else if (requirement instanceof Requirement.OverlapSet r) {
      states = new Overlaps(apparatus).lacking(r);
    } else if (requirement instanceof Requirement.OverlapsApart r) {
      states = new Overlaps(apparatus).clash(r);
    } else if (requirement instanceof Requirement.DistantFollows r) {
      states = distantFollows(r);
    } else if (requirement instanceof Requirement.ReleaseHome r) {
      states =
          Term.and(
              apparatus.off(r.signal()),
              oneLies(r.routes()),
              Term.not(apparatus.home(r.groundFrame())));
    } else if (requirement instanceof Requirement.RoadClosed r) {
      states =
          Term.and(
              Term.not(apparatus.closed(r.levelCrossing())),
              oneLies(r.routes()),
              apparatus.off(r.signal()));
    } else if (requirement instanceof Requirement.BoxClosed r) {
      states = boxClosed(r);
    } else if (requirement instanceof Requirement.OneTokenOut r) {
      states = count(r.section(), 2);
    } else if (requirement instanceof Requirement.SectionSignalEarned r) {
      makings = earned(r);
    } else if (requirement instanceof Requirement.SectionSignalsApart r) {
      states = Term.and(apparatus.off(r.first()), apparatus.off(r.second()));
    } else if (requirement instanceof Requirement.SidingLocked r) {
      states = sidingNotLocked(r);
    } else if (requirement instanceof Requirement.PointsToPoints r) {
      states = Term.and(some(r.first(), r.firstLie()), some(r.second(), r.secondLie()));
    } else if (requirement instanceof Requirement.RouteCanBeCleared r) {
      states = Term.and(apparatus.surelyOff(r.route()), apparatus.lies(r.route()));
    } else if (requirement instanceof Requirement.LeverCanBeMoved r) {
      states = apparatus.words().is(Quantity.lever(r.lever()), Position.R);
    } else {
      throw new IllegalArgumentException("no encoding of " + requirement.id());
    }
    return new Target(requirement.id(), states, makings, true);
  }

  Target of(Subject subject) {
    Term states;
    if (subject instanceof Subject.SignalOff s) {
      states = apparatus.surelyOff(s.signal());
    } else if (subject instanceof Subject.RouteSignalled s) {
      states =
          Term.or(
              s.routes().stream()
                  .map(r -> Term.and(apparatus.surelyOff(r), apparatus.lies(r)))
                  .toList());
    } else if (subject instanceof Subject.Bolted s) {
      states = apparatus.bolted(s.points());
    } else if (subject instanceof Subject.PartWay s) {
      states = apparatus.partWay(s.points());
    } else if (subject instanceof Subject.PointsLie s) {
      states = some(s.points(), s.lie());
    } else if (subject instanceof Subject.LeverReversed s) {
      states = apparatus.words().is(Quantity.lever(s.lever()), Position.R);
    } else if (subject instanceof Subject.FrameOpen s) {
      states =
          Term.or(
              apparatus.box().layout().groundFrame(s.groundFrame()).points().stream()
                  .map(p -> apparatus.words().is(Quantity.points(p), Position.R))
                  .toList());
    } else if (subject instanceof Subject.TokenOut s) {
      states = count(s.section(), 1);
    } else {
      throw new IllegalArgumentException("no encoding of " + subject.id());
    }
    return new Target(subject.id(), states, List.of(), false);
  }

  private Term some(List<String> points, Lie lie) {
    return Term.or(points.stream().map(p -> apparatus.lie(p, lie)).toList());
  }

  private Term oneLies(List<Route> routes) {
    return Term.or(routes.stream().map(apparatus::lies).toList());
  }

  private Term pointsSet(Requirement.PointsSet r) {
    List<Term> ways =
        r.routes().stream()
            .map(route -> Term.and(apparatus.lies(route), apparatus.trapsLie(route)))
            .toList();
    Term by =
        r.lever()
            .map(l -> apparatus.words().isNot(Quantity.lever(l), Position.N))
            .orElse(Term.TRUE);
    return Term.and(apparatus.off(r.signal()), by, Term.not(Term.or(ways)));
  }

  private List<Making> routeHeld(Route route) {
    Set<Quantity> held = Set.copyOf(apparatus.held(route));
    Term when = Term.and(apparatus.off(route.signal()), apparatus.lies(route));
    return makings(event -> held.contains(moved(event)), when);
  }

  private Term sidingNotLocked(Requirement.SidingLocked r) {
    Term empty = apparatus.home(r.groundFrame());
    return Term.or(
        Term.and(empty, Term.not(apparatus.points(r.groundFrame(), Position.N))),
        Term.and(Term.not(empty), count(r.section(), 2)));
  }

  private static Quantity moved(Event event) {
    if (event instanceof Event.AtLock e) {
      return Quantity.lock(e.section(), e.groundFrame());
    }
    if (event instanceof LeverMoves e) {
      return Quantity.lever(e.lever());
    }
    if (event instanceof Event.GatesMove e) {
      return Quantity.gates(e.levelCrossing());
    }
    return event instanceof Event.PointsMove e ? Quantity.points(e.points()) : null;
  }

  private List<Making> makings(Predicate<Event> which, Term when) {
    return IntStream.range(0, movements.size())
        .filter(i -> moved(movements.get(i).event()) != null)
        .filter(i -> which.test(movements.get(i).event()))
        .mapToObj(i -> new Making(i, when))
        .toList();
  }

  private Term noConflict(Requirement.NoConflict r) {
    List<Term> all = new ArrayList<>();
    all.add(apparatus.off(r.first()));
    all.add(apparatus.off(r.second()));
    List<Term> pairs = new ArrayList<>();
    for (Conflict conflict : r.conflicts()) {
      Term lie = Term.and(apparatus.lies(conflict.first()), apparatus.lies(conflict.second()));
      pairs.add(
          r.closing().isPresent() && conflict.opposed()
              ? Term.and(lie, notSwitchedOut(r.closing().get()))
              : lie);
    }
    if (!r.always()) {
      all.add(Term.or(pairs));
    } else if (r.closing().isPresent()) {
      pairs.add(notSwitchedOut(r.closing().get()));
      all.add(Term.or(pairs));
    }
    return Term.and(all);
  }

  private Term notSwitchedOut(String closing) {
    return Term.not(apparatus.words().is(Quantity.lever(closing), Position.R));
  }

  private Term boxClosed(Requirement.BoxClosed r) {
    List<Term> notOff = r.signals().stream().map(s -> Term.not(apparatus.surelyOff(s))).toList();
    return Term.and(
        Term.not(apparatus.words().is(Quantity.lever(r.lever()), Position.N)), Term.or(notOff));
  }

  private Term distantFollows(Requirement.DistantFollows r) {
    List<Term> amiss = new ArrayList<>();
    if (r.path().posts().isEmpty()) {
      amiss.add(Term.TRUE);
    }
    for (int i = 0; i < r.path().posts().size(); i++) {
      List<String> beyond = r.path().beyond().get(i);
      amiss.add(
          Term.not(
              Term.or(
                  r.path().posts().get(i).stream()
                      .map(s -> apparatus.surelyOff(s, beyond))
                      .toList())));
    }
    for (PointsOnRoute points : r.path().facing()) {
      amiss.add(Term.not(apparatus.lie(points.points(), points.lie())));
      if (r.passenger().contains(points.points())) {
        amiss.add(Term.not(apparatus.bolted(points.points())));
      }
    }
    return Term.and(apparatus.off(r.path().distant()), Term.or(amiss));
  }

  private List<Making> earned(Requirement.SectionSignalEarned r) {
    List<String> levers =
        apparatus.box().givingInto(r.section(), r.signal()).stream().map(Lever::id).toList();
    Term noneFresh =
        apparatus
            .words()
            .count(Quantity.freshTokens(r.section(), section(r.section()).tokens()), n -> n == 0);
    if (apparatus.isControlled(r.signal())) {
      return goesOff(r, noneFresh);
    }
    return makings(
        event ->
            event instanceof LeverMoves e && levers.contains(e.lever()) && e.from() == Position.N,
        noneFresh);
  }

  /** Every movement by which a controlled signal goes off. */
  private List<Making> goesOff(Requirement.SectionSignalEarned r, Term when) {
    ArmsGoingOff arms = new ArmsGoingOff(apparatus);
    return IntStream.range(0, movements.size())
        .mapToObj(
            i ->
                new Making(
                    i, Term.and(arms.goesOff(movements.get(i), r.section(), r.signal()), when)))
        .filter(m -> !m.when().equals(Term.FALSE))
        .toList();
  }

  private Term count(String section, int least) {
    return apparatus
        .words()
        .count(Quantity.tokensOut(section, section(section).tokens()), n -> n >= least);
  }

  private Section section(String name) {
    return apparatus.box().sections().stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
