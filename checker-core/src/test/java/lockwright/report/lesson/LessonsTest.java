package lockwright.report.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.audit.Played;
import lockwright.railway.Box;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.teaching.Teaching;
import lockwright.report.Cautions;
import lockwright.report.Rule;
import lockwright.report.Shown;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The lessons of the broken examples and of a junction: what they say, and that it is so. */
class LessonsTest {
  private static final Taught UNBOLTED =
      Taught.example(
          "facing-points-unbolted",
          "points bolted: signal 22, points E",
          Map.of(),
          List.of("lever 22 N>M"));
  private static final Taught OPPOSING =
      Taught.example(
          "opposing-signals",
          "no conflict: signals 2 and 22",
          Map.of(),
          List.of("lever 8 N>R", "lever 9 N>R", "lever 2 N>M", "lever 17 N>R", "lever 22 N>M"));
  private static final String SECTION = "section Sedgeholm to Quillby: ";
  private static final Taught TOKENS =
      Taught.example(
          "token-without-consent",
          "one token out: section Sedgeholm to Quillby",
          Map.of(SECTION + "tokens in Sedgeholm", "1"),
          List.of(
              SECTION + "plunge at Quillby",
              SECTION + "start a withdrawal at Sedgeholm",
              SECTION + "stop plunging at Quillby",
              SECTION + "start a withdrawal at Quillby",
              SECTION + "finish the withdrawal at Sedgeholm",
              SECTION + "finish the withdrawal at Quillby"));
  static final List<Taught> ALL = List.of(UNBOLTED, OPPOSING, TOKENS, Taught.JUNCTION);

  private static List<Element> steps(Document page) {
    return Taught.ofClass(page, "step");
  }

