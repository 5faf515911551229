package lockwright.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.audit.Claims;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;

/**
 * What an existing {@code result.json} says, read back as claims. Nothing of it is believed: its
 * verdicts become claims to be audited, and whether the rest of it stands is for {@link
 * #firstDifference} to say.
 */
public final class Recorded {
  private final byte[] bytes;
  private final JsonNode json;
  private final Map<String, Certificate> certificates = new HashMap<>();
  private final Map<String, Run> runs = new HashMap<>();
  private final Map<String, Claim> safety = new HashMap<>();
  private final Map<String, Claim> subjects = new HashMap<>();
  private final Map<String, Claim> possibilities = new HashMap<>();
  private final Map<String, String> decidedBy = new HashMap<>();

  private Recorded(byte[] bytes, JsonNode json) {
    this.bytes = bytes;
    this.json = json;
  }

  /**
   * Reads a result.
   *
   * @param quantities all that a certificate may speak of
   * @throws IllegalArgumentException if it is no result, or names what it does not have
   */
  public static Recorded read(byte[] bytes, Collection<Quantity> quantities) {
    JsonNode json = parse(bytes);
    Recorded recorded = new Recorded(bytes, json);
    ClauseReader clauses = new ClauseReader(quantities);
    for (JsonNode c : json.required("certificates")) {
      List<String> lines = new ArrayList<>();
      c.required("clauses").forEach(clause -> lines.add(clause.asText()));
      recorded.certificates.put(
          text(c, "digest"), new Certificate(lines.stream().map(clauses::read).toList()));
    }
    json.required("runs").forEach(r -> recorded.runs.put(text(r, "id"), run(r)));
    json.required("requirements").forEach(recorded::claim);
    json.required("advice").forEach(recorded::claim);
    return recorded;
  }

  private static JsonNode parse(byte[] bytes) {
    try {
      JsonNode json = new JsonMapper().readTree(bytes);
      if (json.path("format").asInt() != Result.FORMAT) {
        throw new IllegalArgumentException("its format is not " + Result.FORMAT);
      }
      return json;
    } catch (IOException e) {
      throw new IllegalArgumentException("it is no JSON: " + e.getMessage(), e);
    }
  }

  private void claim(JsonNode instance) {
    String id = text(instance, "id");
    boolean possibility = text(instance, "kind").equals("possibility");
    (possibility ? possibilities : safety).put(id, verdict(instance));
    decided(id, instance);
    JsonNode proof = instance.path("proof");
    for (JsonNode w : proof.path("witnesses")) {
      // That none is shorter is not said of a witness.
      subjects.put(text(w, "subject"), new Claim.Reached(run(text(w, "run")), false));
      decided(text(w, "subject"), w);
    }
    for (JsonNode n : proof.path("never")) {
      subjects.put(text(n, "subject"), new Claim.Never(certificate(text(n, "certificate"))));
      decided(text(n, "subject"), n);
    }
  }

  private Claim verdict(JsonNode instance) {
    if (instance.has("restoring")) {
      return restoring(instance, instance.required("restoring"));
    } else if (instance.has("proof")) {
      return new Claim.Never(certificate(text(instance.required("proof"), "certificate")));
    } else if (instance.has("sequence")) {
      JsonNode sequence = instance.required("sequence");
      return new Claim.Reached(
          run(text(sequence, "run")), sequence.required("shortest").asBoolean());
    }
    return new Claim.Unknown(text(instance, "reason"));
  }

  private Claim restoring(JsonNode instance, JsonNode restoring) {
    Certificate certificate = certificate(text(restoring, "certificate"));
    if (instance.has("sequence")) {
      return new Claim.Stranded(
          run(text(instance.required("sequence"), "run")),
          certificate,
          restoring.has("helped") ? Optional.of(run(text(restoring, "helped"))) : Optional.empty());
    }
    List<List<Event>> ways = new ArrayList<>();
    for (JsonNode way : restoring.required("ways")) {
      List<Event> events = new ArrayList<>();
      way.forEach(e -> events.add(event(e)));
      ways.add(events);
    }
    return new Claim.Restorable(ways, certificate);
  }

