package lockwright.working;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.frame.Work;
import lockwright.railway.section.Section;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.words.Quantity;

/**
 * The beginnings, 5 of {@code docs/meaning.md}: as a condition, and one by one. What is left open
 * is the place of some ground frames' points, where the tokens are, and some releases; each of
 * these is a digit, and the beginnings are counted through like numbers.
 */
final class Beginnings implements Iterable<State> {
  private final Quantities quantities;
  private final int[] fixed;
  private final List<Condition> conditions = new ArrayList<>();
  private final List<Digit> digits = new ArrayList<>();

  Beginnings(Box box, Quantities quantities) {
    this.quantities = quantities;
    this.fixed = new int[quantities.all().size()];
    box.frame().levers().forEach(l -> fix(Quantity.lever(l.id()), "N"));
    for (String points : Quantities.pointsBesideLevers(box)) {
      if (box.layout().points(points).byHand()) {
        byHand(box, points);
        continue;
      }
      String groundFrame = box.layout().pointsOfGroundFrames().get(points).id();
      if (heldWhileOpen(box, groundFrame)) {
        fix(Quantity.points(points), "N");
      } else {
        leaveOpen(Quantity.points(points));
      }
    }
    for (String crossing : Quantities.lockedGates(box)) {
      if (((Work.OfGateLock) box.frame().ofLevelCrossing(crossing).work()).normallyIn()) {
        fix(Quantity.gates(crossing), "N");
      } else {
        leaveOpen(Quantity.gates(crossing));
      }
    }
    Quantities.electricPoints(box).forEach(p -> fix(Quantity.points(p), "N"));
    Quantities.brokenRods(box).forEach(p -> fix(Quantity.rod(p), "whole"));
    Quantities.turns(box).forEach(t -> fix(t, "come"));
    box.sections().forEach(this::section);
    box.controls().conditions().forEach(c -> leaveOpen(Quantity.condition(c.name())));
  }

  /** 5: anywhere; but where their bolt is normally in, N or R. */
  private void byHand(Box box, String points) {
    Quantity quantity = Quantity.points(points);
    boolean in =
        box.frame().ofBolt(points).filter(l -> ((Work.OfBolt) l.work()).normallyIn()).isPresent();
    if (in) {
      digits.add(
          new Digit.Among(
              quantities.place(quantity),
              List.of(quantity.values().indexOf("N"), quantity.values().indexOf("R"))));
      conditions.add(quantities.is(quantity, "N", "R"));
    } else {
      leaveOpen(quantity);
    }
  }

  /** Whether the lever, or the token, that releases it is held while it is open. */
  private static boolean heldWhileOpen(Box box, String groundFrame) {
    return box.frame()
            .ofRelease(groundFrame)
            .filter(l -> ((Work.OfRelease) l.work()).heldWhileOpen())
            .isPresent()
        || box.sections().stream()
            .flatMap(s -> s.locks().stream())
            .anyMatch(l -> l.groundFrame().equals(groundFrame) && l.heldWhileOpen());
  }

  /** What the beginnings have in common, and nothing else has. */
  Condition condition() {
    return Condition.all(conditions);
  }

  private void section(Section s) {
    fix(Quantity.phase(s.name()), "in");
    distribute(s);
    fix(Quantity.tokensOut(s.name(), s.tokens()), "0");
    for (Section.Instrument e : s.instruments()) {
      if (e.attended()) {
        fix(Quantity.plunging(s.name(), e.name()), "no");
      }
      fix(Quantity.withdrawal(s.name(), e.name()), "no");
    }
    Quantity release = Quantity.release(s.name());
    Optional<Begins> begins = s.release().map(Section.Release::begins);
    if (begins.equals(Optional.of(Begins.EITHER))) {
      leaveOpen(release);
    } else {
      begins.ifPresent(b -> fix(release, b == Begins.GIVEN ? "given" : "locked"));
    }
    Quantity fresh = Quantity.freshTokens(s.name(), s.tokens());
    if (quantities.has(fresh)) {
      fix(fresh, "0");
    }
    if (s.irregular() == Section.Irregular.ONCE) {
      fix(Quantity.irregularWithdrawal(s.name()), "unused");
    }
    s.locks().forEach(l -> fix(Quantity.lock(s.name(), l.groundFrame()), "empty"));
  }

  private void fix(Quantity quantity, String value) {
    fixed[quantities.place(quantity)] = quantity.values().indexOf(value);
    conditions.add(quantities.is(quantity, value));
  }

  private void leaveOpen(Quantity quantity) {
    digits.add(new Digit.Choice(quantities.place(quantity), quantity.values().size()));
  }

  private void distribute(Section s) {
    List<Quantity> tokensIn =
        s.instruments().stream()
            .map(e -> Quantity.tokensIn(s.name(), e.name(), s.tokens()))
            .toList();
    digits.add(
        new Digit.Distribution(
            tokensIn.stream().mapToInt(quantities::place).toArray(), s.tokens()));
    conditions.add(summing(tokensIn, s.tokens()));
  }

  /** The counts add up to the sum. Built from the last count forwards, so that parts are shared. */
  private Condition summing(List<Quantity> counts, int sum) {
    List<Condition> behind = new ArrayList<>();
    for (int rest = 0; rest <= sum; rest++) {
      behind.add(rest == 0 ? Condition.TRUE : Condition.FALSE);
    }
    for (int i = counts.size() - 1; i >= 0; i--) {
      List<Condition> here = new ArrayList<>();
      for (int rest = 0; rest <= sum; rest++) {
        List<Condition> splits = new ArrayList<>();
        for (int own = 0; own <= rest; own++) {
          int v = own;
          Condition is = quantities.satisfies(counts.get(i), x -> x == v);
          splits.add(Condition.all(is, behind.get(rest - own)));
        }
        here.add(Condition.any(splits));
      }
      behind = here;
    }
    return behind.get(sum);
  }

  /** In order: the first digit counts most, as in a number. */
  @Override
  public Iterator<State> iterator() {
    int[] values = fixed.clone();
    digits.forEach(d -> d.first(values));
    return new Iterator<>() {
      private boolean more = true;

      @Override
      public boolean hasNext() {
        return more;
      }

      @Override
      public State next() {
        if (!more) {
          throw new NoSuchElementException();
        }
        State state = new State(quantities.all(), values.clone());
        more = advance(values);
        return state;
      }
    };
  }

  private boolean advance(int[] values) {
    for (int i = digits.size() - 1; i >= 0; i--) {
      if (digits.get(i).next(values)) {
        return true;
      }
      digits.get(i).first(values);
    }
    return false;
  }
}
