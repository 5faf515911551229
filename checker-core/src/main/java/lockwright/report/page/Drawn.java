package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import lockwright.report.html.Markup;
import lockwright.report.picture.Pictures;
import lockwright.spec.Problem;

/** The pictures of the box, as all levers stand normal. */
record Drawn(JsonNode result, Markup m) {
  void write() {
    m.open("section", "aria-labelledby", "pictures");
    m.element("h2", "The box", "id", "pictures");
    m.element("p", "All levers normal, as the files give it.");
    m.element("h3", "Track diagram");
    at(m, "Track diagram", Pictures.diagram(result, Map.of()));
    for (Problem problem : Pictures.withoutRoom(result)) {
      m.element("p", "Not all has room in it: " + problem.what() + " (" + problem.span() + ").");
    }
    m.element("h3", "Lever frame");
    at(m, "Lever frame", Pictures.frame(result, Map.of()));
    m.close();
  }

  /** A picture in a frame of its own, which scrolls where the page is narrower. */
  static void at(Markup m, String name, String picture) {
    m.open("div", "class", "picture-frame", "tabindex", "0", "role", "region", "aria-label", name);
    m.written(picture).close();
  }
}
