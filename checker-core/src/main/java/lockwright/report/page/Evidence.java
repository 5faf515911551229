package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;
import lockwright.report.picture.Pictures;
import lockwright.report.result.Parts;

/** The locking, and what the verdicts rest on: assumptions, certificates and runs. */
record Evidence(JsonNode result, Parts anchors, Markup m) {
  /** The requirements, and then the advice. */
  private List<JsonNode> checked() {
    List<JsonNode> all = new ArrayList<>();
    result.required("requirements").forEach(all::add);
    result.required("advice").forEach(all::add);
    return all;
  }

  void write() {
    locking();
    assumptions();
    pullingOrders();
    certificates();
    runs();
  }

  private void begin(String anchor, String heading) {
    m.open("section", "aria-labelledby", anchor).element("h2", heading, "id", anchor);
  }

  private void locking() {
    begin("locking", "The locking");
    JsonNode entries = result.path("entries");
    boolean tried = entries.has("verdicts");
    m.element(
        "p",
        tried
            ? "What needs each entry: what breaks where it is left out alone and all others stay."
                + " That an entry may be left out, or two together, is not said of any."
            : "What needs each entry was not tried: "
                + entries.path("notTried").asText("not known"));
    List<String> columns =
        tried
            ? List.of("no.", "entry", "note", "written at", "what needs it")
            : List.of("no.", "entry", "note", "written at");
    Tables.head(m, columns);
    JsonNode locking = result.required("locking");
    for (int i = 0; i < locking.size(); i++) {
      JsonNode entry = locking.get(i);
      m.open("tr", "id", "entry-" + i);
      Tables.cell(m, columns.get(0), Integer.toString(i + 1));
      String holds = entry.required("holds").asBoolean() ? ", holds" : "";
      Tables.cell(m, columns.get(1), entry.required("text").asText() + holds);
      Tables.cell(m, columns.get(2), entry.required("note").asText());
      String place = place(entry.required("at"));
      m.element("td", place, "data-label", columns.get(3), "class", "place");
      if (tried) {
        m.open("td", "data-label", columns.get(4));
        neededBy(entries.required("verdicts").get(i));
        m.close();
      }
      m.close();
    }
    Tables.end(m);
    m.element("h3", "As a matrix");
    Drawn.at(m, "Locking matrix", Pictures.matrix(result));
    m.close();
  }

  private void neededBy(JsonNode verdict) {
    m.element("b", verdict.required("verdict").asText());
    for (JsonNode b : verdict.path("breaks")) {
      String id = b.required("requirement").asText();
      m.open("p", "class", "small").link(anchors.of("requirement", id), id).text(", ");
      run(b.required("run").asText());
      m.close();
    }
    for (JsonNode a : verdict.path("advice")) {
      String id = a.required("requirement").asText();
      m.open("p", "class", "small").text("as advice: ").link(anchors.of("advice", id), id);
      m.text(", ");
      run(a.required("run").asText());
      m.close();
    }
    for (JsonNode open : verdict.path("open")) {
      m.element("p", "not known of: " + open.asText(), "class", "small");
    }
    if (verdict.has("allows")) {
      m.open("p", "class", "small").text("what it forbids comes about without it: ");
      run(verdict.required("allows").required("run").asText());
      m.close();
    }
    if (verdict.has("proof")) {
      String digest = verdict.required("proof").required("certificate").asText();
      m.open("p", "class", "small").text("what it forbids never comes about without it: ");
      m.link(anchors.of("certificate", digest), digest.substring(0, 12)).close();
    }
    for (JsonNode reason : verdict.path("reasons")) {
      m.element("p", "open: " + reason.asText(), "class", "small");
    }
  }

  private void run(String run) {
    m.link(anchors.of("run", run), run);
  }

  static String place(JsonNode at) {
    return at.required("file").asText()
        + ":"
        + at.required("line").asText()
        + ":"
        + at.required("column").asText();
  }

  private void assumptions() {
    begin("assumptions", "Assumptions");
    m.element("p", "What the verdicts rest on besides the files.");
    List<String> columns = List.of("no.", "assumed", "source", "used");
    Tables.head(m, columns);
    for (JsonNode a : result.required("assumptions")) {
      String id = a.required("id").asText();
      m.open("tr", "id", anchors.of("assumption", id));
      Tables.cell(m, columns.get(0), Integer.toString(anchors.number("assumption", id)));
      String section = a.has("section") ? "section " + a.required("section").asText() + ": " : "";
      Tables.cell(m, columns.get(1), section + a.required("words").asText());
      Tables.cell(m, columns.get(2), a.required("source").asText());
      int users = 0;
      for (JsonNode instance : checked()) {
        users += Formula.names(instance.path("assumptions")).contains(id) ? 1 : 0;
      }
      Tables.cell(m, columns.get(3), users == 0 ? "unused" : "by " + verdicts(users));
      m.close();
    }
    Tables.end(m);
    m.close();
  }

  private static String verdicts(int number) {
    return number + (number == 1 ? " verdict" : " verdicts");
  }