  private void decided(String target, JsonNode by) {
    if (by.has("decidedBy")) {
      decidedBy.put(target, text(by, "decidedBy"));
    }
  }

  private Certificate certificate(String digest) {
    return known(certificates.get(digest), "certificate " + digest);
  }

  private Run run(String id) {
    return known(runs.get(id), id);
  }

  private static <T> T known(T thing, String name) {
    if (thing == null) {
      throw new IllegalArgumentException("it names what it does not have: " + name);
    }
    return thing;
  }

  private static Run run(JsonNode run) {
    SortedMap<String, String> beginning = new TreeMap<>();
    run.required("beginning").properties().forEach(q -> beginning.put(q.getKey(), value(q)));
    List<Event> events = new ArrayList<>();
    run.required("steps").forEach(s -> events.add(event(s.required("event"))));
    return new Run(beginning, events);
  }

  private static String value(Map.Entry<String, JsonNode> quantity) {
    return quantity.getValue().asText();
  }

  private static Event event(JsonNode event) {
    return switch (text(event, "kind")) {
      case "lever" ->
          new Event.LeverMoves(
              text(event, "lever"), position(event, "from"), position(event, "to"));
      case "rod" -> new Event.RodBreaks(text(event, "points"), position(event, "at"));
      case "points" ->
          new Event.PointsMove(
              text(event, "points"), position(event, "from"), position(event, "to"));
      case "gates" ->
          new Event.GatesMove(
              text(event, "levelCrossing"), position(event, "from"), position(event, "to"));
      case "lock" ->
          new Event.AtLock(
              text(event, "section"), lockDeed(text(event, "deed")), text(event, "groundFrame"));
      case "instrument" ->
          new Event.AtInstrument(
              text(event, "section"), deed(text(event, "deed")), text(event, "instrument"));
      case "condition" ->
          new Event.ConditionChanges(text(event, "condition"), event.required("met").asBoolean());
      default -> throw new IllegalArgumentException("no movement: " + event);
    };
  }

  private static Position position(JsonNode event, String field) {
    return Position.valueOf(text(event, field));
  }

  private static Event.Deed deed(String words) {
    for (Event.Deed deed : Event.Deed.values()) {
      if (deed.words().equals(words)) {
        return deed;
      }
    }
    throw new IllegalArgumentException("nothing is done so at an instrument: " + words);
  }

  private static Event.LockDeed lockDeed(String words) {
    for (Event.LockDeed deed : Event.LockDeed.values()) {
      if (deed.words().equals(words)) {
        return deed;
      }
    }
    throw new IllegalArgumentException("nothing is done so at a lock: " + words);
  }

  private static String text(JsonNode node, String field) {
    JsonNode text = node.required(field);
    if (!text.isTextual()) {
      throw new IllegalArgumentException(field + " is no text");
    }
    return text.textValue();
  }

  public Claims claims() {
    return new Claims(safety, subjects, possibilities);
  }

  /**
   * What is said of the entries of the table.
   *
   * @param tried the ids of the requirements of safety, and of the advice, that each is tried for
   */
  public RecordedEntries entries(Set<String> tried) {
    return RecordedEntries.read(json.required("entries"), tried, this::run, this::certificate);
  }

  /** The engine that decided each target, as the file says; nothing checks that. */
  public Map<String, String> decidedBy() {
    return Map.copyOf(decidedBy);
  }

  /** The solver that searched, as the file says; nothing checks that. */
  public String solver() {
    return text(json.required("tool"), "solver");
  }

  /** The digest of each file that was checked, by its name, as the file says. */
  public SortedMap<String, String> files() {
    SortedMap<String, String> files = new TreeMap<>();
    json.required("files").forEach(f -> files.put(text(f, "name"), text(f, "sha256")));
    return files;
  }

  /** Where this result is other than one made anew; empty if they are the same byte for byte. */
  public String firstDifference(byte[] anew) {
    if (java.util.Arrays.equals(bytes, anew)) {
      return "";
    }
    String where = Differences.first("", json, parse(anew));
    return where.isEmpty() ? "in how it is written" : "at " + where;
  }
}
