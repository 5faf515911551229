package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lockwright.audit.Audited;
import lockwright.railway.Box;
import lockwright.railway.drawing.Drawing;
import lockwright.report.Expectations;
import lockwright.report.Findings;
import lockwright.report.json.ResultJson;
import lockwright.spec.Span;
import lockwright.worker.Limits;
import org.junit.jupiter.api.Test;

/**
 * A result stands when it is checked again, and an altered one does not, wherever it is altered.
 */
class RecheckTest {
  private static final Expectations NOTHING = new Expectations(List.of(), Optional.empty());
  private static final SortedMap<String, String> DIGESTS =
      new TreeMap<>(Map.of("plan.yaml", "1".repeat(64), "frame.yaml", "2".repeat(64)));

  /** What no audit looks at, and {@link Recheck} says so. */
  private static final List<String> NOT_AUDITED =
      List.of("/tool/solver", "decidedBy", "/sequence/shortest");

  private static final Span AT = new Span("drawing.yaml", 2, 6);
  private static final Box JUNCTION =
      Boxes.test("e1-junction")
          .withDrawing(
              new Drawing(
                  List.of(new Drawing.Spot(new Drawing.OfPoints("4"), 12.5, 3, AT)),
                  List.of(new Drawing.Level("branch", 2, AT))));
  private static final Box BROKEN = without(JUNCTION, "1 locks 4");
  private static final byte[] PROVED_RESULT = result(JUNCTION);
  private static final byte[] BROKEN_RESULT = result(BROKEN);

  /** Restored by a way back, and with gates that have a lock. */
  private static final Box BACK = Boxes.test("every-form");

  private static final Box STRANDED = Boxes.test("restored-by-a-token");
  private static final byte[] BACK_RESULT = result(BACK);
  private static final byte[] STRANDED_RESULT = result(STRANDED);

  private static Box without(Box box, String entry) {
    return box.withLocking(box.locking().stream().filter(e -> !e.words().equals(entry)).toList());
  }

  private static byte[] result(Box box) {
    Findings f = Boxes.check(box);
    List<Audited> all = Stream.concat(f.audited().stream(), f.advice().stream()).toList();
    return ResultJson.bytes(new Findings(box, DIGESTS, all, f.decidedBy(), f.solver()));
  }

  private static Recheck.Outcome recheck(Box box, byte[] result) {
    return Recheck.of(box, DIGESTS, NOTHING, result);
  }

  private static void refused(Box box, byte[] result, String... words) {
    Recheck.Outcome outcome = recheck(box, result);
    assertThat(outcome).isInstanceOf(Recheck.Outcome.Refused.class);
    assertThat(String.join("\n", ((Recheck.Outcome.Refused) outcome).why())).contains(words);
  }

  private static byte[] edited(byte[] result, Consumer<ObjectNode> edit) {
    ObjectNode json = (ObjectNode) json(result);
    assertThat(written(json)).isEqualTo(result);
    edit.accept(json);
    return written(json);
  }

