package lockwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lockwright.audit.EntryAudit;
import lockwright.audit.EntryVerdict;
import lockwright.encode.Encoded;
import lockwright.encode.Encoder;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Names;
import lockwright.encode.names.Run;
import lockwright.proof.Problem;
import lockwright.proof.Search;
import lockwright.proof.search.ShortestTraces;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.solver.Solvers;
import lockwright.solver.z3.Z3Solvers;
import lockwright.system.Target;
import lockwright.working.Breach;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Leaves out one entry and works the frame as a signalman would who tries it: sets up what a
 * possibility shows, then what another shows, or puts that back, as far as the movements are free.
 * A breach met so is audited, and says that the entry is needed. That none is met says nothing. Far
 * quicker than a search for all that breaks.
 */
final class PlayedTrials {
  private static final int DEPTH = 16;

  private final Box box;
  private final Working with;
  private final List<Requirement> safety;
  private final List<Run> shown;

  private PlayedTrials(Box box, List<Run> shown) {
    this.box = box;
    this.shown = shown;
    with = Working.parted(box);
    safety = box.requirements().stream().filter(r -> !r.possibility()).toList();
  }

  static PlayedTrials of(Box box) {
    List<String> possible =
        box.requirements().stream()
            .filter(r -> r.possibility() && !(r instanceof Requirement.FrameCanBeRestored))
            .map(Requirement::id)
            .toList();
    Encoded all = Encoder.whole(box);
    Encoded whole =
        all.without(
            all.system().targets().stream()
                .map(Target::name)
                .filter(name -> !possible.contains(name))
                .collect(Collectors.toSet()));
    try (Solvers solvers = Z3Solvers.unlimited()) {
      Problem problem = new Problem(whole.system(), solvers, p -> {});
      Map<String, Claim> claims =
          whole
              .names()
              .claims(new Search(List.of(new ShortestTraces(DEPTH))).run(problem).verdicts());
      return new PlayedTrials(
          box,
          possible.stream()
              .map(id -> ((Claim.Reached) claims.get(id)).run().parted(box.frame()))
              .toList());
    }
  }

  /** What the audit says of an entry without which a breach was met. */
  Optional<EntryVerdict.Needed> needed(Entry entry) {
    Working without = Working.parted(box, entry);
    Map<Requirement, Breach> breaches = new LinkedHashMap<>();
    safety.forEach(r -> breaches.put(r, without.breach(r)));
    for (boolean beginsAsSecond : List.of(false, true)) {
      for (Run first : shown) {
        for (Run second : shown) {
          if (!moves(first, entry) && !moves(second, entry)) {
            continue;
          }
          Run begins = beginsAsSecond ? second : first;
          for (List<Event> tail : List.of(second.events(), putBack(second.events()))) {
            Trial trial = new Trial(without, breaches, begins);
            Optional<Requirement> broken =
                trial.play(first.events()).or(() -> trial.play(tail)).or(trial::playOneMore);
            if (broken.isPresent()) {
              Run run = new Run(begins.beginning(), trial.made);
              return Optional.of(audited(entry, broken.get(), run));
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  private EntryVerdict.Needed audited(Entry entry, Requirement broken, Run run) {
    Map<String, Claim> claims =
        Map.of(
            broken.id(),
            new Claim.Reached(run, false),
            Names.FORBIDDEN_BY_ENTRY,
            new Claim.Unknown("not asked"));
    return (EntryVerdict.Needed) EntryAudit.audit(box, entry, claims);
  }

  /** A run in the making. Nothing can break before the first movement that the entry would hold. */
  private final class Trial {
    private final Working without;
    private final Map<Requirement, Breach> breaches;
    private final List<Event> made = new ArrayList<>();
    private State state;
    private boolean held;

    Trial(Working without, Map<Requirement, Breach> breaches, Run begins) {
      this.without = without;
      this.breaches = breaches;
      state = without.state(begins.beginning());
    }

    /** Makes what is free of the events, until something is broken. */
    Optional<Requirement> play(List<Event> events) {
      for (Event event : events) {
        if (without.free(state, event)) {
          held = held || !with.free(state, event);
          State before = state;
          state = without.make(state, event);
          made.add(event);
          Optional<Requirement> broken = held ? broken(before, event, state) : Optional.empty();
          if (broken.isPresent()) {
            return broken;
          }
        }
      }
      return Optional.empty();
    }

    /** Makes the one movement more that breaks something, if there is one. */
    Optional<Requirement> playOneMore() {
      for (Movement movement : without.movements()) {
        Event event = movement.event();
        if (without.free(state, event) && (held || !with.free(state, event))) {
          Optional<Requirement> broken = broken(state, event, without.make(state, event));
          if (broken.isPresent()) {
            made.add(event);
            return broken;
          }
        }
      }
      return Optional.empty();
    }

    private Optional<Requirement> broken(State before, Event event, State after) {
      return breaches.entrySet().stream()
          .filter(b -> breaks(b.getValue(), before, event, after))
          .map(Map.Entry::getKey)
          .findFirst();
    }
  }

  private static boolean breaks(Breach breach, State before, Event event, State after) {
    return breach.state().evaluate(after)
        || breach.movements().containsKey(event) && breach.movements().get(event).evaluate(before);
  }

  /**
   * Whether a run moves the lever of an entry: one that is not moved is normal, and holds little.
   */
  private static boolean moves(Run run, Entry entry) {
    return entry.kind() == Entry.Kind.WHILE_NORMAL_LOCKS_BOTH_WAYS
        || run.events().stream()
            .anyMatch(e -> e instanceof Event.LeverMoves m && m.lever().equals(entry.lever()));
  }

  /** The strokes of levers of a run the other way, the first first. */
  private static List<Event> putBack(List<Event> events) {
    return events.stream()
        .filter(Event.LeverMoves.class::isInstance)
        .map(Event.LeverMoves.class::cast)
        .map(e -> (Event) new Event.LeverMoves(e.lever(), e.to(), e.from()))
        .toList();
  }
}
