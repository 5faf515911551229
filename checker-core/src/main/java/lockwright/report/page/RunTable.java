package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;
import lockwright.report.result.Movements;
import lockwright.report.result.Parts;

/** A run as a numbered table of movements. */
final class RunTable {
  private static final List<String> COLUMNS = List.of("no.", "movement", "moves");

  private final Movements movements;
  private final Markup m;

  RunTable(Parts anchors, Markup m) {
    this.movements = new Movements(anchors);
    this.m = m;
  }

  void write(JsonNode run) {
    m.element("p", "Beginning: " + movements.beginning(run));
    Tables.head(m, COLUMNS);
    int number = 0;
    for (Movements.Line line : movements.lines(run)) {
      number++;
      m.open("tr");
      Tables.cell(m, COLUMNS.get(0), Integer.toString(number));
      Tables.cell(m, COLUMNS.get(1), line.done());
      Tables.cell(m, COLUMNS.get(2), line.moved());
      m.close();
    }
    Tables.end(m);
  }

  /** The value of each quantity after the run. */
  static Map<String, String> last(JsonNode run) {
    JsonNode steps = run.required("steps");
    JsonNode state =
        steps.isEmpty() ? run.required("beginning") : steps.get(steps.size() - 1).required("after");
    Map<String, String> last = new TreeMap<>();
    state.properties().forEach(q -> last.put(q.getKey(), q.getValue().asText()));
    return last;
  }

  /** The movements alone, in a list. */
  void order(JsonNode run) {
    m.open("ol");
    movements.lines(run).forEach(l -> m.element("li", l.done()));
    m.close();
  }

  String beginning(JsonNode run) {
    return movements.beginning(run);
  }

  /** The entry that would stop the run, as a draft, if the sequence has one. */
  void missing(JsonNode run, JsonNode sequence) {
    if (!sequence.has("missing")) {
      return;
    }
    JsonNode missing = sequence.required("missing");
    int stop = missing.required("stopsAt").asInt();
    m.element(
        "p",
        "Perhaps missing: '"
            + missing.required("words").asText()
            + "'; with it "
            + (stop == 0
                ? "the sequence could not begin so"
                : "movement " + line(run, stop) + " would not be free")
            + ". A draft for a competent person; that it mends the requirement is not claimed.");
  }

  /** The number of the line in which this movement, from 1, is made. */
  private int line(JsonNode run, int movement) {
    List<Movements.Line> lines = movements.lines(run);
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).last() >= movement) {
        return i + 1;
      }
    }
    return lines.size();
  }
}