  /** In the very form of the file, so that nothing but the edit can be what is refused. */
  private static byte[] written(JsonNode json) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    try {
      return (new JsonMapper().writer(printer).writeValueAsString(json) + "\n")
          .getBytes(StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static JsonNode json(byte[] result) {
    try {
      return new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ObjectNode broken(JsonNode result) {
    for (JsonNode instance : result.get("requirements")) {
      if (instance.get("verdict").textValue().equals("broken")) {
        return (ObjectNode) instance;
      }
    }
    throw new AssertionError("nothing is broken");
  }

  @Test
  void what_a_check_found_stands_be_it_good_or_bad() {
    Box section = Boxes.test("calling-on-into-section");
    Map<Box, byte[]> results =
        Map.of(
            JUNCTION,
            PROVED_RESULT,
            BROKEN,
            BROKEN_RESULT,
            section,
            result(section),
            BACK,
            BACK_RESULT,
            STRANDED,
            STRANDED_RESULT);
    for (Box box : results.keySet()) {
      byte[] result = results.get(box);
      Recheck.Outcome outcome = recheck(box, result);
      assertThat(outcome).isInstanceOf(Recheck.Outcome.Stands.class);
      Findings findings = ((Recheck.Outcome.Stands) outcome).findings();
      assertThat(ResultJson.bytes(findings)).isEqualTo(result);
      assertThat(findings.passes()).isEqualTo(json(result).get("passes").booleanValue());
    }
  }

  /** 10 of docs/meaning.md: each entry left out alone, with its own runs and certificates. */
  @Test
  void what_was_found_of_the_entries_is_audited_too() throws Exception {
    Findings checked = ((Recheck.Outcome.Stands) recheck(JUNCTION, PROVED_RESULT)).findings();
    Findings tried =
        new EntryTrials(Limits.usual(), (job, progress) -> Boxes.search(job), p -> {}).run(checked);
    byte[] result = ResultJson.bytes(tried);
    assertThat(recheck(JUNCTION, result)).isInstanceOf(Recheck.Outcome.Stands.class);
    byte[] needed =
        edited(
            result,
            json ->
                ((ObjectNode) json.get("entries").get("verdicts").get(0))
                    .put("verdict", "implied by others"));
    refused(JUNCTION, needed, "/entries/verdicts/0/verdict");
    byte[] other =
        edited(
            result,
            json ->
                json.get("entries")
                    .findParents("heldAt")
                    .forEach(b -> ((ObjectNode) b).put("run", "run 1")));
    refused(JUNCTION, other, "does not stand");
  }

  /** Advice fails nothing, but what is said of it is audited like all else. */
  @Test
  void advice_is_audited_too_and_so_is_what_needs_an_entry_for_it() throws Exception {
    Box kept = Boxes.test("double-line-junction");
    Box free = without(kept, "6 released by 7");
    byte[] result = ResultJson.bytes(tried(kept));
    assertThat(recheck(kept, result)).isInstanceOf(Recheck.Outcome.Stands.class);
    byte[] notKept = ResultJson.bytes(tried(free));
    assertThat(recheck(free, notKept)).isInstanceOf(Recheck.Outcome.Stands.class);

    byte[] word =
        edited(notKept, json -> ((ObjectNode) json.at("/advice/0")).put("verdict", "kept"));
    refused(free, word, "/advice/0/verdict");
    byte[] forged =
        edited(
            notKept,
            json -> {
              ObjectNode advice = (ObjectNode) json.at("/advice/0");
              advice.put("verdict", "kept").remove("sequence");
              advice.set("proof", json.at("/requirements/0/proof"));
            });
    refused(free, forged, "does not stand");
    byte[] gone = edited(notKept, json -> json.putArray("advice"));
    refused(free, gone, "/advice");
    byte[] spare =
        edited(
            result,
            json ->
                json.get("entries")
                    .get("verdicts")
                    .forEach(v -> ((ObjectNode) v).remove("advice")));
    refused(kept, spare, "is not what the checks of this run give");
  }

  private static Findings tried(Box box) throws Exception {
    Findings checked = ((Recheck.Outcome.Stands) recheck(box, result(box))).findings();
    return new EntryTrials(Limits.usual(), (job, progress) -> Boxes.search(job), p -> {})
        .run(checked);
  }

  @Test
  void a_verdict_turned_into_proved_by_its_word_is_refused() {
    byte[] result = edited(BROKEN_RESULT, json -> broken(json).put("verdict", "proved"));
    refused(BROKEN, result, "/requirements/", "/verdict");
  }

  /** A thorough forger: proof, witnesses, counts and outcome are all as for a proved one. */
  @Test
  void a_verdict_turned_into_proved_with_a_proof_of_another_is_refused() {
    byte[] result =
        edited(
            BROKEN_RESULT,
            json -> {
              for (JsonNode i : json.get("requirements")) {
                if (i.get("verdict").textValue().equals("broken")) {
                  forge((ObjectNode) i, json);
                }
              }
            });
    assertThat(json(result).get("passes").booleanValue()).isTrue();
    refused(BROKEN, result, "does not stand", "does not prove it");
  }

  private static void forge(ObjectNode instance, ObjectNode result) {
    JsonNode good = json(PROVED_RESULT);
    for (JsonNode i : good.get("requirements")) {
      if (i.get("id").equals(instance.get("id"))) {
        instance.setAll((ObjectNode) i.deepCopy());
        instance.remove("sequence");
      }
    }
    result.set("certificates", good.get("certificates"));
    result.set("runs", good.get("runs"));
    result.set("requirements", good.get("requirements"));
    result.set("counts", good.get("counts"));
    result.set("passes", good.get("passes"));
  }

  /** Nothing is proved of them, but a diagram is drawn of them. */
  @Test
  void a_place_in_the_diagram_that_the_file_does_not_give_is_refused() {
    byte[] moved =
        edited(
            PROVED_RESULT,
            json -> ((ObjectNode) json.at("/drawing/places/0")).put("across", 12.25));
    refused(JUNCTION, moved, "/drawing/places/0/across");
    byte[] without = edited(PROVED_RESULT, json -> json.remove("drawing"));
    refused(JUNCTION, without, "drawing");
    refused(JUNCTION.withDrawing(Drawing.NONE), PROVED_RESULT, "drawing");
  }

  private static ObjectNode restoring(JsonNode result) {
    return (ObjectNode) result.findParents("restoring").get(0).get("restoring");
  }

  @Test
  void what_is_said_of_restoring_is_audited_too() {
    Consumer<ObjectNode> noWays = json -> restoring(json).putArray("ways");
    refused(BACK, edited(BACK_RESULT, noWays), "does not stand", "does not exclude");
    Consumer<ObjectNode> halfWay =
        json -> ((ArrayNode) restoring(json).get("ways").get(0)).remove(2);
    refused(BACK, edited(BACK_RESULT, halfWay), "does not stand", "no way back");
    Consumer<ObjectNode> otherRun =
        json -> {
          JsonNode stranded = json.findParents("restoring").get(0);
          restoring(json).set("helped", stranded.at("/sequence/run"));
        };
    refused(STRANDED, edited(STRANDED_RESULT, otherRun), "does not stand", "to all levers N");
    Consumer<ObjectNode> otherCertificate =
        json ->
            restoring(json)
                .put("certificate", json.at("/requirements/0/proof/certificate").textValue());
    refused(STRANDED, edited(STRANDED_RESULT, otherCertificate), "does not stand");
  }

  @Test
  void a_clause_left_out_of_a_certificate_is_refused() {
    int clauses = json(PROVED_RESULT).get("certificates").get(0).get("clauses").size();
    for (int i = 0; i < clauses; i++) {
      int left = i;
      byte[] result =
          edited(
              PROVED_RESULT,
              json -> ((ArrayNode) json.get("certificates").get(0).get("clauses")).remove(left));
      refused(JUNCTION, result, "result.json");
    }
  }

  @Test
  void a_certificate_that_says_too_little_or_too_much_is_refused_though_its_digest_is_right() {
    for (List<String> clauses :
        List.of(
            List.<String>of(),
            List.of("lever 1 is N or lever 1 is not N"),
            List.of("lever 1 is N"),
            List.of("lever 1 is N", "lever 1 is R"))) {
      refused(JUNCTION, withCertificate(clauses), "does not stand");
    }
    refused(JUNCTION, withCertificate(List.of("lever 99 is N")), "no clause of this box");
  }

  private static byte[] withCertificate(List<String> clauses) {
    String old = json(PROVED_RESULT).get("certificates").get(0).get("digest").textValue();
    byte[] result =
        edited(
            PROVED_RESULT,
            json -> {
              ArrayNode all = ((ObjectNode) json.get("certificates").get(0)).putArray("clauses");
              clauses.forEach(all::add);
            });
    return new String(result, StandardCharsets.UTF_8)
        .replace(old, digest(clauses))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String digest(List<String> clauses) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      clauses.forEach(c -> sha.update((c + "\n").getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(sha.digest());
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void a_file_changed_added_or_gone_is_refused_and_named() {
    SortedMap<String, String> now = new TreeMap<>(DIGESTS);
    now.put("plan.yaml", "3".repeat(64));
    now.put("sections.yaml", "4".repeat(64));
    now.remove("frame.yaml");
    Recheck.Outcome outcome = Recheck.of(JUNCTION, now, NOTHING, PROVED_RESULT);
    assertThat(((Recheck.Outcome.Refused) outcome).why())
        .containsExactly(
            "frame.yaml was checked, and is not there now",
            "plan.yaml is not the file that was checked: its SHA-256 is another",
            "sections.yaml is there now, and was not checked");
  }

  @Test
  void the_result_of_another_box_is_refused() {
    refused(BROKEN, PROVED_RESULT, "result.json");
    refused(JUNCTION, BROKEN_RESULT, "result.json");
  }

  @Test
  void what_is_no_result_is_refused() {
    for (String text : List.of("", "{", "null", "[]", "{}", "{\"format\": 2}", "{\"format\": 1}")) {
      refused(JUNCTION, text.getBytes(StandardCharsets.UTF_8), "cannot be read");
    }
    refused(
        JUNCTION,
        (new String(PROVED_RESULT, StandardCharsets.UTF_8) + " ").getBytes(StandardCharsets.UTF_8),
        "in how it is written");
  }

  /** Of each kind of place in the file the first value is altered. */
  @Test
  void whatever_is_altered_is_refused_but_for_what_no_audit_looks_at() {
    SortedMap<String, String> kinds = new TreeMap<>();
    leaves("", json(BROKEN_RESULT), kinds);
    assertThat(kinds).hasSizeGreaterThan(80);
    for (String at : kinds.values()) {
      byte[] altered = edited(BROKEN_RESULT, json -> alter(json, at));
      boolean audited = NOT_AUDITED.stream().noneMatch(at::endsWith);
      assertThat(recheck(BROKEN, altered))
          .as(at)
          .isInstanceOf(audited ? Recheck.Outcome.Refused.class : Recheck.Outcome.Stands.class);
    }
  }

  /** The first pointer to a value for each pointer without its numbers. */
  private static void leaves(String at, JsonNode node, SortedMap<String, String> kinds) {
    if (node.isObject()) {
      node.properties().forEach(f -> leaves(at + "/" + f.getKey(), f.getValue(), kinds));
    } else if (node.isArray()) {
      List<JsonNode> items = new ArrayList<>();
      node.forEach(items::add);
      for (int i = 0; i < items.size(); i++) {
        leaves(at + "/" + i, items.get(i), kinds);
      }
    } else {
      kinds.putIfAbsent(
          at.replaceAll("/[0-9]+(?=/|$)", "/*").replaceAll("/(beginning|after)/.*", "/$1/*"), at);
    }
  }

  private static void alter(ObjectNode json, String at) {
    int slash = at.lastIndexOf('/');
    JsonNode parent = json.at(at.substring(0, slash));
    String name = at.substring(slash + 1);
    JsonNode old = json.at(at);
    JsonNode other =
        old.isBoolean()
            ? json.booleanNode(!old.booleanValue())
            : old.isNumber()
                ? json.numberNode(old.intValue() + 1)
                : json.textNode(old.textValue() + "x");
    if (parent.isArray()) {
      ((ArrayNode) parent).set(Integer.parseInt(name), other);
    } else {
      ((ObjectNode) parent).set(name, other);
    }
  }
}
