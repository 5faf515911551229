package lockwright.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Set;
import java.util.TreeSet;

/** Where two JSON values are not the same. */
final class Differences {
  private Differences() {}

  /**
   * The first place, as a JSON pointer (RFC 6901) from the given one on; empty if there is none.
   */
  static String first(String at, JsonNode one, JsonNode other) {
    if (one.equals(other)) {
      return "";
    } else if (one.isObject() && other.isObject()) {
      Set<String> names = new TreeSet<>();
      one.fieldNames().forEachRemaining(names::add);
      other.fieldNames().forEachRemaining(names::add);
      for (String name : names) {
        String in = at + "/" + name.replace("~", "~0").replace("/", "~1");
        if (!one.has(name) || !other.has(name)) {
          return in;
        }
        String first = first(in, one.get(name), other.get(name));
        if (!first.isEmpty()) {
          return first;
        }
      }
    } else if (one.isArray() && one.size() == other.size()) {
      Iterator<JsonNode> others = other.iterator();
      int i = 0;
      for (JsonNode item : one) {
        String first = first(at + "/" + i, item, others.next());
        if (!first.isEmpty()) {
          return first;
        }
        i++;
      }
    }
    return at.isEmpty() ? "/" : at;
  }
}
