package lockwright.report.learner;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import lockwright.report.Shown;

/** What the script needs of a result, as JSON: no label, no note, nothing that was found. */
final class BoxData {
  private static final JsonMapper JSON = new JsonMapper();

  private BoxData() {}

  static String of(JsonNode result) {
    JsonNode layout = result.required("layout");
    ObjectNode data = JSON.createObjectNode();
    data.set("levers", only(result.required("levers"), "id", "work", "detection"));
    ArrayNode locking =
        only(result.required("locking"), "text", "kind", "lever", "others", "when", "holds", "at");
    locking.forEach(entry -> ((ObjectNode) entry).put("at", place(entry.required("at"))));
    data.set("locking", locking);
    data.set("sections", result.required("sections").deepCopy());
    if (result.has("controls")) {
      data.set("controls", result.get("controls").deepCopy());
    }
    data.set("routes", only(result.required("routes"), "signal", "tracks", "end", "points"));
    ObjectNode parts = data.putObject("layout");
    parts.set(
        "points",
        only(
            layout.required("points"),
            "id",
            "lever",
            "boltLever",
            "rodMayBreak",
            "workedElectrically",
            "workedByHand"));
    parts.set("signals", only(layout.required("signals"), "id", "arm"));
    parts.set(
        "groundFrames",
        only(layout.required("groundFrames"), "id", "points", "releaseLever", "releaseSection"));
    parts.set("levelCrossings", only(layout.required("levelCrossings"), "id", "gateLever"));
    return Shown.line(data.toString());
  }

  private static ArrayNode only(JsonNode list, String... fields) {
    ArrayNode some = JSON.createArrayNode();
    list.forEach(item -> some.add(((ObjectNode) item).deepCopy().retain(List.of(fields))));
    return some;
  }

  /** "locking.csv:5:3". */
  private static String place(JsonNode at) {
    return at.required("file").asText()
        + ":"
        + at.required("line").asInt()
        + ":"
        + at.required("column").asInt();
  }
}
