package lockwright.report.sarif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.Cautions;
import lockwright.report.page.Pages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** SARIF 2.1.0 (OASIS Standard, 2020), by its published schema and by its text where cited. */
class SarifTest {
  static final List<byte[]> ALL = Pages.ALL;
  private static final Schema SCHEMA = schema();

  private static Schema schema() {
    try (InputStream in = SarifTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      JsonNode json = new JsonMapper().readTree(in);
      assertThat(json.get("title").textValue()).contains("(SARIF) Version 2.1.0");
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode log(byte[] result) {
    JsonNode log = Pages.json(Sarif.of(result, "boxes/a box/"));
    assertThat(SCHEMA.validate(log)).isEmpty();
    return log;
  }

  private static JsonNode run(byte[] result) {
    return log(result).get("runs").get(0);
  }

  @Test
  void the_schema_refuses_what_is_no_log() {
    ObjectNode log = (ObjectNode) log(Pages.STUCK);
    ((ObjectNode) log.get("runs").get(0).get("results").get(0)).put("level", "dreadful");
    assertThat(SCHEMA.validate(log)).isNotEmpty();
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void each_instance_that_is_not_proved_or_shown_is_a_failure(byte[] result) {
    List<String> expected = new ArrayList<>();
    for (JsonNode i : Pages.json(result).get("requirements")) {
      String verdict = i.get("verdict").textValue();
      if (!List.of("proved", "shown").contains(verdict)) {
        expected.add(i.get("name").textValue().replace(' ', '-') + " " + verdict);
      }
    }
    if (Pages.json(result).at("/counts/proved").intValue() == 0) {
      expected.add("something-is-proved ");
    }
    List<String> found = new ArrayList<>();
    JsonNode run = run(result);
    for (JsonNode r : run.get("results")) {
      assertThat(r.get("kind").textValue() + r.get("level").textValue()).isEqualTo("failerror");
      assertThat(run.at("/tool/driver/rules/" + r.get("ruleIndex").intValue() + "/id"))
          .isEqualTo(r.get("ruleId"));
      assertThat(r.get("suppressions")).isEmpty();
      found.add(r.get("ruleId").textValue() + " " + r.at("/properties/verdict").asText());
    }
    assertThat(found).isEqualTo(expected);
    assertThat(run.at("/invocations/0/executionSuccessful").booleanValue()).isTrue();
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void the_cautions_go_with_it_in_full(byte[] result) {
    JsonNode run = run(result);
    for (String caution : Cautions.ALL) {
      assertThat(run.at("/tool/driver/fullDescription/text").textValue()).contains(caution);
    }
    List<String> properties = new ArrayList<>();
    run.at("/properties/cautions").forEach(c -> properties.add(c.textValue()));
    assertThat(properties).isEqualTo(Cautions.ALL);
  }

  @Test
  void a_breach_has_its_movements_each_at_its_lever() {
    JsonNode found = null;
    for (JsonNode r : run(Pages.STUCK).get("results")) {
      found = r.at("/message/text").textValue().startsWith("points set: signal 1 ") ? r : found;
    }
    List<String> steps = new ArrayList<>();
    for (JsonNode step : found.at("/codeFlows/0/threadFlows/0/locations")) {
      steps.add(
          step.get("executionOrder")
              + " "
              + step.at("/location/physicalLocation/artifactLocation/uri").textValue()
              + " "
              + step.at("/location/message/text").textValue());
    }
    assertThat(steps)
        .containsExactly(
            "1 boxes/a%20box/plan.yaml beginning: all levers normal",
            "2 boxes/a%20box/frame.yaml pull 4 Junction points: points 4 lie reverse",
            "3 boxes/a%20box/frame.yaml pull 3 Bolt of 4: bolt of 4 in",
            "4 boxes/a%20box/frame.yaml pull 1 Main home part-way:"
                + " signal 1 part-way, taken as off");
    assertThat(run(Pages.GATES).get("results").toString())
        .contains("pull 3 Gate lock part-way: gate lock of Mill Road neither in nor out");
  }

  /** 3.4.3 and 3.4.4 of the standard: a relative reference, and what it is relative to. */
  @Test
  void places_are_relative_to_the_root() {
    String text = new String(Sarif.of(Pages.STUCK, "f\u00fcr/a b/"), StandardCharsets.UTF_8);
    for (String uri : Pages.json(text.getBytes(StandardCharsets.UTF_8)).findValuesAsText("uri")) {
      assertThat(URI.create(uri).isAbsolute()).isFalse();
      assertThat(uri).startsWith("f%C3%BCr/a%20b/");
    }
    assertThat(text).doesNotContain("file:", System.getProperty("user.dir"), "\r");
    assertThat(new String(Sarif.of(Pages.STUCK, "f\u00fcr/a b/"), StandardCharsets.UTF_8))
        .isEqualTo(text);
  }

  @Test
  void what_is_waived_is_suppressed_only_while_that_holds() {
    String id = "points set: signal 1";
    JsonNode holds = run(Pages.expecting(Pages.STUCK, id, "holds", "why [so](x) {0}"));
    JsonNode past = run(Pages.expecting(Pages.STUCK, id, "past its date", "why"));
    JsonNode good =
        run(Pages.expecting(Pages.STUCK, "points set: signal 2", "no longer bites", "why"));
    assertThat(holds.get("results").findValuesAsText("justification"))
        .containsExactly(
            "waived to be broken, by signal engineer until 2031-04-30: why [so](x) {0}");
    assertThat(past.get("results").findValuesAsText("justification")).isEmpty();
    assertThat(past.get("results").toString()).contains("; past its date");
    assertThat(good.get("results").toString()).contains("; no longer bites");
    assertThat(fingerprints(holds)).isEqualTo(fingerprints(past));
    assertThat(fingerprints(holds)).doesNotHaveDuplicates().hasSize(holds.get("results").size());
  }

  private static List<String> fingerprints(JsonNode run) {
    return run.get("results").findValuesAsText("requirement/v1");
  }

  /** 3.11.5 and 3.11.6: braces are doubled, brackets and backslashes escaped; from memory. */
  @Test
  void words_of_the_author_are_no_links_and_no_placeholders() {
    assertThat(Sarif.message("a [b](c) {0} \\ \u0007\u202e").get("text").textValue())
        .isEqualTo("a \\[b\\](c) {{0}} \\\\ \\\\u0007\\\\u202e");
  }

  @Test
  void a_result_that_does_not_hang_together_is_refused() {
    ObjectNode passes = (ObjectNode) Pages.json(Pages.STUCK);
    ObjectNode caution = passes.deepCopy();
    ObjectNode verdict = passes.deepCopy();
    passes.put("passes", true);
    caution.putArray("cautions").add("none");
    ((ObjectNode) verdict.get("requirements").get(0)).put("verdict", "fine");
    for (ObjectNode json : List.of(passes, caution, verdict)) {
      assertThatIllegalArgumentException().isThrownBy(() -> Sarif.of(Pages.bytes(json), ""));
    }
  }
}
