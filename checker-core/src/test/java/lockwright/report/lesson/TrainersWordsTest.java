package lockwright.report.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import lockwright.railway.teaching.InLesson;
import lockwright.railway.teaching.Teaching;
import lockwright.railway.teaching.Words;
import lockwright.report.Shown;
import lockwright.spec.Span;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What a trainer writes stands beside the step that he names, or he is told. */
class TrainersWordsTest {
  private static final String SET = "points set: signal 1";
  private static final Span AT = new Span("lessons.yaml", 3, 7);

  /** The junction without '1 locks 4', and ways to break it: some with more done than need be. */
  private static final Taught SHORT = broken("lever 4 N>R", "lever 3 N>R", "lever 1 N>M");

  private static final Taught LONG =
      broken("lever 4 N>R", "lever 3 N>R", "lever 2 N>R", "lever 1 N>M");

  private static final Taught TWICE =
      broken(
          "lever 3 N>R", "lever 3 R>M", "lever 3 M>N", "lever 4 N>R", "lever 3 N>R", "lever 1 N>M");

  private static Taught broken(String... keys) {
    return Taught.claimed(Taught.JUNCTION.box(), SET, Map.of(), List.of(keys));
  }

  private static Words.Beside beside(String movement, int time, String words) {
    return new Words.Beside(movement, time, words, AT);
  }

  private static Teaching in(String lesson, Words.Beside... steps) {
    Words words = new Words("", "", List.of(steps));
    return new Teaching("", "", List.of(new InLesson(lesson, words, AT)), List.of(), "0a1b");
  }

  private static Document page(Taught taught, Teaching teaching) {
    Lessons.Outcome outcome = taught.with(teaching);
    assertThat(outcome.problems()).isEmpty();
    assertThat(outcome.unused()).isEmpty();
    return Taught.parse(outcome.pages().get(FileNames.of("points set", SET)));
  }

  /** The numbers of the steps that have these words. */
  private static List<Integer> stepsWith(Document page, String words) {
    List<Element> steps = Taught.ofClass(page, "step");
    return steps.stream()
        .filter(s -> s.getTextContent().contains(words))
        .map(steps::indexOf)
        .toList();
  }

  @Test
  void words_stay_with_their_movement_while_other_steps_come_and_go() {
    Teaching teaching =
        in(SET, beside("the beginning", 1, "to begin"), beside("pull 1", 1, "the arm comes off"));
    for (Taught taught : List.of(SHORT, LONG, TWICE)) {
      Document page = page(taught, teaching);
      int last = Taught.ofClass(page, "step").size() - 1;
      assertThat(stepsWith(page, "to begin")).containsExactly(0);
      assertThat(stepsWith(page, "the arm comes off")).containsExactly(last);
    }
  }

  @Test
  void a_movement_made_again_is_named_by_its_number() {
    Document page =
        page(
            TWICE,
            in(
                SET,
                beside("pull 3", 1, "once"),
                beside("pull 3", 2, "twice"),
                beside("replace 3", 1, "back")));
    assertThat(stepsWith(page, "once")).containsExactly(1);
    assertThat(stepsWith(page, "back")).containsExactly(2);
    assertThat(stepsWith(page, "twice")).containsExactly(4);
  }

  @Test
  void words_without_a_step_are_told_with_their_place_and_then_there_are_no_lessons() {
    Lessons.Outcome outcome =
        SHORT.with(in(SET, beside("pull 2", 1, "x"), beside("pull 3", 2, "y")));
    assertThat(outcome.pages()).isEmpty();
    assertThat(SpecsOnDisk.places(outcome.problems()))
        .containsExactly("LESSON-202 lessons.yaml:3:7", "LESSON-202 lessons.yaml:3:7");
    assertThat(outcome.problems())
        .allMatch(p -> p.fix().endsWith("its steps are: the beginning; pull 4; pull 3; pull 1"))
        .anyMatch(p -> p.what().contains("no step 'pull 2'"))
        .anyMatch(p -> p.what().contains("not so often a step 'pull 3'"));
    assertThat(TWICE.with(in(SET, beside("pull 2", 1, "x"))).problems())
        .singleElement()
        .matches(p -> p.fix().endsWith("pull 3; replace 3; pull 4; pull 3 (2); pull 1"));
  }

