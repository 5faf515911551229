package lockwright.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lockwright.report.Findings;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The published schema, {@code specs/result.schema.json}, takes every result and nothing else. What
 * a schema means is said by JSON Schema 2020-12, and judged by a validator of another make.
 */
abstract class ResultSchemaChecks {
  static final List<Findings> ALL = Results.ALL;

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final JsonNode SCHEMA = schema();
  private static final Schema VALIDATOR = REGISTRY.getSchema(SCHEMA);

  private static JsonNode schema() {
    try {
      return new JsonMapper().readTree(Path.of("..", "specs", "result.schema.json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Error> errors(JsonNode json) {
    return VALIDATOR.validate(json);
  }

  @Test
  void the_schema_is_itself_valid() {
    String dialect = "https://json-schema.org/draft/2020-12/schema";
    assertThat(REGISTRY.getSchema(SchemaLocation.of(dialect)).validate(SCHEMA)).isEmpty();
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void every_result_is_valid(Findings findings) {
    assertThat(errors(Results.json(findings))).isEmpty();
  }

  @Test
  void the_schema_is_strict_and_says_what_everything_is() {
    List<JsonNode> objects = new ArrayList<>();
    SCHEMA.findParents("type").stream()
        .filter(n -> n.get("type").asText().equals("object"))
        .forEach(objects::add);
    objects.add(SCHEMA);
    assertThat(objects)
        .hasSizeGreaterThan(40)
        .allSatisfy(o -> assertThat(o.has("additionalProperties")).isTrue())
        .filteredOn(o -> o.has("properties"))
        .allSatisfy(o -> assertThat(o.get("additionalProperties").booleanValue()).isFalse())
        .allSatisfy(
            o ->
                assertThat(o.get("properties"))
                    .allMatch(p -> p.has("description") || p.has("$ref")));
    assertThat(SCHEMA.get("$defs")).allMatch(d -> d.has("description"));
  }

  /** So no part of the schema speaks of what is never written. */
  @Test
  void every_field_and_every_kind_of_the_schema_occurs_in_some_result() {
    Set<String> written = new TreeSet<>();
    ALL.forEach(f -> collect(Results.json(f), written));
    Set<String> said = new TreeSet<>();
    for (JsonNode object : SCHEMA.findParents("properties")) {
      object.get("properties").fieldNames().forEachRemaining(said::add);
      JsonNode kind = object.get("properties").path("kind").path("const");
      if (kind.isTextual()) {
        said.add("kind " + kind.textValue());
      }
    }
    assertThat(written).containsAll(said);
  }

  private static void collect(JsonNode node, Set<String> names) {
    node.fieldNames().forEachRemaining(names::add);
    if (node.has("kind")) {
      names.add("kind " + node.get("kind").textValue());
    }
    node.forEach(child -> collect(child, names));
  }

  @ParameterizedTest
  @MethodSource
  void a_result_with_one_thing_wrong_is_not_valid(Consumer<ObjectNode> wrong) {
    ObjectNode json = (ObjectNode) Results.json(Results.WAIVED);
    wrong.accept(json);
    assertThat(errors(json)).isNotEmpty();
  }

  static Stream<Named<Consumer<ObjectNode>>> a_result_with_one_thing_wrong_is_not_valid() {
    return Stream.of(
        wrong("no cautions", o -> o.remove("cautions")),
        wrong("cautions cut short", o -> ((ArrayNode) o.get("cautions")).remove(0)),
        wrong("no verdict", o -> first(o, "broken").remove("verdict")),
        wrong("verdict in capitals", o -> first(o, "proved").put("verdict", "PROVED")),
        wrong("verdict of no kind", o -> first(o, "proved").put("verdict", "ok")),
        wrong("broken called proved", o -> first(o, "broken").put("verdict", "proved")),
        wrong("broken called shown", o -> first(o, "broken").put("verdict", "shown")),
        wrong("broken called undecided", o -> first(o, "broken").put("verdict", "undecided")),
        wrong("shown called proved", o -> first(o, "shown").put("verdict", "proved")),
        wrong("proved called empty", o -> first(o, "proved").put("verdict", "empty")),
        wrong("proved without certificate", o -> proof(o).remove("certificate")),
        wrong("proved without witnesses", o -> proof(o).remove("witnesses")),
        wrong("proved, checked by nobody", o -> proof(o).putArray("checkedBy")),
        wrong("proved, checked by the search", o -> proof(o).putArray("checkedBy").add("Z3")),
        wrong("proved without assumptions", o -> first(o, "proved").remove("assumptions")),
        wrong("proved with a reason", o -> first(o, "proved").put("reason", "hope")),
        wrong("a field more", o -> o.put("time", "12:00")),
        wrong("a field more in a track", o -> in(o, "/layout/tracks/0").put("x", 1)),
        wrong("a field more in a verdict", o -> first(o, "shown").put("by", "me")),
        wrong("a digest cut short", o -> in(o, "/files/0").put("sha256", "abc")),
        wrong("a position of no lever", o -> in(o, "/runs/0/beginning").put("lever 1", "L")),
        wrong("a quantity of nothing", o -> in(o, "/runs/0/beginning").put("weather", "in")),
        wrong("line 0", o -> in(o, "/locking/0/at").put("line", 0)),
        wrong("a count as text", o -> in(o, "/counts").put("proved", "60")),
        wrong("another format", o -> o.put("format", 2)),
        wrong("broken, expected to be empty", o -> holding(o).put("verdict", "empty")),
        wrong("expected, with a role", o -> holding(o).put("role", "signal engineer")),
        wrong("waived, with no last day", o -> late(o).remove("until")),
        wrong("waived, with no role", o -> late(o).remove("role")),
        wrong("expected to be proved", o -> late(o).put("verdict", "proved")),
        wrong("expected for no reason", o -> holding(o).remove("reason")),
        wrong("proved as expected", o -> expectation(o, "no longer bites").put("state", "holds")),
        wrong("no day", o -> in(o, "/expectations").put("date", "today")),
        wrong("null", o -> o.putNull("box")));
  }

  @ParameterizedTest
  @MethodSource
  void what_is_said_of_restoring_with_one_thing_wrong_is_not_valid(
      Findings findings, Consumer<ObjectNode> wrong) {
    ObjectNode json = (ObjectNode) Results.json(findings);
    for (JsonNode r : json.get("requirements")) {
      if (r.get("name").textValue().equals("frame can be restored")) {
        wrong.accept((ObjectNode) r);
      }
    }
    assertThat(errors(json)).isNotEmpty();
  }

  static Stream<Arguments> what_is_said_of_restoring_with_one_thing_wrong_is_not_valid() {
    return Stream.of(
        restoring(Results.FORMS, "shown by nothing", r -> r.remove("restoring")),
        restoring(Results.FORMS, "no ways", r -> in(r, "/restoring").remove("ways")),
        restoring(Results.FORMS, "a run", r -> in(r, "/restoring").put("helped", "run 1")),
        restoring(Results.FORMS, "of safety", r -> r.put("kind", "safety")),
        restoring(Results.FORMS, "impossible", r -> r.put("verdict", "impossible")),
        restoring(Results.FORMS, "proved", r -> r.put("verdict", "proved")),
        restoring(Results.FORMS, "undecided", r -> r.put("verdict", "undecided")),
        restoring(Results.FORMS, "another", r -> r.put("name", "lever can be moved")),
        restoring(Results.STRANDED, "no sequence", r -> r.remove("sequence")),
        restoring(Results.STRANDED, "no certificate", r -> r.remove("restoring")),
        restoring(Results.STRANDED, "no assumptions", r -> r.remove("assumptions")),
        restoring(Results.STRANDED, "ways", r -> in(r, "/restoring").putArray("ways")),
        restoring(Results.STRANDED, "shown", r -> r.put("verdict", "shown")));
  }

  private static Arguments restoring(Findings findings, String name, Consumer<ObjectNode> change) {
    return Arguments.of(findings, Named.of(name, change));
  }

  private static Named<Consumer<ObjectNode>> wrong(String name, Consumer<ObjectNode> change) {
    return Named.of(name, change);
  }

  private static ObjectNode in(ObjectNode json, String pointer) {
    return (ObjectNode) json.at(pointer);
  }

  private static ObjectNode first(ObjectNode json, String verdict) {
    for (JsonNode r : json.get("requirements")) {
      if (r.get("verdict").textValue().equals(verdict)) {
        return (ObjectNode) r;
      }
    }
    throw new IllegalArgumentException("nothing is " + verdict);
  }

  private static ObjectNode expectation(ObjectNode json, String state) {
    for (JsonNode r : json.get("requirements")) {
      if (r.at("/expectation/state").asText().equals(state)) {
        return (ObjectNode) r.get("expectation");
      }
    }
    throw new IllegalArgumentException("no expectation is " + state);
  }

  private static ObjectNode holding(ObjectNode json) {
    return expectation(json, "holds");
  }

  private static ObjectNode late(ObjectNode json) {
    return expectation(json, "past its date");
  }

  private static ObjectNode proof(ObjectNode json) {
    return (ObjectNode) first(json, "proved").get("proof");
  }
}
