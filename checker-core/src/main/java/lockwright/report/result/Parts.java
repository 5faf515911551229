package lockwright.report.result;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;

/**
 * The parts of a result by what names them, and an anchor for each, by numbers and never by names,
 * which are the author's.
 */
public final class Parts {
  private final JsonNode result;
  private final Map<String, JsonNode> parts = new HashMap<>();
  private final Map<String, String> anchors = new HashMap<>();

  /**
   * @param result the tree of {@code result.json}
   * @throws IllegalArgumentException if two parts have one name, or a list is not there
   */
  public Parts(JsonNode result) {
    this.result = result;
    number("signal", "id", result.required("layout").required("signals"));
    number("points", "id", result.required("layout").required("points"));
    number("crossing", "id", result.required("layout").required("levelCrossings"));
    number("track", "id", result.required("layout").required("tracks"));
    number("lever", "id", result.required("levers"));
    number("section", "name", result.required("sections"));
    if (result.has("controls")) {
      number("condition", "name", result.get("controls").required("conditions"));
    }
    number("route", "name", result.required("routes"));
    number("catalogue", "name", result.required("catalogue"));
    number("requirement", "id", result.required("requirements"));
    number("advice", "id", result.required("advice"));
    number("assumption", "id", result.required("assumptions"));
    number("certificate", "digest", result.required("certificates"));
    number("run", "id", result.required("runs"));
  }

  JsonNode result() {
    return result;
  }

  private void number(String kind, String key, JsonNode list) {
    for (int i = 0; i < list.size(); i++) {
      String name = list.get(i).required(key).asText();
      if (parts.putIfAbsent(kind + " " + name, list.get(i)) != null) {
        throw new IllegalArgumentException(kind + " twice: " + name);
      }
      anchors.put(kind + " " + name, kind + "-" + (i + 1));
    }
  }

  /**
   * The anchor of a part.
   *
   * @throws IllegalArgumentException if the result has no such part
   */
  public String of(String kind, String name) {
    part(kind, name);
    return anchors.get(kind + " " + name);
  }

  /** The number in its anchor, from 1. */
  public int number(String kind, String name) {
    String anchor = of(kind, name);
    return Integer.parseInt(anchor.substring(anchor.lastIndexOf('-') + 1));
  }

  /**
   * The part of the result itself.
   *
   * @throws IllegalArgumentException if the result has no such part
   */
  public JsonNode part(String kind, String name) {
    JsonNode part = parts.get(kind + " " + name);
    if (part == null) {
      throw new IllegalArgumentException("the result has no " + kind + " " + name);
    }
    return part;
  }

  /** The name of a thing and its label, if it has one. */
  public String labelled(String kind, String name) {
    String label = part(kind, name).path("label").asText();
    return label.isEmpty() ? name : name + " " + label;
  }
}