  @Test
  void words_for_a_lesson_that_there_is_not_are_told_and_the_others_are_made() {
    Lessons.Outcome outcome = SHORT.with(in("points set: signal 2", beside("pull 2", 1, "x")));
    assertThat(SpecsOnDisk.places(outcome.unused())).containsExactly("LESSON-201 lessons.yaml:3:7");
    assertThat(outcome.unused().get(0).what()).endsWith("the requirement is undecided");
    assertThat(outcome.problems()).isEmpty();
    assertThat(Taught.parse(outcome.pages().get(Lessons.INDEX)).getDocumentElement())
        .extracting(Element::getTextContent)
        .asString()
        .contains("Words without a lesson", "lessons.yaml:3:7: there is no lesson");
  }

  @Test
  void what_is_done_at_an_instrument_or_at_points_is_named_as_the_lesson_names_it() {
    String section = "section Sedgeholm to Quillby: ";
    Taught tokens =
        Taught.example(
            "token-without-consent",
            "one token out: section Sedgeholm to Quillby",
            Map.of(section + "tokens in Sedgeholm", "1"),
            List.of(
                section + "plunge at Quillby",
                section + "start a withdrawal at Sedgeholm",
                section + "stop plunging at Quillby",
                section + "start a withdrawal at Quillby",
                section + "finish the withdrawal at Sedgeholm",
                section + "finish the withdrawal at Quillby"));
    String id = "one token out: section Sedgeholm to Quillby";
    Lessons.Outcome outcome =
        tokens.with(
            in(
                id,
                beside("Quillby plunges", 1, "he helps"),
                beside(section + "Quillby stops plunging", 1, "let go")));
    assertThat(outcome.problems()).isEmpty();
    Document page = Taught.parse(outcome.pages().get(FileNames.of("one token out", id)));
    assertThat(stepsWith(page, "he helps")).containsExactly(1);
    assertThat(stepsWith(page, "let go")).containsExactly(3);
  }

  @Test
  void words_before_and_after_stand_there_in_paragraphs_and_are_called_his_own() {
    Words words = new Words("One line of two.\n\n  Another.\n", "At the end.", List.of());
    Teaching teaching =
        new Teaching(
            "Before all.", "After all.", List.of(new InLesson(SET, words, AT)), List.of(), "0a1b");
    Document page = page(SHORT, teaching);
    List<Element> blocks = Taught.ofClass(page, "trainer");
    assertThat(blocks).hasSize(2);
    assertThat(Taught.elements(blocks.get(0), "p"))
        .extracting(Element::getTextContent)
        .containsExactly("From the trainer", "One line of two.", "Another.");
    assertThat(blocks.get(1).getTextContent()).contains("At the end.");
    assertThat(page.getDocumentElement().getTextContent())
        .contains("No check looks at it.", "lessons.yaml, for this page alone", "0a1b");
    Document index = Taught.parse(SHORT.with(teaching).pages().get(Lessons.INDEX));
    assertThat(Taught.ofClass(index, "trainer"))
        .extracting(Element::getTextContent)
        .satisfiesExactly(
            first -> assertThat(first).contains("Before all."),
            second -> assertThat(second).contains("After all."));
  }

  /** A lesson without words is the same page whatever is written for others. */
  @Test
  void words_change_no_other_lesson() {
    String file = FileNames.of("points set", SET);
    Teaching elsewhere = in("points set: signal 2", beside("pull 2", 1, "x"));
    assertThat(SHORT.with(elsewhere).pages().get(file)).isEqualTo(SHORT.pages().get(file));
    assertThat(SHORT.with(in(SET)).pages()).isEqualTo(SHORT.pages());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\" onload=\"alert(1)\" x=\"",
        "]]></style><!-- --><svg onload=alert(1)>",
        "&lt;b&gt; &#60; &amp",
        "turned \u202e round, a bell \u0007, \ud800 half"
      })
  void words_stay_words(String words) {
    String shown = Shown.line(words);
    Document page = page(SHORT, everywhere(words));
    Document plain = page(SHORT, everywhere("plain"));
    assertThat(stepsWith(page, shown)).containsExactly(2);
    assertThat(Taught.ofClass(page, "trainer"))
        .hasSize(3)
        .allMatch(e -> e.getTextContent().contains(shown));
    assertThat(tags(page)).isEqualTo(tags(plain));
    Document index = Taught.parse(SHORT.with(everywhere(words)).pages().get(Lessons.INDEX));
    assertThat(tags(index))
        .isEqualTo(tags(Taught.parse(SHORT.with(everywhere("plain")).pages().get(Lessons.INDEX))));
  }

  private static Teaching everywhere(String words) {
    Words all = new Words(words, words, List.of(beside("pull 3", 1, words)));
    return new Teaching(words, words, List.of(new InLesson(SET, all, AT)), List.of(), "0a1b");
  }

  private static List<String> tags(Document page) {
    return Taught.elements(page.getDocumentElement()).stream().map(Element::getTagName).toList();
  }
}
