package lockwright.spec;

import java.util.List;
import java.util.Optional;
import lockwright.spec.form.LessonsForm;

/** Reads the form of `lessons.yaml`; `docs/spec.md`. */
final class LessonsReader {
  private static final String INTRODUCTION = "introduction";
  private static final String CLOSING = "closing";
  private static final String LESSONS = "lessons";
  private static final String WHY_NOT = "why not";
  private static final String STEPS = "steps";
  private static final String PULL = "pull";
  private static final String REPLACE = "replace";

  private final Problems problems;
  private final Shape shape;

  private LessonsReader(Problems problems) {
    this.problems = problems;
    this.shape = new Shape(problems);
  }

  static Optional<LessonsFile> read(Node root, Problems problems) {
    LessonsReader reader = new LessonsReader(problems);
    return reader.shape.fields(root, "the lessons", LessonsForm.LESSONS).map(reader::lessons);
  }

  private LessonsFile lessons(Fields fields) {
    return new LessonsFile(
        fields.text(INTRODUCTION),
        fields.text(CLOSING),
        fields.each(LESSONS, this::inLesson),
        fields.each(WHY_NOT, this::whyNot));
  }

  private Optional<LessonsFile.InLesson> inLesson(Node.Field field) {
    return shape
        .fields(field.value(), "the lesson " + field.key().quoted(), LessonsForm.LESSON)
        .map(f -> new LessonsFile.InLesson(field.key(), words(f)));
  }

  private LessonsFile.Words words(Fields fields) {
    return new LessonsFile.Words(
        fields.text(INTRODUCTION), fields.text(CLOSING), fields.each(STEPS, this::beside));
  }

  private Optional<LessonsFile.Beside> beside(Node.Field field) {
    return shape
        .text(field.value(), "the words beside " + field.key().quoted())
        .map(words -> new LessonsFile.Beside(field.key(), words));
  }

  private Optional<LessonsFile.WhyNot> whyNot(Node.Field field) {
    String thing = "the question " + field.key().quoted();
    return shape
        .fields(field.value(), thing, LessonsForm.WHY_NOT)
        .flatMap(f -> whyNot(field.key(), thing, f));
  }

  private Optional<LessonsFile.WhyNot> whyNot(Written title, String thing, Fields fields) {
    List<Written> first = fields.eachOf("first", node -> shape.text(node, "'first' of " + thing));
    List<Written> reversed = fields.texts("reversed");
    LessonsFile.Words words = words(fields);
    Optional<Written> pull = fields.text(PULL);
    Optional<Written> replace = fields.text(REPLACE);
    if (fields.get(PULL).isPresent() == fields.get(REPLACE).isPresent()) {
      problems.add(
          Message.WHY_NOT_ONE_MOVEMENT,
          title.at(),
          thing + (fields.get(PULL).isPresent() ? " asks of two movements" : " names no movement"),
          "write one of the two, 'pull:' or 'replace:', and the lever that will not move");
      return Optional.empty();
    }
    return pull.or(() -> replace)
        .map(
            lever ->
                new LessonsFile.WhyNot(title, first, reversed, lever, pull.isPresent(), words));
  }
}
