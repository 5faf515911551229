package lockwright.report.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import lockwright.report.Cautions;
import lockwright.report.page.Pages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

/** Markdown by CommonMark 0.31 (2.4, backslash escapes) and its extensions on code hosts. */
class MarkdownSummaryTest {
  static final List<byte[]> ALL = Pages.ALL;

  @ParameterizedTest
  @FieldSource("ALL")
  void every_failing_instance_and_every_caution_is_there(byte[] result) {
    String text = MarkdownSummary.of(result);
    JsonNode json = Pages.json(result);
    for (JsonNode i : json.get("requirements")) {
      boolean good = List.of("proved", "shown").contains(i.get("verdict").textValue());
      assertThat(text.contains(MarkdownSummary.escaped(i.get("id").textValue()) + " "))
          .as(i.get("id").textValue())
          .isEqualTo(!good);
    }
    for (String caution : Cautions.ALL) {
      assertThat(text).contains("\n- " + MarkdownSummary.escaped(caution) + "\n");
    }
    assertThat(text.lines().findFirst().orElseThrow())
        .endsWith(json.get("passes").booleanValue() ? ": passes" : ": does not pass");
    assertThat(MarkdownSummary.of(result.clone())).isEqualTo(text);
  }

  @Test
  void a_breach_is_a_numbered_list() {
    assertThat(MarkdownSummary.of(Pages.STUCK))
        .contains("\n1. pull 4 Junction points\\: points 4 lie reverse\n2. pull 3 Bolt of 4");
  }

  @Test
  void what_is_waived_stands_apart_with_the_reason_and_is_not_called_proved() {
    byte[] waived = Pages.expecting(Pages.STUCK, "points set: signal 1", "holds", "why @all");
    assertThat(MarkdownSummary.of(waived))
        .contains(
            "### Not proved, but expected or waived\n\n- points set\\: signal 1\\: broken;"
                + " waived to be broken, by signal engineer until 2031-04-30\\: why"
                + " \\@<!-- -->all\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "`a` | b; \\`a\\` \\| b",
        "[x](javascript:y); \\[x\\](javascript\\:y)",
        "<img src=x>; \\<img src=x\\>",
        "@team and #12; \\@<!-- -->team and \\#<!-- -->12",
        "http://a.b and www.c.d; http\\://a\\.b and www\\.c\\.d",
        "**_~$&!\\; \\*\\*\\_\\~\\$\\&\\!\\\\"
      })
  void words_of_the_author_mark_nothing_up(String words, String escaped) {
    assertThat(MarkdownSummary.escaped(words)).isEqualTo(escaped);
  }

  @Test
  void labels_do_not_end_a_line() {
    JsonNode json = Pages.json(Pages.STUCK);
    ((ObjectNode) json).put("box", "a\n# b");
    json.findParents("label").forEach(l -> ((ObjectNode) l).put("label", "a\n\n# b | `c"));
    assertThat(MarkdownSummary.of(Pages.bytes(json)).lines())
        .hasSameSizeAs(MarkdownSummary.of(Pages.STUCK).lines().toList())
        .noneMatch(l -> l.startsWith("# b"));
  }
}
