package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.requirement.Exemption;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.WaiversFile;

/** Makes the exemptions; `docs/meaning.md` 6.1. */
final class ExemptionsBuilder {
  private ExemptionsBuilder() {}

  /** In the order of the box; those that fit. */
  static List<Exemption> build(List<WaiversFile.Item> items, Box box, Problems problems) {
    Map<String, WaiversFile.Item> written = new LinkedHashMap<>();
    items.forEach(i -> written.put(i.id().text(), i));
    Map<String, Requirement> all = new LinkedHashMap<>();
    box.checked().forEach(r -> all.put(r.id(), r));
    items.forEach(i -> check(i, all, problems));
    List<Exemption> exemptions = new ArrayList<>();
    for (Requirement r : box.requirements()) {
      WaiversFile.Item item = written.get(r.id());
      if (item != null && Exemption.allowed(r) && item.reason().isPresent()) {
        exemptions.add(new Exemption(r, item.reason().get().text(), item.id().at()));
      }
    }
    return exemptions;
  }

  private static void check(
      WaiversFile.Item item, Map<String, Requirement> all, Problems problems) {
    Requirement requirement = all.get(item.id().text());
    if (requirement == null) {
      WaiversBuilder.unknown(item, all.keySet(), problems);
    } else if (!Exemption.allowed(requirement)) {
      problems.add(
          Message.EXEMPTION_OF_NO_KIND,
          item.id().at(),
          item.id().quoted() + " cannot be exempted",
          "exempt only 'points bolted', 'points held in rear' or 'flank protected'; what else is"
              + " known to fail stands under 'expected' or 'waived'");
    }
  }
}
