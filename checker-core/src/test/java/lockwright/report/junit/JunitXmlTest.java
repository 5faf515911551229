package lockwright.report.junit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.Cautions;
import lockwright.report.Shown;
import lockwright.report.page.Pages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The form that build servers read has no standard; it is common practice, from memory. */
class JunitXmlTest {
  static final List<byte[]> ALL = Pages.ALL;

  private static List<String> cases(Document xml) {
    List<String> cases = new ArrayList<>();
    for (Element e : Pages.elements(xml)) {
      if (e.getTagName().equals("testcase")) {
        String inside = "";
        for (String element : List.of("failure", "error", "skipped")) {
          inside += e.getElementsByTagName(element).getLength() > 0 ? " " + element : "";
        }
        cases.add(e.getAttribute("name") + inside);
      }
    }
    return cases;
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void each_instance_is_a_case_that_passes_only_if_proved_or_shown(byte[] result) {
    JsonNode json = Pages.json(result);
    List<String> expected = new ArrayList<>();
    for (JsonNode i : json.get("requirements")) {
      String inside =
          switch (i.get("verdict").textValue()) {
            case "proved", "shown" -> "";
            case "undecided" -> " error";
            default -> " failure";
          };
      expected.add(i.get("id").textValue() + inside);
    }
    json.get("exempted").forEach(e -> expected.add(e.get("id").textValue() + " skipped"));
    if (json.at("/counts/proved").intValue() == 0) {
      expected.add(json.get("box").textValue() + " failure");
    }
    Document xml = Pages.parse(JunitXml.of(result));
    assertThat(cases(xml)).isEqualTo(expected);
    for (String suite : List.of("testsuite", "testsuites")) {
      Element counted = (Element) xml.getElementsByTagName(suite).item(0);
      for (String of : List.of("failure", "error", "skipped")) {
        String attribute = of.equals("skipped") ? of : of + "s";
        long number = expected.stream().filter(c -> c.endsWith(" " + of)).count();
        assertThat(counted.getAttribute(attribute)).isEqualTo(Long.toString(number));
      }
      assertThat(counted.getAttribute("tests")).isEqualTo(Integer.toString(expected.size()));
    }
    assertThat(xml.getElementsByTagName("system-out").item(0).getTextContent())
        .isEqualTo(String.join("\n", Cautions.ALL));
    assertThat(JunitXml.of(result)).isEqualTo(JunitXml.of(result)).doesNotContain("time");
  }

  @Test
  void a_breach_is_told_movement_by_movement() {
    assertThat(JunitXml.of(Pages.STUCK))
        .contains("1. pull 4 Junction points: points 4 lie reverse\n2. pull 3 Bolt of 4")
        .contains("type=\"broken\"", "signal 1: plan.yaml:");
  }

  @Test
  void a_frame_that_is_not_restored_is_told_with_the_levers_that_stay_away() {
    assertThat(JunitXml.of(Pages.STRANDED))
        .contains(
            "frame can be restored: all levers is broken: after the sequence no strokes of levers,"
                + " points or gates lead to all levers normal, but with events at instruments they"
                + " do",
            "3. replace 1: bolt of 2 in\nlever 2: frame.yaml:3</failure>");
  }

  @Test
  void what_is_waived_is_skipped_with_the_reason_only_while_that_holds() {
    String id = "points set: signal 1";
    Document holds = Pages.parse(JunitXml.of(Pages.expecting(Pages.STUCK, id, "holds", "why")));
    assertThat(cases(holds)).contains(id + " skipped");
    Element skipped = (Element) holds.getElementsByTagName("skipped").item(0);
    assertThat(skipped.getAttribute("message"))
        .isEqualTo("broken, waived to be broken, by signal engineer until 2031-04-30: why");
    byte[] past = Pages.expecting(Pages.STUCK, id, "past its date", "why");
    assertThat(cases(Pages.parse(JunitXml.of(past)))).contains(id + " failure");
    byte[] good = Pages.expecting(Pages.STUCK, "points set: signal 2", "no longer bites", "why");
    assertThat(cases(Pages.parse(JunitXml.of(good)))).contains("points set: signal 2 failure");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "]]> <![CDATA[ <a b=\"c\"> &amp; '",
        "a bell \u0007, a nought \u0000, an escape \u001b[2J, a line\nand\r\nanother",
        "turned \u202e round, \uffff, `code` | [x](y)"
      })
  void words_of_the_author_stay_words(String words) {
    JsonNode json = Pages.json(Pages.STUCK);
    ((ObjectNode) json).put("box", words);
    json.findParents("label").forEach(l -> ((ObjectNode) l).put("label", words));
    byte[] result =
        Pages.expecting(Pages.bytes(json), "points set: signal 2", "past its date", words);
    Document xml = Pages.parse(JunitXml.of(result));
    Element suite = (Element) xml.getElementsByTagName("testsuite").item(0);
    assertThat(suite.getAttribute("name")).isEqualTo(Shown.line(words));
    assertThat(xml.getDocumentElement().getTextContent()).contains(Shown.line(words));
    assertThat(Pages.elements(xml))
        .hasSameSizeAs(
            Pages.elements(
                Pages.parse(
                    JunitXml.of(
                        Pages.expecting(
                            Pages.STUCK, "points set: signal 2", "past its date", "x")))));
  }
}
