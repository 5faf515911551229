package lockwright.report.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.layout.Arm;
import lockwright.railway.teaching.Teaching;
import lockwright.railway.teaching.WhyNot;
import lockwright.railway.teaching.Words;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.report.Cautions;
import lockwright.spec.Problem;
import lockwright.spec.Span;
import lockwright.spec.SpecsOnDisk;
import lockwright.working.HandBox;
import lockwright.working.Movement;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Lessons on a lever that is held: there is one just where it is held, and what it says is so. */
class WhyNotTest {
  private static final Span TITLE = new Span("lessons.yaml", 2, 3);
  private static final Span LEVER = new Span("lessons.yaml", 4, 11);
  private static final Path EXAMPLE = Path.of("..", "examples", "proved", "quillby", "box");
  private static final Taught QUILLBY =
      Taught.unclaimed(BoxBuilder.read(EXAMPLE).box().orElseThrow());
  private static final Taught JUNCTION = Taught.unclaimed(Taught.box("e1-junction"));

  private static WhyNot asked(List<WhyNot.First> first, List<String> reversed, String lever) {
    return new WhyNot("A question", first, reversed, lever, Words.NONE, TITLE, LEVER);
  }

  private static WhyNot.First first(String lever, boolean pulled) {
    return new WhyNot.First(lever, pulled, new Span("lessons.yaml", 3, 13));
  }

  private static Lessons.Outcome outcome(Taught taught, WhyNot... asked) {
    return taught.with(new Teaching("", "", List.of(), List.of(asked), "0a1b"));
  }

  private static Document page(Taught taught, WhyNot asked) {
    Lessons.Outcome outcome = outcome(taught, asked);
    assertThat(outcome.problems()).isEmpty();
    return Taught.parse(outcome.pages().get(FileNames.of("why not", asked.title())));
  }

  private static List<String> headings(Document page) {
    return Taught.ofClass(page, "step").stream()
        .map(s -> Taught.elements(s, "h2").get(0).getTextContent())
        .toList();
  }

