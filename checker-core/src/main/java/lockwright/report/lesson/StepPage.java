package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;
import lockwright.report.picture.Pictures;

/** How the box stands at one step: pictures, instruments, and who sees what of it. */
record StepPage(Lessons.Made made, Moment moment, Markup m) {
  void pictures() {
    picture("Track diagram", made.diagram().apply(moment.state()));
    picture("Lever frame", Pictures.frame(made.result(), moment.state()));
  }

  /** In a frame of its own, which scrolls where the page is narrower. */
  private void picture(String name, String picture) {
    m.element("h3", name);
    m.open("div", "class", "picture-frame", "tabindex", "0", "role", "region", "aria-label", name);
    m.written(picture).close();
  }

  void instruments() {
    if (made.result().required("sections").isEmpty()) {
      return;
    }
    List<String> columns = List.of("section", "instrument", "tokens in it", "in use");
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode section : made.result().required("sections")) {
      String name = section.required("name").asText();
      String here = section.required("here").asText();
      for (JsonNode instrument : section.required("instruments")) {
        String at = instrument.required("name").asText();
        String in = value(section, "tokens in " + at);
        rows.add(List.of(name, at + (at.equals(here) ? ", here" : ""), in, inUse(section, at)));
      }
      rows.add(List.of(name, "out of all instruments", value(section, "tokens out"), out(section)));
    }
    m.element("h3", "Token instruments");
    Tables.write(m, columns, rows);
  }

  private String value(JsonNode section, String what) {
    return moment
        .state()
        .getOrDefault("section " + section.required("name").asText() + ": " + what, "");
  }

  private String inUse(JsonNode section, String at) {
    List<String> words = new ArrayList<>();
    if (value(section, "plunging at " + at).equals("yes")) {
      words.add("plunging");
    }
    if (value(section, "withdrawal at " + at).equals("yes")) {
      words.add("withdrawing");
    }
    return words.isEmpty() ? "no" : String.join(", ", words);
  }

  /** What the instrument here does to levers. */
  private String out(JsonNode section) {
    List<String> levers = new ArrayList<>();
    section.path("release").path("levers").forEach(l -> levers.add(l.asText()));
    return levers.isEmpty()
        ? ""
        : (levers.size() == 1 ? "lever " : "levers ")
            + String.join(", ", levers)
            + (value(section, "release").equals("given") ? " released" : " not released");
  }

  void seen() {
    m.open("div", "class", "sides").open("div").element("h3", "What the signaller sees");
    m.open("ul").element("li", Pictures.levers(made.result(), moment.state()));
    for (JsonNode section : made.result().required("sections")) {
      String here = section.required("here").asText();
      m.element(
          "li",
          "His own instrument of "
              + section.required("name").asText()
              + ": "
              + value(section, "tokens in " + here)
              + " in it; in use: "
              + inUse(section, here)
              + ".");
    }
    m.close().close();
    m.open("div").element("h3", "What he may not see").open("ul");
    List<String> outside = Pictures.outside(made.result(), moment.state());
    String stands = outside.isEmpty() ? "all is normal" : String.join("; ", outside);
    m.element("li", "How arms, points and bolts stand: " + stands + ".");
    for (JsonNode section : made.result().required("sections")) {
      m.element("li", elsewhere(section));
    }
    m.close();
    m.element(
        "p",
        "The spec does not say what can be seen from the box, and has no repeaters: ask there.",
        "class",
        "small");
    m.close().close();
  }

  private String elsewhere(JsonNode section) {
    List<String> words = new ArrayList<>();
    for (JsonNode instrument : section.required("instruments")) {
      String at = instrument.required("name").asText();
      if (!at.equals(section.required("here").asText())) {
        words.add(at + " has " + value(section, "tokens in " + at) + ", in use: " + inUse(section, at));
      }
    }
    words.add(value(section, "tokens out") + " out of all instruments");
    return section.required("name").asText() + ": " + String.join("; ", words) + ".";
  }

  /** Points of ground frames and gates that do not stand normal before the first movement. */
  static List<String> otherThanNormal(Map<String, String> beginning) {
    List<String> words = new ArrayList<>();
    beginning.forEach(
        (quantity, value) -> {
          if (quantity.startsWith("points ") && !value.equals("N")) {
            words.add(quantity + (value.equals("R") ? " lie reverse" : " lie neither way"));
          } else if (quantity.startsWith("gates ") && !value.equals("N")) {
            words.add(quantity + (value.equals("R") ? " across the line" : " part-way"));
          }
        });
    return words;
  }
}
