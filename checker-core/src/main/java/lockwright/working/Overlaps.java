package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.layout.Beyond;
import lockwright.railway.requirement.Requirement;

/** 1.11 of {@code docs/meaning.md}: overlaps that lie, that are needed, and that meet. */
final class Overlaps {
  private final Apparatus apparatus;

  Overlaps(Apparatus apparatus) {
    this.apparatus = apparatus;
  }

  /**
   * The arm is off for the route, and every permitted overlap has points that do not lie for it.
   */
  Condition lacking(Requirement.OverlapSet r) {
    List<Condition> all =
        new ArrayList<>(List.of(apparatus.off(r.route().signal()), apparatus.lies(r.route())));
    for (Beyond overlap : r.permitted()) {
      all.add(Condition.not(lies(overlap)));
    }
    return Condition.all(all);
  }

  private Condition someLies(List<Beyond> some) {
    return Condition.any(some.stream().map(this::lies).toList());
  }

  private Condition lies(Beyond overlap) {
    return apparatus.lie(overlap.points());
  }

  /** Both arms are off for routes whose overlaps, as they lie, share something. */
  Condition meet(Requirement.OverlapsApart r) {
    List<Condition> some = new ArrayList<>();
    for (Requirement.OverlapsApart.Pair pair : r.pairs()) {
      List<Condition> all =
          new ArrayList<>(List.of(apparatus.lies(pair.first()), apparatus.lies(pair.second())));
      if (!pair.beyondFirst().isEmpty()) {
        all.add(someLies(pair.beyondFirst()));
      }
      if (!pair.beyondSecond().isEmpty()) {
        all.add(someLies(pair.beyondSecond()));
      }
      for (Requirement.OverlapsApart.Choice choice : pair.apart()) {
        all.add(Condition.not(Condition.all(lies(choice.first()), lies(choice.second()))));
      }
      some.add(Condition.all(all));
    }
    return Condition.all(apparatus.off(r.first()), apparatus.off(r.second()), Condition.any(some));
  }
}