  private void pullingOrders() {
    begin("pulling", "Pulling orders");
    m.element("p", "For each route the order in which its levers were pulled to clear it.");
    RunTable table = new RunTable(anchors, m);
    for (JsonNode instance : result.required("requirements")) {
      if (instance.required("name").asText().equals("route can be cleared")
          && Word.of(instance) == Word.SHOWN) {
        JsonNode sequence = instance.required("sequence");
        JsonNode run = anchors.part("run", sequence.required("run").asText());
        m.open("div", "class", "order");
        m.element("h3", sentence(instance.required("subject").asText()));
        m.element("p", "Beginning: " + table.beginning(run), "class", "small");
        table.order(run);
        String least = sequence.required("shortest").asBoolean() ? "" : "; perhaps not the fewest";
        m.open("p", "class", "small").link(anchors.of("run", run.required("id").asText()), "run");
        m.text(least).close().close();
      }
    }
    m.close();
  }

  static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  private void certificates() {
    begin("certificates", "Certificates");
    m.element(
        "p",
        "A certificate is a list of clauses. Each holds in every beginning, each movement keeps"
            + " them all, and no state that keeps them breaks a requirement that names it. This was"
            + " checked with a second reading of the files, by code that does not search. One that a"
            + " frame is not restored holds where the sequence ends, and strokes alone keep it.");
    m.open("p").text("To check all certificates and runs again, without a search: ");
    JsonNode date = result.path("expectations").path("date");
    m.element(
            "code",
            "mvn lockwright:report"
                + (date.isMissingNode() ? "" : " -Dlockwright.date=" + date.asText()))
        .close();
    SortedMap<String, TreeSet<String>> checkedBy = new TreeMap<>();
    SortedMap<String, Integer> users = new TreeMap<>();
    for (JsonNode instance : checked()) {
      use(instance.path("proof"), checkedBy, users);
      use(instance.path("restoring"), checkedBy, users);
      instance.path("proof").path("never").forEach(n -> use(n, checkedBy, users));
    }
    for (JsonNode v : result.path("entries").path("verdicts")) {
      use(v.path("proof"), checkedBy, users);
      v.path("kept").forEach(k -> use(k, checkedBy, users));
    }
    for (JsonNode c : result.required("certificates")) {
      String digest = c.required("digest").asText();
      m.open("div", "id", anchors.of("certificate", digest));
      m.open("h3").text("SHA-256 ").element("code", digest).close();
      m.element(
          "p",
          c.required("clauses").size()
              + " clauses; checked by: "
              + String.join(", ", checkedBy.getOrDefault(digest, new TreeSet<>()))
              + "; used by "
              + verdicts(users.getOrDefault(digest, 0)));
      m.open("details").element("summary", "the clauses").open("ol", "class", "clauses");
      c.required("clauses").forEach(clause -> m.element("li", clause.asText()));
      m.close().close().close();
    }
    m.close();
  }

  private static void use(
      JsonNode proof, SortedMap<String, TreeSet<String>> by, SortedMap<String, Integer> users) {
    if (!proof.isMissingNode()) {
      String digest = proof.required("certificate").asText();
      users.merge(digest, 1, Integer::sum);
      by.computeIfAbsent(digest, d -> new TreeSet<>())
          .addAll(Formula.names(proof.required("checkedBy")));
    }
  }

  private void runs() {
    begin("runs", "Runs");
    m.element(
        "p",
        "Each was played movement by movement on the second reading of the files. The witnesses"
            + " show that no proof is empty: what it speaks about does come about.");
    SortedMap<Integer, List<String>> uses = new TreeMap<>();
    for (JsonNode instance : checked()) {
      for (JsonNode w : instance.path("proof").path("witnesses")) {
        use(uses, w.required("run").asText(), "witness: " + w.required("subject").asText());
      }
      if (instance.has("sequence")) {
        String word =
            instance.required("verdict").asText() + ": " + instance.required("id").asText();
        use(uses, instance.required("sequence").required("run").asText(), word);
      }
      JsonNode helped = instance.path("restoring").path("helped");
      if (!helped.isMissingNode()) {
        use(uses, helped.asText(), "with events: " + instance.required("id").asText());
      }
    }
    for (JsonNode v : result.path("entries").path("verdicts")) {
      String without = "without '" + v.required("entry").asText() + "': ";
      for (JsonNode b : v.path("breaks")) {
        use(uses, b.required("run").asText(), without + b.required("requirement").asText());
      }
      for (JsonNode a : v.path("advice")) {
        use(uses, a.required("run").asText(), without + a.required("requirement").asText());
      }
      if (v.has("allows")) {
        use(uses, v.required("allows").required("run").asText(), without + "what it forbids");
      }
    }
    RunTable table = new RunTable(anchors, m);
    for (JsonNode run : result.required("runs")) {
      String id = run.required("id").asText();
      List<String> of = uses.getOrDefault(anchors.number("run", id), List.of());
      m.open("details", "id", anchors.of("run", id));
      m.open("summary").element("b", id).text(" " + String.join("; ", new TreeSet<>(of))).close();
      m.element("p", run.required("strokes").asText() + " strokes", "class", "small");
      table.write(run);
      m.close();
    }
    m.close();
  }

  private void use(SortedMap<Integer, List<String>> uses, String run, String what) {
    uses.computeIfAbsent(anchors.number("run", run), r -> new ArrayList<>()).add(what);
  }
}
