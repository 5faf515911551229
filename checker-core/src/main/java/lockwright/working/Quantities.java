package lockwright.working;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import lockwright.railway.Box;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.LevelCrossing;
import lockwright.railway.layout.Points;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.section.Section;
import lockwright.railway.words.Quantity;

/** The quantities of a box, in order, and the shortest ways to speak of their values. */
final class Quantities {
  private final List<Quantity> all = new ArrayList<>();
  private final Map<Quantity, Integer> places = new HashMap<>();

  Quantities(Box box) {
    box.frame().levers().forEach(l -> add(Quantity.lever(l.id())));
    pointsBesideLevers(box).forEach(p -> add(Quantity.points(p)));
    lockedGates(box).forEach(c -> add(Quantity.gates(c)));
    electricPoints(box).forEach(p -> add(Quantity.points(p)));
    brokenRods(box).forEach(p -> add(Quantity.rod(p)));
    turns(box).forEach(this::add);
    box.sections().forEach(s -> addSection(box, s));
    box.controls().conditions().forEach(c -> add(Quantity.condition(c.name())));
  }

  /** One for each pair of levers of which one waits for the other, in the order of the table. */
  static List<Quantity> turns(Box box) {
    return box.locking().stream()
        .filter(e -> e.kind() == Entry.Kind.NOT_AGAIN_BEFORE)
        .map(e -> Quantity.turn(e.lever(), e.others().get(0)))
        .distinct()
        .toList();
  }

  /** The points that ground frames work, or that are worked by hand, in the order of the plan. */
  static List<String> pointsBesideLevers(Box box) {
    return box.layout().points().stream()
        .filter(p -> p.byHand() || box.layout().pointsOfGroundFrames().containsKey(p.id()))
        .map(Points::id)
        .toList();
  }

  /** The level crossings whose gates move by themselves under a lock, in the order of the plan. */
  static List<String> lockedGates(Box box) {
    return box.layout().levelCrossings().stream()
        .map(LevelCrossing::id)
        .filter(c -> box.frame().ofLevelCrossing(c).work() instanceof Work.OfGateLock)
        .toList();
  }

  /** The points that levers work electrically, in the order of the plan. */
  static List<String> electricPoints(Box box) {
    List<String> some =
        box.frame().levers().stream().flatMap(l -> answering(box, l.id()).stream()).toList();
    return box.layout().points().stream().map(Points::id).filter(some::contains).toList();
  }

  /** The points that a lever waits for at M. */
  static List<String> answering(Box box, String lever) {
    return box.frame().connections().electric().contains(lever)
        ? ((Work.OfPoints) box.frame().lever(lever).work()).points()
        : List.of();
  }

  /** The points whose rod may break, in the order of the plan. */
  static List<String> brokenRods(Box box) {
    List<String> some = box.frame().connections().brokenRods();
    return box.layout().points().stream().map(Points::id).filter(some::contains).toList();
  }

  /** The section signals of a section: 1.6. */
  static List<String> sectionSignals(Box box, String section) {
    return box.routes().stream()
        .filter(r -> r.end().equals(new Route.End.InSection(section)))
        .map(Route::signal)
        .filter(s -> box.layout().signal(s).arm().running())
        .distinct()
        .toList();
  }

  /** 4.3: whether a section signal goes off into the section as the lever leaves N. */
  static boolean goesOffInto(Box box, Work work, String signal, String section) {
    return work instanceof Work.OfSignal of
        && of.signal().equals(signal)
        && (of.ways().isEmpty()
            || box.routes().stream()
                .filter(r -> r.signal().equals(signal))
                .filter(r -> r.end().equals(new Route.End.InSection(section)))
                .anyMatch(r -> !Collections.disjoint(r.tracks(), of.ways())));
  }

  private void addSection(Box box, Section s) {
    add(Quantity.phase(s.name()));
    s.instruments().forEach(i -> add(Quantity.tokensIn(s.name(), i.name(), s.tokens())));
    add(Quantity.tokensOut(s.name(), s.tokens()));
    s.instruments().stream()
        .filter(Section.Instrument::attended)
        .forEach(i -> add(Quantity.plunging(s.name(), i.name())));
    s.instruments().forEach(i -> add(Quantity.withdrawal(s.name(), i.name())));
    s.release().ifPresent(r -> add(Quantity.release(s.name())));
    if (!sectionSignals(box, s.name()).isEmpty()) {
      add(Quantity.freshTokens(s.name(), s.tokens()));
    }
    if (s.irregular() == Section.Irregular.ONCE) {
      add(Quantity.irregularWithdrawal(s.name()));
    }
    s.locks().forEach(l -> add(Quantity.lock(s.name(), l.groundFrame())));
  }

  private void add(Quantity quantity) {
    if (places.putIfAbsent(quantity, all.size()) != null) {
      throw new IllegalArgumentException("two quantities of one name: " + quantity.key());
    }
    all.add(quantity);
  }

  List<Quantity> all() {
    return List.copyOf(all);
  }

  boolean has(Quantity quantity) {
    return places.containsKey(quantity);
  }

  int place(Quantity quantity) {
    Integer place = places.get(quantity);
    if (place == null) {
      throw new IllegalArgumentException("the box has no " + quantity.key());
    }
    return place;
  }

  /** The quantity has one of these values. */
  Condition is(Quantity quantity, String... values) {
    List<String> wanted = Arrays.asList(values);
    if (!quantity.values().containsAll(wanted)) {
      throw new IllegalArgumentException(quantity.key() + " is never one of " + wanted);
    }
    return satisfies(quantity, v -> wanted.contains(quantity.values().get(v)));
  }

  /** Each quantity has the value that it has in the state. */
  Condition stand(State state) {
    return Condition.all(
        IntStream.range(0, all.size()).mapToObj(i -> is(all.get(i), state.value(i))).toList());
  }

  /** The count, from 0, is such a number. */
  Condition satisfies(Quantity quantity, IntPredicate wanted) {
    BitSet set = new BitSet();
    IntStream.range(0, quantity.values().size()).filter(wanted).forEach(set::set);
    return Condition.oneOf(place(quantity), quantity, set);
  }

  /** The quantity gets this value. */
  Effect set(Quantity quantity, String value) {
    int index = quantity.values().indexOf(value);
    if (index < 0) {
      throw new IllegalArgumentException(quantity.key() + " is never " + value);
    }
    return map(quantity, v -> index);
  }

  /** A count, or a value that turns into the next one; at the edge it stays. */
  Effect map(Quantity quantity, IntUnaryOperator becomes) {
    int last = quantity.values().size() - 1;
    return new Effect(
        place(quantity),
        IntStream.rangeClosed(0, last)
            .map(v -> Math.max(0, Math.min(last, becomes.applyAsInt(v))))
            .boxed()
            .toList());
  }
}
