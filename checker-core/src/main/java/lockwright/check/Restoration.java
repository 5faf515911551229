package lockwright.check;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import lockwright.encode.Encoded;
import lockwright.encode.Restoring;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.worker.UnfitMachine;

/**
 * Looks whether the frame can be restored from every state; {@code docs/meaning.md} 6.
 *
 * <ol>
 *   <li>Is the frame ever stuck, with the ways back known so far? If never, it can be restored.
 *   <li>Else there is a state in which it is. Do strokes alone lead from there to fewer levers
 *       reversed? If so, they are a way back more, and the first question is asked again (guided by
 *       counterexamples, as in E. Clarke et al., *Counterexample-Guided Abstraction Refinement*,
 *       2000; from memory). If never, no strokes restore the frame from there.
 *   <li>Nor, perhaps, from the state before, or the one before that, though the frame was not yet
 *       stuck: the sequence is cut off where it is first so.
 * </ol>
 */
final class Restoration {
  /** So many ways back, at most; far more than a frame needs. */
  private static final int MOST_WAYS = 200;

  private final Limits limits;
  private final Searcher searcher;
  private final Consumer<String> progress;
  private final Box box;
  private final Restoring restoring;
  private final long end;
  private String decidedBy = "";

  /**
   * @param limits the seconds are those of all its searches together
   * @param whole the box by whole strokes
   */
  Restoration(Limits limits, Searcher searcher, Consumer<String> progress, Box box, Encoded whole) {
    this.limits = limits;
    this.searcher = searcher;
    this.progress = progress;
    this.box = box;
    this.restoring = new Restoring(box, whole);
    this.end = System.nanoTime() + TimeUnit.SECONDS.toNanos(limits.seconds());
  }

  /** The engine that decided it; empty before, and where none did. */
  Optional<String> decidedBy() {
    return Optional.of(decidedBy).filter(by -> !by.isEmpty());
  }

  /** What is found. */
  Claim claim() throws UnfitMachine, IOException, InterruptedException {
    List<List<Event>> ways = new ArrayList<>();
    while (ways.size() <= MOST_WAYS) {
      progress.accept("restoring: " + ways.size() + " ways back but single strokes");
      Told told = ask(restoring.stuck(ways));
      if (told.claim() instanceof Claim.Never never) {
        decidedBy = told.by();
        return new Claim.Restorable(ways, never.certificate());
      } else if (!(told.claim() instanceof Claim.Reached reached)) {
        return told.claim();
      } else {
        Told back = ask(restoring.back(told.states().get(told.states().size() - 1)));
        if (back.claim() instanceof Claim.Never never) {
          decidedBy = told.by();
          return stranded(reached.run(), told.states(), never.certificate());
        } else if (!(back.claim() instanceof Claim.Reached way)) {
          return back.claim();
        } else {
          ways.add(way.run().events());
        }
      }
    }
    return new Claim.Unknown("more than " + MOST_WAYS + " ways back but single strokes");
  }

  /**
   * The run, cut off after the movement with which the frame is no longer restored by strokes.
   *
   * @param states before each movement, and after the last
   * @param last what strokes lead to from the last
   */
  private Claim stranded(Run run, List<SortedMap<String, String>> states, Certificate last)
      throws UnfitMachine, IOException, InterruptedException {
    Certificate noWayBack = last;
    int length = run.events().size();
    while (length > 0
        && ask(restoring.normal(states.get(length - 1))).claim() instanceof Claim.Never never) {
      noWayBack = never.certificate();
      length--;
    }
    Run there = new Run(run.beginning(), run.events().subList(0, length));
    return new Claim.Stranded(there, noWayBack, helped(there, states.get(length)));
  }

  /** The run to that state, gone on with to all levers N, if that is found. */
  private Optional<Run> helped(Run run, SortedMap<String, String> state)
      throws UnfitMachine, IOException, InterruptedException {
    if ((box.sections().isEmpty() && box.controls().conditions().isEmpty())
        || !(ask(restoring.helped(state)).claim() instanceof Claim.Reached on)) {
      return Optional.empty();
    }
    List<Event> events = new ArrayList<>(run.events());
    events.addAll(on.run().events());
    return Optional.of(new Run(run.beginning(), events));
  }

  /**
   * The answer to one question.
   *
   * @param states of a trace: the value of each quantity, by its key, before each movement and
   *     after the last
   */
  private record Told(Claim claim, String by, List<SortedMap<String, String>> states) {}

  private Told ask(Encoded question) throws UnfitMachine, IOException, InterruptedException {
    long left = end - System.nanoTime();
    if (left <= 0) {
      return new Told(new Claim.Unknown("the time for restoring is over"), "", List.of());
    }
    int seconds = 1 + (int) TimeUnit.NANOSECONDS.toSeconds(left - 1);
    Limits own = new Limits(seconds, limits.effort(), limits.depth());
    Found found = searcher.search(new Job(question.system(), own), progress);
    return new Told(
        question.names().claims(found.verdicts()).get(Restoring.TARGET),
        found.decidedBy().getOrDefault(Restoring.TARGET, ""),
        found.verdicts().get(Restoring.TARGET) instanceof Verdict.Reached reached
            ? states(question, reached.trace())
            : List.of());
  }

  private static List<SortedMap<String, String>> states(Encoded encoded, Trace trace) {
    List<SortedMap<String, String>> states = new ArrayList<>();
    int[] state = trace.first().stream().mapToInt(Integer::intValue).toArray();
    states.add(values(encoded, state));
    for (int t : trace.transitions()) {
      state = encoded.system().transitions().get(t).after(state);
      states.add(values(encoded, state));
    }
    return states;
  }

  private static SortedMap<String, String> values(Encoded encoded, int[] state) {
    SortedMap<String, String> values = new TreeMap<>();
    List<Quantity> quantities = encoded.names().quantities();
    for (int v = 0; v < state.length; v++) {
      values.put(quantities.get(v).key(), quantities.get(v).values().get(state[v]));
    }
    return values;
  }
}
