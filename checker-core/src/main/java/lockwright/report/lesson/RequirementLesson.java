package lockwright.report.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import lockwright.audit.Played;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.teaching.Words;
import lockwright.railway.words.Event;
import lockwright.report.Rule;
import lockwright.report.Sequence;
import lockwright.spec.Problems;
import lockwright.working.Working;

/** A lesson on a requirement: how it is broken, or how a route is cleared. */
final class RequirementLesson extends Lesson {
  private final Requirement requirement;
  private final boolean breach;
  private final List<Event> goOn;
  private final JsonNode instance;

  private RequirementLesson(
      Lessons.Made made,
      Requirement requirement,
      boolean breach,
      List<Event> goOn,
      List<String> beginning,
      List<Moment> moments,
      TrainersWords trainer) {
    super(made, requirement.id(), beginning, moments, trainer);
    this.requirement = requirement;
    this.breach = breach;
    this.goOn = goOn;
    instance = made.anchors().part("requirement", requirement.id());
  }

  /**
   * The lesson; words of the trainer's without a step are told.
   *
   * @param played the run to the breach of a requirement of safety, by half-strokes, or of a
   *     possibility, or to what is shown, by whole strokes
   * @param goOn what restores the frame after that; empty, if nothing is known to
   */
  static RequirementLesson of(
      Lessons.Made made,
      Requirement requirement,
      Played played,
      boolean breach,
      List<Event> goOn,
      Words words,
      Problems problems) {
    Sequence sequence = Sequence.of(made.box(), played);
    List<Moment> moments = Moment.of(played, sequence);
    TrainersWords trainer =
        TrainersWords.of(requirement.id(), words, made.box(), moments, problems);
    return new RequirementLesson(
        made, requirement, breach, goOn, sequence.beginning(), moments, trainer);
  }

  @Override
  Kind kind() {
    return breach ? Kind.BREACH : Kind.ORDER;
  }

  @Override
  String name() {
    return requirement.id();
  }

  @Override
  String file() {
    return FileNames.of(requirement.name(), requirement.id());
  }

  @Override
  void story() {
    m.element("p", sentence(beginning) + " Then, each movement being free when it is made:");
    movements(moments.subList(1, moments.size()));
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
  }

  /** What is so at the end, and should not be. */
  private String wrong() {
    return "Here it goes wrong: " + Rule.broken(requirement) + ".";
  }

  private String reached() {
    return "Here the route is cleared: " + instance.required("subject").asText() + ".";
  }

  private JsonNode sequence() {
    return instance.required("sequence");
  }

  @Override
  void told(Moment moment) {
    boolean last = last(moment);
    if (last) {
      m.element(
          "p", breach ? "\u2718 " + wrong() : reached(), "class", breach ? "wrong" : "reached");
    }
    if (breach && last && sequence().required("breaksBy").asText().equals("movement")) {
      m.element("p", "The locking leaves this movement free, and should not.");
    }
    draft(moment);
  }

  @Override
  void question(Moment moment) {
    Working working = byHalfStrokes() ? made.parted() : made.whole();
    String asked = last(moment) ? "Which lever is free now?" : Question.BEFORE_THE_NEXT_STEP;
    new Question(asked, moment, LeverNow.all(made.box(), working, moment.state()), m).write();
  }

  private boolean byHalfStrokes() {
    return breach && !requirement.possibility();
  }

  /** Where the frame is not restored. */
  @Override
  boolean asksAtTheEnd() {
    return breach && requirement.possibility();
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

  @Override
  void toLearn() {
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
          "No strokes alone; but with what others do at the instruments, or outside, it can be put back so: "
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

  @Override
  void howToRead() {
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
  }
}
