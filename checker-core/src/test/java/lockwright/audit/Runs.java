package lockwright.audit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.words.Event;
import lockwright.working.Breach;
import lockwright.working.Condition;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;

/** Shortest runs of small boxes, found breadth first by playing. For tests. */
final class Runs {
  private final Working working;
  private final Map<State, State> from = new LinkedHashMap<>();
  private final Map<State, Event> by = new HashMap<>();

  Runs(Working working) {
    this.working = working;
    Queue<State> queue = new ArrayDeque<>();
    for (State beginning : working.beginnings()) {
      from.put(beginning, beginning);
      queue.add(beginning);
    }
    while (!queue.isEmpty()) {
      State state = queue.remove();
      for (Movement movement : working.movements()) {
        if (working.free(state, movement.event())) {
          State next = working.make(state, movement.event());
          if (from.putIfAbsent(next, state) == null) {
            by.put(next, movement.event());
            queue.add(next);
          }
        }
      }
    }
  }

  Optional<Run> to(Condition goal) {
    return from.keySet().stream().filter(goal::evaluate).findFirst().map(this::run);
  }

  Optional<Run> breaking(Requirement requirement) {
    Breach breach = working.breach(requirement);
    for (State state : from.keySet()) {
      if (breach.state().evaluate(state)) {
        return Optional.of(run(state));
      }
      for (Movement movement : working.movements()) {
        Condition forbidden = breach.movements().getOrDefault(movement.event(), Condition.FALSE);
        if (forbidden.evaluate(state) && working.free(state, movement.event())) {
          List<Event> events = new ArrayList<>(run(state).events());
          events.add(movement.event());
          return Optional.of(new Run(run(state).beginning(), events));
        }
      }
    }
    return Optional.empty();
  }

  private Run run(State end) {
    List<Event> events = new ArrayList<>();
    State state = end;
    while (by.containsKey(state)) {
      events.add(by.get(state));
      state = from.get(state);
    }
    Collections.reverse(events);
    return new Run(state.values(), events);
  }

  /** Every claim of a box that a run supports; for the others, these. */
  static Claims claims(Box box, Map<String, Claim> never) {
    Runs parted = new Runs(Working.parted(box));
    Runs whole = new Runs(Working.whole(box));
    Map<String, Claim> safety = new HashMap<>();
    Map<String, Claim> subjects = new HashMap<>();
    Map<String, Claim> possibilities = new HashMap<>();
    for (Requirement r : box.requirements()) {
      Optional<Run> run = r.possibility() ? whole.to(whole.working.goal(r)) : parted.breaking(r);
      put(r.possibility() ? possibilities : safety, r.id(), run, never);
      for (Subject s : r.speaksAbout()) {
        put(subjects, s.id(), parted.to(parted.working.reaches(s)), never);
      }
    }
    return new Claims(safety, subjects, possibilities);
  }

  private static void put(
      Map<String, Claim> claims, String id, Optional<Run> run, Map<String, Claim> never) {
    Claim claim = run.<Claim>map(r -> new Claim.Reached(r, true)).orElse(never.get(id));
    if (claim != null) {
      claims.put(id, claim);
    }
  }
}
