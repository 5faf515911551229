package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What an instance of `flank protected` requires of each route, as a part of a formula. */
final class FlankFormula {
  private FlankFormula() {}

  /**
   * Each route with what has to be so while it lies.
   *
   * @param paths those of all instances, of {@code result.json}
   */
  static Map<String, List<String>> guards(JsonNode paths, String requirement) {
    Map<String, List<String>> guards = new LinkedHashMap<>();
    for (JsonNode path : paths) {
      if (path.required("requirement").asText().equals(requirement)) {
        guards
            .computeIfAbsent(path.required("route").asText(), r -> new ArrayList<>())
            .add(guard(path));
      }
    }
    return guards;
  }

  private static String guard(JsonNode path) {
    List<String> all = new ArrayList<>();
    path.required("away").forEach(p -> all.add(Formula.lie(p)));
    List<String> on = new ArrayList<>();
    path.required("guards").forEach(s -> on.add(Formula.NOT + "off(" + s.asText() + ")"));
    if (!on.isEmpty()) {
      all.add(on.size() == 1 ? on.get(0) : "(" + String.join(Formula.AND, on) + ")");
    }
    return all.isEmpty()
        ? "false"
        : all.size() == 1 ? all.get(0) : "(" + String.join(Formula.OR, all) + ")";
  }
}
