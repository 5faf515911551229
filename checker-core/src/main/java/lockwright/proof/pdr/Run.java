package lockwright.proof.pdr;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import lockwright.solver.Solver;
import lockwright.system.Among;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;

/** One run for one target. */
final class Run {
  private final TransitionSystem system;
  private final Target target;
  private final Term imminent;
  private final Layers layers;

  Run(TransitionSystem system, Target target, List<Clause> invariants, Solver solver) {
    this.system = system;
    this.target = target;
    imminent = system.imminent(target);
    layers = new Layers(system, invariants, solver);
  }

  /**
   * A cube to be blocked in a layer: from each of its states, {@code transition} leads into the
   * cube of {@code next}; without a next, the target is imminent.
   */
  private record Obligation(Cube cube, int layer, int transition, Obligation next, int number) {}

  /**
   * Repeats: block every state of the last layer that is at the target; open a layer; push cubes.
   */
  Verdict decide() {
    try {
      while (true) {
        Verdict reached = blockTarget();
        if (reached != null) {
          return reached;
        }
        layers.open();
        Verdict never = push();
        if (never != null) {
          return never;
        }
      }
    } catch (Layers.Limit limit) {
      return new Verdict.Unknown(limit.getMessage());
    }
  }

  private Verdict blockTarget() {
    int last = layers.last();
    int[] state;
    while ((state = layers.stateWith(imminent, last)) != null) {
      Verdict reached = block(new Obligation(layers.around(state, imminent), last, -1, null, 0));
      if (reached != null) {
        return reached;
      }
    }
    return null;
  }

  /** Blocks a cube, and first all that leads into it; the lowest layer first. */
  private Verdict block(Obligation first) {
    PriorityQueue<Obligation> queue =
        new PriorityQueue<>(
            Comparator.comparingInt(Obligation::layer)
                .thenComparing(Comparator.comparingInt(Obligation::number).reversed()));
    queue.add(first);
    int number = 0;
    while (!queue.isEmpty()) {
      Obligation obligation = queue.peek();
      BitSet needed = new BitSet();
      if (layers.initially(obligation.cube(), needed)) {
        return trace(obligation);
      }
      if (layers.isBlocked(obligation.cube(), obligation.layer())) {
        queue.remove();
        continue;
      }
      Layers.Predecessor predecessor =
          layers.predecessor(obligation.cube(), obligation.layer() - 1, needed);
      if (predecessor == null) {
        queue.remove();
        Cube cube = obligation.cube().only(needed);
        layers.block(widen(cube, obligation.layer()), obligation.layer());
      } else {
        Cube before = layers.into(predecessor.state(), predecessor.transition(), obligation.cube());
        queue.add(
            new Obligation(
                before, obligation.layer() - 1, predecessor.transition(), obligation, ++number));
      }
    }
    return null;
  }

  /** Drops variables from a cube, or lets them have more values, while it can still be blocked. */
  private Cube widen(Cube cube, int layer) {
    Cube best = cube;
    for (int i = best.parts().size() - 1; i >= 0; i = Math.min(i, best.parts().size()) - 1) {
      if (best.parts().size() > 1) {
        best = blockable(best.without(i), layer).orElse(best);
      }
    }
    for (int i = 0; i < best.parts().size(); i++) {
      Among part = best.parts().get(i);
      int size = system.variables().get(part.variable()).size();
      for (int value = 0; value < size; value++) {
        List<Integer> values = new ArrayList<>(best.parts().get(i).values());
        if (values.contains(value) || values.size() == size - 1) {
          continue;
        }
        values.add(value);
        Cube wider = best.with(i, new Among(part.variable(), values));
        if (blockable(wider, layer).isPresent()) {
          best = wider;
        }
      }
    }
    return best;
  }

  /** Of a cube that can be blocked in a layer, what is needed for that. */
  private Optional<Cube> blockable(Cube cube, int layer) {
    BitSet needed = new BitSet();
    return layers.initially(cube, needed) || layers.predecessor(cube, layer - 1, needed) != null
        ? Optional.empty()
        : Optional.of(cube.only(needed));
  }

  /** Moves cubes to the next layer where they can be; if one layer empties, it equals the next. */
  private Verdict push() {
    for (int layer = 1; layer < layers.last(); layer++) {
      for (Cube cube : layers.blockedIn(layer)) {
        if (layers.predecessor(cube, layer, new BitSet()) == null) {
          layers.forget(cube, layer);
          layers.block(cube, layer + 1);
        }
      }
      if (layers.blockedIn(layer).isEmpty()) {
        List<Clause> certificate = new ArrayList<>();
        for (int above = layer + 1; above <= layers.last(); above++) {
          layers.blockedIn(above).forEach(c -> certificate.add(c.negation(system.variables())));
        }
        return new Verdict.Never(certificate);
      }
    }
    return null;
  }

  /** Plays the obligations forward from a state that may begin. */
  private Verdict trace(Obligation first) {
    List<Term> begin = new ArrayList<>(List.of(system.initial()));
    for (Among part : first.cube().parts()) {
      begin.add(Term.or(part.values().stream().map(v -> Term.is(part.variable(), v)).toList()));
    }
    int[] state = layers.stateWith(Term.and(begin), 0);
    List<Integer> initial = new ArrayList<>();
    for (int value : state) {
      initial.add(value);
    }
    List<Integer> transitions = new ArrayList<>();
    for (Obligation at = first; at.next() != null; at = at.next()) {
      transitions.add(at.transition());
      state = system.transitions().get(at.transition()).after(state, at.next().cube().parts());
    }
    if (!target.states().holds(state)) {
      int[] last = state;
      transitions.add(
          target.makings().stream()
              .filter(m -> m.when().holds(last))
              .filter(m -> system.transitions().get(m.transition()).guard().holds(last))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("the trace does not reach its target"))
              .transition());
    }
    return new Verdict.Reached(new Trace(initial, transitions), false);
  }
}
