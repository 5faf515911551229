package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lockwright.railway.section.Section;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.words.Event;
import lockwright.railway.words.Event.Deed;
import lockwright.railway.words.Event.LockDeed;
import lockwright.railway.words.Quantity;

/**
 * The movements of a single-line section: 4.2 of {@code docs/meaning.md}, a method a line of its
 * table. A count at the edge of its range holds a movement that would carry it beyond; since tokens
 * are neither made nor lost, this holds none that the table does not hold.
 */
final class SectionMovements {
  private final Section section;
  private final Quantities quantities;
  private final Apparatus apparatus;
  private final Quantity phase;
  private final Quantity out;
  private final Quantity fresh;
  private final boolean countsFresh;
  private final boolean regular;

  SectionMovements(Section section, Quantities quantities, Apparatus apparatus, Strokes strokes) {
    this.apparatus = apparatus;
    this.section = section;
    this.regular = strokes == Strokes.WHOLE || section.irregular() == Irregular.NEVER;
    this.quantities = quantities;
    this.phase = Quantity.phase(section.name());
    this.out = Quantity.tokensOut(section.name(), section.tokens());
    this.fresh = Quantity.freshTokens(section.name(), section.tokens());
    this.countsFresh = quantities.has(fresh);
  }

  List<Movement> all() {
    List<Movement> all = new ArrayList<>();
    for (Deed deed : Deed.values()) {
      for (Instrument e : section.instruments()) {
        if (canBe(deed, e)) {
          List<Need> needs = new ArrayList<>();
          List<Effect> effects = new ArrayList<>();
          describe(deed, e, needs, effects);
          Event event = new Event.AtInstrument(section.name(), deed, e.name());
          all.add(new Movement(event, needs, effects));
        }
      }
    }
    for (LockDeed deed : LockDeed.values()) {
      for (Section.Lock lock : section.locks()) {
        if (countsFresh || deed != LockDeed.PUT_FRESH_IN) {
          all.add(atLock(deed, lock));
        }
      }
    }
    return all;
  }

  private Movement atLock(LockDeed deed, Section.Lock lock) {
    String frame = lock.groundFrame();
    Quantity in = Quantity.lock(section.name(), frame);
    List<Need> needs = new ArrayList<>();
    String becomes =
        switch (deed) {
          case PUT_FRESH_IN -> "fresh";
          case PUT_OTHER_IN -> "other";
          case TAKE_OUT -> "empty";
        };
    if (deed == LockDeed.TAKE_OUT) {
      needs.add(Need.rule(quantities.is(in, "fresh", "other"), "nothing is in its lock"));
      if (lock.heldWhileOpen()) {
        needs.add(
            Need.rule(
                apparatus.closed(frame),
                "it is held until all points of ground frame " + frame + " lie normal"));
      }
    } else {
      needs.add(Need.rule(quantities.is(in, "empty"), "a token is in the lock of " + frame));
      needs.add(deed == LockDeed.PUT_FRESH_IN ? freshToHand() : otherToHand());
    }
    return new Movement(
        new Event.AtLock(section.name(), deed, frame), needs, List.of(quantities.set(in, becomes)));
  }

  /** A fresh token is in no lock: of these there are more than locks with a fresh one. */
  private Need freshToHand() {
    List<Condition> each = new ArrayList<>();
    for (int locks = 0; locks <= section.locks().size(); locks++) {
      each.add(Condition.any(Condition.not(inLocks("fresh", locks)), atLeast(fresh, locks + 1)));
    }
    return Need.rule(Condition.all(each), "no fresh token is out, but in a lock");
  }

  /** A token that is out and not fresh is in no lock. */
  private Need otherToHand() {
    List<Condition> each = new ArrayList<>();
    for (int locks = 0; locks <= section.locks().size(); locks++) {
      Condition more = countsFresh ? outBeyondFresh(locks + 1) : atLeast(out, locks + 1);
      each.add(Condition.any(Condition.not(inLocks("other", locks)), more));
    }
    return Need.rule(
        Condition.all(each),
        countsFresh
            ? "no token is out, but fresh ones or in a lock"
            : "no token is out and to hand");
  }

  /** This many tokens or more are out besides the fresh ones. */
  private Condition outBeyondFresh(int least) {
    return Condition.any(
        IntStream.rangeClosed(0, section.tokens() - least)
            .mapToObj(
                f ->
                    Condition.all(
                        quantities.satisfies(fresh, v -> v == f), atLeast(out, f + least)))
            .toList());
  }

  /** So many locks or more have a token of the kind in them. */
  private Condition inLocks(String kind, int least) {
    return inLocks(kind, least, section.locks());
  }

  private Condition inLocks(String kind, int least, List<Section.Lock> among) {
    if (least <= 0) {
      return Condition.TRUE;
    } else if (least > among.size()) {
      return Condition.FALSE;
    }
    List<Section.Lock> rest = among.subList(1, among.size());
    return Condition.any(
        inLocks(kind, least, rest),
        Condition.all(
            quantities.is(Quantity.lock(section.name(), among.get(0).groundFrame()), kind),
            inLocks(kind, least - 1, rest)));
  }

  private boolean canBe(Deed deed, Instrument e) {
    return switch (deed) {
      case PLUNGE, STOP_PLUNGING -> e.attended();
      case PUT_FRESH_IN -> countsFresh;
      case IRREGULAR_WITHDRAWAL -> !regular;
      default -> true;
    };
  }

