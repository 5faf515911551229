package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.learner.LearnersFrame;

/**
 * The page that leads to the lessons of a box.
 *
 * @param frame whether there is a page on which its frame can be worked
 */
record Index(JsonNode result, List<Lesson> lessons, boolean frame) {
  String page() {
    Sheet sheet = Sheet.of("Lessons: " + result.required("box").asText());
    Markup m = sheet.markup();
    m.element("h1", "Lessons: " + result.required("box").asText());
    List<String> cautions = new ArrayList<>();
    result.required("cautions").forEach(c -> cautions.add(c.asText()));
    Sheet.cautions(m, cautions);
    m.element(
        "p",
        "Each lesson is one file. It can be sent or copied alone, and needs no network to be read.");
    group(m, "breaches", "What goes wrong", lessons.stream().filter(Lesson::breach).toList());
    group(m, "orders", "Pulling orders", lessons.stream().filter(l -> !l.breach()).toList());
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
    return sheet.finish();
  }

  private static void group(Markup m, String anchor, String heading, List<Lesson> lessons) {
    m.open("section", "aria-labelledby", anchor).element("h2", heading, "id", anchor);
    if (lessons.isEmpty()) {
      m.element("p", "There is no lesson of this kind.");
    } else {
      m.open("ul");
      for (Lesson lesson : lessons) {
        m.open("li").linkToPage(lesson.file(), lesson.id());
        m.text(lesson.steps() == 1 ? ", 1 step" : ", " + lesson.steps() + " steps").close();
      }
      m.close();
    }
    m.close();
  }
}
