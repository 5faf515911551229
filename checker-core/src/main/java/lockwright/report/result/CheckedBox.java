package lockwright.report.result;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import lockwright.report.Cautions;

/**
 * What a {@code result.json} says of one box. It says that, and no more: whether its certificates
 * hold was the audit's to see.
 *
 * @param json its tree
 * @param parts the same by names
 * @param requirements each instance, in the order of the file
 */
public record CheckedBox(JsonNode json, Parts parts, List<Instance> requirements) {
  /** The verdicts, the good ones first. */
  public static final List<String> VERDICTS =
      List.of("proved", "shown", "broken", "empty", "impossible", "undecided");

  private static final String ONE_PROVED = "proved";

  /**
   * Reads a result.
   *
   * @throws IllegalArgumentException if it is none of this format or does not hang together: other
   *     counts than its instances have, an outcome that does not follow from them, a caution left
   *     out
   */
  public static CheckedBox read(byte[] result) {
    JsonNode json;
    try {
      json = new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON", e);
    }
    if (json.path("format").asInt() != 1) {
      throw new IllegalArgumentException("no result.json of format 1");
    }
    Parts parts = new Parts(json);
    List<Instance> all = new ArrayList<>();
    json.required("requirements").forEach(i -> all.add(new Instance(i, json, parts)));
    CheckedBox box = new CheckedBox(json, parts, List.copyOf(all));
    box.hangsTogether();
    return box;
  }

  private void hangsTogether() {
    for (String verdict : VERDICTS) {
      if (count(verdict) != json.required("counts").required(verdict).asInt()) {
        throw new IllegalArgumentException("counted " + count(verdict) + " " + verdict);
      }
    }
    if (passes() != json.required("passes").asBoolean()) {
      throw new IllegalArgumentException("that it passes does not follow from the verdicts");
    }
    if (!cautions().containsAll(Cautions.ALL)) {
      throw new IllegalArgumentException("a caution is left out");
    }
  }

  public String name() {
    return json.required("box").asText();
  }

  /** How many instances have a verdict, whatever is expected. */
  public int count(String verdict) {
    return (int) requirements.stream().filter(i -> i.verdict().equals(verdict)).count();
  }

  /** Whether a build may pass with it: nothing fails, and something is proved. */
  public boolean passes() {
    return requirements.stream().noneMatch(Instance::fails) && somethingProved();
  }

  /** Whether any requirement of safety is proved, for nothing proves nothing. */
  public boolean somethingProved() {
    return count(ONE_PROVED) > 0;
  }

  /** An instance that is exempted by name, without a verdict, and why. */
  public record Exempted(String id, String name, String reason) {}

  /** Those exempted, which are none of the requirements. */
  public List<Exempted> exempted() {
    List<Exempted> all = new ArrayList<>();
    for (JsonNode e : json.required("exempted")) {
      all.add(
          new Exempted(
              e.required("id").asText(),
              e.required("name").asText(),
              e.required("reason").asText()));
    }
    return all;
  }

  /** Of the advice, what is not kept, or not known to be: "not kept: points to points: ...". */
  public List<String> adviceNotKept() {
    List<String> all = new ArrayList<>();
    for (JsonNode a : json.required("advice")) {
      if (!a.required("verdict").asText().equals("kept")) {
        all.add(a.required("verdict").asText() + ": " + a.required("id").asText());
      }
    }
    return all;
  }

  /** "7 proved, 7 shown, 2 broken; 1 more exempted by name". */
  public String counted() {
    List<String> words = new ArrayList<>();
    for (String verdict : VERDICTS) {
      if (count(verdict) > 0) {
        words.add(count(verdict) + " " + verdict);
      }
    }
    int exempted = json.required("exempted").size();
    String more = exempted > 0 ? "; " + exempted + " more exempted by name" : "";
    return (words.isEmpty() ? "no requirement" : String.join(", ", words)) + more;
  }

  /** In full, for every report to carry. */
  public List<String> cautions() {
    return texts(json.required("cautions"));
  }

  /** The version of this tool that wrote it. */
  public String version() {
    return json.required("tool").required("version").asText();
  }

  /** SHA-256 of each file of the spec, by its name. */
  public SortedMap<String, String> digests() {
    SortedMap<String, String> digests = new TreeMap<>();
    for (JsonNode file : json.required("files")) {
      digests.put(file.required("name").asText(), file.required("sha256").asText());
    }
    return digests;
  }

  static List<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
  }
}
