package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;

/** The flank paths, and what is on each that protects the route; in the read-back. */
final class FlankRead {
  private static final List<String> COLUMNS =
      List.of("route", "from", "comes in at", "protected by one of");

  private FlankRead() {}

  static void write(JsonNode paths, Markup m) {
    if (paths.isEmpty()) {
      return;
    }
    m.element("h3", "Flanks");
    m.element(
        "p",
        "Ways by which a vehicle could come into a route from the side, past no flank trap. A signal"
            + " protects only as far as drivers obey it.");
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode path : paths) {
      rows.add(
          List.of(
              path.required("route").asText(),
              path.required("from").asText(),
              path.required("joins").asText(),
              protectors(path)));
    }
    Tables.write(m, COLUMNS, rows);
  }

  private static String protectors(JsonNode path) {
    List<String> words = new ArrayList<>();
    for (JsonNode p : path.required("away")) {
      words.add("points " + p.required("points").asText() + " " + p.required("lie").asText());
    }
    List<String> guards = Formula.names(path.required("guards"));
    if (!guards.isEmpty()) {
      words.add("signal " + String.join(", ", guards) + " at danger");
    }
    List<String> not = Formula.names(path.required("notEnough"));
    String none =
        not.isEmpty()
            ? ""
            : " (not by signal "
                + String.join(", ", not)
                + ": a siding or goods line joins a passenger line)";
    return (words.isEmpty() ? "NOTHING" : String.join("; or ", words)) + none;
  }
}
