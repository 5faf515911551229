package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;
import lockwright.report.result.Movements;
import lockwright.report.result.Parts;

/**
 * The verdict of each requirement, under the first thing that it is about; under the others, a link
 * to it. What is not proved comes first.
 */
final class Verdicts {
  private static final List<String> COLUMNS = List.of("verdict", "requirement", "rests on");

  /** What is about all levers is about this, and not about each of them. */
  private static final String FRAME = "frame";

  private static final List<List<String>> CHOICES =
      List.of(
          List.of("show-all", "all"),
          List.of("show-failing", "those that fail"),
          List.of("show-safety", "safety"),
          List.of("show-possibility", "possibility"));

  private final JsonNode result;
  private final Parts anchors;
  private final Markup m;
  private final Formula formula;

  Verdicts(JsonNode result, Parts anchors, Markup m) {
    this.result = result;
    this.anchors = anchors;
    this.m = m;
    this.formula = new Formula(result, anchors);
  }

  /** A thing of the box, and the instances that are about it: first of all, or also. */
  private record Group(List<JsonNode> first, List<JsonNode> also) {}

  void write() {
    new Attention(result, anchors, m).write();
    new Advice(result, anchors, m).write();
    m.open("section", "aria-labelledby", "verdicts").element("h2", "Verdicts", "id", "verdicts");
    Map<String, Group> groups = groups();
    contents(groups);
    for (List<String> choice : CHOICES) {
      boolean all = choice.get(0).equals("show-all");
      String[] on = all ? new String[] {"checked", "checked"} : new String[0];
      String[] attributes = {"type", "radio", "name", "show", "id", choice.get(0)};
      m.open("input", concat(attributes, on));
      m.element("label", choice.get(1), "for", choice.get(0));
    }
    m.open("div", "class", "groups");
    groups.forEach(this::group);
    m.close().close();
  }

