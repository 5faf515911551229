package lockwright.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lockwright.report.Findings;
import lockwright.report.Tally;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What is in the file, and how it is written. */
abstract class ResultJsonChecks {
  static final List<Findings> ALL = Results.ALL;

  @Test
  void every_verdict_occurs_in_some_result() {
    List<String> verdicts = new ArrayList<>();
    ALL.forEach(f -> requirements(f).forEach(r -> verdicts.add(r.get("verdict").textValue())));
    assertThat(verdicts).contains("proved", "empty", "broken", "undecided", "shown", "impossible");
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void the_counts_are_those_of_the_findings(Findings findings) {
    JsonNode json = Results.json(findings);
    Tally tally = findings.tally();
    assertThat(json.get("passes").booleanValue()).isEqualTo(findings.passes());
    Map<String, Integer> all = new HashMap<>();
    json.get("catalogue")
        .forEach(
            c ->
                c.get("counts")
                    .properties()
                    .forEach(e -> all.merge(e.getKey(), e.getValue().intValue(), Integer::sum)));
    for (Map<String, Integer> counts : List.of(all, numbers(json.get("counts")))) {
      assertThat(counts)
          .isEqualTo(
              Map.of(
                  "proved", tally.proved(),
                  "empty", tally.empty(),
                  "broken", tally.broken(),
                  "undecided", tally.undecided(),
                  "shown", tally.shown(),
                  "impossible", tally.impossible()));
    }
  }

  /** For a reader in a hurry, who searches for the word. */
  @ParameterizedTest
  @FieldSource("ALL")
  void nothing_that_is_not_proved_carries_the_word(Findings findings) {
    requirements(findings).stream()
        .filter(r -> !r.get("verdict").textValue().equals("proved"))
        .forEach(r -> assertThat(r.toString().toLowerCase(Locale.ROOT)).doesNotContain("prove"));
  }

  @Test
  void the_broken_result_names_the_entry_that_was_left_out() {
    JsonNode broken =
        requirements(Results.BROKEN).stream()
            .filter(r -> r.get("id").textValue().equals("points set: signal 1"))
            .findFirst()
            .orElseThrow();
    assertThat(broken.at("/verdict").textValue()).isEqualTo("broken");
    assertThat(broken.at("/sequence/shortest").booleanValue()).isTrue();
    assertThat(broken.at("/sequence/missing/entry/text").textValue()).isEqualTo(Results.LEFT_OUT);
  }

  @Test
  void what_is_expected_and_waived_stands_beside_a_verdict_that_stays_what_it_is() {
    JsonNode json = Results.json(Results.WAIVED);
    assertThat(json.get("counts")).isEqualTo(Results.json(Results.BROKEN).get("counts"));
    assertThat(json.get("expectations").toString())
        .isEqualTo(
            "{\"date\":\"2031-05-01\",\"expected\":1,\"waived\":2,"
                + "\"hold\":1,\"noLongerBite\":1,\"pastTheirDate\":1}");
    assertThat(json.get("requirements"))
        .filteredOn(r -> r.has("expectation"))
        .extracting(
            r -> r.get("id").textValue(),
            r -> r.get("verdict").textValue(),
            r -> r.at("/expectation/verdict").textValue(),
            r -> r.at("/expectation/state").textValue(),
            r -> r.at("/expectation/until").asText())
        .containsExactly(
            tuple("points set: signal 1", "broken", "broken", "past its date", "2031-04-30"),
            tuple("points set: signal 2", "proved", "broken", "no longer bites", "2031-05-01"),
            tuple("no conflict: signals 1 and 2", "broken", "broken", "holds", ""));
  }

  @Test
  void without_waivers_there_is_no_date() {
    assertThat(Results.text(Results.BROKEN.against(Results.NOTHING)))
        .isEqualTo(Results.text(Results.BROKEN));
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void every_run_is_there_once_and_used(Findings findings) {
    JsonNode json = Results.json(findings);
    List<JsonNode> bare = new ArrayList<>();
    for (JsonNode run : json.get("runs")) {
      bare.add(((ObjectNode) run.deepCopy()).without("id"));
    }
    assertThat(bare).doesNotHaveDuplicates();
    Set<String> used = new TreeSet<>(json.findValuesAsText("run"));
    used.addAll(json.findValuesAsText("helped"));
    assertThat(used).isEqualTo(new TreeSet<>(json.get("runs").findValuesAsText("id")));
  }

  /** Each movement changes at least what it says, and only what a movement of its kind can. */
  @ParameterizedTest
  @FieldSource("ALL")
  void a_run_gives_the_full_state_before_and_after_each_movement(Findings findings) {
    Set<String> electric = new TreeSet<>();
    for (JsonNode points : Results.json(findings).at("/layout/points")) {
      if (points.has("workedElectrically")) {
        electric.add("points " + points.get("id").textValue());
      }
    }
    for (JsonNode run : Results.json(findings).get("runs")) {
      JsonNode before = run.get("beginning");
      for (JsonNode step : run.get("steps")) {
        JsonNode event = step.get("event");
        JsonNode after = step.get("after");
        assertThat(names(after)).isEqualTo(names(before));
        String kind = event.get("kind").textValue();
        if (event.has("from")) {
          String moved = kind + " " + event.get(kind).textValue();
          assertThat(before.get(moved)).isEqualTo(event.get("from"));
          assertThat(after.get(moved)).isEqualTo(event.get("to"));
        }
        for (String quantity : names(after)) {
          boolean alongside = quantity.startsWith("section ") || quantity.startsWith("turn of ");
          alongside |= kind.equals("lever") && electric.contains(quantity);
          alongside |= kind.equals("lever") && quantity.equals("condition Fen accepts");
          boolean rod = quantity.equals("rod of " + event.path("points").asText());
          if (!alongside && !rod && !quantity.equals(kind + " " + thing(event))) {
            assertThat(after.get(quantity)).isEqualTo(before.get(quantity));
          }
        }
        before = after;
      }
    }
  }

  /** SHA-256 as {@link MessageDigest} has it, over the lines as the schema says. */
  @ParameterizedTest
  @FieldSource("ALL")
  void every_certificate_has_the_digest_by_which_it_is_named(Findings findings)
      throws NoSuchAlgorithmException {
    JsonNode json = Results.json(findings);
    List<String> digests = new ArrayList<>();
    for (JsonNode certificate : json.get("certificates")) {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      for (JsonNode line : certificate.get("clauses")) {
        sha.update((line.textValue() + "\n").getBytes(StandardCharsets.UTF_8));
      }
      digests.add(certificate.get("digest").textValue());
      assertThat(HexFormat.of().formatHex(sha.digest())).isEqualTo(digests.get(digests.size() - 1));
    }
    assertThat(digests).isSorted().doesNotHaveDuplicates();
    assertThat(new TreeSet<>(json.findValuesAsText("certificate"))).hasSameElementsAs(digests);
  }

  @ParameterizedTest
  @FieldSource("ALL")
  void the_tracks_meet_as_a_diagram_needs_it(Findings findings) {
    JsonNode tracks = Results.json(findings).at("/layout/tracks");
    Map<String, JsonNode> ends = new HashMap<>();
    tracks.forEach(t -> ends.put(t.get("id").textValue(), t.get("ends")));
    for (JsonNode track : tracks) {
      for (int end = 0; end < 2; end++) {
        JsonNode meets = track.get("ends").get(end).at("/attachedTo/with");
        if (!meets.isMissingNode()) {
          JsonNode back =
              ends.get(meets.get("track").textValue())
                  .get(meets.get("end").intValue())
                  .at("/attachedTo/with");
          assertThat(back.get("track")).isEqualTo(track.get("id"));
          assertThat(back.get("end").intValue()).isEqualTo(end);
        }
      }
    }
  }

  /** ECMA-404 and RFC 8259, 8.1: UTF-8 without a byte order mark. */
  @ParameterizedTest
  @FieldSource("ALL")
  void the_bytes_are_the_same_in_any_language_and_name_no_folder(Findings findings) {
    byte[] once = ResultJson.bytes(findings);
    Locale usual = Locale.getDefault();
    try {
      // Here the small letter of I is another, and digits are not those of ASCII.
      Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
      assertThat(ResultJson.bytes(findings)).isEqualTo(once);
    } finally {
      Locale.setDefault(usual);
    }
    assertThat(new String(once, StandardCharsets.UTF_8))
        .startsWith("{\n  \"format\": 1,\n")
        .endsWith("\n}\n")
        .doesNotContain("\r", "\t", System.getProperty("user.dir"));
  }

  @Test
  void a_second_check_gives_the_same_bytes() {
    Findings again = Results.check(Results.FORMS.box());
    assertThat(again).isNotSameAs(Results.FORMS);
    assertThat(ResultJson.bytes(again)).isEqualTo(ResultJson.bytes(Results.FORMS));
  }

  private static List<JsonNode> requirements(Findings findings) {
    List<JsonNode> all = new ArrayList<>();
    Results.json(findings).get("requirements").forEach(all::add);
    return all;
  }

  private static Map<String, Integer> numbers(JsonNode object) {
    Map<String, Integer> numbers = new HashMap<>();
    object.properties().forEach(e -> numbers.put(e.getKey(), e.getValue().intValue()));
    return numbers;
  }

  private static TreeSet<String> names(JsonNode object) {
    TreeSet<String> names = new TreeSet<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static String thing(JsonNode event) {
    return event.path(event.get("kind").textValue()).asText();
  }
}
