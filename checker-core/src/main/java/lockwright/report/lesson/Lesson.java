package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.report.picture.Pictures;
import lockwright.spec.SpecFolder;

/**
 * One lesson: what all kinds have. What each part is for is in {@code
 * docs/decisions/0007-what-each-part-of-a-lesson-is-for.md}.
 */
abstract class Lesson {
  static final String STYLE = Sheet.read(Lesson.class, "lesson.css");
  private static final String SCRIPT = Sheet.read(Lesson.class, "lesson.js");

  /** What a lesson is on, in the order of the index. */
  enum Kind {
    BREACH("A lesson on a breach"),
    ORDER("A lesson on a pulling order"),
    WHY_NOT("A lesson on a lever that is held");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  final Lessons.Made made;
  final List<String> beginning;
  final List<Moment> moments;
  final TrainersWords trainer;
  final Markup m;
  private final Sheet sheet;
  private final String title;

  Lesson(
      Lessons.Made made,
      String name,
      List<String> beginning,
      List<Moment> moments,
      TrainersWords trainer) {
    this.made = made;
    this.beginning = beginning;
    this.moments = moments;
    this.trainer = trainer;
    title = made.result().required("box").asText() + ": " + name;
    sheet = Sheet.of(title, STYLE, SCRIPT);
    m = sheet.markup();
  }

  abstract Kind kind();

  /** What it is called in the index. */
  abstract String name();

  abstract String file();

  /** What happens, in short: within a section of its own. */
  abstract void story();

  /** What is said at a step, before its pictures. */
  abstract void told(Moment moment);

  /** The question before the next step. */
  abstract void question(Moment moment);

  /** Whether there is a question at the last step too, of what can be done from there. */
  boolean asksAtTheEnd() {
    return false;
  }

  /** What is to be learnt from it: sections of their own. */
  abstract void toLearn();

  /** What else is to be known, in paragraphs. */
  abstract void howToRead();

  /** How many steps there are after the beginning. */
  int steps() {
    return moments.size() - 1;
  }

  String page() {
    m.element("p", kind().words, "class", "kind");
    m.element("h1", title);
    List<String> cautions = new ArrayList<>();
    made.result().required("cautions").forEach(c -> cautions.add(c.asText()));
    Sheet.cautions(m, cautions);
    trainer.introduction(m);
    m.open("section", "aria-labelledby", "story").element("h2", "The story", "id", "story");
    story();
    m.close();
    controls();
    moments.forEach(this::step);
    toLearn();
    trainer.closing(m);
    madeFrom();
    return sheet.finish();
  }

  static String sentence(List<String> phrases) {
    String words = String.join("; ", phrases);
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  /** The movements, each a link to its step. */
  void movements(List<Moment> listed) {
    m.open("ol");
    for (Moment moment : listed) {
      m.open("li").link(moment.anchor(), moment.done());
      m.text(moment.moved().isEmpty() ? "" : ": " + moment.moved()).close();
    }
    m.close();
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

  boolean last(Moment moment) {
    return moment.number() == steps();
  }

  private void step(Moment moment) {
    String heading = moment.anchor() + "-heading";
    m.open("section", "class", "step", "id", moment.anchor(), "tabindex", "-1");
    m.element("h2", moment.heading(steps()), "id", heading);
    if (moment.number() == 0) {
      m.element("p", sentence(beginning));
    } else if (!moment.moved().isEmpty()) {
      m.element("p", sentence(List.of(moment.moved())));
    }
    told(moment);
    trainer.beside(moment, m);
    StepPage page = new StepPage(made, moment, m);
    page.pictures();
    page.seen();
    if (!last(moment) || asksAtTheEnd()) {
      question(moment);
    }
    m.close();
  }

  private void madeFrom() {
    m.open("section", "aria-labelledby", "made-from");
    m.element("h2", "How to read it", "id", "made-from");
    m.open("details").element("summary", "What the shapes of the diagram mean");
    m.open("div", "class", "picture-frame", "tabindex", "0", "role", "region", "aria-label", "Key");
    m.written(Pictures.key()).close().close();
    howToRead();
    boolean words = trainer.any() || kind() == Kind.WHY_NOT;
    if (trainer.any()) {
      m.element(
          "p",
          "What stands under 'From the trainer' is his own, from "
              + SpecFolder.LESSONS
              + ". No check looks at it.");
    }
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode f : made.result().required("files")) {
      rows.add(List.of(f.required("name").asText(), f.required("sha256").asText()));
    }
    if (words) {
      rows.add(List.of(SpecFolder.LESSONS + ", for this page alone", made.teaching().digest()));
    }
    m.open("details").element("summary", "The files, by their digests");
    Tables.write(m, List.of("file", "SHA-256"), rows);
    m.close().close();
  }
}
