package lockwright.encode;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import lockwright.railway.section.Section;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.words.Quantity;
import lockwright.system.Among;
import lockwright.system.Clause;

/** What is likely to hold always of a section: written down, and for an engine to try. */
final class SectionCandidates {
  private final Section section;
  private final boolean counted;
  private final Vocabulary words;
  private final int tokens;
  private final Quantity phase;
  private final Quantity out;
  private final Quantity fresh;
  private final Quantity release;

  /**
   * @param counted whether fresh tokens are counted
   */
  SectionCandidates(Section section, boolean counted, Vocabulary words) {
    this.section = section;
    this.counted = counted;
    this.words = words;
    String name = section.name();
    tokens = section.tokens();
    phase = Quantity.phase(name);
    out = Quantity.tokensOut(name, tokens);
    fresh = Quantity.freshTokens(name, tokens);
    release = Quantity.release(name);
  }

  private Quantity in(Instrument instrument) {
    return Quantity.tokensIn(section.name(), instrument.name(), tokens);
  }

  private Quantity plunging(String instrument) {
    return Quantity.plunging(section.name(), instrument);
  }

  private Quantity withdrawal(Instrument instrument) {
    return Quantity.withdrawal(section.name(), instrument.name());
  }

  /**
   * What holds of a section that is in order, tried two facts at a time; the parity of the tokens
   * out; and, for few tokens, that none is lost.
   */
  List<Clause> all() {
    List<Clause> clauses = new ArrayList<>();
    List<Among> facts = facts();
    for (int i = 0; i < facts.size(); i++) {
      clauses.add(new Clause(List.of(facts.get(i))));
      for (int j = 0; j < i; j++) {
        if (facts.get(i).variable() != facts.get(j).variable()) {
          clauses.add(ordered(facts.get(i), facts.get(j)));
        }
      }
    }
    clauses.add(ordered(words.among(phase, "out"), words.among(out, n -> n % 2 == 0)));
    clauses.add(ordered(words.among(phase, "in"), words.among(out, n -> n % 2 == 1)));
    if (section.phaseReversesAtStart()) {
      List<Among> some = new ArrayList<>();
      some.add(words.among(phase, "in"));
      some.add(words.among(out, n -> n == 1));
      section.instruments().forEach(i -> some.add(words.among(withdrawal(i), "yes")));
      clauses.add(ordered(some.toArray(Among[]::new)));
    }
    if (counted) {
      for (int least = 1; least <= tokens; least++) {
        int n = least;
        clauses.add(ordered(words.among(fresh, f -> f < n), words.among(out, o -> o >= n)));
      }
    }
    if (tokens <= 3) {
      noneLost(0, tokens, new ArrayList<>(), clauses);
    }
    return clauses;
  }

  /** For each number of tokens in each instrument: the rest is out. */
  private void noneLost(int from, int rest, List<Among> not, List<Clause> clauses) {
    if (from == section.instruments().size()) {
      List<Among> parts = new ArrayList<>(not);
      parts.add(words.among(out, n -> n == rest));
      clauses.add(ordered(parts.toArray(Among[]::new)));
      return;
    }
    for (int n = 0; n <= tokens; n++) {
      int here = n;
      List<Among> parts = new ArrayList<>(not);
      parts.add(words.among(in(section.instruments().get(from)), v -> v != here));
      if (n <= rest) {
        noneLost(from + 1, rest - n, parts, clauses);
      } else {
        clauses.add(ordered(parts.toArray(Among[]::new)));
      }
    }
  }

  private List<Among> facts() {
    List<Among> facts = new ArrayList<>();
    facts.add(words.among(phase, "in"));
    facts.add(words.among(phase, "out"));
    facts.add(words.among(out, n -> n == 0));
    facts.add(words.among(out, n -> n >= 1));
    facts.add(words.among(out, n -> n <= 1));
    for (Instrument instrument : section.instruments()) {
      facts.add(words.among(withdrawal(instrument), "no"));
      facts.add(words.among(withdrawal(instrument), "yes"));
      if (instrument.attended()) {
        facts.add(words.among(plunging(instrument.name()), "no"));
      }
    }
    if (section.release().isPresent()) {
      facts.add(words.among(release, "locked"));
    }
    for (Section.Lock lock : section.locks()) {
      Quantity in = Quantity.lock(section.name(), lock.groundFrame());
      facts.add(words.among(in, "empty"));
      facts.add(words.among(in, "empty", "fresh"));
      facts.add(words.among(in, "empty", "other"));
    }
    if (counted) {
      facts.add(words.among(fresh, n -> n == 0));
      facts.add(words.among(fresh, n -> n >= 1));
      facts.add(words.among(fresh, n -> n <= 1));
    }
    return facts;
  }

  private static Clause ordered(Among... parts) {
    List<Among> all = new ArrayList<>(List.of(parts));
    Collections.sort(all, Comparator.comparingInt(Among::variable));
    return new Clause(all);
  }
}