  private static Element refused(Document page) {
    return Taught.ofClass(page, "step").stream()
        .filter(s -> s.getTextContent().contains("It is held, and stays as it is."))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The printed results of a junction with a facing point lock: Indian Railways Signal Engineering
   * Manual, chapter 12, para 12.26.7(c)(iii)-(iv), figure 1 (text read, figure not seen). Which
   * entry holds is by the table printed with it. What frees it is found by hand.
   */
  @ParameterizedTest
  @CsvSource({
    "'',     2, 1,      3 and 4,     2 released by 3|2 released by 4",
    "3,      4, 3,      3,           3 locks both ways 4",
    "3 1,    3, 3 1,    1,           1 released by 3",
    "4,      1, 4,      4 and 3,     1 released by 3|1 locks 4",
    "4 3 2,  4, 4 3 2,  2 and 3,     2 released by 4|3 locks both ways 4",
  })
  void of_the_junction_it_says_what_is_printed(
      String reversed, String lever, String made, String frees, String entries) {
    List<String> levers = reversed.isEmpty() ? List.of() : List.of(reversed.split(" "));
    Document page = page(JUNCTION, asked(List.of(), levers, lever));
    Element refused = refused(page);
    for (String entry : entries.split("\\|")) {
      assertThat(refused.getTextContent()).contains(entry + ":");
    }
    List<Element> links = Taught.elements(Taught.elements(refused, "ul").get(0), "a");
    assertThat(links).hasSize(entries.split("\\|").length);
    for (Element link : links) {
      assertThat(row(page, link).getTextContent())
          .contains(link.getTextContent(), "holds it")
          .containsAnyOf(entries.split("\\|"));
    }
    assertThat(headings(page))
        .hasSize(levers.size() + frees.split(" and ").length + 3)
        .element(levers.size() + 1)
        .asString()
        .contains(lever + " ", "will not be " + (levers.contains(lever) ? "replaced" : "pulled"));
  }

  @Test
  void the_story_the_steps_the_table_and_the_cautions_are_on_the_page() {
    Document page = page(JUNCTION, asked(List.of(), List.of("3", "1"), "3"));
    String text = page.getDocumentElement().getTextContent();
    assertThat(text)
        .contains(Cautions.ALL)
        .contains(
            "With 3, 1 reversed and all others normal: why will 3 Bolt of 4 not be replaced?",
            "It is one way to come there. There may be others.",
            "It is free after 1 movement, and not after fewer, by whole strokes:",
            "What the locking table says of lever 3",
            "Not everything of this box is proved or shown");
    assertThat(headings(page))
        .containsExactly(
            "The beginning",
            "Step 1 of 5: pull 3 Bolt of 4",
            "Step 2 of 5: pull 1 Main home",
            "Step 3 of 5: 3 Bolt of 4 will not be replaced",
            "Step 4 of 5: replace 1 Main home",
            "Step 5 of 5: replace 3 Bolt of 4");
    Element link = Taught.elements(refused(page), "a").get(0);
    assertThat(link.getTextContent()).isEqualTo("locking.csv:2:3");
    assertThat(row(page, link).getTextContent())
        .contains("locking.csv:2:3", "1 released by 3", "holds it");
    assertThat(Taught.ofClass(page, "question")).hasSize(5);
    assertThat(Taught.elements(page.getDocumentElement(), "svg")).hasSize(2 * 6 + 1);
  }

  /** The row of the table that a link leads to. */
  private static Element row(Document page, Element link) {
    return Taught.elements(page.getDocumentElement(), "tr").stream()
        .filter(r -> ("#" + r.getAttribute("id")).equals(link.getAttribute("href")))
        .findFirst()
        .orElseThrow();
  }

  /** Levers named in an order in which they cannot be pulled: another is found, and it is said. */
  @Test
  void an_order_that_the_locking_does_not_allow_is_not_taken() {
    Document page = page(JUNCTION, asked(List.of(), List.of("1", "3"), "4"));
    assertThat(headings(page).get(1)).endsWith("pull 3 Bolt of 4");
    assertThat(page.getDocumentElement().getTextContent())
        .contains("The levers are not named in an order in which they can be pulled");
  }

  /** Every set of levers of the junction, every lever: 64 questions. */
  @Test
  void there_is_a_lesson_just_where_the_lever_is_held_and_it_takes_as_few_movements_as_can_be() {
    Box box = JUNCTION.box();
    Working whole = Working.whole(box);
    Map<State, Integer> reached = distances(whole, whole.beginnings().iterator().next());
    List<String> levers = List.of("1", "2", "3", "4");
    int lessons = 0;
    for (int set = 0; set < 16; set++) {
      int bits = set;
      List<String> reversed =
          levers.stream().filter(l -> (bits >> levers.indexOf(l)) % 2 == 1).toList();
      State state = whole.state(values(levers, reversed));
      for (String lever : levers) {
        Event stroke = Refusal.stroke(lever, !reversed.contains(lever));
        String expected =
            !reached.containsKey(state)
                ? "LESSON-204 " + TITLE
                : whole.free(state, stroke) ? "LESSON-203 " + LEVER : "";
        Lessons.Outcome outcome = outcome(JUNCTION, asked(List.of(), reversed, lever));
        assertThat(String.join(", ", SpecsOnDisk.places(outcome.problems())))
            .as(reversed + " " + lever)
            .isEqualTo(expected);
        if (expected.isEmpty()) {
          lessons++;
          Document page = Taught.parse(outcome.pages().get(FileNames.of("why not", "A question")));
          int free =
              distances(whole, state).entrySet().stream()
                  .filter(e -> whole.free(e.getKey(), stroke))
                  .mapToInt(Map.Entry::getValue)
                  .min()
                  .orElseThrow();
          assertThat(headings(page)).hasSize(1 + reached.get(state) + 1 + free + 1);
        }
      }
    }
    assertThat(lessons).isGreaterThan(8);
  }

  private static Map<String, String> values(List<String> levers, List<String> reversed) {
    Map<String, String> values = new HashMap<>();
    levers.forEach(l -> values.put(Quantity.lever(l).key(), reversed.contains(l) ? "R" : "N"));
    return values;
  }

  /** How many movements lead to each state, breadth first. */
  private static Map<State, Integer> distances(Working working, State from) {
    Map<State, Integer> distances = new HashMap<>(Map.of(from, 0));
    Deque<State> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      State state = open.remove();
      for (Movement movement : working.movements()) {
        if (working.free(state, movement.event())) {
          State next = working.make(state, movement.event());
          if (distances.putIfAbsent(next, distances.get(state) + 1) == null) {
            open.add(next);
          }
        }
      }
    }
    return distances;
  }

  /** 2 locks 12 when 8 N is not marked: with 8 reversed its piece holds 12 only for possibility. */
  @Test
  void a_lever_that_only_an_unmarked_piece_holds_is_not_taught_as_held() {
    assertThat(outcome(QUILLBY, asked(List.of(), List.of("8", "9", "2"), "12")).problems())
        .singleElement()
        .matches(p -> p.code().equals("LESSON-203") && p.span().equals(LEVER))
        .extracting(Problem::what)
        .asString()
        .startsWith("lever 12 is not surely held");
  }

  /** 8 is held by its bolt; the piece of '2 locks 22 when 8 R' holds it too, if it holds. */
  @Test
  void what_an_unmarked_piece_would_hold_as_well_is_told_apart() {
    Document page = page(QUILLBY, asked(List.of(), List.of("8", "9", "2"), "8"));
    List<Element> lists = Taught.ofClass(page, "holds");
    assertThat(lists).hasSize(2);
    assertThat(lists.get(0).getTextContent())
        .contains("9 locks both ways 8")
        .doesNotContain("when 8 R");
    assertThat(lists.get(1).getTextContent())
        .contains("2 locks 22 when 8 R")
        .doesNotContain("9 locks");
    Element unmarked = Taught.elements(lists.get(1), "a").get(0);
    assertThat(row(page, unmarked).getTextContent()).contains("only if its piece holds");
  }

