package lockwright.report.sarif;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;
import lockwright.report.result.Movements;

/** The sequence of an instance, movement by movement, each at what is worked. */
record Flow(CheckedBox box, Places places) {
  void write(ObjectNode result, String beginning, Instance instance) {
    ObjectNode flow = result.putArray("codeFlows").addObject();
    String missing =
        instance
            .perhapsMissing()
            .map(m -> " Perhaps missing: '" + m + "', a draft for a competent person.")
            .orElse("");
    flow.set("message", Sarif.message("The sequence of movements." + missing));
    ObjectNode thread = flow.putArray("threadFlows").addObject();
    step(thread, 1, instance.things().get(0), "beginning: " + beginning);
    List<Movements.Line> lines = instance.movements();
    for (int i = 0; i < lines.size(); i++) {
      Movements.Line line = lines.get(i);
      String words = line.done() + (line.moved().isEmpty() ? "" : ": " + line.moved());
      ObjectNode step = step(thread, i + 2, place(line.thing()), words);
      if (i == lines.size() - 1) {
        step.put("importance", "essential");
      }
    }
  }

  private ObjectNode step(ObjectNode thread, int order, Instance.Thing at, String words) {
    ObjectNode step = thread.withArray("locations").addObject();
    ObjectNode location = places.location(at);
    location.set("message", Sarif.message(words));
    step.set("location", location);
    return step.put("executionOrder", order);
  }

  private Instance.Thing place(String thing) {
    int space = thing.indexOf(' ');
    String kind = thing.substring(0, space);
    return Instance.Thing.of(thing, part(kind, thing.substring(space + 1)).required("at"));
  }

  private JsonNode part(String kind, String name) {
    return switch (kind) {
      case "gates" -> box.parts().part("crossing", name);
      case "rod" -> box.parts().part("points", name.substring("of ".length()));
      default -> box.parts().part(kind, name);
    };
  }
}
