package lockwright.report.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.layout.FlankPath;
import lockwright.railway.layout.FlankPoints;
import lockwright.railway.requirement.Exemption;
import lockwright.railway.requirement.Requirement;

/** The flank paths, with what protects the route on each; and what is exempted by name. */
final class FlankItems {
  private FlankItems() {}

  static List<Item> of(Box box) {
    List<Item> items = new ArrayList<>();
    Stream.concat(box.requirements().stream(), box.exempted().stream().map(Exemption::requirement))
        .filter(Requirement.FlankProtected.class::isInstance)
        .map(Requirement.FlankProtected.class::cast)
        .forEach(r -> flank(r, items));
    for (Exemption e : box.exempted()) {
      items.add(new Item("exempted by name", "", e.requirement().id(), e.reason()));
    }
    return items;
  }

  private static void flank(Requirement.FlankProtected r, List<Item> items) {
    for (Requirement.FlankProtected.Flank flank : r.flanks()) {
      for (FlankPath path : flank.paths()) {
        items.add(
            new Item(
                "flank of route",
                flank.route().name(),
                "from " + path.from() + " at " + path.joins(),
                protectors(path)));
      }
    }
  }

  private static String protectors(FlankPath path) {
    List<String> by = new ArrayList<>();
    for (FlankPoints p : path.away()) {
      by.add("points " + p.points() + " " + Words.lie(p.lie()) + ", away from the route");
    }
    if (!path.guards().isEmpty()) {
      by.add("signal " + Words.list(path.guards()) + " at danger, as far as drivers obey it");
    }
    String not =
        path.notEnough().isEmpty()
            ? ""
            : "; not by signal "
                + Words.list(path.notEnough())
                + ", since a siding or goods line joins a passenger line";
    return (by.isEmpty() ? "NOTHING protects it" : "protected by " + String.join("; or by ", by))
        + not;
  }
}
