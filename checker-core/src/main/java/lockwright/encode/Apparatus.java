package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.control.Contact;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Term;

/**
 * What the positions of levers mean for arms, points, bolts and releases; `docs/meaning.md` 2.2.
 */
record Apparatus(Box box, Vocabulary words) {
  /** Off, where off is the danger. */
  Term off(String signal) {
    return joined(signal, leversOf(box.frame().giving(signal), Position.N, false));
  }

  /** The same by the levers with which the arm goes off into a section. */
  Term offInto(String section, String signal) {
    return joined(signal, leversOf(box.givingInto(section, signal), Position.N, false));
  }

  /** Off, where off is the goal. */
  Term surelyOff(String signal) {
    return joined(signal, leversOf(box.frame().giving(signal), Position.R, true));
  }

  /** The same for a route: by levers that are for it. */
  Term surelyOff(Route route) {
    return joined(route.signal(), leversOf(box.giving(route), Position.R, true));
  }

  /** The same along a path, by levers that are for it. */
  Term surelyOff(String signal, List<String> beyond) {
    List<Lever> admitting =
        box.frame().giving(signal).stream()
            .filter(l -> l.work() instanceof Work.OfSignal w && w.isFor(beyond))
            .toList();
    return joined(signal, leversOf(admitting, Position.R, true));
  }

  private List<Term> leversOf(List<Lever> levers, Position position, boolean at) {
    return levers.stream()
        .map(l -> words.is(Quantity.lever(l.id()), position))
        .map(t -> at ? t : Term.not(t))
        .toList();
  }

  /** Off by all of slotted levers, else by any; and no control holds it on. */
  private Term joined(String signal, List<Term> levers) {
    return Term.and(
        box.frame().slotted(signal) ? Term.and(levers) : Term.or(levers), satisfied(signal));
  }

  boolean isControlled(String signal) {
    return box.controls().armControls().stream().anyMatch(c -> c.signal().equals(signal));
  }

  /** The control of an arm lets it be off. */
  private Term satisfied(String signal) {
    return Term.and(
        box.controls().armControls().stream()
            .filter(c -> c.signal().equals(signal))
            .flatMap(c -> c.needs().stream())
            .map(this::makes)
            .toList());
  }

  /** What a lever lock or an arm control asks is so; `docs/meaning.md` 2.9. */
  Term makes(Contact contact) {
    if (contact instanceof Contact.Outside c) {
      return words.is(Quantity.condition(c.condition()), "met");
    } else if (contact instanceof Contact.ArmOff c) {
      return surelyOff(c.signal());
    } else if (contact instanceof Contact.ArmAtDanger c) {
      return Term.not(off(c.signal()));
    }
    throw new IllegalArgumentException("a contact of no known kind: " + contact.words());
  }

  /** What moves points: their lever; at a ground frame, and by hand, they themselves. */
  Quantity mover(String points) {
    return box.frame()
        .ofPoints(points)
        .map(l -> Quantity.lever(l.id()))
        .orElse(Quantity.points(points));
  }

  /** All whose movements are movements of the points. */
  Set<Quantity> movers(String points) {
    return box.frame().electrically(points)
        ? Set.of(mover(points), Quantity.points(points))
        : Set.of(mover(points));
  }

  Term lie(String points, Lie lie) {
    return stand(points, at(lie));
  }

  /** How the points themselves stand; those with a broken rod where they were left. */
  private Term stand(String points, Position position) {
    if (box.layout().sprung(points)) {
      return position == Position.N ? Term.TRUE : Term.FALSE;
    }
    if (box.frame().electrically(points)) {
      return words.is(Quantity.points(points), position);
    }
    Term moved = words.is(mover(points), position);
    return new Rods(box, words).mayBreak(points)
        ? Term.or(
            Term.and(words.is(Quantity.rod(points), Rods.WHOLE), moved),
            words.is(Quantity.rod(points), Rods.broken(position)))
        : moved;
  }

  /** That points do not lie otherwise, in so far as a position of their own says it. */
  Optional<Among> ownLie(String points, List<Lie> lies) {
    if (new Rods(box, words).mayBreak(points)) {
      List<String> left = new ArrayList<>(List.of(Rods.WHOLE));
      lies.stream().map(l -> Rods.broken(at(l))).distinct().forEach(left::add);
      return Optional.of(words.among(Quantity.rod(points), left.toArray(String[]::new)));
    }
    boolean own =
        box.layout().pointsBesideLevers().contains(points) || box.frame().electrically(points);
    return own
        ? Optional.of(
            words.among(
                Quantity.points(points),
                lies.stream().map(l -> at(l).name()).distinct().toArray(String[]::new)))
        : Optional.empty();
  }