  private static Document only(Taught taught) {
    assertThat(taught.taught()).hasSize(1);
    return taught.page(taught.taught().get(0));
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void there_is_a_lesson_for_each_breach_and_route_and_the_index_leads_to_it(Taught taught) {
    List<String> files =
        taught.taught().stream()
            .map(a -> FileNames.of(a.requirement().name(), a.requirement().id()))
            .toList();
    List<String> all = new ArrayList<>(files);
    all.add(Lessons.INDEX);
    assertThat(taught.pages().keySet()).containsExactlyInAnyOrderElementsOf(all);
    Document index = Taught.parse(taught.pages().get(Lessons.INDEX));
    assertThat(Taught.elements(index.getDocumentElement(), "a"))
        .extracting(a -> a.getAttribute("href"))
        .filteredOn(h -> !h.startsWith("#"))
        .containsExactlyInAnyOrderElementsOf(files);
  }

  /** The sequence of examples/broken/points-not-put-back/expected.txt. */
  @Test
  void a_frame_that_is_not_restored_is_told_by_whole_strokes_to_where_it_is_stuck() {
    Taught taught = Taught.searched(Taught.example("points-not-put-back"));
    Audited stranded =
        taught.findings().audited().stream()
            .filter(a -> a instanceof Audited.Stranded)
            .findFirst()
            .orElseThrow();
    Document page = taught.page(stranded);
    List<Element> steps = steps(page);
    assertThat(steps)
        .extracting(s -> Taught.elements(s, "h2").get(0).getTextContent())
        .containsExactly(
            "The beginning",
            "Step 1 of 3: pull 3 Bolt of 4",
            "Step 2 of 3: pull 4 Junction points",
            "Step 3 of 3: replace 3 Bolt of 4");
    assertThat(steps.get(3).getTextContent())
        .contains(
            "Here it goes wrong: " + Rule.broken(stranded.requirement()),
            "Which lever is free now?",
            "Free: 2.");
    assertThat(page.getDocumentElement().getTextContent())
        .contains(Rule.words(stranded.requirement()))
        .doesNotContain("perhaps missing", "Part-way means");
    assertThat(taught.pages().get(Lessons.INDEX)).contains(stranded.requirement().id());
  }

  @Test
  void what_others_must_do_to_restore_the_frame_is_told_after_the_requirement() {
    Taught taught = Taught.searched(Taught.box("restored-by-a-token"));
    Audited stranded =
        taught.findings().audited().stream()
            .filter(a -> a instanceof Audited.Stranded)
            .findFirst()
            .orElseThrow();
    assertThat(taught.page(stranded).getDocumentElement().getTextContent())
        .contains("What would put the frame back")
        .containsPattern(
            "can be put back so: [^.]*Withy Moor finishes the withdrawal of the token, pull 3,"
                + " replace 3, pull 1, replace 2, replace 1\\.");
  }

  /** The sequence of examples/broken/opposing-signals/expected.txt. */
  @Test
  void the_steps_are_those_of_the_build_and_the_last_says_what_is_wrong() {
    List<Element> steps = steps(only(OPPOSING));
    assertThat(steps)
        .extracting(s -> Taught.elements(s, "h2").get(0).getTextContent())
        .containsExactly(
            "The beginning",
            "Step 1 of 5: pull 8 West points",
            "Step 2 of 5: pull 9 West bolt",
            "Step 3 of 5: pull 2 Down home part-way",
            "Step 4 of 5: pull 17 East bolt",
            "Step 5 of 5: pull 22 Up home part-way");
    String wrong = "signals 2 and 22 are off together, for conflicting routes";
    assertThat(steps.get(5).getTextContent()).contains("Here it goes wrong: " + wrong);
    assertThat(steps.subList(0, 5)).noneMatch(s -> s.getTextContent().contains(wrong));
    assertThat(steps)
        .extracting(s -> s.getTextContent().contains("'2 locks 22 when 8 R', this movement would"))
        .containsExactly(false, false, false, false, false, true);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void a_breach_is_told_with_its_requirement_its_words_and_its_draft(Taught taught) {
    for (Audited audited : taught.taught()) {
      Document page = taught.page(audited);
      String text = page.getDocumentElement().getTextContent();
      List<Element> steps = steps(page);
      assertThat(text).contains(Cautions.ALL).contains(audited.requirement().id());
      if (audited instanceof Audited.Broken) {
        assertThat(text).contains(Rule.words(audited.requirement()), "for a competent person");
        assertThat(steps.get(steps.size() - 1).getTextContent())
            .contains("Here it goes wrong: " + Rule.broken(audited.requirement()));
      } else {
        assertThat(text).doesNotContain("goes wrong").contains("Here the route is cleared: ");
      }
      assertThat(Taught.elements(page.getDocumentElement(), "svg").size())
          .isEqualTo(2 * steps.size() + 1);
    }
  }

  /** Each state again, by playing the run, and each lever movement tried in it. */
  @ParameterizedTest
  @FieldSource("ALL")
  void the_levers_called_free_are_those_that_can_be_moved(Taught taught) {
    for (Audited audited : taught.taught()) {
      Working working =
          audited instanceof Audited.Broken
              ? Working.parted(taught.box())
              : Working.whole(taught.box());
      Played played = Taught.run(audited);
      List<Element> questions = Taught.ofClass(taught.page(audited), "question");
      List<Integer> before = beforeEachStep(played);
      assertThat(questions).hasSameSizeAs(before);
      State state = working.state(played.beginning());
      for (int i = 0; i < played.steps().size(); i++) {
        int question = before.indexOf(i);
        if (question >= 0) {
          assertThat(called(questions.get(question)))
              .isEqualTo(tried(working, state, taught.box()));
        }
        state = working.make(state, played.steps().get(i).event());
      }
    }
  }

  /** The movements that begin a step: all but the second halves of strokes. */
  private static List<Integer> beforeEachStep(Played played) {
    List<Integer> before = new ArrayList<>();
    for (int i = 0; i < played.steps().size(); i++) {
      boolean second =
          i > 0
              && played.steps().get(i).event().key().endsWith("M>R")
              && played
                  .steps()
                  .get(i - 1)
                  .event()
                  .key()
                  .equals(played.steps().get(i).event().key().replace("M>R", "N>M"));
      if (!second) {
        before.add(i);
      }
    }
    return before;
  }

  private static List<String> called(Element question) {
    List<Element> ticks = Taught.elements(question, "input");
    List<Element> labels = Taught.elements(question, "label");
    List<String> free = new ArrayList<>();
    for (int i = 0; i < ticks.size(); i++) {
      if (ticks.get(i).getAttribute("data-free").equals("yes")) {
        free.add(labels.get(i).getTextContent());
      }
    }
    assertThat(question.getTextContent())
        .contains(free.isEmpty() ? "No lever is free." : "Free: " + String.join(", ", free) + ".");
    return free;
  }

  private static List<String> tried(Working working, State state, Box box) {
    List<String> free = new ArrayList<>();
    for (Lever lever : box.frame().levers()) {
      for (Movement movement : working.movements()) {
        if (movement.event().key().startsWith("lever " + lever.id() + " ")
            && movement.needs().evaluate(state)
            && !free.contains(lever.id())) {
          free.add(lever.id());
        }
      }
    }
    return free;
  }

  /** By hand: 3 and 4 lock each other both ways, 1 and 2 need 3 pulled, and 2 needs 4 as well. */
  @Test
  void of_the_junction_the_free_levers_are_those_found_by_hand() {
    Audited broken =
        Taught.JUNCTION.taught().stream()
            .filter(a -> a.requirement().id().equals("points set: signal 1"))
            .findFirst()
            .orElseThrow();
    List<Element> questions = Taught.ofClass(Taught.JUNCTION.page(broken), "question");
    assertThat(questions)
        .extracting(LessonsTest::called)
        .containsExactly(List.of("3", "4"), List.of("3", "4"), List.of("1", "2", "3"));
    assertThat(questions.get(2).getTextContent())
        .contains("3 locks both ways 4: 3 stands at R, 4 stands at R");
  }

  /** Content Security Policy Level 3 (W3C), 2.3.1: hashes name the style and script let in. */
  @ParameterizedTest
  @FieldSource("ALL")
  void nothing_is_loaded_and_only_the_script_and_style_of_the_page_are_let_in(Taught taught)
      throws Exception {
    for (Audited audited : taught.taught()) {
      Element page = taught.page(audited).getDocumentElement();
      String policy =
          "default-src 'none'; style-src 'sha256-%s'; script-src 'sha256-%s'; base-uri 'none'"
              .formatted(hash(page, "style"), hash(page, "script"));
      assertThat(Taught.elements(page, "meta"))
          .filteredOn(e -> e.getAttribute("http-equiv").equals("Content-Security-Policy"))
          .extracting(e -> e.getAttribute("content"))
          .containsExactly(policy);
      assertThat(Taught.elements(page))
          .extracting(Element::getTagName)
          .doesNotContain("link", "img", "iframe", "object", "form", "base", "use");
      for (Element e : Taught.elements(page)) {
        assertThat(e.getAttribute("style") + e.getAttribute("src")).isEmpty();
        assertThat(e.getAttribute("href")).matches("|#[a-z][a-z0-9-]*");
        for (int i = 0; i < e.getAttributes().getLength(); i++) {
          assertThat(e.getAttributes().item(i).getNodeName()).doesNotStartWith("on");
        }
      }
    }
  }

  private static String hash(Element page, String tag) throws Exception {
    List<Element> found = Taught.elements(page, tag);
    assertThat(found).hasSize(1);
    byte[] bytes = found.get(0).getTextContent().getBytes(StandardCharsets.UTF_8);
    return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void ids_are_unique_and_every_link_and_label_has_its_end(Taught taught) {
    for (Audited audited : taught.taught()) {
      List<Element> all = Taught.elements(taught.page(audited).getDocumentElement());
      List<String> ids =
          all.stream().map(e -> e.getAttribute("id")).filter(i -> !i.isEmpty()).toList();
      assertThat(ids).doesNotHaveDuplicates();
      for (Element e : all) {
        Stream.of(e.getAttribute("for"), e.getAttribute("aria-labelledby"), e.getAttribute("href"))
            .filter(a -> !a.isEmpty())
            .forEach(a -> assertThat(ids).contains(a.replaceFirst("^#", "")));
      }
    }
  }

  @Test
  void the_same_findings_give_the_same_pages() {
    Taught again = Taught.of(OPPOSING.findings());
    assertThat(again.pages()).isEqualTo(OPPOSING.pages());
    assertThat(again.pages().values())
        .noneMatch(p -> p.contains(System.getProperty("user.dir")) || p.contains("\r"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\" onload=\"alert(1)\" x=\"",
        "]]></style><!-- --><svg onload=alert(1)>",
        "&lt;b&gt; &#60; &amp",
        "turned \u202e round, a bell \u0007, a\nline, \ud800 half"
      })
  void labels_stay_words(String words) {
    Box box = Taught.JUNCTION.box();
    Document page = relabelled(box, words);
    Document plain = relabelled(box, "plain");
    assertThat(page.getDocumentElement().getTextContent()).contains("pull 4 " + Shown.line(words));
    assertThat(Taught.elements(page.getDocumentElement(), "script")).hasSize(1);
    assertThat(shape(page)).isEqualTo(shape(plain));
  }

  /** Elements outside pictures, in order, with the names of their attributes. */
  private static List<String> shape(Document page) {
    List<String> shape = new ArrayList<>();
    for (Element e : Taught.elements(page.getDocumentElement())) {
      if (!e.getParentNode().getNodeName().matches("svg|g|a") && !e.getTagName().equals("tspan")) {
        StringBuilder names = new StringBuilder(e.getTagName());
        for (int i = 0; i < e.getAttributes().getLength(); i++) {
          names.append(' ').append(e.getAttributes().item(i).getNodeName());
        }
        shape.add(names.toString());
      }
    }
    return shape;
  }

  private static Document relabelled(Box old, String label) {
    Box box =
        new Box(
            old.name(),
            old.layout(),
            new Frame(
                old.frame().levers().stream()
                    .map(l -> new Lever(l.id(), label, l.work(), l.at()))
                    .toList()),
            old.locking(),
            old.sections(),
            old.routes(),
            old.notSignalled(),
            old.conflicts(),
            old.distantPaths(),
            old.requirements());
    List<String> breach = List.of("lever 4 N>R", "lever 3 N>R", "lever 1 N>M");
    return only(Taught.claimed(box, "points set: signal 1", Map.of(), breach));
  }

  @Test
  void a_file_name_has_nothing_of_the_authors_in_it() {
    assertThat(FileNames.of("points set", "points set: signal ../../x"))
        .matches("points-set-[0-9a-f]{12}\\.html")
        .isNotEqualTo(FileNames.of("points set", "points set: signal CON"));
    assertThat(FileNames.of("no conflict", "x".repeat(3000))).hasSizeLessThan(80);
    for (String name : List.of("", "../x", "Points set", "points  set", "a:b", "points set ")) {
      assertThatIllegalArgumentException().isThrownBy(() -> FileNames.of(name, "x"));
    }
  }

  @Test
  void at_the_end_of_the_tokens_lesson_the_instruments_stand_as_they_do() {
    List<Element> steps = steps(only(TOKENS));
    assertThat(steps.get(0).getTextContent())
        .contains(
            "His own instrument, Sedgeholm to Quillby: 14 tokens in it, not in use; lever 11 is not"
                + " released.",
            "the instrument at Sedgeholm: 1 token in it, not in use; 0 tokens out of all");
    assertThat(steps.get(4).getTextContent())
        .contains(
            "14 tokens in it, withdrawing;",
            "the instrument at Sedgeholm: 1 token in it, withdrawing;");
    assertThat(steps.get(6).getTextContent())
        .contains(
            "13 tokens in it, not in use; lever 11 is released.",
            "the instrument at Sedgeholm: 0 tokens in it, not in use; 2 tokens out of all");
  }

  @Test
  void the_findings_of_another_box_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Lessons.of(TOKENS.findings(), Taught.JUNCTION.result(), Teaching.NONE));
  }
}
