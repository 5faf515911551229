package lockwright.proof.pdr;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.proof.Moment;
import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import lockwright.system.Clause;
import lockwright.system.Term;
import lockwright.system.Transition;
import lockwright.system.TransitionSystem;

/**
 * The layers F0, F1, ... and the questions asked of them. F0 is the initial states; each later
 * layer holds all states reachable in that many transitions or fewer, and perhaps more: those in
 * none of the cubes blocked there. A cube blocked in a layer is blocked in all earlier ones.
 */
final class Layers {
  /** A limit of the solver was met. */
  static final class Limit extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Limit() {
      super("limit met in property directed reachability");
    }
  }

  /** A state from which a transition (by index) leads into a cube. */
  record Predecessor(int[] state, int transition) {}

  private final TransitionSystem system;
  private final Solver solver;
  private final Moment moment;
  private final Remembered remembered;
  private final int initial;
  private final List<List<Cube>> blocked = new ArrayList<>();
  private final List<Integer> active = new ArrayList<>();

  Layers(TransitionSystem system, List<Clause> invariants, Solver solver) {
    this.system = system;
    this.solver = solver;
    moment = new Moment(solver, system.variables());
    remembered = new Remembered(system);
    invariants.forEach(moment::add);
    initial = moment.literal(system.initial());
    open();
  }

  /** The number of the last layer. */
  int last() {
    return blocked.size() - 1;
  }

  void open() {
    blocked.add(new ArrayList<>());
    active.add(solver.variable());
  }

  List<Cube> blockedIn(int layer) {
    return List.copyOf(blocked.get(layer));
  }

  void block(Cube cube, int layer) {
    blocked.get(layer).removeIf(cube::contains);
    blocked.get(layer).add(cube);
    moment.add(cube.negation(system.variables()), -active.get(layer));
  }

  void forget(Cube cube, int layer) {
    blocked.get(layer).remove(cube);
  }

  /** Whether a cube is blocked in a layer already, by one that contains it. */
  boolean isBlocked(Cube cube, int layer) {
    for (int i = layer; i < blocked.size(); i++) {
      if (blocked.get(i).stream().anyMatch(b -> b.contains(cube))) {
        return true;
      }
    }
    return false;
  }

  /** A state of a layer in which a term holds, or null. Asks: F and term. */
  int[] stateWith(Term term, int layer) {
    List<Integer> assumptions = layer(layer);
    assumptions.add(moment.literal(term));
    return satisfiable(assumptions) ? moment.state() : null;
  }

  /**
   * Whether a state of a cube may begin. Asks: initial and cube.
   *
   * @param needed the indices of the parts that an answer no rests on are added
   */
  boolean initially(Cube cube, BitSet needed) {
    int excluded = cube.firstApart(system.initial());
    if (excluded >= 0) {
      needed.set(excluded);
      return false;
    }
    return satisfiable(new ArrayList<>(List.of(initial)), cube, needed);
  }

  /**
   * A state of a layer outside a cube from which one transition leads into it, or null. Asks, for
   * each transition t that touches the cube: F and not cube and guard of t and cube before t.
   *
   * @param needed the indices of the parts that an answer null rests on are added: from no state of
   *     the layer a transition leads into the cube of these parts only
   */
  Predecessor predecessor(Cube cube, int layer, BitSet needed) {
    Predecessor known = remembered.predecessor(cube, layer, state -> isIn(state, layer));
    if (known != null) {
      return known;
    }
    int outside = 0;
    try {
      for (int t = 0; t < system.transitions().size(); t++) {
        Transition transition = system.transitions().get(t);
        if (!cube.touchedBy(transition)) {
          continue;
        }
        Cube before = cube.before(transition);
        if (before.nowhere() >= 0) {
          needed.set(before.nowhere());
          continue;
        }
        int excluded = before.firstApart(transition.guard());
        if (excluded >= 0) {
          needed.set(excluded);
          continue;
        }
        if (remembered.noStep(t, cube, layer, needed)) {
          continue;
        }
        List<Integer> assumptions = layer(layer);
        if (!before.apart(cube)) {
          if (outside == 0) {
            outside = solver.variable();
            moment.add(cube.negation(system.variables()), -outside);
          }
          assumptions.add(outside);
        }
        assumptions.add(moment.literal(transition.guard()));
        BitSet core = new BitSet();
        if (satisfiable(assumptions, before, core)) {
          int[] state = moment.state();
          remembered.state(state, layer);
          return new Predecessor(state, t);
        }
        remembered.noStep(t, cube.only(core), layer, restsOn(outside) ? cube : null);
        needed.or(core);
      }
      return null;
    } finally {
      if (outside != 0) {
        solver.clause(-outside);
      }
    }
  }

  /** Whether a state that was found in a layer is in it still. */
  private boolean isIn(int[] state, int layer) {
    for (int i = layer; i < blocked.size(); i++) {
      if (blocked.get(i).stream().anyMatch(cube -> cube.has(state))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the answer no that was given last rests on an assumption. */
  private boolean restsOn(int assumption) {
    return assumption != 0 && Arrays.stream(solver.core()).anyMatch(l -> l == assumption);
  }

  /** As many states around a state as all make a transition into a cube. */
  Cube into(int[] state, int transition, Cube cube) {
    Transition made = system.transitions().get(transition);
    Around around = new Around(state, system.variables());
    around.keep(made.guard());
    cube.before(made).parts().forEach(around::keep);
    return around.cube();
  }

  /** As many states around a state as all satisfy a term. */
  Cube around(int[] state, Term term) {
    Around around = new Around(state, system.variables());
    around.keep(term);
    return around.cube();
  }

  private List<Integer> layer(int layer) {
    List<Integer> assumptions = new ArrayList<>();
    if (layer == 0) {
      assumptions.add(initial);
    }
    for (int i = layer; i < active.size(); i++) {
      assumptions.add(active.get(i));
    }
    return assumptions;
  }

  /** Whether the assumptions can hold in the cube; if not, adds the parts that this rests on. */
  private boolean satisfiable(List<Integer> assumptions, Cube cube, BitSet needed) {
    Map<Integer, Integer> parts = new HashMap<>();
    for (int i = 0; i < cube.parts().size(); i++) {
      for (int literal : moment.conjuncts(cube.parts().get(i))) {
        parts.putIfAbsent(literal, i);
        assumptions.add(literal);
      }
    }
    if (satisfiable(assumptions)) {
      return true;
    }
    for (int literal : solver.core()) {
      if (parts.containsKey(literal)) {
        needed.set(parts.get(literal));
      }
    }
    return false;
  }

  private boolean satisfiable(List<Integer> assumptions) {
    Answer answer = solver.check(Moment.ints(assumptions));
    if (answer == Answer.UNKNOWN) {
      throw new Limit();
    }
    return answer == Answer.SATISFIABLE;
  }
}
