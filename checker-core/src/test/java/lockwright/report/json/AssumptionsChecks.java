package lockwright.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lockwright.report.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What the file says besides what was found agrees with {@code docs/meaning.md}. */
abstract class AssumptionsChecks {
  static final List<Findings> ALL = Results.ALL;

  private static String meaning(String from, String to) throws IOException {
    String page = Files.readString(Path.of("..", "docs", "meaning.md"));
    return page.substring(page.indexOf(from), page.indexOf(to));
  }

  @Test
  void the_assumptions_are_those_of_the_page_in_its_words() throws IOException {
    List<String> page =
        meaning("## 8. ", "## 9. ")
            .lines()
            .filter(l -> l.startsWith("| ") && !l.startsWith("| ---"))
            .skip(1)
            .map(l -> l.replace("*", ""))
            .toList();
    Set<String> file = new LinkedHashSet<>();
    List<JsonNode> all = new ArrayList<>();
    Results.json(Results.SECTION).get("assumptions").forEach(all::add);
    Results.json(Results.CLOSING).get("assumptions").forEach(all::add);
    Results.json(Results.SIDING).get("assumptions").forEach(all::add);
    Results.json(Results.FORMS).get("assumptions").forEach(all::add);
    for (JsonNode a : all) {
      file.add(
          "| "
              + a.get("words").textValue()
              + " | "
              + a.get("appliesTo").textValue()
              + " | "
              + a.get("source").textValue()
              + " |");
    }
    assertThat(file).containsExactlyInAnyOrderElementsOf(page);
  }

  @Test
  void what_is_left_out_is_what_the_page_leaves_out() throws IOException {
    String page =
        meaning("## 9. ", "several boxes in one spec").replace('\n', ' ').replace(';', '|')
            + "several boxes in one spec";
    for (JsonNode one : Results.json(Results.SECTION).get("leftOut")) {
      assertThat(page).containsIgnoringCase(one.textValue());
    }
    assertThat(Results.json(Results.SECTION).get("leftOut")).hasSize(page.split("[|]", -1).length);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void every_proof_names_the_assumptions_that_it_rests_on(Findings findings) {
    JsonNode json = Results.json(findings);
    List<String> all = json.get("assumptions").findValuesAsText("id");
    assertThat(all).doesNotHaveDuplicates();
    for (JsonNode r : json.get("requirements")) {
      boolean rests =
          r.has("proof") || r.has("restoring") || r.get("verdict").textValue().equals("shown");
      List<String> named = new ArrayList<>();
      r.path("assumptions").forEach(a -> named.add(a.textValue()));
      List<String> expected = new ArrayList<>(rests ? all : List.of());
      if (r.get("kind").textValue().equals("safety")) {
        expected.remove("whole strokes");
      }
      if (!obeyed(json, r)) {
        expected.remove("signals obeyed");
      }
      assertThat(named).isEqualTo(expected);
    }
  }

  /** Whether a signal guards the flank that the requirement asks for. */
  private static boolean obeyed(JsonNode json, JsonNode requirement) {
    for (JsonNode path : json.get("flankPaths")) {
      if (path.get("requirement").equals(requirement.get("id")) && !path.get("guards").isEmpty()) {
        return true;
      }
    }
    return false;
  }

  @Test
  void an_irregular_withdrawal_that_the_spec_allows_is_not_assumed_away() {
    String allowed = "irregular withdrawal";
    assertThat(Results.json(Results.FORMS).get("assumptions").findValuesAsText("id"))
        .noneMatch(id -> id.contains(allowed));
    assertThat(Results.json(Results.SECTION).get("assumptions").findValuesAsText("id"))
        .filteredOn(id -> id.contains(allowed))
        .hasSize(1);
  }

  /** The cautions that every report has to carry. */
  @ParameterizedTest
  @FieldSource("ALL")
  void the_cautions_are_there_in_full(Findings findings) {
    assertThat(Results.json(findings).get("cautions").toString())
        .contains("an aid for checking written rules", "not locking data")
        .contains("no substitute for competent and licensed people", "the rule book")
        .contains("local instructions", "testing on site", "the authority's approval")
        .contains("within the model, the listed files and the listed assumptions")
        .contains("someone has compared the files with the plan and the frame with the table");
  }
}
