package lockwright.encode;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.section.Section.Lock;
import lockwright.railway.words.Event.AtInstrument;
import lockwright.railway.words.Event.AtLock;
import lockwright.railway.words.Event.Deed;
import lockwright.railway.words.Event.LockDeed;
import lockwright.railway.words.Quantity;
import lockwright.system.Clause;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/** One single-line section: its quantities, beginning, events and likely invariants; meaning 4. */
final class SectionCoder {
  private final Section section;
  private final Apparatus apparatus;
  private final boolean counted;
  private final boolean irregularly;
  private final Vocabulary words;
  private final String name;
  private final int tokens;
  private final Quantity phase;
  private final Quantity out;
  private final Quantity fresh;
  private final Quantity release;
  private final Quantity irregular;

  SectionCoder(Section section, Box box, Vocabulary words, Strokes strokes) {
    this.section = section;
    irregularly = strokes == Strokes.PARTED && section.irregular() != Irregular.NEVER;
    this.words = words;
    name = section.name();
    tokens = section.tokens();
    apparatus = new Apparatus(box, words);
    counted = signals(section, box).size() > 0;
    phase = Quantity.phase(name);
    out = Quantity.tokensOut(name, tokens);
    fresh = Quantity.freshTokens(name, tokens);
    release = Quantity.release(name);
    irregular = Quantity.irregularWithdrawal(name);
  }

  /** The signals into a section, by the requirement that speaks of each. */
  static List<String> signals(Section section, Box box) {
    Set<String> signals = new LinkedHashSet<>();
    for (Requirement requirement : box.requirements()) {
      if (requirement instanceof Requirement.SectionSignalEarned earned
          && earned.section().equals(section.name())) {
        signals.add(earned.signal());
      }
    }
    return List.copyOf(signals);
  }

  private Quantity in(Instrument instrument) {
    return Quantity.tokensIn(name, instrument.name(), tokens);
  }

  private Quantity plunging(String instrument) {
    return Quantity.plunging(name, instrument);
  }

  private Quantity withdrawal(Instrument instrument) {
    return Quantity.withdrawal(name, instrument.name());
  }

  private Quantity in(Lock lock) {
    return Quantity.lock(name, lock.groundFrame());
  }

  private boolean here(Instrument instrument) {
    return instrument.name().equals(section.here());
  }

  void declare() {
    words.add(phase);
    section.instruments().forEach(i -> words.add(in(i)));
    words.add(out);
    section.instruments().stream()
        .filter(Instrument::attended)
        .forEach(i -> words.add(plunging(i.name())));
    section.instruments().forEach(i -> words.add(withdrawal(i)));
    if (section.release().isPresent()) {
      words.add(release);
    }
    if (counted) {
      words.add(fresh);
    }
    if (section.irregular() == Irregular.ONCE) {
      words.add(irregular);
    }
    section.locks().forEach(l -> words.add(in(l)));
  }

  Term beginning() {
    List<Term> all = new ArrayList<>();
    all.add(words.is(phase, "in"));
    all.add(inInstruments(0, tokens));
    all.add(words.is(out, "0"));
    for (Instrument instrument : section.instruments()) {
      if (instrument.attended()) {
        all.add(words.is(plunging(instrument.name()), "no"));
      }
      all.add(words.is(withdrawal(instrument), "no"));
    }
    section
        .release()
        .filter(r -> r.begins() != Begins.EITHER)
        .ifPresent(
            r -> all.add(words.is(release, r.begins() == Begins.GIVEN ? "given" : "locked")));
    if (counted) {
      all.add(words.is(fresh, "0"));
    }
    if (section.irregular() == Irregular.ONCE) {
      all.add(words.is(irregular, "unused"));
    }
    section.locks().forEach(l -> all.add(words.is(in(l), "empty")));
    return Term.and(all);
  }

  /** That the instruments from the given one on hold that many tokens together. */
  private Term inInstruments(int from, int together) {
    Quantity first = in(section.instruments().get(from));
    if (from == section.instruments().size() - 1) {
      return words.count(first, n -> n == together);
    }
    return Term.or(
        IntStream.rangeClosed(0, together)
            .mapToObj(
                n ->
                    Term.and(
                        words.count(first, v -> v == n), inInstruments(from + 1, together - n)))
            .toList());
  }