  private static Position at(Lie lie) {
    return lie == Lie.NORMAL ? Position.N : Position.R;
  }

  Term partWay(String points) {
    return stand(points, Position.M);
  }

  /** That the lever of points stands at M; of a ground frame's, the points. */
  Term leverPartWay(String points) {
    return words.is(mover(points), Position.M);
  }

  Term lies(Route route) {
    return Term.and(route.needed().stream().map(p -> lie(p.points(), p.lie())).toList());
  }

  Term trapsLie(Route route) {
    return Term.and(route.flankTraps().stream().map(t -> lie(t.points(), t.lie())).toList());
  }

  Term bolted(String points) {
    Optional<Lever> economical = box.frame().ofEconomicalLock(points);
    return economical.isPresent()
        ? words.isNot(Quantity.lever(economical.get().id()), Position.M)
        : bolt(points, true);
  }

  Term unbolted(String points) {
    return bolt(points, false);
  }

  /** A bolt on a lever of its own surely in, or surely out; never, where there is none. */
  private Term bolt(String points, boolean in) {
    Optional<Lever> lever = box.frame().ofBolt(points);
    if (lever.isEmpty()) {
      return Term.FALSE;
    }
    boolean normallyIn = ((Work.OfBolt) lever.get().work()).normallyIn();
    return words.is(Quantity.lever(lever.get().id()), in == normallyIn ? Position.N : Position.R);
  }

  Term home(String groundFrame) {
    List<Term> each = new ArrayList<>();
    lock(groundFrame).ifPresent(q -> each.add(words.is(q, "empty")));
    lever(groundFrame).ifPresent(q -> each.add(words.is(q, Position.N)));
    return Term.or(each.toArray(Term[]::new));
  }

  /** The release of a ground frame is given, so that its points can be moved. */
  Term given(String groundFrame) {
    List<Term> each = new ArrayList<>();
    lock(groundFrame).ifPresent(q -> each.add(Term.not(words.is(q, "empty"))));
    lever(groundFrame).ifPresent(q -> each.add(words.is(q, Position.R)));
    return Term.and(each);
  }

  /**
   * What a ground frame needs to be released: its lever, a token in its lock, or both, the lever
   * first.
   */
  List<Quantity> releases(String groundFrame) {
    return Stream.concat(lever(groundFrame).stream(), lock(groundFrame).stream()).toList();
  }

  private Optional<Quantity> lever(String groundFrame) {
    return box.frame().ofRelease(groundFrame).map(l -> Quantity.lever(l.id()));
  }

  private Optional<Quantity> lock(String groundFrame) {
    return box.releasing(groundFrame).map(s -> Quantity.lock(s.name(), groundFrame));
  }

  /** All points of a ground frame stand so. */
  Term points(String groundFrame, Position position) {
    return Term.and(
        box.layout().groundFrame(groundFrame).points().stream()
            .map(p -> words.is(Quantity.points(p), position))
            .toList());
  }

  /** The gates across the road, and what can hold them there. */
  Term closed(String levelCrossing) {
    Lever lever = box.frame().ofLevelCrossing(levelCrossing);
    Quantity quantity = Quantity.lever(lever.id());
    if (lever.work() instanceof Work.OfGateLock lock) {
      return Term.and(
          words.is(Quantity.gates(levelCrossing), Position.N),
          words.is(quantity, lock.normallyIn() ? Position.N : Position.R));
    }
    boolean across = ((Work.OfGates) lever.work()).normallyAcrossRoad();
    return words.is(quantity, across ? Position.N : Position.R);
  }

  /**
   * The quantities of points, flank traps, bolts, releases and gates that a cleared route holds.
   */
  List<Quantity> held(Route route) {
    List<Quantity> held = new ArrayList<>();
    route.needed().forEach(p -> held.addAll(movers(p.points())));
    route.flankTraps().stream()
        .filter(t -> !box.layout().sprung(t.points()))
        .forEach(t -> held.addAll(movers(t.points())));
    route.points().stream()
        .filter(PointsOnRoute::facing)
        .flatMap(p -> box.frame().ofBolt(p.points()).stream())
        .forEach(l -> held.add(Quantity.lever(l.id())));
    route.points().stream()
        .map(p -> box.layout().pointsOfGroundFrames().get(p.points()))
        .filter(g -> g != null)
        .forEach(g -> held.add(releases(g.id()).get(0)));
    for (LevelCrossing crossing : box.layout().levelCrossings()) {
      if (crossing.isOn(route)) {
        held.add(Quantity.lever(box.frame().ofLevelCrossing(crossing.id()).id()));
        held.add(Quantity.gates(crossing.id()));
      }
    }
    return held.stream().distinct().toList();
  }
}
