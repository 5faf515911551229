package lockwright.report.sarif;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lockwright.report.Shown;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;

/**
 * Findings as a SARIF 2.1.0 log (OASIS). Each instance with another verdict than proved and shown
 * is a result, the undecided too, as are those of which something is expected that is not so; what
 * is expected or waived, and holds, is suppressed. All of them are failures: a viewer that leaves
 * out what is "open" would show an undecided box as a clean one.
 */
public final class Sarif {
  private static final String ROOT = "%SRCROOT%";
  private static final String NOTHING_PROVED = "something-is-proved";

  private final CheckedBox box;
  private final Places places;
  private final List<String> rules = new ArrayList<>();

  private Sarif(CheckedBox box, Places places) {
    this.box = box;
    this.places = places;
  }

  /**
   * The log in UTF-8. The same result and folder give the same bytes.
   *
   * @param result the bytes of {@code result.json}
   * @param folder the folder of the spec from the root of the repository, with slashes and one at
   *     its end; empty for the root itself
   * @throws IllegalArgumentException if the result does not hang together
   */
  public static byte[] of(byte[] result, String folder) {
    Sarif sarif = new Sarif(CheckedBox.read(result), new Places(folder, ROOT));
    ObjectNode log = JsonNodeFactory.instance.objectNode();
    log.put(
            "$schema",
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json")
        .put("version", "2.1.0");
    sarif.run(log.putArray("runs").addObject());
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    try {
      String text = new JsonMapper().writer(printer).writeValueAsString(log) + "\n";
      return text.getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a log is plain objects and words", e);
    }
  }

  private void run(ObjectNode run) {
    ObjectNode driver = run.putObject("tool").putObject("driver");
    driver.put("name", "Lockwright").put("version", Shown.line(box.version()));
    driver.set("shortDescription", message("Proves the locking of a mechanical signal box."));
    driver.set("fullDescription", message(String.join(" ", box.cautions())));
    rules(driver);
    run.putArray("invocations").addObject().put("executionSuccessful", true);
    String name = Shown.line(box.name()).replace('/', '-');
    run.putObject("automationDetails").put("id", "Lockwright/" + name + "/");
    run.put("columnKind", "unicodeCodePoints");
    run.putObject("originalUriBaseIds")
        .putObject(ROOT)
        .set("description", message("The root of the repository, or else of the module."));
    box.digests()
        .forEach(
            (file, digest) -> {
              ObjectNode artifact = run.withArray("artifacts").addObject();
              artifact.set("location", places.artifact(file));
              artifact.putArray("roles").add("analysisTarget");
              artifact.putObject("hashes").put("sha-256", digest);
            });
    run.putArray("results");
    for (Instance instance : box.requirements()) {
      if (!instance.good() || instance.fails()) {
        result(run.withArray("results").addObject(), instance);
      }
    }
    if (!box.somethingProved()) {
      nothingProved(run.withArray("results").addObject());
    }
    ObjectNode properties = run.putObject("properties");
    box.cautions().forEach(c -> properties.withArray("cautions").add(Shown.line(c)));
    for (JsonNode left : box.json().required("leftOut")) {
      properties.withArray("leftOut").add(Shown.line(left.asText()));
    }
    for (CheckedBox.Exempted e : box.exempted()) {
      ObjectNode exempted = properties.withArray("exempted").addObject();
      exempted.put("requirement", Shown.line(e.id())).put("reason", Shown.line(e.reason()));
    }
    properties.put("box", Shown.line(box.name())).put("passes", box.passes());
    ObjectNode counts = properties.putObject("counts");
    CheckedBox.VERDICTS.forEach(v -> counts.put(v, box.count(v)));
  }

  private void rules(ObjectNode driver) {
    for (JsonNode rule : box.json().required("catalogue")) {
      String words = rule.required("words").asText();
      List<String> help = new ArrayList<>(List.of(words));
      help.add("One for " + rule.required("appliesTo").asText() + ".");
      for (JsonNode source : rule.required("sources")) {
        String known = source.required("known").asText();
        String from = source.required("source").asText();
        help.add("Source: " + from + (known.equals("read") ? "." : " (" + known + ")."));
      }
      rule(driver, rule.required("name").asText(), words, String.join("\n", help));
    }
    String nothing = "A box of which no requirement of safety is proved does not pass.";
    rule(driver, NOTHING_PROVED, nothing, nothing + "\nNothing proves nothing.");
  }

  private void rule(ObjectNode driver, String name, String words, String help) {
    rules.add(idOf(name));
    ObjectNode rule = driver.withArray("rules").addObject();
    rule.put("id", idOf(name)).put("name", nameOf(name));
    rule.set("shortDescription", message(words));
    rule.set("fullDescription", message(words));
    rule.putObject("defaultConfiguration").put("level", "error");
    rule.set("help", message(help));
  }

  private static String idOf(String name) {
    return name.replace(' ', '-');
  }

  /** "PointsSet", as 3.49.7 of the standard has it. */
  private static String nameOf(String name) {
    StringBuilder pascal = new StringBuilder();
    for (String word : idOf(name).split("-")) {
      pascal.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
    }
    return pascal.toString();
  }

  private void result(ObjectNode result, Instance instance) {
    start(result, idOf(instance.name()), instance.found());
    List<Instance.Thing> things = instance.things();
    result.putArray("locations").add(places.location(things.get(0)));
    for (int i = 1; i < things.size(); i++) {
      ObjectNode related = places.location(things.get(i)).put("id", i);
      related.set("message", message(things.get(i).words()));
      result.withArray("relatedLocations").add(related);
    }
    instance.beginning().ifPresent(b -> new Flow(box, places).write(result, b, instance));
    fingerprint(result, instance.id());
    result.putArray("suppressions");
    instance
        .expected()
        .filter(Instance.Expected::holds)
        .ifPresent(
            e -> {
              ObjectNode suppression = result.withArray("suppressions").addObject();
              suppression.put("kind", "external").put("status", "accepted");
              suppression.put("justification", Shown.line(e.words()));
              suppression.set("location", places.location(e.at()));
            });
    result.putObject("properties").put("verdict", instance.verdict());
  }

  private void nothingProved(ObjectNode result) {
    start(result, NOTHING_PROVED, "Of " + box.name() + " no requirement of safety is proved.");
    ObjectNode location = result.putArray("locations").addObject();
    location
        .putObject("physicalLocation")
        .set("artifactLocation", places.artifact(box.digests().firstKey()));
    fingerprint(result, NOTHING_PROVED);
    result.putArray("suppressions");
  }

  private void start(ObjectNode result, String rule, String words) {
    result.put("ruleId", rule).put("ruleIndex", rules.indexOf(rule));
    result.put("kind", "fail").put("level", "error");
    result.set("message", message(words));
  }

  /** The same for an instance as long as box and layout name it so, whatever its verdict is. */
  private void fingerprint(ObjectNode result, String id) {
    String digest = Places.digest(box.name() + "\n" + id);
    result.putObject("partialFingerprints").put("requirement/v1", digest);
  }

  /**
   * Words as they are: no placeholder and no link (3.11.5 and 3.11.6 of the standard), nothing that
   * the eye cannot see. Lines of our own stay lines.
   */
  static ObjectNode message(String words) {
    String shown = String.join("\n", Shown.lines(List.of(words.split("\n", -1))));
    String plain =
        shown
            .replace("\\", "\\\\")
            .replace("[", "\\[")
            .replace("]", "\\]")
            .replace("{", "{{")
            .replace("}", "}}");
    return JsonNodeFactory.instance.objectNode().put("text", plain);
  }
}
