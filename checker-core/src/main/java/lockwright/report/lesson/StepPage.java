package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lockwright.report.Outside;
import lockwright.report.html.Markup;
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

  private String value(JsonNode section, String what) {
    return moment
        .state()
        .getOrDefault("section " + section.required("name").asText() + ": " + what, "");
  }

  private String use(JsonNode section, String at) {
    List<String> words = new ArrayList<>();
    if (value(section, "plunging at " + at).equals("yes")) {
      words.add("plunging");
    }
    if (value(section, "withdrawal at " + at).equals("yes")) {
      words.add("withdrawing");
    }
    return words.isEmpty() ? "not in use" : String.join(" and ", words);
  }

  /** What the instrument here does to levers: "; lever 11 is released". */
  private String release(JsonNode section) {
    List<String> levers = new ArrayList<>();
    section.path("release").path("levers").forEach(l -> levers.add(l.asText()));
    return levers.isEmpty()
        ? ""
        : (levers.size() == 1 ? "; lever " : "; levers ")
            + String.join(", ", levers)
            + (levers.size() == 1 ? " is" : " are")
            + (value(section, "release").equals("given") ? " released" : " not released");
  }

  /** What is before him, and what is not. */
  void seen() {
    m.open("div", "class", "sides").open("div").element("h3", "What the signaller sees");
    String levers = Pictures.levers(made.result(), moment.state());
    m.open("ul").element("li", capital(levers));
    for (JsonNode section : made.result().required("sections")) {
      String name = section.required("name").asText();
      String own = instrument(section, section.required("here").asText());
      m.element("li", "His own instrument, " + name + ": " + own + release(section) + ".");
    }
    m.close().close();
    m.open("div").element("h3", "What he may not see").open("ul");
    List<String> outside = Pictures.outside(made.result(), moment.state());
    String stand = outside.isEmpty() ? "as normal" : String.join("; ", outside);
    m.element("li", "Arms, points and bolts themselves: " + stand + ".");
    for (JsonNode section : made.result().required("sections")) {
      m.element("li", elsewhere(section));
    }
    for (JsonNode condition : made.result().at("/controls/conditions")) {
      String name = condition.required("name").asText();
      boolean met = "met".equals(moment.state().get("condition " + name));
      m.element("li", "From outside, " + name + ": " + (met ? "met." : "not met."));
    }
    m.close();
    m.element(
        "p",
        "What can be seen from the box, and what has a repeater, the spec does not say.",
        "class",
        "small");
    m.close().close();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** "15 tokens in it, not in use". */
  private String instrument(JsonNode section, String at) {
    String token = section.required("token").asText();
    return Outside.counted(value(section, "tokens in " + at), token)
        + " in it, "
        + use(section, at);
  }

  private String elsewhere(JsonNode section) {
    List<String> words = new ArrayList<>();
    for (JsonNode instrument : section.required("instruments")) {
      String at = instrument.required("name").asText();
      if (!at.equals(section.required("here").asText())) {
        words.add("the instrument at " + at + ": " + instrument(section, at));
      }
    }
    String token = section.required("token").asText();
    words.add(Outside.counted(value(section, "tokens out"), token) + " out of all instruments");
    return capital(section.required("name").asText() + ", " + String.join("; ", words) + ".");
  }
}
