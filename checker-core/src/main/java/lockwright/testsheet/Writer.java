package lockwright.testsheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.walk.Outcome;
import lockwright.walk.Reach;
import lockwright.walk.Walks;
import lockwright.working.Condition;
import lockwright.working.Hold;
import lockwright.working.Need;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Writes a test sheet.
 *
 * <ol>
 *   <li>With all levers normal, every lever is tried in order of its number.
 *   <li>For each trial of each entry, take the state nearest to all levers normal in which it
 *       shows: the lever free, or held by this entry alone; else by it and others. Trials of one
 *       lever in one state are one line.
 *   <li>Lever by lever, in order of their numbers, go from each line to the one whose levers stand
 *       most as they do now, by the fewest movements.
 *   <li>Then what holds levers besides the table, and arms, is tried; {@link RuleWriter}.
 *   <li>Each line is played; what cannot be played is not written.
 * </ol>
 */
final class Writer {
  private final Box box;
  private final int most;
  private final Consumer<String> progress;
  private final Working parted;
  private final Working whole;
  private final Walks walks;
  private final State beginning;
  private final Reach reach;
  private final Strokes strokes;
  private final List<Line> lines = new ArrayList<>();
  private final List<NotTried> notTried = new ArrayList<>();
  private State now;

  Writer(Box box, int most, Consumer<String> progress) {
    this.box = box;
    this.progress = progress;
    progress.accept("test sheet: what the levers can come to");
    this.most = most;
    this.parted = Working.parted(box);
    this.whole = Working.whole(box);
    this.walks = new Walks(box, whole, whole.movements(), most);
    this.beginning = Walks.beginnings(box, whole, most).get(0);
    this.reach = Reach.of(whole, beginning, most);
    this.strokes = new Strokes(box, parted, whole, reach);
    this.now = beginning;
  }

  TestSheet sheet() {
    Map<String, Map<String, Plan>> byLever = plans();
    allNormal(byLever.remove(""));
    byLever.forEach((lever, plans) -> group(lever, new ArrayList<>(plans.values())));
    progress.accept("test sheet: what holds levers besides the table, and pulling orders");
    RuleWriter rules = new RuleWriter(box, parted, whole, walks, now, lines.size());
    return new TestSheet(
        box,
        beginning,
        lines,
        notTried,
        rules.all(),
        PullingOrder.all(box, whole, most),
        reach.all());
  }

  /** By the lever under which they stand, and by where and what is tried. */
  private Map<String, Map<String, Plan>> plans() {
    Map<String, Map<String, Plan>> byLever = new LinkedHashMap<>();
    Map<String, Plan> all = new LinkedHashMap<>();
    byLever.put("", new LinkedHashMap<>());
    for (Lever lever : box.frame().levers()) {
      if (lever.work().moves()) {
        Plan plan = new Plan(reach.states().get(0), false);
        byLever.get("").put(lever.id(), plan);
        all.put(key(plan.state(), lever.id(), false), plan);
      }
    }
    for (Lever lever : box.frame().levers()) {
      progress.accept("test sheet: where to try the entries under lever " + lever.id());
      Map<String, Plan> own = new LinkedHashMap<>();
      byLever.put(lever.id(), own);
      for (Entry entry : box.locking()) {
        if (entry.lever().equals(lever.id())) {
          Trials.of(entry).forEach(t -> plan(t, own, all));
        }
      }
    }
    return byLever;
  }

  private static String key(int[] state, String lever, boolean again) {
    StringBuilder key = new StringBuilder(lever).append(again ? " again" : "");
    for (int value : state) {
      key.append(' ').append(value);
    }
    return key.toString();
  }

  private void plan(Trial trial, Map<String, Plan> own, Map<String, Plan> all) {
    if (!box.frame().lever(trial.lever()).work().moves()) {
      notTried.add(new NotTried(trial, "lever " + trial.lever() + " does not move"));
      return;
    }
    int[] perhaps = null;
    int[] with = null;
    int[] against = null;
    for (int[] state : reach.states()) {
      switch (strokes.sight(trial, state)) {
        case SHOWS -> {
          plan(trial, state, true, own, all);
          return;
        }
        case PERHAPS_ALONE -> perhaps = perhaps == null ? state : perhaps;
        case WITH_OTHERS -> with = with == null ? state : with;
        case AGAINST -> against = against == null ? state : against;
        case OTHERWISE -> {}
      }
    }
    int[] nearest = perhaps != null ? perhaps : with;
    if (nearest != null) {
      plan(trial, nearest, false, own, all);
    }
    notTried.add(new NotTried(trial, why(trial, perhaps, with, against)));
  }

  /** A line that there is already serves, if no token lock or other rule hides the trial there. */
  private void plan(
      Trial trial, int[] state, boolean alone, Map<String, Plan> own, Map<String, Plan> all) {
    String key = key(state, trial.lever(), trial.aspect() == Aspect.ROTATION_KEPT);
    if (alone && all.containsKey(key) && !all.get(key).alone() && hidden(trial)) {
      key = key + " itself";
    }
    Plan plan = all.get(key);
    if (plan == null) {
      plan = new Plan(state, alone);
      all.put(key, plan);
      own.put(key, plan);
    }
    plan.trials().add(trial);
  }

