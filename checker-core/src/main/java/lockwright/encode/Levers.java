package lockwright.encode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.GroundFrame;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.locking.Entry;
import lockwright.railway.section.Section;
import lockwright.railway.words.Event.GatesMove;
import lockwright.railway.words.Event.LeverMoves;
import lockwright.railway.words.Event.PointsMove;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/**
 * The movements of levers and of the points of ground frames; `docs/meaning.md` 2.1, 2.3, 3, 4.3.
 */
final class Levers {
  private static final List<String> ENDS = List.of("N", "R");

  private final Box box;
  private final Vocabulary words;
  private final Strokes strokes;
  private final Locks locks;
  private final Turns turns;
  private final CheckedLevers checked;
  private final Rods rods;
  private final HandPoints byHand;

  /**
   * @param acting the entries of the locking table that act
   */
  Levers(Box box, List<Entry> acting, Vocabulary words, Strokes strokes) {
    this.box = box;
    this.words = words;
    this.strokes = strokes;
    locks = new Locks(acting, strokes == Strokes.WHOLE);
    turns = new Turns(acting, box.locking(), words);
    checked = new CheckedLevers(box, words, strokes);
    rods = new Rods(box, words);
    byHand = new HandPoints(box, words);
  }

  void declare() {
    box.frame().levers().forEach(l -> words.add(Quantity.lever(l.id())));
    pointsInOrderOfPlan().forEach(p -> words.add(Quantity.points(p)));
    gatesUnderLock().keySet().forEach(c -> words.add(Quantity.gates(c)));
    checked.declare();
    rods.declare();
    turns.declare();
  }

  Term beginning() {
    List<Term> all = new ArrayList<>();
    box.frame().levers().forEach(l -> all.add(words.is(Quantity.lever(l.id()), Position.N)));
    gatesUnderLock()
        .forEach(
            (crossing, lock) -> {
              if (outAt(lock) != Position.N) {
                all.add(words.is(Quantity.gates(crossing), Position.N));
              }
            });
    all.add(checked.beginning());
    all.add(rods.beginning());
    all.add(turns.beginning());
    all.add(byHand.beginning());
    box.layout()
        .pointsOfGroundFrames()
        .forEach(
            (points, groundFrame) -> {
              if (held(groundFrame)) {
                all.add(words.is(Quantity.points(points), Position.N));
              }
            });
    return Term.and(all);
  }

  private static Clause ordered(List<Among> parts) {
    return new Clause(parts.stream().sorted(Comparator.comparingInt(Among::variable)).toList());
  }

  private boolean held(GroundFrame groundFrame) {
    return leverHeld(groundFrame) || tokenHeld(groundFrame);
  }

  private boolean leverHeld(GroundFrame groundFrame) {
    return box.frame()
        .ofRelease(groundFrame.id())
        .filter(l -> ((Work.OfRelease) l.work()).heldWhileOpen())
        .isPresent();
  }

  private boolean tokenHeld(GroundFrame groundFrame) {
    return box.releasing(groundFrame.id()).stream()
        .flatMap(s -> s.locks().stream())
        .anyMatch(l -> l.groundFrame().equals(groundFrame.id()) && l.heldWhileOpen());
  }

