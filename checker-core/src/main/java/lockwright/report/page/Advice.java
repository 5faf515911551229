package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.report.html.Markup;
import lockwright.report.result.Parts;

/** The advice, which fails nothing, with what was found of each; in no colour of a verdict. */
record Advice(JsonNode result, Parts anchors, Markup m) {
  void write() {
    JsonNode all = result.required("advice");
    m.open("section", "aria-labelledby", "advice").element("h2", "Advice", "id", "advice");
    if (all.isEmpty()) {
      m.element("p", "None for this box.").close();
      return;
    }
    m.element(
        "p",
        "It is no requirement unless waivers.yaml asks for it: it is in no count, and fails nothing."
            + " Of "
            + all.size()
            + ": "
            + counts(all)
            + ".");
    for (JsonNode advice : all) {
      String id = advice.required("id").asText();
      m.open("div", "class", "advice", "id", anchors.of("advice", id));
      m.element("h3", advice.required("verdict").asText() + ": " + id);
      m.element(
          "p",
          anchors.part("catalogue", advice.required("name").asText()).required("words").asText());
      m.open("p").element("code", new Formula(result, anchors).of(advice)).close();
      meetings(advice, anchors, m);
      found(advice);
      m.close();
    }
    m.close();
  }

  private static String counts(JsonNode all) {
    Map<String, Integer> counts = new TreeMap<>();
    all.forEach(a -> counts.merge(a.required("verdict").asText(), 1, Integer::sum));
    List<String> words = new ArrayList<>();
    counts.forEach((word, number) -> words.add(number + " " + word));
    return String.join(", ", words);
  }

  /** Which routes meet over points that should not lie so together; nothing for what is else. */
  static void meetings(JsonNode instance, Parts anchors, Markup m) {
    JsonNode meetings = instance.path("apart").path("meetings");
    if (meetings.isEmpty()) {
      return;
    }
    m.element("p", "For these routes meet:").open("ul", "class", "short");
    for (JsonNode meeting : meetings) {
      m.element(
          "li",
          meeting.required("first").asText()
              + " and "
              + meeting.required("second").asText()
              + ", "
              + meeting.required("where").asText());
    }
    m.close();
  }

  private void found(JsonNode advice) {
    for (JsonNode never : advice.path("proof").path("never")) {
      m.element("p", "This never comes about: " + never.required("subject").asText());
    }
    if (advice.has("proof")) {
      JsonNode proof = advice.required("proof");
      String digest = proof.required("certificate").asText();
      m.open("p").text("The points never lie so together: certificate ");
      m.link(anchors.of("certificate", digest), digest.substring(0, 12));
      m.text(", checked by: " + String.join(", ", Formula.names(proof.required("checkedBy"))));
      m.close();
    } else if (advice.has("reason")) {
      m.element("p", "Nothing is known of it: " + advice.required("reason").asText());
    } else {
      sequence(advice.required("sequence"));
    }
  }

  private void sequence(JsonNode sequence) {
    JsonNode run = anchors.part("run", sequence.required("run").asText());
    RunTable table = new RunTable(anchors, m);
    table.write(run);
    m.element(
        "p",
        sequence.required("shortest").asBoolean()
            ? "Then they lie so together. The search found no sequence of fewer half-strokes and"
                + " events."
            : "Then they lie so together; perhaps a shorter sequence leads there too.");
    table.missing(run, sequence);
  }
}
