package lockwright.encode;

import java.util.List;
import java.util.stream.IntStream;
import lockwright.encode.names.Names;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event.LeverMoves;
import lockwright.system.Target;
import lockwright.system.Target.Making;
import lockwright.system.Term;

/** What an entry that is left out forbids, as a target; `docs/meaning.md` 10.1. */
record WithoutEntry(Entry entry, List<Entry> table, Vocabulary words) {
  Target target(List<Movement> movements) {
    return entry.kind().ofMovement()
        ? new Target(Names.FORBIDDEN_BY_ENTRY, Term.FALSE, starts(movements), true)
        : new Target(
            Names.FORBIDDEN_BY_ENTRY,
            new Locks(List.of(entry), false).stand(words),
            List.of(),
            true);
  }

  private List<Making> starts(List<Movement> movements) {
    Term stopped = new Turns(List.of(entry), table, words).stops(entry);
    return IntStream.range(0, movements.size())
        .filter(
            i ->
                movements.get(i).event() instanceof LeverMoves e
                    && e.lever().equals(entry.lever())
                    && e.from() == Position.N)
        .mapToObj(i -> new Making(i, stopped))
        .toList();
  }
}
