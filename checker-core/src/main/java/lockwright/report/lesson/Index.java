package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.learner.LearnersFrame;
import lockwright.spec.Problem;

/**
 * The page that leads to the lessons of a box.
 *
 * @param unused words of the trainer's for lessons that there are not
 * @param frame whether there is a page on which its frame can be worked
 */
record Index(Lessons.Made made, List<Lesson> lessons, List<Problem> unused, boolean frame) {
  String page() {
    JsonNode result = made.result();
    Sheet sheet = Sheet.of("Lessons: " + result.required("box").asText(), Lesson.STYLE, "");
    Markup m = sheet.markup();
    m.element("h1", "Lessons: " + result.required("box").asText());
    List<String> cautions = new ArrayList<>();
    result.required("cautions").forEach(c -> cautions.add(c.asText()));
    Sheet.cautions(m, cautions);
    m.element(
        "p",
        "Each lesson is one file. It can be sent or copied alone, and needs no network to be read.");
    TrainersWords.block(m, made.teaching().introduction());
    group(m, "breaches", "What goes wrong", Lesson.Kind.BREACH);
    group(m, "orders", "Pulling orders", Lesson.Kind.ORDER);
    group(m, "why-not", "Why not?", Lesson.Kind.WHY_NOT);
    m.open("section", "aria-labelledby", "own").element("h2", "The frame", "id", "own");
    if (frame) {
      m.open("ul").open("li").linkToPage(LearnersFrame.FILE, "Work it yourself").close().close();
    } else {
      m.element(
          "p",
          "A page on which it can be worked is made only of a box of which everything is proved or"
              + " shown.");
    }
    m.close();
    unused(m);
    TrainersWords.block(m, made.teaching().closing());
    return sheet.finish();
  }

  /** Said here too, so that the trainer misses nothing that he has written. */
  private void unused(Markup m) {
    if (!unused.isEmpty()) {
      m.open("section", "aria-labelledby", "unused");
      m.element("h2", "Words without a lesson", "id", "unused").open("ul");
      unused.forEach(p -> m.element("li", p.span() + ": " + p.what()));
      m.close().close();
    }
  }

  private void group(Markup m, String anchor, String heading, Lesson.Kind kind) {
    List<Lesson> ofKind = lessons.stream().filter(l -> l.kind() == kind).toList();
    m.open("section", "aria-labelledby", anchor).element("h2", heading, "id", anchor);
    if (ofKind.isEmpty()) {
      m.element("p", "There is no lesson of this kind.");
    } else {
      m.open("ul");
      for (Lesson lesson : ofKind) {
        m.open("li").linkToPage(lesson.file(), lesson.name());
        m.text(lesson.steps() == 1 ? ", 1 step" : ", " + lesson.steps() + " steps").close();
      }
      m.close();
    }
    m.close();
  }
}
