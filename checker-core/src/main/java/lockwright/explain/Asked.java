package lockwright.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lockwright.railway.Box;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;

/**
 * What is asked: a lever, in a state given by the levers that stand reversed or part-way. All
 * others stand normal.
 *
 * @param reversed in the order in which they were pulled, if that can be
 * @param collars the levers that then have a collar on, and do not move
 */
public record Asked(
    List<String> reversed, List<String> partWay, String lever, List<String> collars) {
  private static final int MOST_SHOWN = 20;

  public Asked {
    reversed = List.copyOf(reversed);
    partWay = List.copyOf(partWay);
    collars = List.copyOf(collars);
  }

  /** Without collars. */
  public Asked(List<String> reversed, List<String> partWay, String lever) {
    this(reversed, partWay, lever, List.of());
  }

  /** As written: levers joined by commas or spaces. Null is nothing. */
  public static Asked written(String reversed, String partWay, String lever) {
    return new Asked(levers(reversed), levers(partWay), lever == null ? "" : lever.strip());
  }

  /** The same with collars on; where no lever is named, the first of these is asked about. */
  public static Asked written(String reversed, String partWay, String lever, String collars) {
    List<String> on = levers(collars);
    Asked asked = written(reversed, partWay, lever);
    String about = asked.lever().isEmpty() && !on.isEmpty() ? on.get(0) : asked.lever();
    return new Asked(asked.reversed(), asked.partWay(), about, on);
  }

  private static List<String> levers(String written) {
    return written == null
        ? List.of()
        : Arrays.stream(written.strip().split("[,;\\s]+")).filter(l -> !l.isEmpty()).toList();
  }

  /**
   * What is wrong with it.
   *
   * @param setting the property
   * @param fix what to do
   */
  public record Fault(String setting, String what, String fix) {}

  /** All that is wrong, for a box; nothing, if it can be answered. */
  public List<Fault> faults(Box box) {
    List<Fault> faults = new ArrayList<>();
    if (lever.isEmpty()) {
      faults.add(
          new Fault(
              "lockwright.lever",
              "no lever is asked about",
              "name one: -Dlockwright.lever=" + box.frame().levers().get(0).id()));
    } else {
      unfit(box, "lockwright.lever", lever).ifPresent(faults::add);
    }
    Set<String> seen = new HashSet<>();
    for (String id : reversed) {
      named(box, "lockwright.reversed", id, seen, faults);
    }
    for (String id : partWay) {
      named(box, "lockwright.partWay", id, seen, faults);
    }
    Set<String> collared = new HashSet<>();
    for (String id : collars) {
      named(box, "lockwright.collars", id, collared, faults);
    }
    seen.stream()
        .filter(l -> l.endsWith(Lever.PULL) && seen.contains(Lever.number(l) + Lever.PUSH))
        .sorted()
        .forEach(
            l ->
                faults.add(
                    new Fault(
                        "lockwright.reversed",
                        "lever " + Lever.number(l) + " cannot be pulled and pushed at once",
                        "name one of its ways")));
    return faults;
  }

  private static void named(
      Box box, String setting, String id, Set<String> seen, List<Fault> faults) {
    unfit(box, setting, id).ifPresent(faults::add);
    if (!seen.add(id)) {
      faults.add(
          new Fault(
              setting,
              "lever " + id + " is named twice",
              "a lever stands in one place: name it once"));
    }
  }

  private static Optional<Fault> unfit(Box box, String setting, String id) {
    List<Lever> levers = box.frame().levers();
    Optional<Lever> lever = levers.stream().filter(l -> l.id().equals(id)).findFirst();
    if (lever.isEmpty()) {
      return Optional.of(
          new Fault(setting, "the frame has no lever '" + id + "'", "its levers are " + all(box)));
    }
    if (!lever.get().work().moves()) {
      return Optional.of(
          new Fault(
              setting,
              "lever "
                  + id
                  + (lever.get().work() instanceof Work.Spare ? " is spare" : " is out of use")
                  + ": it works nothing, and does not move",
              setting.endsWith("lever") ? "ask about another" : "leave it out"));
    }
    return Optional.empty();
  }

  private static String all(Box box) {
    List<String> ids = box.frame().levers().stream().map(Lever::id).toList();
    return ids.size() <= MOST_SHOWN
        ? String.join(", ", ids)
        : ids.stream().limit(MOST_SHOWN - 1).collect(Collectors.joining(", "))
            + " and so on to "
            + ids.get(ids.size() - 1);
  }
}
