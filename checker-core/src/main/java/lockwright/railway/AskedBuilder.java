package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.WaiversFile;

/** Makes what is asked for of the advice; `docs/meaning.md` 6.2. */
final class AskedBuilder {
  private AskedBuilder() {}

  /** In the order of the box; those that fit. */
  static List<Asked> build(List<WaiversFile.Item> items, Box box, Problems problems) {
    Map<String, WaiversFile.Item> written = new LinkedHashMap<>();
    items.forEach(i -> written.put(i.id().text(), i));
    Map<String, Requirement> all = new LinkedHashMap<>();
    box.checked().forEach(r -> all.put(r.id(), r));
    items.forEach(i -> check(i, all, problems));
    List<Asked> asked = new ArrayList<>();
    for (Requirement r : box.advice()) {
      WaiversFile.Item item = written.get(r.id());
      if (item != null && item.reason().isPresent()) {
        asked.add(new Asked(r, item.reason().get().text(), item.id().at()));
      }
    }
    return asked;
  }

  private static void check(
      WaiversFile.Item item, Map<String, Requirement> all, Problems problems) {
    Requirement requirement = all.get(item.id().text());
    if (requirement == null) {
      WaiversBuilder.unknown(item, all.keySet(), problems);
    } else if (!Asked.advice(requirement)) {
      problems.add(
          Message.ASKED_OF_NO_KIND,
          item.id().at(),
          item.id().quoted() + " need not be asked for",
          "ask only for 'points to points', which is advice; what is no advice is always required,"
              + " so take the entry away");
    }
  }
}
