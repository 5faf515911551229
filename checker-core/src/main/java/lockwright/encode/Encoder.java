package lockwright.encode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lockwright.encode.names.Names;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.Term;
import lockwright.system.TransitionSystem;

/**
 * Makes a box into a transition system: {@link #parted} for safety, with the breaches of its
 * requirements and what they speak about as targets; {@link #whole} for possibility, with its
 * goals. For what asks to restore the frame see {@link Restoring}.
 */
public final class Encoder {
  private Encoder() {}

  /** Half-strokes, any number of levers part-way. */
  public static Encoded parted(Box box) {
    return encode(box, Strokes.PARTED, Optional.empty());
  }

  /**
   * The same without one entry of the locking table. Its targets are the breaches, and what the
   * entry forbids ({@link Names#FORBIDDEN_BY_ENTRY}).
   *
   * @throws IllegalArgumentException if the box has no such entry
   */
  public static Encoded parted(Box box, Entry without) {
    return encode(box, Strokes.PARTED, Optional.of(without));
  }

  /** Whole strokes, one at a time; all entries with conditions hold their levers. */
  public static Encoded whole(Box box) {
    return encode(box, Strokes.WHOLE, Optional.empty());
  }

  private static Encoded encode(Box box, Strokes strokes, Optional<Entry> without) {
    Vocabulary words = new Vocabulary();
    List<Entry> acting = new ArrayList<>(box.locking());
    if (without.isPresent() && !acting.remove(without.get())) {
      throw new IllegalArgumentException("no entry to leave out: " + without.get().words());
    }
    Levers levers = new Levers(box, acting, words, strokes);
    List<SectionCoder> sections =
        box.sections().stream().map(s -> new SectionCoder(s, box, words, strokes)).toList();

    levers.declare();
    sections.forEach(SectionCoder::declare);
    Conditions conditions = new Conditions(box, words);
    conditions.declare();

    List<Term> beginning = new ArrayList<>(List.of(levers.beginning()));
    sections.forEach(s -> beginning.add(s.beginning()));

    List<Movement> single = new ArrayList<>(levers.movements());
    sections.forEach(s -> single.addAll(s.movements()));
    single.addAll(conditions.movements());
    List<Movement> movements = new ArmsGoingOff(new Apparatus(box, words)).split(single);

    List<Clause> candidates = new ArrayList<>(levers.candidates());
    sections.forEach(s -> candidates.addAll(s.candidates()));

    Targets made = new Targets(new Apparatus(box, words), movements);
    List<Target> targets =
        without
            .map(e -> targets(box, made, new WithoutEntry(e, box.locking(), words), movements))
            .orElseGet(() -> targets(box, made, strokes));

    return new Encoded(
        new TransitionSystem(
            words.variables(),
            Term.and(beginning),
            movements.stream().map(Movement::transition).toList(),
            targets,
            candidates),
        new Names(words.quantities(), movements.stream().map(Movement::event).toList()));
  }

  private static List<Target> targets(
      Box box, Targets targets, WithoutEntry without, List<Movement> movements) {
    List<Target> all = new ArrayList<>(List.of(without.target(movements)));
    box.checked().stream().filter(r -> !r.possibility()).map(targets::of).forEach(all::add);
    return all;
  }

  /** The requirements of the kind, and what those of safety speak about: witnesses may be whole. */
  private static List<Target> targets(Box box, Targets targets, Strokes strokes) {
    boolean possibility = strokes == Strokes.WHOLE;
    List<Target> all = new ArrayList<>();
    Map<String, Subject> subjects = new LinkedHashMap<>();
    for (Requirement requirement : box.checked()) {
      if (requirement.possibility() == possibility
          && !(requirement instanceof Requirement.FrameCanBeRestored)) {
        all.add(targets.of(requirement));
      }
      requirement.speaksAbout().stream()
          .filter(s -> !(possibility && s instanceof Subject.PartWay))
          .forEach(s -> subjects.putIfAbsent(s.id(), s));
    }
    subjects.values().forEach(s -> all.add(targets.of(s)));
    return all;
  }
}
