package lockwright.encode;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.locking.Entry.Kind;
import lockwright.railway.words.Quantity;
import lockwright.system.Term;
import lockwright.system.Transition.Effect;

/**
 * The rules of how levers move; `docs/meaning.md` 3.4.
 *
 * @param entries those that act
 * @param watched those whose turns are kept in mind, whether or not they act
 */
record Turns(List<Entry> entries, List<Entry> watched, Vocabulary words) {
  Turns {
    entries = entries.stream().filter(e -> e.kind().ofMovement()).toList();
  }

  /** Two levers of which one waits, once it has been pulled, for the other. */
  private record Pair(String waiting, String other) {
    static Pair of(Entry entry) {
      return new Pair(entry.lever(), entry.others().get(0));
    }

    Quantity turn() {
      return Quantity.turn(waiting, other);
    }
  }

  private List<Pair> pairs() {
    return watched.stream()
        .filter(e -> e.kind() == Kind.NOT_AGAIN_BEFORE)
        .map(Pair::of)
        .distinct()
        .toList();
  }

  void declare() {
    pairs().forEach(p -> words.add(p.turn()));
  }

  Term beginning() {
    return Term.and(pairs().stream().map(p -> words.is(p.turn(), "come")).toList());
  }

  /** What a lever needs to leave N. */
  List<Term> needs(String lever) {
    return entries.stream()
        .filter(e -> e.lever().equals(lever))
        .map(e -> Term.not(stops(e)))
        .toList();
  }

  /** That a rule does not let its lever leave N. */
  Term stops(Entry rule) {
    return Term.and(unmet(rule), conditions(rule));
  }

  private Term unmet(Entry entry) {
    return entry.kind() == Kind.NOT_AGAIN_BEFORE
        ? Term.not(words.is(Pair.of(entry).turn(), "come"))
        : words.isNot(Quantity.lever(entry.others().get(0)), Position.N);
  }

  private Term conditions(Entry entry) {
    return Term.and(
        entry.when().stream()
            .map(
                c ->
                    words.isNot(
                        Quantity.lever(c.lever()),
                        c.position() == Position.N ? Position.R : Position.N))
            .toList());
  }

  /** What a stroke of a lever does: it begins the wait for others, and ends that of others. */
  List<Effect> does(String lever, Strokes.Stroke stroke) {
    boolean starts = stroke.from() == Position.N;
    boolean atR =
        stroke.to() == Position.R || (stroke.from() == Position.R && stroke.to() == Position.M);
    boolean atN = stroke.to() == Position.N;
    List<Effect> does = new ArrayList<>();
    for (Pair pair : pairs()) {
      if (pair.waiting().equals(lever) && starts) {
        does.add(words.set(pair.turn(), "pull awaited"));
      } else if (pair.other().equals(lever) && atR) {
        does.add(words.replace(pair.turn(), "pull awaited", "return awaited"));
      } else if (pair.other().equals(lever) && atN) {
        does.add(words.replace(pair.turn(), "return awaited", "come"));
      }
    }
    return does;
  }
}
