package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lockwright.audit.Played;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.report.Rule;
import lockwright.report.Sequence;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.report.picture.Pictures;
import lockwright.working.Working;

/**
 * One lesson: its story, its steps, the requirement. What each part is for is in {@code
 * docs/decisions/0007-what-each-part-of-a-lesson-is-for.md}.
 */
final class Lesson {
  private static final String STYLE = Sheet.read(Lesson.class, "lesson.css");
  private static final String SCRIPT = Sheet.read(Lesson.class, "lesson.js");

  private final Lessons.Made made;
  private final Requirement requirement;
  private final boolean breach;
  private final List<Event> goOn;
  private final JsonNode instance;
  private final List<String> beginning;
  private final List<Moment> moments;
  private final Sheet sheet;
  private final Markup m;

  /**
   * @param played the run to the breach of a requirement of safety, by half-strokes, or of a
   *     possibility, or to what is shown, by whole strokes
   * @param goOn what restores the frame after that; empty, if nothing is known to
   */
  Lesson(
      Lessons.Made made, Requirement requirement, Played played, boolean breach, List<Event> goOn) {
    this.made = made;
    this.requirement = requirement;
    this.breach = breach;
    this.goOn = goOn;
    instance = made.anchors().part("requirement", requirement.id());
    Sequence sequence = Sequence.of(made.box(), played);
    beginning = sequence.beginning();
    moments = Moment.of(played, sequence);
    sheet = Sheet.of(title(), STYLE, SCRIPT);
    m = sheet.markup();
  }

  boolean breach() {
    return breach;
  }

  private boolean byHalfStrokes() {
    return breach && !requirement.possibility();
  }

  /** Whether it ends where the frame is not restored. */
  private boolean stranded() {
    return breach && requirement.possibility();
  }

  String id() {
    return requirement.id();
  }

  String file() {
    return FileNames.of(requirement.name(), id());
  }

  /** How many steps there are after the beginning. */
  int steps() {
    return moments.size() - 1;
  }

  private String title() {
    return made.result().required("box").asText() + ": " + id();
  }

  String page() {
    m.element(
        "p", breach ? "A lesson on a breach" : "A lesson on a pulling order", "class", "kind");
    m.element("h1", title());
    List<String> cautions = new ArrayList<>();
    made.result().required("cautions").forEach(c -> cautions.add(c.asText()));
    Sheet.cautions(m, cautions);
    story();
    controls();
    moments.forEach(this::step);
    toLearn();
    madeFrom();
    return sheet.finish();
  }

