package lockwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lockwright.report.Shown;
import lockwright.report.html.Markup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Whatever an author writes, the page has the same elements and attributes, and shows his words.
 */
class HostileWordsTest {

  static Stream<String> words() {
    return Stream.of(
        "<script>alert(1)</script>",
        "\" onload=\"alert(1)\" x=\"",
        "' style='display:none",
        "]]></style><!-- --><svg onload=alert(1)>",
        "javascript:alert(1)",
        "&lt;b&gt; &#60; &amp",
        "a bell \u0007, a nought \u0000, a tab \t, a line\nand\r\nanother",
        "turned \u202e round \u2066 and \u200b nothing",
        "a \u2028 line \u2029 end, no character \uffff",
        "{{x}} ${x} %s \\u003cscript\\u003e");
  }

  @ParameterizedTest
  @MethodSource("words")
  void labels_notes_and_reasons_stay_words(String words) {
    Document page = Pages.parse(ProofReport.checked(labelled(words)));
    assertThat(Pages.text(page)).contains(Shown.line(words));
    assertThat(shape(page)).isEqualTo(shape(Pages.parse(ProofReport.checked(labelled("plain")))));
  }

  private static byte[] labelled(String words) {
    JsonNode json = Pages.json(Pages.STUCK);
    for (String field : List.of("label", "note", "box", "words", "text")) {
      for (JsonNode parent : json.findParents(field)) {
        if (parent.get(field).isTextual()) {
          ((ObjectNode) parent).put(field, words);
        }
      }
    }
    return Pages.bytes(json);
  }

  /** A name stands in ids, in quantities and in clauses too. */
  @ParameterizedTest
  @MethodSource("words")
  void names_stay_words_wherever_they_stand(String words) {
    JsonNode json = Pages.json(Pages.SECTION);
    String name = json.get("sections").get(0).get("name").textValue();
    UnaryOperator<String> rename = s -> s.replace(name, words);
    Document page = Pages.parse(ProofReport.checked(Pages.bytes(Pages.changed(json, rename))));
    assertThat(Pages.text(page)).contains("Section " + Shown.line(words));
    assertThat(shape(page)).isEqualTo(shape(Pages.parse(ProofReport.checked(Pages.SECTION))));
  }

  @ParameterizedTest
  @MethodSource("words")
  void the_page_of_what_was_not_checked_is_as_careful(String words) {
    Document page = Pages.parse(ProofReport.notChecked(words, List.of(words), new TreeMap<>()));
    assertThat(Pages.text(page)).contains(Shown.line(words));
    assertThat(shape(page))
        .isEqualTo(shape(Pages.parse(ProofReport.notChecked("x", List.of("x"), new TreeMap<>()))));
  }

  @Test
  void a_link_out_of_the_page_and_an_attribute_that_acts_cannot_be_written() {
    for (String link : List.of("javascript:x", "http://x", "", "a\"b", "A")) {
      assertThatIllegalArgumentException().isThrownBy(() -> new Markup().link(link, "x"));
    }
    for (String attribute : List.of("onclick", "style", "href", "src", "x y")) {
      assertThatIllegalArgumentException().isThrownBy(() -> new Markup().open("p", attribute, "x"));
    }
  }

  /** The elements in order, with the names of their attributes; pictures as one. */
  private static List<String> shape(Document page) {
    List<String> shape = new ArrayList<>();
    for (Element e : Pages.elements(page)) {
      if (!drawn(e)) {
        shape.add(e.getTagName() + names(e));
      }
    }
    return shape;
  }

  /** How a picture breaks a label into lines is its own affair; that it is well formed is not. */
  private static boolean drawn(Element e) {
    for (Node n = e.getParentNode(); n != null; n = n.getParentNode()) {
      if (n.getNodeName().equals("svg")) {
        return true;
      }
    }
    return false;
  }

  private static List<String> names(Element e) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < e.getAttributes().getLength(); i++) {
      names.add(e.getAttributes().item(i).getNodeName());
    }
    names.sort(null);
    return names;
  }
}
