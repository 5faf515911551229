package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.report.html.Movements;

/**
 * A step of a lesson: a movement, and how the box stands after it.
 *
 * @param done the movement; empty for the beginning
 * @param moved what it moves outside the frame
 * @param last the number of its last half-stroke or event in the run; 0 for the beginning
 */
record Moment(int number, String done, String moved, int last, Map<String, String> state) {

  /** The beginning, then one for each line of the run. */
  static List<Moment> of(Movements movements, JsonNode run) {
    List<Moment> moments = new ArrayList<>();
    moments.add(new Moment(0, "", "", 0, values(run.required("beginning"))));
    for (Movements.Line line : movements.lines(run)) {
      moments.add(
          new Moment(moments.size(), line.done(), line.moved(), line.last(), values(line.after())));
    }
    return moments;
  }

  String anchor() {
    return "step-" + number;
  }

  String heading(int steps) {
    return number == 0 ? "The beginning" : "Step " + number + " of " + steps + ": " + done;
  }

  private static Map<String, String> values(JsonNode state) {
    Map<String, String> values = new TreeMap<>();
    state.properties().forEach(q -> values.put(q.getKey(), q.getValue().asText()));
    return values;
  }
}
