package lockwright.report.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.layout.Conflict;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Requirement;

/** The points that would best be locked against each other, for which routes, and what is asked. */
final class AdviceItems {
  private AdviceItems() {}

  static List<Item> of(Box box) {
    List<Item> items = new ArrayList<>();
    for (Requirement requirement : box.checked()) {
      if (requirement instanceof Requirement.PointsToPoints r) {
        String kind = "points to points:";
        Optional<Asked> asked =
            box.asked().stream().filter(a -> a.requirement().equals(r)).findFirst();
        items.add(
            new Item(
                kind,
                r.subject(),
                "not together",
                asked
                    .map(a -> "asked for, so a requirement here: " + a.reason())
                    .orElse("advice, which fails nothing")));
        for (Conflict c : r.meetings()) {
          String routes = c.first().name() + " with " + c.second().name() + ": ";
          items.add(new Item(kind, r.subject(), "for these meet", routes + c.reason()));
        }
      }
    }
    return items;
  }
}