  private static String sentence(List<String> phrases) {
    String words = String.join("; ", phrases);
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  // What happens, in short.

  private void story() {
    m.open("section", "aria-labelledby", "story").element("h2", "The story", "id", "story");
    m.element("p", sentence(beginning) + " Then, each movement being free when it is made:");
    m.open("ol");
    for (Moment moment : moments.subList(1, moments.size())) {
      m.open("li").link(moment.anchor(), moment.done());
      m.text(moment.moved().isEmpty() ? "" : ": " + moment.moved()).close();
    }
    m.close();
    m.element("p", breach ? "\u2718 " + wrong() : reached(), "class", breach ? "wrong" : "reached");
    m.element(
        "p",
        breach
            ? "It is one way to come there. There may be others."
            : "It is one order that the locking allows, found by a search. There may be others, and"
                + " local instructions may ask for one of them.");
    JsonNode expected = instance.path("expectation");
    if (!expected.isMissingNode()) {
      String kind = expected.required("kind").asText();
      String reason = expected.required("reason").asText();
      m.element("p", "The author of the files has it " + kind + ", for this reason: " + reason);
    }
    m.close();
  }

  /** What is so at the end, and should not be. */
  private String wrong() {
    return "Here it goes wrong: " + Rule.broken(requirement) + ".";
  }

  private String reached() {
    return "Here the route is cleared: " + instance.required("subject").asText() + ".";
  }

  /** For the script, which shows them: without it, all steps stand below one another. */
  private void controls() {
    m.open("div", "class", "controls", "id", "controls", "role", "group", "hidden", "hidden");
    m.element("button", "Back", "type", "button", "id", "back");
    m.element("button", "Next", "type", "button", "id", "next");
    m.element("button", "Play", "type", "button", "id", "play");
    m.element("p", "", "id", "status", "role", "status", "aria-live", "polite");
    m.close();
  }

  private JsonNode sequence() {
    return instance.required("sequence");
  }

  // The steps.

  private void step(Moment moment) {
    boolean last = moment.number() == steps();
    String heading = moment.anchor() + "-heading";
    m.open("section", "class", "step", "id", moment.anchor(), "tabindex", "-1");
    m.element("h2", moment.heading(steps()), "id", heading);
    if (moment.number() == 0) {
      m.element("p", sentence(beginning));
    } else if (!moment.moved().isEmpty()) {
      m.element("p", sentence(List.of(moment.moved())));
    }
    if (last) {
      m.element(
          "p", breach ? "\u2718 " + wrong() : reached(), "class", breach ? "wrong" : "reached");
    }
    if (breach && last && sequence().required("breaksBy").asText().equals("movement")) {
      m.element("p", "The locking leaves this movement free, and should not.");
    }
    draft(moment);
    StepPage page = new StepPage(made, moment, m);
    page.pictures();
    page.seen();
    if (!last || stranded()) {
      Working working = byHalfStrokes() ? made.parted() : made.whole();
      String asked = last ? "Which lever is free now?" : Question.BEFORE_THE_NEXT_STEP;
      new Question(asked, moment, LeverNow.all(made.box(), working, moment.state()), m).write();
    }
    m.close();
  }

  /** At the step that the draft of a missing rule would have stopped. */
  private void draft(Moment moment) {
    JsonNode missing = sequence().path("missing");
    if (missing.isMissingNode()) {
      return;
    }
    int stops = missing.required("stopsAt").asInt();
    int before = moment.number() == 0 ? -1 : moments.get(moment.number() - 1).last();
    if (before < stops && stops <= moment.last()) {
      m.element(
          "p",
          "With the draft rule below, '"
              + missing.required("words").asText()
              + (stops == 0 ? "', it could not begin so." : "', this movement would not be free."),
          "class",
          "draft");
    }
  }

  // What is to be learnt from it.

  private void toLearn() {
    String name = requirement.name();
    JsonNode part = made.anchors().part("catalogue", name);
    m.open("section", "aria-labelledby", "requirement");
    m.element("h2", "The requirement: " + name, "id", "requirement");
    m.element("p", part.required("words").asText());
    m.element("h3", "Its sources").open("ul");
    for (JsonNode s : part.required("sources")) {
      String known = s.required("known").asText();
      m.element("li", s.required("source").asText() + (known.equals("read") ? "" : "; " + known));
    }
    m.close();
    if (!goOn.isEmpty()) {
      m.element("h3", "What would put the frame back");
      m.element(
          "p",
          "No strokes alone; but with what others do at the instruments it can be put back so: "
              + Sequence.words(made.box(), goOn)
              + ".");
    }
    JsonNode missing = sequence().path("missing");
    if (byHalfStrokes()) {
      m.element("h3", "The rule that is perhaps missing");
      m.element(
          "p",
          missing.isMissingNode()
              ? "None was found that would stop this very sequence."
              : "'"
                  + missing.required("words").asText()
                  + "'. A draft for a competent person: it would stop this very sequence; that it"
                  + " mends the requirement is not claimed.");
    }
    m.close();
  }

  private void madeFrom() {
    m.open("section", "aria-labelledby", "made-from");
    m.element("h2", "How to read it", "id", "made-from");
    m.open("details").element("summary", "What the shapes of the diagram mean");
    m.open("div", "class", "picture-frame", "tabindex", "0", "role", "region", "aria-label", "Key");
    m.written(Pictures.key()).close().close();
    if (byHalfStrokes()) {
      m.element(
          "p",
          "Part-way means that a lever has left one end and not come to the other. An arm then"
              + " counts as off, and points lie neither way: what matters is what the locking allows"
              + " while a lever is on its way.");
    }
    m.element(
        "p",
        "The movements, and what is free at each step, are those of the levers, locking and"
            + " instruments as the files below give them. They were played and checked again in the"
            + " run that wrote this page.");
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode f : made.result().required("files")) {
      rows.add(List.of(f.required("name").asText(), f.required("sha256").asText()));
    }
    m.open("details").element("summary", "The files, by their digests");
    Tables.write(m, List.of("file", "SHA-256"), rows);
    m.close().close();
  }
}
