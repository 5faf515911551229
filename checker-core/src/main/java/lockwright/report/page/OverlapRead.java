package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;

/** The overlaps permitted beyond routes; in the read-back. */
final class OverlapRead {
  private static final List<String> COLUMNS = List.of("route", "overlap beyond it", "points of it");

  private OverlapRead() {}

  static void write(JsonNode overlaps, Markup m) {
    if (overlaps.isEmpty()) {
      return;
    }
    m.element("h3", "Overlaps");
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode o : overlaps) {
      List<String> points = new ArrayList<>();
      for (JsonNode p : o.required("points")) {
        points.add(p.required("points").asText() + " " + p.required("lie").asText());
      }
      rows.add(
          List.of(
              o.required("route").asText(),
              String.join(", ", Formula.names(o.required("tracks"))),
              points.isEmpty() ? "none" : String.join("; ", points)));
    }
    Tables.write(m, COLUMNS, rows);
  }
}