  /** All events, in the order of the table. */
  List<Movement> movements() {
    List<Movement> movements = new ArrayList<>();
    for (Deed deed : Deed.values()) {
      for (Instrument instrument : section.instruments()) {
        switch (deed) {
          case PLUNGE -> plunge(instrument, movements);
          case STOP_PLUNGING -> stopPlunging(instrument, movements);
          case START_WITHDRAWAL -> movements.add(start(instrument));
          case FINISH_WITHDRAWAL -> movements.add(finish(instrument));
          case GIVE_UP_WITHDRAWAL -> movements.add(giveUp(instrument));
          case PUT_FRESH_IN -> putFreshIn(instrument, movements);
          case PUT_OTHER_IN -> movements.add(putOtherIn(instrument));
          case IRREGULAR_WITHDRAWAL -> irregularWithdrawal(instrument, movements);
        }
      }
    }
    if (counted) {
      section.locks().forEach(l -> movements.add(putInLock(l, LockDeed.PUT_FRESH_IN, "fresh")));
    }
    section.locks().forEach(l -> movements.add(putInLock(l, LockDeed.PUT_OTHER_IN, "other")));
    section.locks().forEach(l -> movements.add(takeOutOfLock(l)));
    return movements;
  }

  private Movement putInLock(Lock lock, LockDeed deed, String kind) {
    return new Movement(
        new AtLock(name, deed, lock.groundFrame()),
        Term.and(
            words.is(in(lock), "empty"),
            deed == LockDeed.PUT_FRESH_IN ? freshAtLarge() : otherAtLarge()),
        List.of(words.set(in(lock), kind)));
  }

  private Movement takeOutOfLock(Lock lock) {
    List<Term> needs = new ArrayList<>();
    needs.add(Term.not(words.is(in(lock), "empty")));
    if (lock.heldWhileOpen()) {
      needs.add(apparatus.points(lock.groundFrame(), Position.N));
    }
    return new Movement(
        new AtLock(name, LockDeed.TAKE_OUT, lock.groundFrame()),
        Term.and(needs),
        List.of(words.set(in(lock), "empty")));
  }

  /** A fresh token is in no lock: one more than there are in locks. */
  private Term freshAtLarge() {
    return Term.or(
        IntStream.rangeClosed(0, section.locks().size())
            .mapToObj(k -> Term.and(locked("fresh", 0, k), words.count(fresh, n -> n > k)))
            .toList());
  }

  /** A token that is out, and not fresh, is in no lock. */
  private Term otherAtLarge() {
    List<Term> ways = new ArrayList<>();
    for (int k = 0; k <= section.locks().size(); k++) {
      int locked = k;
      if (counted) {
        for (int f = 0; f + locked < tokens; f++) {
          int before = f;
          ways.add(
              Term.and(
                  locked("other", 0, locked),
                  words.count(fresh, n -> n == before),
                  words.count(out, n -> n > before + locked)));
        }
      } else {
        ways.add(Term.and(locked("other", 0, locked), words.count(out, n -> n > locked)));
      }
    }
    return Term.or(ways);
  }

  /** Of the locks from the given one on, exactly so many have a token of the kind. */
  private Term locked(String kind, int from, int exactly) {
    if (from == section.locks().size()) {
      return exactly == 0 ? Term.TRUE : Term.FALSE;
    }
    Term it = words.is(in(section.locks().get(from)), kind);
    Term without = Term.and(Term.not(it), locked(kind, from + 1, exactly));
    return exactly == 0
        ? without
        : Term.or(without, Term.and(it, locked(kind, from + 1, exactly - 1)));
  }

  private Movement event(Deed deed, Instrument instrument, List<Term> needs, List<Effect> does) {
    return new Movement(new AtInstrument(name, deed, instrument.name()), Term.and(needs), does);
  }

  private void plunge(Instrument instrument, List<Movement> movements) {
    if (instrument.attended()) {
      List<Term> needs = new ArrayList<>();
      needs.add(words.is(plunging(instrument.name()), "no"));
      if (!section.plungeWhileWithdrawing()) {
        needs.add(words.is(withdrawal(instrument), "no"));
      }
      movements.add(
          event(
              Deed.PLUNGE,
              instrument,
              needs,
              List.of(words.set(plunging(instrument.name()), "yes"))));
    }
  }

