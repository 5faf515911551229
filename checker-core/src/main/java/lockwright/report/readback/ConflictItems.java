package lockwright.report.readback;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.Box;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.Signal;
import lockwright.railway.requirement.Requirement;

/** The conflicts, pair of signals by pair, with the reason of each. */
final class ConflictItems {
  private ConflictItems() {}

  static List<Item> of(Box box) {
    Map<List<String>, List<Conflict>> pairs = new LinkedHashMap<>();
    for (Conflict c : box.conflicts()) {
      pairs
          .computeIfAbsent(List.of(c.first().signal(), c.second().signal()), p -> new ArrayList<>())
          .add(c);
    }
    List<Item> items = new ArrayList<>();
    pairs.forEach(
        (pair, conflicts) -> {
          String name = pair.get(0) + " and " + pair.get(1);
          items.add(new Item("conflict of signals", name, "both off", bothOff(box, pair)));
          for (Conflict c : conflicts) {
            String routes = c.first().name() + " with " + c.second().name() + ": ";
            items.add(new Item("conflict of signals", name, "conflict", routes + c.reason()));
          }
        });
    return items;
  }

  /** The signals that a signal has a conflict with, in order of the plan. */
  static List<String> with(Box box, String signal) {
    return box.layout().signals().stream()
        .map(Signal::id)
        .filter(
            other ->
                box.conflicts().stream()
                    .anyMatch(c -> isBetween(c, signal, other) || isBetween(c, other, signal)))
        .toList();
  }

  private static String bothOff(Box box, List<String> pair) {
    return box.requirements().stream()
        .filter(Requirement.NoConflict.class::isInstance)
        .map(Requirement.NoConflict.class::cast)
        .filter(n -> List.of(n.first(), n.second()).equals(pair))
        .map(
            n ->
                (n.always()
                        ? "never: all their routes conflict"
                        : "never while two conflicting routes of theirs lie")
                    + n.closing()
                        .map(
                            l -> "; for opposed routes, only with closing lever " + l + " reversed")
                        .orElse(""))
        .findFirst()
        .orElse("not checked: the points keep the conflicting routes apart");
  }

  private static boolean isBetween(Conflict conflict, String first, String second) {
    return conflict.first().signal().equals(first) && conflict.second().signal().equals(second);
  }
}
