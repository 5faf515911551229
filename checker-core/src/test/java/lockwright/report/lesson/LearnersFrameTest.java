package lockwright.report.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import lockwright.report.Cautions;
import lockwright.report.learner.LearnersFrame;
import lockwright.report.picture.Pictures;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The page on which the frame is worked: for whom there is one, and that its pictures are right.
 */
class LearnersFrameTest {
  private static final Taught PROVED = Taught.searched(Taught.box("e1-junction"));

  @Test
  void there_is_one_for_a_box_of_which_everything_is_proved_or_shown_and_for_no_other() {
    assertThat(PROVED.pages()).containsKey(LearnersFrame.FILE);
    assertThat(index(PROVED)).contains("Work it yourself");
    assertThat(Taught.JUNCTION.pages()).doesNotContainKey(LearnersFrame.FILE);
    assertThat(index(Taught.JUNCTION)).contains("made only of a box of which everything is proved");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LearnersFrame.of(Taught.JUNCTION.result()));
  }

  private static String index(Taught taught) {
    return Taught.parse(taught.pages().get(Lessons.INDEX)).getDocumentElement().getTextContent();
  }

  @Test
  void it_says_the_cautions_names_each_lever_and_is_the_same_for_the_same_result() {
    String page = PROVED.pages().get(LearnersFrame.FILE);
    assertThat(LearnersFrame.of(PROVED.result())).isEqualTo(page);
    Element root = Taught.parse(page).getDocumentElement();
    assertThat(root.getTextContent()).contains(Cautions.ALL);
    assertThat(Taught.elements(root, "button"))
        .extracting(b -> b.getAttribute("data-label"))
        .contains("stop signal 1, Main home", "bolt of points 4, Bolt of 4")
        .hasSize(2 + PROVED.box().frame().levers().size());
  }

  /** Content Security Policy Level 3 (W3C), 2.3.1: hashes name the style and script let in. */
  @Test
  void nothing_is_loaded_and_only_the_script_and_style_of_the_page_are_let_in() throws Exception {
    Element root = Taught.parse(PROVED.pages().get(LearnersFrame.FILE)).getDocumentElement();
    assertThat(Taught.elements(root, "meta"))
        .extracting(e -> e.getAttribute("content"))
        .contains(
            "default-src 'none'; style-src 'sha256-%s'; script-src 'sha256-%s'; base-uri 'none'"
                .formatted(hash(root, "style"), hash(root, "script")));
    assertThat(Taught.elements(root))
        .extracting(Element::getTagName)
        .doesNotContain("link", "img", "iframe", "object", "form", "base", "use");
    for (Element e : Taught.elements(root)) {
      assertThat(e.getAttribute("style") + e.getAttribute("src")).isEmpty();
      assertThat(e.getAttribute("href")).matches("|#[a-z][a-z0-9-]*");
    }
  }

  private static String hash(Element page, String tag) throws Exception {
    byte[] text =
        Taught.elements(page, tag).get(0).getTextContent().getBytes(StandardCharsets.UTF_8);
    return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(text));
  }

  /** What is to be seen of the moving pictures in a state is what is drawn for that state. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "every-form",
        "two-level-crossings",
        "points-worked-electrically",
        "points-worked-by-hand"
      })
  void in_any_state_the_moving_pictures_show_what_is_drawn_for_it(String name) throws Exception {
    Taught taught = Taught.unclaimed(Taught.box(name));
    JsonNode result = new JsonMapper().readTree(taught.result());
    Document diagram = Taught.parse(Pictures.movingDiagram(result));
    List<Document> levers = Pictures.movingLevers(result).stream().map(Taught::parse).toList();
    Random random = new Random(1889);
    for (int i = 0; i < 15; i++) {
      Map<String, String> state = anyState(taught, random);
      assertThat(shown(diagram, state))
          .isEqualTo(shown(Taught.parse(Pictures.diagram(result, state)), state));
      List<String> places = new ArrayList<>();
      levers.forEach(lever -> places.addAll(places(lever, state)));
      assertThat(places).isEqualTo(places(Taught.parse(Pictures.frame(result, state)), state));
    }
  }

  /** Levers, points of ground frames, locks, gates and conditions anyhow, reachable or not. */
  private static Map<String, String> anyState(Taught taught, Random random) {
    Map<String, String> state = new TreeMap<>();
    Working.parted(taught.box())
        .quantities()
        .forEach(
            q -> {
              if (q.values().equals(List.of("N", "M", "R"))
                  || q.key().contains(": lock of ")
                  || q.key().startsWith("rod of ")) {
                state.put(q.key(), q.values().get(random.nextInt(q.values().size())));
              } else if (q.key().startsWith("condition ")) {
                state.put(q.key(), q.values().get(random.nextInt(2)));
              }
            });
    return state;
  }

  /** Everything that is drawn, in order, but the words for the whole and the groups of variants. */
  private static List<String> shown(Document picture, Map<String, String> state) {
    List<String> shown = new ArrayList<>();
    for (Element e : seen(picture, state)) {
      if (e.getTagName().equals("desc")) {
        continue;
      }
      StringBuilder text = new StringBuilder(e.getTagName());
      for (int i = 0; i < e.getAttributes().getLength(); i++) {
        text.append(' ').append(e.getAttributes().item(i));
      }
      boolean leaf = Taught.elements(e).isEmpty();
      shown.add(text + (leaf ? " " + e.getTextContent() : ""));
    }
    return shown;
  }

  /** The class and number of each lever, as shown. */
  private static List<String> places(Document picture, Map<String, String> state) {
    return seen(picture, state).stream()
        .filter(e -> e.hasAttribute("data-lever"))
        .map(e -> e.getAttribute("data-lever") + " " + e.getAttribute("class"))
        .toList();
  }

  private static List<Element> seen(Document picture, Map<String, String> state) {
    List<Element> seen = new ArrayList<>();
    for (Element e : Taught.elements(picture.getDocumentElement())) {
      boolean variant = e.getAttribute("class").equals("variant");
      boolean hidden = false;
      for (Element in = e; in != picture.getDocumentElement(); in = (Element) in.getParentNode()) {
        hidden |= in.hasAttribute("data-when") && !fits(in.getAttribute("data-when"), state);
      }
      if (!variant && !hidden) {
        seen.add(e);
      }
    }
    return seen;
  }

  private static boolean fits(String when, Map<String, String> state) {
    try {
      return new JsonMapper()
          .readTree(when).properties().stream()
              .allMatch(
                  thing -> {
                    List<String> places = new ArrayList<>();
                    thing.getValue().forEach(p -> places.add(p.asText()));
                    return places.contains(state.get(thing.getKey()));
                  });
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