  private void describe(Deed deed, Instrument e, List<Need> needs, List<Effect> effects) {
    switch (deed) {
      case PLUNGE -> plunge(e, needs, effects);
      case STOP_PLUNGING -> stopPlunging(e, needs, effects);
      case START_WITHDRAWAL -> start(e, needs, effects);
      case FINISH_WITHDRAWAL -> finish(e, needs, effects);
      case GIVE_UP_WITHDRAWAL -> giveUp(e, needs, effects);
      case PUT_FRESH_IN -> putFreshIn(e, needs, effects);
      case PUT_OTHER_IN -> putOtherIn(e, needs, effects);
      case IRREGULAR_WITHDRAWAL -> irregular(e, needs, effects);
    }
  }

  private void plunge(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(plunges(e, "no"), e.name() + " is plunging already"));
    if (!section.plungeWhileWithdrawing()) {
      needs.add(
          Need.rule(underWay(e, "no"), "nobody plunges at " + e.name() + " while he withdraws"));
    }
    effects.add(quantities.set(plunging(e), "yes"));
  }

  private void stopPlunging(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(plunges(e, "yes"), e.name() + " is not plunging"));
    effects.add(quantities.set(plunging(e), "no"));
  }

  private void start(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(underWay(e, "no"), "a withdrawal is under way at " + e.name()));
    needs.add(Need.rule(quantities.is(phase, "in"), "the instruments are out of phase"));
    needs.add(tokenIn(e));
    for (Instrument other : section.instruments()) {
      if (e.needsConsentOf().contains(other.name())) {
        needs.add(
            Need.rule(
                other.attended() ? plunges(other, "yes") : Condition.FALSE,
                other.name() + " does not consent"));
      }
    }
    if (!section.plungeWhileWithdrawing() && e.attended()) {
      needs.add(
          Need.rule(plunges(e, "no"), "nobody withdraws at " + e.name() + " while he plunges"));
    }
    effects.add(quantities.set(withdrawal(e), "yes"));
    if (section.phaseReversesAtStart()) {
      effects.add(phaseReverses());
    }
  }

  private void finish(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(underWay(e, "yes"), "no withdrawal is under way at " + e.name()));
    needs.add(tokenIn(e));
    effects.add(quantities.set(withdrawal(e), "no"));
    takenOut(e, needs, effects);
    if (!section.phaseReversesAtStart()) {
      effects.add(phaseReverses());
    }
  }

  private void giveUp(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(underWay(e, "yes"), "no withdrawal is under way at " + e.name()));
    effects.add(quantities.set(withdrawal(e), "no"));
    if (section.phaseReversesAtStart()) {
      effects.add(phaseReverses());
    }
  }

  private void putFreshIn(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(freshToHand());
    putIn(e, needs, effects);
    effects.add(quantities.map(fresh, v -> v - 1));
  }

  private void putOtherIn(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(otherToHand());
    putIn(e, needs, effects);
  }

  private void irregular(Instrument e, List<Need> needs, List<Effect> effects) {
    if (section.irregular() == Irregular.ONCE) {
      Quantity once = Quantity.irregularWithdrawal(section.name());
      needs.add(
          Need.rule(quantities.is(once, "unused"), "the one irregular withdrawal has been made"));
      effects.add(quantities.set(once, "used"));
    }
    needs.add(tokenIn(e));
    takenOut(e, needs, effects);
    effects.add(phaseReverses());
  }

  /** A token comes out at e, by the rules or against them. */
  private void takenOut(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(atMost(out, section.tokens() - 1), "all tokens are out"));
    effects.add(quantities.map(tokensIn(e), v -> v - 1));
    effects.add(quantities.map(out, v -> v + 1));
    if (e.name().equals(section.here())) {
      section.release().ifPresent(r -> effects.add(setRelease("given")));
      if (countsFresh) {
        needs.add(Need.rule(atMost(fresh, section.tokens() - 1), "all tokens are fresh"));
        effects.add(quantities.map(fresh, v -> v + 1));
      }
    }
  }

  /** A token is put in at e, fresh or other. */
  private void putIn(Instrument e, List<Need> needs, List<Effect> effects) {
    needs.add(Need.rule(atLeast(out, 1), "no token is out"));
    needs.add(
        Need.rule(atMost(tokensIn(e), section.tokens() - 1), "all tokens are in " + e.name()));
    effects.add(quantities.map(tokensIn(e), v -> v + 1));
    effects.add(quantities.map(out, v -> v - 1));
    effects.add(phaseReverses());
    section
        .release()
        .filter(r -> locksWhenPutIn(r.lasts(), e))
        .ifPresent(r -> effects.add(setRelease("locked")));
  }

  private boolean locksWhenPutIn(Lasts lasts, Instrument e) {
    return switch (lasts) {
      case UNTIL_USED -> false;
      case UNTIL_PUT_IN_HERE -> e.name().equals(section.here());
      case UNTIL_PUT_IN -> true;
    };
  }

  private Effect phaseReverses() {
    return quantities.map(phase, v -> 1 - v);
  }

  private Effect setRelease(String value) {
    return quantities.set(Quantity.release(section.name()), value);
  }

  private Need tokenIn(Instrument e) {
    return Need.rule(atLeast(tokensIn(e), 1), "no token is in " + e.name());
  }

  private Condition atLeast(Quantity count, int least) {
    return quantities.satisfies(count, v -> v >= least);
  }

  private Condition atMost(Quantity count, int most) {
    return quantities.satisfies(count, v -> v <= most);
  }

  private Condition plunges(Instrument e, String value) {
    return quantities.is(plunging(e), value);
  }

  private Condition underWay(Instrument e, String value) {
    return quantities.is(withdrawal(e), value);
  }

  private Quantity plunging(Instrument e) {
    return Quantity.plunging(section.name(), e.name());
  }

  private Quantity withdrawal(Instrument e) {
    return Quantity.withdrawal(section.name(), e.name());
  }

  private Quantity tokensIn(Instrument e) {
    return Quantity.tokensIn(section.name(), e.name(), section.tokens());
  }
}