  /** The two points levers of this box release each other, so neither is ever pulled. */
  @Test
  void what_can_never_be_done_cannot_come_first() {
    Taught ring = Taught.unclaimed(Taught.box("released-in-a-ring"));
    WhyNot asked = asked(List.of(first("2", true), first("4", true)), List.of("2"), "1");
    assertThat(outcome(ring, asked).problems())
        .singleElement()
        .matches(p -> p.code().equals("LESSON-204") && p.what().startsWith("'pull 4' never comes"));
    assertThat(headings(page(ring, asked(List.of(), List.of(), "4")))).hasSize(2);
    assertThat(page(ring, asked(List.of(), List.of(), "4")).getDocumentElement().getTextContent())
        .contains("No sequence of whole strokes ever frees it from here");
  }

  @Test
  void why_a_state_is_not_reached_is_told() {
    assertThat(outcome(JUNCTION, asked(List.of(), List.of("4", "1"), "2")).problems())
        .singleElement()
        .extracting(Problem::what)
        .asString()
        .contains("locking.csv:2:3 '1 released by 3'; locking.csv:2:5 '1 locks 4'");
  }

  /**
   * The release of a section serves one pull: `docs/meaning.md` 3.3, and 4.2 for its withdrawal.
   */
  @Test
  void the_questions_of_the_example_have_their_answers() {
    BoxBuilder.Built built = BoxBuilder.read(EXAMPLE);
    Lessons.Outcome outcome = QUILLBY.with(built.teaching());
    assertThat(outcome.problems()).isEmpty();
    Document twice =
        Taught.parse(
            outcome
                .pages()
                .get(FileNames.of("why not", "The starting signal, twice on one token")));
    assertThat(headings(twice))
        .extracting(h -> h.replaceFirst("Step [0-9]+ of 10: ", ""))
        .containsExactly(
            "The beginning",
            "Sedgeholm plunges",
            "Quillby starts to withdraw a token",
            "Quillby finishes the withdrawal of the token",
            "pull 11 Up advanced starting",
            "replace 11 Up advanced starting",
            "11 Up advanced starting will not be pulled",
            "a token is put in at Sedgeholm",
            "Quillby starts to withdraw a token",
            "Quillby finishes the withdrawal of the token",
            "pull 11 Up advanced starting");
    assertThat(refused(twice).getTextContent())
        .contains("lever 11 leaves N only with the release of Sedgeholm to Quillby given");
    assertThat(outcome.pages().keySet()).filteredOn(f -> f.startsWith("why-not-")).hasSize(3);
    assertThat(QUILLBY.with(built.teaching()).pages()).isEqualTo(outcome.pages());
  }

  /** 2 can be pulled after 1 alone, whose piece holds it then, if it holds: it is not marked. */
  @Test
  void a_state_that_only_safety_reaches_is_not_taught() {
    Box table =
        new HandBox()
            .signal("1", Arm.STOP)
            .signal("2", Arm.STOP)
            .points("4")
            .locking("1 locks 2 when 4 R", "2 released by 1")
            .box();
    Taught taught = Taught.unclaimed(JUNCTION.box().withLocking(table.locking()));
    assertThat(outcome(taught, asked(List.of(), List.of("1", "2"), "4")).problems())
        .singleElement()
        .matches(p -> p.code().equals("LESSON-204") && p.span().equals(TITLE))
        .extracting(Problem::what)
        .asString()
        .contains(
            "is reached by half-strokes alone, or only if pieces with conditions do not hold");
  }

  /** What was done first is undone where the question wants it so. */
  @Test
  void all_levers_not_named_stand_normal_whatever_came_first() {
    Document page = page(JUNCTION, asked(List.of(first("1", true)), List.of(), "1"));
    assertThat(headings(page))
        .extracting(h -> h.replaceFirst("Step [0-9]+ of 7: ", ""))
        .containsExactly(
            "The beginning",
            "pull 3 Bolt of 4",
            "pull 1 Main home",
            "replace 1 Main home",
            "replace 3 Bolt of 4",
            "1 Main home will not be pulled",
            "pull 3 Bolt of 4",
            "pull 1 Main home");
    assertThat(page.getDocumentElement().getTextContent())
        .contains("After pull 1, with all levers normal: why will 1 Main home not be pulled?");
  }

  /** The route is cleared by hand: bolt and points as the table has them, then the home. */
  @Test
  void the_words_of_the_example_stand_beside_their_steps() {
    Teaching teaching = BoxBuilder.read(EXAMPLE).teaching();
    String id = teaching.lessons().get(0).requirement();
    Taught shown =
        Taught.shown(QUILLBY.box(), id, List.of("lever 8 N>R", "lever 9 N>R", "lever 2 N>R"));
    Teaching words = new Teaching("", "", teaching.lessons(), List.of(), teaching.digest());
    Lessons.Outcome outcome = shown.with(words);
    assertThat(outcome.problems()).isEmpty();
    assertThat(outcome.unused()).isEmpty();
    Document page = Taught.parse(outcome.pages().get(FileNames.of("route can be cleared", id)));
    assertThat(Taught.ofClass(page, "step"))
        .extracting(s -> s.getTextContent().contains("From the trainer"))
        .containsExactly(false, false, true, true);
  }
}
