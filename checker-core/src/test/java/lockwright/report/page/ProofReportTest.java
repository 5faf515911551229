package lockwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lockwright.report.Cautions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The page says what the result says, all of it, and nothing better. */
class ProofReportTest {
  static final List<byte[]> ALL = Pages.ALL;

  @Test
  void together_the_results_have_every_verdict() {
    Set<String> verdicts = new HashSet<>();
    ALL.forEach(
        r ->
            Pages.json(r)
                .get("requirements")
                .forEach(i -> verdicts.add(i.get("verdict").textValue())));
    assertThat(verdicts).hasSize(Word.values().length);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void each_instance_stands_once_with_its_verdict(byte[] result) {
    JsonNode json = Pages.json(result);
    Document page = Pages.parse(ProofReport.checked(result));
    List<String> expected = new ArrayList<>();
    json.get("requirements")
        .forEach(i -> expected.add(i.get("verdict").textValue() + ": " + i.get("id").textValue()));
    List<String> found = new ArrayList<>();
    for (Element verdict : Pages.ofClass(page, "verdict")) {
      Element row = (Element) verdict.getParentNode().getParentNode();
      Element about = (Element) row.getElementsByTagName("td").item(1);
      String id = about.getTextContent().split("always: |some run: ", 2)[0];
      found.add(verdict.getTextContent().substring(2) + ": " + id);
    }
    assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void as_many_are_called_proved_as_the_result_has(byte[] result) {
    JsonNode counts = Pages.json(result).get("counts");
    Document page = Pages.parse(ProofReport.checked(result));
    Map<String, Long> found =
        Pages.ofClass(page, "verdict").stream()
            .collect(
                Collectors.groupingBy(v -> v.getTextContent().substring(2), Collectors.counting()));
    counts
        .properties()
        .forEach(
            c ->
                assertThat(found.getOrDefault(c.getKey(), 0L))
                    .as(c.getKey())
                    .isEqualTo(c.getValue().longValue()));
  }

  @Test
  void each_instance_leads_to_the_entries_that_it_needs() {
    JsonNode verdicts = Pages.json(Pages.ENTRIES).get("entries").get("verdicts");
    Set<String> expected = new HashSet<>();
    for (int i = 0; i < verdicts.size(); i++) {
      for (JsonNode breaks : verdicts.get(i).path("breaks")) {
        expected.add(breaks.get("requirement").textValue() + " #entry-" + i);
      }
    }
    Set<String> found = new HashSet<>();
    for (Element verdict :
        Pages.ofClass(Pages.parse(ProofReport.checked(Pages.ENTRIES)), "verdict")) {
      Element row = (Element) verdict.getParentNode().getParentNode();
      String about = row.getElementsByTagName("td").item(1).getTextContent();
      for (int i = 0; i < row.getElementsByTagName("a").getLength(); i++) {
        String link = ((Element) row.getElementsByTagName("a").item(i)).getAttribute("href");
        if (link.startsWith("#entry-")) {
          found.add(about.split("always: |some run: ", 2)[0] + " " + link);
        }
      }
    }
    assertThat(found).isNotEmpty().isEqualTo(expected);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void a_tick_stands_only_before_proved_and_shown(byte[] result) {
    String text = Pages.text(Pages.parse(ProofReport.checked(result)));
    boolean passes = Pages.json(result).get("passes").booleanValue();
    String rest = text.replace("\u2714 proved", "").replace("\u2714 shown", "");
    assertThat(passes ? rest.replace("\u2714 Passes: of", "") : rest).doesNotContain("\u2714");
    assertThat(text.contains("Does not pass")).isEqualTo(!passes);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void nothing_of_the_result_is_left_out(byte[] result) {
    JsonNode json = Pages.json(result);
    String text = Pages.text(Pages.parse(ProofReport.checked(result)));
    List<String> wanted = new ArrayList<>(Cautions.ALL);
    wanted.addAll(Cautions.LEFT_OUT);
    for (String field : List.of("sha256", "digest", "reason", "solver", "version", "words")) {
      wanted.addAll(json.findValuesAsText(field));
    }
    json.get("catalogue").forEach(c -> wanted.addAll(c.get("sources").findValuesAsText("source")));
    json.get("assumptions").forEach(a -> wanted.add(a.get("source").textValue()));
    json.get("locking").forEach(e -> wanted.add(e.get("text").textValue()));
    json.get("routes").forEach(r -> wanted.add(r.get("name").textValue()));
    json.get("runs").forEach(r -> wanted.add(r.get("id").textValue()));
    json.get("certificates").forEach(c -> c.get("clauses").forEach(l -> wanted.add(l.textValue())));
    assertThat(text).contains(wanted);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void every_link_leads_to_one_place_of_the_page(byte[] result) {
    Document page = Pages.parse(ProofReport.checked(result));
    List<String> ids = attributes(page, "id");
    List<String> links = attributes(page, "href");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(links).isNotEmpty().allSatisfy(l -> assertThat(l).startsWith("#"));
    assertThat(ids).containsAll(links.stream().map(l -> l.substring(1)).toList());
    assertThat(ids).containsAll(attributes(page, "aria-labelledby"));
    assertThat(ids).containsAll(attributes(page, "for"));
    for (int i = 0; i < Pages.json(result).get("locking").size(); i++) {
      assertThat(ids).contains("entry-" + i);
    }
  }

  private static List<String> attributes(Document page, String name) {
    return Pages.elements(page).stream()
        .filter(e -> e.hasAttribute(name))
        .map(e -> e.getAttribute(name))
        .toList();
  }

  /**
   * Content Security Policy Level 3 (W3C), 2.3.1: a hash names the style sheet that may be used.
   */
  @ParameterizedTest
  @FieldSource("ALL")
  void nothing_is_loaded_or_run_and_the_policy_says_so(byte[] result) throws Exception {
    Document page = Pages.parse(ProofReport.checked(result));
    String style = page.getElementsByTagName("style").item(0).getTextContent();
    String hash =
        Base64.getEncoder()
            .encodeToString(
                MessageDigest.getInstance("SHA-256")
                    .digest(style.getBytes(StandardCharsets.UTF_8)));
    assertThat(attributes(page, "content"))
        .contains("default-src 'none'; style-src 'sha256-" + hash + "'; base-uri 'none'");
    assertThat(style).doesNotContain("url(", "@import");
    assertThat(page.getElementsByTagName("style").getLength()).isEqualTo(1);
    assertThat(Pages.elements(page))
        .extracting(Element::getTagName)
        .doesNotContain("script", "link", "img", "iframe", "object", "form", "base", "use");
    assertThat(attributes(page, "src")).isEmpty();
    assertThat(attributes(page, "style")).isEmpty();
  }

  @Test
  void the_same_result_gives_the_same_page_without_a_path() {
    String page = ProofReport.checked(Pages.SECTION);
    assertThat(ProofReport.checked(Pages.SECTION.clone())).isEqualTo(page);
    assertThat(page).doesNotContain(System.getProperty("user.dir"), "file:", "\r");
  }

  @ParameterizedTest
  @ValueSource(strings = {"PROVED", "proven", "", "shown and proved"})
  void a_verdict_that_there_is_not_is_refused(String verdict) {
    JsonNode json = Pages.json(Pages.STUCK);
    ((ObjectNode) json.get("requirements").get(0)).put("verdict", verdict + " ");
    assertThatIllegalArgumentException().isThrownBy(() -> ProofReport.checked(Pages.bytes(json)));
  }

  @Test
  void counts_that_are_not_those_of_the_instances_are_refused() {
    JsonNode json = Pages.json(Pages.STUCK);
    ObjectNode counts = (ObjectNode) json.get("counts");
    counts.put("proved", counts.get("proved").intValue() + 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProofReport.checked(Pages.bytes(json)))
        .withMessageContaining("proved");
  }

  @Test
  void a_run_that_the_result_does_not_have_is_refused() {
    JsonNode json = Pages.json(Pages.STUCK);
    json.findParents("run").forEach(p -> ((ObjectNode) p).put("run", "run 999"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProofReport.checked(Pages.bytes(json)))
        .withMessageContaining("run 999");
  }

  @Test
  void it_is_told_how_the_frame_is_restored_and_from_where_it_is_not() {
    assertThat(Pages.text(Pages.parse(ProofReport.checked(Pages.BACK))))
        .contains(
            "The frame",
            "always: strokes lead to all levers at N",
            "single strokes to N, one after another; or: pull 3 Bolt of 4, replace 4 Junction"
                + " points, replace 3 Bolt of 4; certificate ");
    assertThat(Pages.text(Pages.parse(ProofReport.checked(Pages.STRANDED))))
        .contains(
            "From there no strokes of levers, points or gates lead to all levers normal: each"
                + " clause of certificate ",
            "With what others do at the instruments, or outside, it can be gone on with, to all levers normal:"
                + " run ",
            "Perhaps a shorter sequence breaks it too.");
  }

  /** 7 of docs/meaning.md: what is waived or expected changes the outcome, never a verdict. */
  @Test
  void what_is_waived_is_told_with_reason_role_and_end_and_stays_broken() {
    ObjectNode json = (ObjectNode) Pages.json(Pages.STUCK);
    ObjectNode broken = null;
    for (JsonNode instance : json.get("requirements")) {
      if (instance.get("verdict").textValue().equals("broken")) {
        broken = (ObjectNode) instance;
      }
    }
    broken
        .putObject("expectation")
        .put("kind", "waived")
        .put("verdict", "broken")
        .put("reason", "a <reason>")
        .put("role", "an \"engineer\"")
        .put("until", "2031-04-30")
        .put("state", "holds")
        .putObject("at")
        .put("file", "waivers.yaml")
        .put("line", 2)
        .put("column", 3);
    json.putObject("expectations")
        .put("date", "2031-04-01")
        .put("expected", 0)
        .put("waived", 1)
        .put("hold", 1)
        .put("noLongerBite", 0)
        .put("pastTheirDate", 0);
    json.put("passes", true);
    Document page = Pages.parse(ProofReport.checked(Pages.bytes(json)));
    assertThat(Pages.text(page))
        .contains(
            "Passes, with failures that are expected or waived: of",
            "0 expected, 1 waived. Of these 1 hold on 2031-04-01",
            "Waived to be broken, by an \"engineer\", until 2031-04-30. State: as waived."
                + " Reason: a <reason> (waivers.yaml:2:3)",
            "mvn lockwright:report -Dlockwright.date=2031-04-01")
        .doesNotContain("\u2714 Passes");
    assertThat(Pages.ofClass(page, "outcome").get(0).getAttribute("class")).isEqualTo("outcome");
    assertThat(
            Pages.ofClass(page, "verdict").stream()
                .filter(v -> v.getTextContent().endsWith("broken")))
        .hasSize(json.get("counts").get("broken").intValue());
  }

  @Test
  void a_page_that_was_not_checked_has_no_verdict() {
    Map<String, String> digests = Map.of("plan.yaml", "0123");
    String html = ProofReport.notChecked("Fen <b>", List.of("why & how"), new TreeMap<>(digests));
    Document page = Pages.parse(html);
    String text = Pages.text(page);
    assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo("Not checked in this run: Fen <b>");
    assertThat(text).contains("why & how", "plan.yaml", "0123").contains(Cautions.ALL);
    String rest = text.replace(Cautions.ALL.get(2), "");
    for (Word word : Word.values()) {
      assertThat(rest)
          .doesNotContainIgnoringCase(word.word().equals("shown") ? "\u2714" : word.word());
    }
    assertThat(Pages.ofClass(page, "verdict")).isEmpty();
    assertThat(Pages.ofClass(page, "good")).isEmpty();
  }
}