  private static String[] concat(String[] some, String[] more) {
    List<String> all = new ArrayList<>(List.of(some));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  static String colour(JsonNode instance) {
    return Word.of(instance).good() ? "good" : "bad";
  }

  private Map<String, Group> groups() {
    Map<String, Group> groups = new LinkedHashMap<>();
    for (JsonNode s : result.required("layout").required("signals")) {
      groups.put("signal " + s.required("id").asText(), new Group(list(), list()));
    }
    for (JsonNode p : result.required("layout").required("points")) {
      groups.put("points " + p.required("id").asText(), new Group(list(), list()));
    }
    for (JsonNode c : result.required("layout").required("levelCrossings")) {
      groups.put("crossing " + c.required("id").asText(), new Group(list(), list()));
    }
    for (JsonNode s : result.required("sections")) {
      groups.put("section " + s.required("name").asText(), new Group(list(), list()));
    }
    for (JsonNode l : result.required("levers")) {
      groups.put("lever " + l.required("id").asText(), new Group(list(), list()));
    }
    groups.put(FRAME, new Group(list(), list()));
    for (JsonNode instance : instances()) {
      boolean first = true;
      for (String thing : things(instance)) {
        Group group = groups.get(thing);
        (first ? group.first() : group.also()).add(instance);
        first = false;
      }
    }
    groups.values().removeIf(g -> g.first().isEmpty() && g.also().isEmpty());
    return groups;
  }

  private static List<JsonNode> list() {
    return new ArrayList<>();
  }

  /** What an instance is about, the most telling first. */
  private Set<String> things(JsonNode instance) {
    if (instance.required("name").asText().equals("frame can be restored")) {
      return Set.of(FRAME);
    }
    JsonNode concerns = instance.required("concerns");
    Set<String> things = new LinkedHashSet<>();
    concerns.required("signals").forEach(s -> things.add("signal " + s.asText()));
    concerns.required("points").forEach(p -> things.add("points " + p.asText()));
    concerns.required("levelCrossings").forEach(c -> things.add("crossing " + c.asText()));
    concerns.required("sections").forEach(s -> things.add("section " + s.asText()));
    concerns.required("levers").forEach(l -> things.add("lever " + l.asText()));
    for (JsonNode route : concerns.required("routes")) {
      JsonNode part = anchors.part("route", route.asText());
      for (String list : List.of("points", "flankTraps")) {
        part.required(list).forEach(p -> things.add("points " + p.required("points").asText()));
      }
    }
    return things;
  }

  private void contents(Map<String, Group> groups) {
    m.open("nav", "aria-label", "Verdicts by signal, points, level crossing, section and lever")
        .open("ul");
    groups.forEach(
        (thing, group) ->
            m.open("li")
                .link(anchor(thing), named(thing) + (fails(group) ? " \u2718" : ""))
                .close());
    m.close().close();
  }

  private static boolean fails(Group group) {
    return group.first().stream().anyMatch(i -> !Word.of(i).good())
        || group.also().stream().anyMatch(i -> !Word.of(i).good());
  }

  private void group(String thing, Group group) {
    m.open("div", "class", "group", "id", anchor(thing)).element("h3", heading(thing));
    if (!group.first().isEmpty()) {
      Tables.head(m, COLUMNS);
      group.first().forEach(this::row);
      Tables.end(m);
    }
    if (!group.also().isEmpty()) {
      m.open("details", "class", "also");
      m.element("summary", "also about it: " + group.also().size()).open("ul");
      for (JsonNode instance : group.also()) {
        m.open("li").text(Word.of(instance).signed() + ": ");
        m.link(anchor(instance), instance.required("id").asText()).close();
      }
      m.close().close();
    }
    m.close();
  }

  /** An anchor is one word, and a level crossing is two. */
  private static String named(String thing) {
    return thing.equals(FRAME)
        ? "the frame"
        : thing.startsWith("crossing ") ? "level " + thing : thing;
  }

  private String heading(String thing) {
    if (thing.equals(FRAME)) {
      return "The frame";
    }
    int space = thing.indexOf(' ');
    String kind = thing.substring(0, space);
    String words = named(kind + " ") + anchors.labelled(kind, thing.substring(space + 1));
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  private void row(JsonNode instance) {
    Word word = Word.of(instance);
    String kind = instance.required("kind").asText();
    String passes = word.good() ? "passes " : "fails ";
    m.open("tr", "id", anchor(instance), "class", passes + kind);
    m.open("td", "data-label", COLUMNS.get(0));
    m.element("span", word.signed(), "class", "verdict " + colour(instance));
    if (instance.has("expectation")) {
      JsonNode expectation = instance.required("expectation");
      m.element("p", Attention.state(expectation), "class", "small");
    }
    m.close();
    m.open("td", "data-label", COLUMNS.get(1));
    String name = instance.required("name").asText();
    m.link(anchors.of("catalogue", name), name);
    m.text(": " + instance.required("subject").asText());
    m.open("p").element("code", formula.of(instance)).close().close();
    m.open("td", "data-label", COLUMNS.get(2), "class", "small");
    restsOn(instance);
    m.close().close();
  }

  private void restsOn(JsonNode instance) {
    JsonNode proof = instance.path("proof");
    if (!proof.isMissingNode()) {
      String digest = proof.required("certificate").asText();
      m.text("certificate ").link(anchors.of("certificate", digest), digest.substring(0, 12));
      m.text(", checked by: " + String.join(", ", Formula.names(proof.required("checkedBy"))));
      for (JsonNode witness : proof.path("witnesses")) {
        m.text("; ").text(witness.required("subject").asText() + ": ");
        run(witness.required("run").asText());
      }
      proof.path("never").forEach(n -> m.text("; never: " + n.required("subject").asText()));
    }
    JsonNode sequence = instance.path("sequence");
    if (!sequence.isMissingNode()) {
      run(sequence.required("run").asText());
      m.text(", played");
    }
    restoring(instance.path("restoring"));
    m.text(instance.has("reason") ? instance.required("reason").asText() : "");
    needed(instance.required("id").asText());
    if (instance.has("assumptions")) {
      m.text("; assumptions ").link("assumptions", numbers(instance.required("assumptions")));
    }
  }

  private void restoring(JsonNode restoring) {
    if (restoring.isMissingNode()) {
      return;
    }
    JsonNode ways = restoring.path("ways");
    if (!ways.isMissingNode()) {
      m.text("single strokes to N, one after another");
      ways.forEach(way -> m.text("; or: " + new Movements(anchors).words(way)));
    }
    String digest = restoring.required("certificate").asText();
    m.text("; certificate ").link(anchors.of("certificate", digest), digest.substring(0, 12));
    m.text(", checked by: " + String.join(", ", Formula.names(restoring.required("checkedBy"))));
  }

  /** The entries without which, each left out alone, the instance breaks; where that was tried. */
  private void needed(String instance) {
    String before = "; breaks without entry ";
    JsonNode verdicts = result.path("entries").path("verdicts");
    for (int i = 0; i < verdicts.size(); i++) {
      for (JsonNode breaks : verdicts.get(i).path("breaks")) {
        if (breaks.required("requirement").asText().equals(instance)) {
          m.text(before).link("entry-" + i, Integer.toString(i + 1));
          before = ", ";
        }
      }
    }
  }

  private void run(String run) {
    m.link(anchors.of("run", run), run);
  }

  /** "1 to 10, 12". */
  private String numbers(JsonNode assumptions) {
    List<Integer> numbers =
        Formula.names(assumptions).stream().map(a -> anchors.number("assumption", a)).toList();
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < numbers.size(); i++) {
      int from = i;
      while (i + 1 < numbers.size() && numbers.get(i + 1) == numbers.get(i) + 1) {
        i++;
      }
      words.append(words.isEmpty() ? "" : ", ").append(numbers.get(from));
      words.append(i > from ? " to " + numbers.get(i) : "");
    }
    return words.toString();
  }

  private String anchor(JsonNode instance) {
    return anchors.of("requirement", instance.required("id").asText());
  }

  private String anchor(String thing) {
    if (thing.equals(FRAME)) {
      return "whole-frame";
    }
    int space = thing.indexOf(' ');
    return anchors.of(thing.substring(0, space), thing.substring(space + 1));
  }

  private List<JsonNode> instances() {
    return StreamSupport.stream(result.required("requirements").spliterator(), false).toList();
  }
}