  private void stopPlunging(Instrument instrument, List<Movement> movements) {
    if (instrument.attended()) {
      Quantity plunging = plunging(instrument.name());
      movements.add(
          event(
              Deed.STOP_PLUNGING,
              instrument,
              List.of(words.is(plunging, "yes")),
              List.of(words.set(plunging, "no"))));
    }
  }

  private Movement start(Instrument instrument) {
    List<Term> needs = new ArrayList<>();
    needs.add(words.is(withdrawal(instrument), "no"));
    needs.add(words.is(phase, "in"));
    needs.add(words.count(in(instrument), n -> n >= 1));
    instrument.needsConsentOf().forEach(e -> needs.add(words.is(plunging(e), "yes")));
    if (!section.plungeWhileWithdrawing() && instrument.attended()) {
      needs.add(words.is(plunging(instrument.name()), "no"));
    }
    List<Effect> does = new ArrayList<>();
    does.add(words.set(withdrawal(instrument), "yes"));
    if (section.phaseReversesAtStart()) {
      does.add(words.flip(phase));
    }
    return event(Deed.START_WITHDRAWAL, instrument, needs, does);
  }

  private Movement finish(Instrument instrument) {
    List<Effect> does = new ArrayList<>();
    does.add(words.set(withdrawal(instrument), "no"));
    if (!section.phaseReversesAtStart()) {
      does.add(words.flip(phase));
    }
    does.addAll(takenOut(instrument));
    return event(
        Deed.FINISH_WITHDRAWAL,
        instrument,
        List.of(words.is(withdrawal(instrument), "yes"), aTokenToTake(instrument)),
        does);
  }

  private Term aTokenToTake(Instrument instrument) {
    return words.count(in(instrument), n -> n >= 1);
  }

  private List<Effect> takenOut(Instrument instrument) {
    List<Effect> does = new ArrayList<>();
    does.add(words.add(in(instrument), -1));
    does.add(words.add(out, 1));
    if (here(instrument)) {
      if (section.release().isPresent()) {
        does.add(words.set(release, "given"));
      }
      if (counted) {
        does.add(words.add(fresh, 1));
      }
    }
    return does;
  }

  private Movement giveUp(Instrument instrument) {
    List<Effect> does = new ArrayList<>();
    does.add(words.set(withdrawal(instrument), "no"));
    if (section.phaseReversesAtStart()) {
      does.add(words.flip(phase));
    }
    return event(
        Deed.GIVE_UP_WITHDRAWAL,
        instrument,
        List.of(words.is(withdrawal(instrument), "yes")),
        does);
  }

  private void putFreshIn(Instrument instrument, List<Movement> movements) {
    if (counted) {
      List<Effect> does = putIn(instrument);
      does.add(words.add(fresh, -1));
      movements.add(
          event(
              Deed.PUT_FRESH_IN,
              instrument,
              List.of(freshAtLarge(), words.count(in(instrument), n -> n < tokens)),
              does));
    }
  }

  private Movement putOtherIn(Instrument instrument) {
    return event(
        Deed.PUT_OTHER_IN,
        instrument,
        List.of(otherAtLarge(), words.count(in(instrument), n -> n < tokens)),
        putIn(instrument));
  }

  private List<Effect> putIn(Instrument instrument) {
    List<Effect> does = new ArrayList<>();
    does.add(words.add(in(instrument), 1));
    does.add(words.add(out, -1));
    does.add(words.flip(phase));
    section
        .release()
        .filter(
            r ->
                r.lasts() == Lasts.UNTIL_PUT_IN
                    || (r.lasts() == Lasts.UNTIL_PUT_IN_HERE && here(instrument)))
        .ifPresent(r -> does.add(words.set(release, "locked")));
    return does;
  }

  private void irregularWithdrawal(Instrument instrument, List<Movement> movements) {
    if (!irregularly) {
      return;
    }
    List<Term> needs = new ArrayList<>(List.of(aTokenToTake(instrument)));
    List<Effect> does = takenOut(instrument);
    does.add(words.flip(phase));
    if (section.irregular() == Irregular.ONCE) {
      needs.add(words.is(irregular, "unused"));
      does.add(words.set(irregular, "used"));
    }
    movements.add(event(Deed.IRREGULAR_WITHDRAWAL, instrument, needs, does));
  }

  List<Clause> candidates() {
    return new SectionCandidates(section, counted, words).all();
  }
}
