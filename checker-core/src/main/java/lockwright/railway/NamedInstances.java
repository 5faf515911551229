package lockwright.railway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import lockwright.railway.requirement.Asked;
import lockwright.railway.requirement.Exemption;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.Span;
import lockwright.spec.WaiversFile;

/**
 * The instances that are exempted or asked for by their names; {@code docs/meaning.md} 6.1 and 6.2.
 *
 * @param items as written
 * @param box with all that can be named
 */
record NamedInstances(List<WaiversFile.Item> items, Box box, Problems problems) {
  private interface Made<T> {
    T of(Requirement requirement, String reason, Span at);
  }

  /** In the order of the box; those that fit. */
  List<Exemption> exempted() {
    return fitting(
        Exemption::allowed,
        Exemption::new,
        Message.EXEMPTION_OF_NO_KIND,
        " cannot be exempted",
        "exempt only 'points bolted', 'points held in rear' or 'flank protected'; what else is"
            + " known to fail stands under 'expected' or 'waived'");
  }

  /** In the order of the box; those that fit. */
  List<Asked> asked() {
    return fitting(
        Asked::advice,
        Asked::new,
        Message.ASKED_OF_NO_KIND,
        " need not be asked for",
        "ask only for 'points to points', which is advice; what is no advice is always required,"
            + " so take the entry away");
  }

  private <T> List<T> fitting(
      Predicate<Requirement> kind, Made<T> made, Message message, String what, String mend) {
    Map<String, Requirement> all = new LinkedHashMap<>();
    box.checked().forEach(r -> all.put(r.id(), r));
    Map<String, WaiversFile.Item> written = new LinkedHashMap<>();
    for (WaiversFile.Item item : items) {
      String id = item.id().text();
      written.put(id, item);
      if (!all.containsKey(id)) {
        WaiversBuilder.unknown(item, all.keySet(), problems);
      } else if (!kind.test(all.get(id))) {
        problems.add(message, item.id().at(), item.id().quoted() + what, mend);
      }
    }
    List<T> fitting = new ArrayList<>();
    for (Requirement r : box.checked()) {
      WaiversFile.Item item = written.get(r.id());
      if (item != null && kind.test(r) && item.reason().isPresent()) {
        fitting.add(made.of(r, item.reason().get().text(), item.id().at()));
      }
    }
    return fitting;
  }
}