  /** With all levers normal, as the tokens are at first. */
  private boolean hidden(Trial trial) {
    return strokes.besides(trial).stream().anyMatch(n -> !n.condition().evaluate(beginning));
  }

  private String why(Trial trial, int[] perhaps, int[] with, int[] against) {
    String where = reach.all() ? "that can be reached" : "among those looked at";
    if (perhaps != null) {
      return "alone only if pieces that are not marked do not hold (meaning.md 3.2); these may: "
          + words(strokes.holding(trial, perhaps), trial.entry());
    }
    if (with != null) {
      return "not alone: in every state "
          + where
          + " others hold the lever too; in the nearest "
          + words(strokes.surelyHolding(trial, with), trial.entry());
    }
    if (against == null) {
      return "in no state " + where + " do its levers stand so";
    }
    return trial.aspect().held()
        ? "in every state " + where + " with its levers so, it is not sure that it holds"
        : "in every state "
            + where
            + " with its levers so, the lever is held; in the nearest by "
            + words(strokes.holding(trial, against), null);
  }

  private static String words(List<Hold> holds, Entry but) {
    return holds.stream()
        .filter(h -> h.entry().filter(e -> e.equals(but)).isEmpty())
        .map(Hold::words)
        .collect(Collectors.joining("; "));
  }

  private void allNormal(Map<String, Plan> plans) {
    for (Map.Entry<String, Plan> plan : plans.entrySet()) {
      write("", plan.getKey(), Position.N, plan.getValue(), List.of());
    }
  }

  private void group(String lever, List<Plan> open) {
    progress.accept("test sheet: the lines under lever " + lever);
    while (!open.isEmpty()) {
      Plan next = null;
      int least = Integer.MAX_VALUE;
      for (Plan plan : open) {
        if (open.stream().noneMatch(plan::waitsFor) && distance(plan.state()) < least) {
          next = plan;
          least = distance(plan.state());
        }
      }
      open.remove(next);
      Trial first = next.first();
      write(
          lever,
          first.lever(),
          first.from(),
          next,
          next.alone() ? strokes.besides(first) : List.of());
    }
  }

  /** How many levers stand otherwise now, and turns. */
  private int distance(int[] state) {
    int[] values = now.indices();
    return (int) reach.looked().stream().filter(i -> values[i] != state[i]).count();
  }

  /** Goes there, tries the lever, and writes down what was played. */
  private void write(String group, String lever, Position from, Plan plan, List<Need> besides) {
    List<Condition> goal = new ArrayList<>();
    reach.looked().stream().forEach(i -> goal.add(is(i, plan.state()[i])));
    Set<Condition> needed = new LinkedHashSet<>();
    besides.forEach(n -> needed.add(n.condition()));
    goal.addAll(needed);
    Outcome outcome = walks.shortest(List.of(now), goal);
    if (!(outcome instanceof Outcome.Found found)) {
      plan.trials()
          .forEach(
              t ->
                  notTried.add(
                      new NotTried(
                          t, "no way to it was found from the line before, with all of the box")));
      return;
    }
    State at = found.walk().to();
    Event.LeverMoves stroke = Strokes.whole(lever, from);
    List<Hold> surely = parted.holds(at, new Event.LeverMoves(lever, from, Position.M));
    List<Hold> perhaps = whole.holds(at, stroke);
    if (surely.isEmpty() && !perhaps.isEmpty()) {
      plan.trials()
          .forEach(t -> notTried.add(new NotTried(t, "it hangs on a piece that is not marked")));
      return;
    }
    now = surely.isEmpty() ? whole.make(at, stroke) : at;
    boolean alone = perhaps.size() == 1 && surely.size() == 1 && surely.get(0).entry().isPresent();
    if (plan.trials().stream().anyMatch(t -> !shows(t, surely, plan.alone(), alone))) {
      throw new IllegalStateException("lever " + lever + " is not as planned in " + at);
    }
    lines.add(
        new Line(
            lines.size() + 1,
            group,
            found.walk().events(),
            at,
            lever,
            from,
            surely,
            alone,
            plan.trials(),
            now));
  }

  /** Whether what was played is what the trial is to show. */
  private static boolean shows(Trial trial, List<Hold> held, boolean toBeAlone, boolean alone) {
    return trial.aspect().held()
        ? held.stream().anyMatch(h -> h.entry().filter(trial.entry()::equals).isPresent())
            && (alone || !toBeAlone)
        : held.isEmpty();
  }

  private Condition is(int quantity, int value) {
    Quantity q = whole.quantities().get(quantity);
    BitSet there = new BitSet();
    there.set(value);
    return Condition.oneOf(quantity, q, there);
  }
}
