package lockwright.report.result;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A requirement instance of a result, with its verdict and what is told of it. */
public final class Instance {
  private final JsonNode json;
  private final Parts parts;
  private final List<Thing> things;

  /** A thing of the box, with the place where it is written. */
  public record Thing(String words, String file, int line, int column) {
    /** As a result has a place. */
    public static Thing of(String words, JsonNode at) {
      return new Thing(
          words,
          at.required("file").asText(),
          at.required("line").asInt(),
          at.required("column").asInt());
    }
  }

  /**
   * What the author says of it beforehand.
   *
   * @param words kind, reason, and for a waiver who answers for it and until when
   * @param holds whether the verdict is the one written, in time
   */
  public record Expected(String kind, String state, boolean holds, String words, Thing at) {}

  /**
   * @throws IllegalArgumentException if the verdict is none, or something that it needs is missing
   */
  Instance(JsonNode json, JsonNode result, Parts parts) {
    this.json = json;
    this.parts = parts;
    if (!CheckedBox.VERDICTS.contains(verdict())) {
      throw new IllegalArgumentException("no verdict: " + verdict());
    }
    expected()
        .filter(Expected::holds)
        .filter(e -> !json.get("expectation").required("verdict").asText().equals(verdict()))
        .ifPresent(
            e -> {
              throw new IllegalArgumentException("expected is another verdict: " + id());
            });
    this.things = things(result);
  }

  /** Unique in the box, and the same in every check of the same layout. */
  public String id() {
    return json.required("id").asText();
  }

  /** The requirement in the catalogue. */
  public String name() {
    return json.required("name").asText();
  }

  public String subject() {
    return json.required("subject").asText();
  }

  public String verdict() {
    return json.required("verdict").asText();
  }

  public boolean good() {
    return verdict().equals("proved") || verdict().equals("shown");
  }

  /** Whether it fails a build: by its verdict, or by an expectation that does not hold. */
  public boolean fails() {
    return expected().map(e -> !e.holds()).orElse(!good());
  }

  public Optional<Expected> expected() {
    JsonNode e = json.path("expectation");
    if (e.isMissingNode()) {
      return Optional.empty();
    }
    String kind = e.required("kind").asText();
    String state = e.required("state").asText();
    String by =
        kind.equals("waived")
            ? ", by " + e.required("role").asText() + " until " + e.required("until").asText()
            : "";
    String words =
        kind
            + " to be "
            + e.required("verdict").asText()
            + by
            + ": "
            + e.required("reason").asText();
    return Optional.of(
        new Expected(
            kind, state, state.equals("holds"), words, Thing.of("expectation", e.required("at"))));
  }

  /** What was found, in one sentence, without the sequence. */
  public String found() {
    String expectation =
        expected().filter(e -> !e.holds()).map(e -> "; " + e.words() + "; " + e.state()).orElse("");
    String words =
        switch (verdict()) {
          case "proved" -> "is proved";
          case "shown" -> "is shown";
          case "broken" -> "is broken: " + broken();
          case "empty" ->
              "cannot be broken, but is empty, since this never comes about: " + never();
          case "impossible" -> "can never come about, however the box is worked";
          default -> "is undecided, so nothing is known of it: " + json.required("reason").asText();
        };
    return id() + " " + words + expectation;
  }

  private String broken() {
    if (json.has("restoring")) {
      return "after the sequence no strokes of levers, points or gates lead to all levers normal"
          + (json.get("restoring").has("helped") ? ", but with events at instruments they do" : "");
    }
    return json.at("/sequence/breaksBy").asText().equals("movement")
        ? "the last movement is free, and should not be"
        : "as things stand after the sequence";
  }

  private String never() {
    List<String> subjects = new ArrayList<>();
    json.at("/proof/never").forEach(n -> subjects.add(n.required("subject").asText()));
    return String.join("; ", subjects);
  }

  /** How the sequence begins; empty if there is none. */
  public Optional<String> beginning() {
    return run().map(r -> new Movements(parts).beginning(r));
  }

  /** The movements of the sequence; none if there is none. */
  public List<Movements.Line> movements() {
    return run().map(r -> new Movements(parts).lines(r)).orElse(List.of());
  }

  private Optional<JsonNode> run() {
    JsonNode run = json.at("/sequence/run");
    return run.isMissingNode() ? Optional.empty() : Optional.of(parts.part("run", run.asText()));
  }

  /** A rule with which that sequence cannot be played; a draft for a competent person. */
  public Optional<String> perhapsMissing() {
    JsonNode words = json.at("/sequence/missing/words");
    return words.isMissingNode() ? Optional.empty() : Optional.of(words.asText());
  }

  /**
   * What it is about, the most telling first, with the places where that is written; of a frame
   * that is not restored, the levers that are then away from normal.
   */
  public List<Thing> things() {
    return things;
  }

  /** The state after a run. */
  private static JsonNode last(JsonNode run) {
    JsonNode steps = run.required("steps");
    return steps.isEmpty()
        ? run.required("beginning")
        : steps.get(steps.size() - 1).required("after");
  }

  private List<Thing> things(JsonNode result) {
    JsonNode concerns = json.required("concerns");
    Optional<JsonNode> stuck = json.has("restoring") ? run().map(Instance::last) : Optional.empty();
    List<Thing> all = new ArrayList<>();
    for (List<String> kind :
        List.of(
            List.of("signals", "signal", "signal"),
            List.of("points", "points", "points"),
            List.of("levelCrossings", "crossing", "level crossing"),
            List.of("sections", "section", "section"),
            List.of("levers", "lever", "lever"))) {
      for (JsonNode name : concerns.required(kind.get(0))) {
        JsonNode part = parts.part(kind.get(1), name.asText());
        if (stuck.isPresent()
            && stuck.get().path(kind.get(1) + " " + name.asText()).asText().equals("N")) {
          continue;
        }
        all.add(Thing.of(kind.get(2) + " " + name.asText(), part.required("at")));
      }
    }
    if (all.isEmpty()) {
      for (JsonNode route : concerns.required("routes")) {
        JsonNode signal =
            parts.part("signal", parts.part("route", route.asText()).required("signal").asText());
        all.add(Thing.of("signal " + signal.required("id").asText(), signal.required("at")));
      }
    }
    for (JsonNode frame : result.required("layout").required("groundFrames")) {
      for (JsonNode name : concerns.required("groundFrames")) {
        if (name.equals(frame.required("id"))) {
          all.add(Thing.of("ground frame " + name.asText(), frame.required("at")));
        }
      }
    }
    if (all.isEmpty()) {
      throw new IllegalArgumentException("about nothing: " + id());
    }
    return List.copyOf(all);
  }
}
