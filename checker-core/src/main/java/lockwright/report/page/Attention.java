package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.picture.Pictures;
import lockwright.report.result.Parts;

/** What is not proved and not shown, with its sequence and what the author expects of it. */
final class Attention {
  private final JsonNode result;
  private final Parts anchors;
  private final Markup m;
  private final Formula formula;
  private final RunTable runs;

  Attention(JsonNode result, Parts anchors, Markup m) {
    this.result = result;
    this.anchors = anchors;
    this.m = m;
    this.formula = new Formula(result, anchors);
    this.runs = new RunTable(anchors, m);
  }

  void write() {
    m.open("section", "aria-labelledby", "attention");
    m.element("h2", "What is not proved, and not shown", "id", "attention");
    List<JsonNode> failing = new ArrayList<>();
    for (JsonNode instance : result.required("requirements")) {
      if (!Word.of(instance).good() || instance.has("expectation")) {
        failing.add(instance);
      }
    }
    if (failing.isEmpty()) {
      m.element("p", "Nothing: each requirement of this version has its proof or its sequence.");
    }
    exempted();
    asked();
    for (JsonNode instance : failing) {
      m.open("div", "class", "failing").open("h3");
      m.element("span", Word.of(instance).signed(), "class", Verdicts.colour(instance)).text(" ");
      String id = instance.required("id").asText();
      m.link(anchors.of("requirement", id), id);
      m.close();
      String name = instance.required("name").asText();
      m.element("p", anchors.part("catalogue", name).required("words").asText());
      m.open("p").element("code", formula.of(instance)).close();
      Advice.meetings(instance, anchors, m);
      expectation(instance.path("expectation"));
      if (!Word.of(instance).good()) {
        finding(instance);
      }
      m.close();
    }
    m.close();
  }

  private void exempted() {
    JsonNode all = result.required("exempted");
    if (all.isEmpty()) {
      return;
    }
    m.element("h3", "Exempted by name, and not checked").open("ul");
    for (JsonNode e : all) {
      String place = Evidence.place(e.required("at"));
      m.element(
          "li",
          "exempted: "
              + e.required("id").asText()
              + ". Reason: "
              + e.required("reason").asText()
              + " ("
              + place
              + ")");
    }
    m.close();
  }

  /** What is a requirement here only since its author asks for it. */
  private void asked() {
    List<String> asked = new ArrayList<>();
    for (JsonNode i : result.required("requirements")) {
      if (i.has("asked")) {
        JsonNode a = i.required("asked");
        asked.add(
            i.required("id").asText()
                + ". Reason: "
                + a.required("reason").asText()
                + " ("
                + Evidence.place(a.required("at"))
                + ")");
      }
    }
    if (!asked.isEmpty()) {
      m.element("h3", "Asked for by name, which would be advice otherwise").open("ul");
      asked.forEach(a -> m.element("li", "asked: " + a));
      m.close();
    }
  }

  /** What the author says of it beforehand. It changes the outcome of a build, never a verdict. */
  private void expectation(JsonNode expectation) {
    if (expectation.isMissingNode()) {
      return;
    }
    boolean waived = expectation.has("until");
    m.element(
        "p",
        (waived ? "Waived to be " : "Expected to be ")
            + expectation.required("verdict").asText()
            + (waived
                ? ", by "
                    + expectation.required("role").asText()
                    + ", until "
                    + expectation.required("until").asText()
                : "")
            + ". State: "
            + state(expectation)
            + ". Reason: "
            + expectation.required("reason").asText()
            + " ("
            + Evidence.place(expectation.required("at"))
            + ")",
        "class",
        "expectation");
  }

  /** Why the frame is not restored from the end of the sequence. */
  private void restoring(JsonNode restoring) {
    if (restoring.isMissingNode()) {
      return;
    }
    String digest = restoring.required("certificate").asText();
    m.open("p")
        .text("From there no strokes of levers, points or gates lead to all levers normal: ");
    m.text("each clause of certificate ");
    m.link(anchors.of("certificate", digest), digest.substring(0, 12));
    m.text(" holds there, each such stroke keeps them all, and all levers normal does not.")
        .close();
    if (restoring.has("helped")) {
      String run = restoring.required("helped").asText();
      m.open("p")
          .text(
              "With what others do at the instruments, or outside, it can be gone on with, to all ");
      m.text("levers normal: ").link(anchors.of("run", run), run).close();
    }
  }

  /** "as waived": never "holds", which beside a verdict could be read of the requirement. */
  static String state(JsonNode expectation) {
    String state = expectation.required("state").asText();
    return state.equals("holds") ? "as " + expectation.required("kind").asText() : state;
  }

  private void finding(JsonNode instance) {
    if (instance.has("reason")) {
      m.element("p", "Nothing is known of it: " + instance.required("reason").asText());
    }
    for (JsonNode never : instance.path("proof").path("never")) {
      m.element(
          "p",
          "It cannot be broken, but this never comes about: " + never.required("subject").asText());
    }
    if (Word.of(instance) == Word.IMPOSSIBLE) {
      m.element("p", "It cannot come about from any beginning, however the box is worked.");
    }
    JsonNode sequence = instance.path("sequence");
    if (sequence.isMissingNode()) {
      return;
    }
    JsonNode run = anchors.part("run", sequence.required("run").asText());
    runs.write(run);
    Drawn.at(m, "The box after it", Pictures.diagram(result, RunTable.last(run)));
    m.element(
        "p",
        sequence.required("breaksBy").asText().equals("movement")
            ? "The last movement is free, and should not be."
            : "As things stand after it, the requirement is broken.");
    restoring(instance.path("restoring"));
    m.element(
        "p",
        sequence.required("shortest").asBoolean()
            ? "The search found no sequence of fewer "
                + (run.required("strokes").asText().equals("half")
                    ? "half-strokes"
                    : "whole strokes")
                + " and events."
            : "Perhaps a shorter sequence breaks it too.");
    runs.missing(run, sequence);
  }
}
