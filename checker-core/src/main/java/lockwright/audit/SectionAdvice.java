package lockwright.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.section.Section;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.section.Section.Lock;
import lockwright.railway.section.Section.Release;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.working.Working;

/** Which rule of a section would stop a sequence, in words; each is tried by playing it again. */
final class SectionAdvice {
  private SectionAdvice() {}

  /** For the section, or for a signal into it that goes off without having earned it. */
  static Optional<MissingEntry> of(Box box, String name, Optional<String> signal, Played breach) {
    Section section =
        box.sections().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    Optional<String> lever =
        signal.stream()
            .flatMap(s -> box.givingInto(name, s).stream())
            .map(Lever::id)
            .filter(l -> breach.run().events().stream().anyMatch(e -> moves(e, l)))
            .findFirst();
    for (Map.Entry<String, Section> rule : rules(section, lever).entrySet()) {
      Working with = Working.parted(box.withSection(rule.getValue()));
      Played again = Played.of(with, run(with, breach));
      if (!again.followsRules()) {
        return Optional.of(
            new MissingEntry(Optional.empty(), rule.getKey(), MissingEntry.stopsAt(again)));
      }
    }
    return Optional.empty();
  }

  private static boolean moves(Event event, String lever) {
    return event instanceof Event.LeverMoves e && e.lever().equals(lever);
  }

  /** The same run, without quantities that are no more, and with the new ones as they begin. */
  private static Run run(Working working, Played breach) {
    SortedMap<String, String> beginning = new TreeMap<>();
    for (Quantity q : working.quantities()) {
      beginning.put(q.key(), breach.beginning().getOrDefault(q.key(), q.values().get(0)));
    }
    return new Run(beginning, breach.run().events());
  }

  /** The section with one rule more, by what the rule says; the usual apparatus first. */
  private static Map<String, Section> rules(Section s, Optional<String> lever) {
    String in = "section " + s.name() + ": ";
    Map<String, Section> rules = new LinkedHashMap<>();
    lever.ifPresent(
        l -> {
          Release old = s.release().orElse(new Release(List.of(), Lasts.UNTIL_USED, Begins.LOCKED));
          if (!old.levers().contains(l)) {
            List<String> levers = new ArrayList<>(old.levers());
            levers.add(l);
            rules.put(
                in + "a withdrawal here releases lever " + l + " for one pull",
                s.withRelease(new Release(levers, old.lasts(), old.begins())));
            return;
          }
          rules.put(
              in + "the release begins locked",
              s.withRelease(new Release(old.levers(), old.lasts(), Begins.LOCKED)));
          rules.put(
              in + "the release lasts until a token is put in here",
              s.withRelease(new Release(old.levers(), Lasts.UNTIL_PUT_IN_HERE, old.begins())));
          rules.put(
              in + "the release lasts until a token is put in, at any instrument",
              s.withRelease(new Release(old.levers(), Lasts.UNTIL_PUT_IN, old.begins())));
        });
    s.locks().stream()
        .filter(l -> !l.heldWhileOpen())
        .forEach(
            l ->
                rules.put(
                    in
                        + "the token is held in the lock of ground frame "
                        + l.groundFrame()
                        + " while its points are open",
                    holding(s, l)));
    rules.put(
        in + "no irregular withdrawal",
        with(s, s.instruments(), s.plungeWhileWithdrawing(), s.phaseReversesAtStart(), false));
    rules.put(
        in + "a withdrawal needs the consent of every other attended instrument",
        with(s, consenting(s), s.plungeWhileWithdrawing(), s.phaseReversesAtStart(), true));
    rules.put(
        in + "nobody can plunge while he withdraws",
        with(s, s.instruments(), false, s.phaseReversesAtStart(), true));
    rules.put(
        in + "the phase reverses at the start of a withdrawal",
        with(s, s.instruments(), s.plungeWhileWithdrawing(), true, true));
    return rules;
  }

  private static List<Instrument> consenting(Section s) {
    return s.instruments().stream()
        .map(
            e ->
                new Instrument(
                    e.name(),
                    e.attended(),
                    s.instruments().stream()
                        .filter(o -> o.attended() && !o.name().equals(e.name()))
                        .map(Instrument::name)
                        .toList()))
        .toList();
  }

  private static Section holding(Section s, Lock lock) {
    return s.withLocks(
        s.locks().stream().map(l -> l.equals(lock) ? new Lock(l.groundFrame(), true) : l).toList());
  }

  private static Section with(
      Section s, List<Instrument> instruments, boolean plunge, boolean atStart, boolean irregular) {
    return new Section(
        s.name(),
        s.track(),
        s.token(),
        s.tokens(),
        instruments,
        s.here(),
        plunge,
        atStart,
        irregular ? s.irregular() : Irregular.NEVER,
        s.release(),
        s.locks(),
        s.at());
  }
}