  List<Movement> movements() {
    List<Movement> movements = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      if (lever.work().moves()) {
        strokes.all().forEach(s -> movements.add(stroke(lever, s)));
      }
    }
    for (String points : pointsInOrderOfPlan()) {
      boolean hand = box.layout().byHand(points);
      strokes
          .all()
          .forEach(
              s -> movements.add(hand ? byHand.stroke(points, s) : groundFrameStroke(points, s)));
    }
    gatesUnderLock()
        .forEach(
            (crossing, lock) ->
                strokes.all().forEach(s -> movements.add(gatesStroke(crossing, lock, s))));
    movements.addAll(checked.movements());
    movements.addAll(rods.movements(strokes));
    return movements;
  }

  /** Level crossings whose gates have a lock, in the order of the plan, with its lever. */
  private Map<String, Lever> gatesUnderLock() {
    Map<String, Lever> locks = new LinkedHashMap<>();
    for (LevelCrossing crossing : box.layout().levelCrossings()) {
      Lever lever = box.frame().ofLevelCrossing(crossing.id());
      if (lever.work() instanceof Work.OfGateLock) {
        locks.put(crossing.id(), lever);
      }
    }
    return locks;
  }

  /** The end of the lever's stroke at which the gate lock is out. */
  private static Position outAt(Lever lock) {
    return ((Work.OfGateLock) lock.work()).normallyIn() ? Position.R : Position.N;
  }

  private List<String> pointsInOrderOfPlan() {
    return box.layout().pointsBesideLevers();
  }

  private Movement stroke(Lever lever, Strokes.Stroke stroke) {
    Quantity quantity = Quantity.lever(lever.id());
    List<Term> needs = new ArrayList<>();
    needs.add(words.is(quantity, stroke.from()));
    needs.add(locks.allow(lever.id(), stroke, words));
    List<Effect> does = new ArrayList<>();
    does.add(words.set(quantity, stroke.to().name()));
    does.addAll(turns.does(lever.id(), stroke));
    new Conditions(box, words).atStart(lever.id(), stroke, needs, does);
    needs.addAll(checked.needs(lever, stroke));
    needs.add(byHand.letsIn(lever, stroke));
    does.addAll(checked.does(lever, stroke));
    if (stroke.from() == Position.N) {
      otherWay(lever).ifPresent(o -> needs.add(words.is(o, Position.N)));
      needs.addAll(turns.needs(lever.id()));
      needs.add(new Detectors(new Apparatus(box, words), strokes).free(lever.id()));
      leavesNormal(lever, needs, does);
    }
    if (stroke.from() == Position.R
        && lever.work() instanceof Work.OfRelease release
        && release.heldWhileOpen()) {
      box.layout()
          .groundFrame(release.groundFrame())
          .points()
          .forEach(p -> needs.add(words.is(Quantity.points(p), Position.N)));
    }
    if (lever.work() instanceof Work.OfGateLock lock && stroke.from() == outAt(lever)) {
      needs.add(words.is(Quantity.gates(lock.levelCrossing()), Position.N));
    }
    return new Movement(
        new LeverMoves(lever.id(), stroke.from(), stroke.to()), Term.and(needs), does);
  }

  /** A push-pull lever leaves the middle one way at a time. */
  private Optional<Quantity> otherWay(Lever lever) {
    return lever.otherWay().map(Quantity::lever);
  }

  /** Token locks, and section signals that go off. */
  private void leavesNormal(Lever lever, List<Term> needs, List<Effect> does) {
    for (Section section : box.sections()) {
      Optional<Section.Release> release = section.release();
      if (release.isPresent() && release.get().levers().contains(lever.id())) {
        needs.add(words.is(Quantity.release(section.name()), "given"));
        does.add(words.set(Quantity.release(section.name()), "locked"));
      }
      if (lever.work() instanceof Work.OfSignal works
          && !new Apparatus(box, words).isControlled(works.signal())
          && SectionCoder.signals(section, box).contains(works.signal())
          && box.givingInto(section.name(), works.signal()).contains(lever)) {
        does.add(words.set(Quantity.freshTokens(section.name(), section.tokens()), "0"));
        section
            .locks()
            .forEach(
                l ->
                    does.add(
                        words.replace(
                            Quantity.lock(section.name(), l.groundFrame()), "fresh", "other")));
      }
    }
  }

  private Movement groundFrameStroke(String points, Strokes.Stroke stroke) {
    GroundFrame groundFrame = box.layout().pointsOfGroundFrames().get(points);
    Quantity quantity = Quantity.points(points);
    return new Movement(
        new PointsMove(points, stroke.from(), stroke.to()),
        Term.and(
            words.is(quantity, stroke.from()), new Apparatus(box, words).given(groundFrame.id())),
        List.of(words.set(quantity, stroke.to().name())));
  }

  private Movement gatesStroke(String crossing, Lever lock, Strokes.Stroke stroke) {
    Quantity gates = Quantity.gates(crossing);
    return new Movement(
        new GatesMove(crossing, stroke.from(), stroke.to()),
        Term.and(words.is(gates, stroke.from()), words.is(Quantity.lever(lock.id()), outAt(lock))),
        List.of(words.set(gates, stroke.to().name())));
  }

  /**
   * That no forbidden combination comes about, that what a ground frame or a gate lock holds is
   * held; and that by whole strokes nothing is left part-way, and what does not move stays normal.
   */
  List<Clause> candidates() {
    List<Clause> clauses = new ArrayList<>(locks.clauses(words));
    clauses.addAll(new Detectors(new Apparatus(box, words), strokes).clauses());
    clauses.addAll(checked.clauses());
    clauses.addAll(rods.clauses(strokes));
    clauses.addAll(byHand.clauses());
    for (Lever lever : box.frame().levers()) {
      Optional<Quantity> other = otherWay(lever).filter(o -> lever.id().endsWith(Lever.PULL));
      if (other.isPresent()) {
        Among pull = words.among(Quantity.lever(lever.id()), "N");
        clauses.add(ordered(List.of(pull, words.among(other.get(), "N"))));
      }
    }
    if (strokes == Strokes.WHOLE) {
      for (Lever lever : box.frame().levers()) {
        clauses.add(at(Quantity.lever(lever.id()), lever.work().moves() ? ENDS : List.of("N")));
      }
      pointsInOrderOfPlan().forEach(p -> clauses.add(at(Quantity.points(p), ENDS)));
      gatesUnderLock().keySet().forEach(c -> clauses.add(at(Quantity.gates(c), ENDS)));
    }
    box.layout()
        .pointsOfGroundFrames()
        .forEach(
            (points, groundFrame) -> {
              Among normal = words.among(Quantity.points(points), "N");
              if (leverHeld(groundFrame)) {
                Quantity lever =
                    Quantity.lever(box.frame().ofRelease(groundFrame.id()).orElseThrow().id());
                clauses.add(ordered(List.of(words.among(lever, "R"), normal)));
              }
              if (tokenHeld(groundFrame)) {
                Quantity lock =
                    Quantity.lock(
                        box.releasing(groundFrame.id()).orElseThrow().name(), groundFrame.id());
                clauses.add(ordered(List.of(words.among(lock, "fresh", "other"), normal)));
              }
            });
    gatesUnderLock()
        .forEach(
            (crossing, lock) ->
                clauses.add(
                    new Clause(
                        List.of(
                            words.among(Quantity.lever(lock.id()), outAt(lock).name()),
                            words.among(Quantity.gates(crossing), "N")))));
    return clauses;
  }

  private Clause at(Quantity quantity, List<String> positions) {
    return new Clause(List.of(words.among(quantity, positions.toArray(String[]::new))));
  }
}
