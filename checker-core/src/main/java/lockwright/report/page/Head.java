package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.report.result.Parts;

/** What was found, in one line; the cautions; what was checked, and by what. */
record Head(JsonNode result, Parts anchors, Markup m) {
  void write() {
    JsonNode counts = counted();
    String box = result.required("box").asText();
    m.element("h1", "Proof report: " + box);
    boolean passes = result.required("passes").asBoolean();
    boolean known = result.has("expectations");
    String colour = passes && !known ? "outcome good" : "outcome bad";
    m.element("p", outcome(counts, passes), "class", passes && known ? "outcome" : colour);
    if (known) {
      m.element("p", expectations(result.required("expectations")));
    }
    int exempted = result.required("exempted").size();
    if (exempted > 0) {
      m.element(
          "p",
          "Besides these, "
              + exempted
              + (exempted == 1 ? " is" : " are")
              + " exempted by name, and not checked: listed under What is not proved.");
    }
    m.element("p", "Checked in the run that wrote this page.");
    Sheet.cautions(m, Formula.names(result.required("cautions")));
    parts();
    scope(box);
    files();
    requirements();
  }

  /**
   * The counts, which must be those of the instances.
   *
   * @throws IllegalArgumentException if they are not
   */
  private JsonNode counted() {
    JsonNode counts = result.required("counts");
    for (Word word : Word.values()) {
      int found = 0;
      for (JsonNode instance : result.required("requirements")) {
        found += Word.of(instance) == word ? 1 : 0;
      }
      if (found != counts.required(word.word()).asInt()) {
        throw new IllegalArgumentException("counted " + found + " " + word.word());
      }
    }
    return counts;
  }

  private String outcome(JsonNode counts, boolean passes) {
    List<String> words = new ArrayList<>();
    for (Word word : Word.values()) {
      int number = counts.required(word.word()).asInt();
      if (number > 0) {
        words.add(number + " " + word.word());
      }
    }
    return (passes ? passed() : "\u2718 Does not pass: of ")
        + result.required("requirements").size()
        + " requirements "
        + String.join(", ", words);
  }

  private String passed() {
    return result.has("expectations")
        ? "Passes, with failures that are expected or waived: of "
        : "\u2714 Passes: of ";
  }

  private static String expectations(JsonNode all) {
    String date = all.has("date") ? " on " + all.required("date").asText() : "";
    return "Failures that the author has written beforehand: "
        + all.required("expected").asInt()
        + " expected, "
        + all.required("waived").asInt()
        + " waived. Of these "
        + all.required("hold").asInt()
        + " hold"
        + date
        + ", "
        + all.required("noLongerBite").asInt()
        + " no longer bite, "
        + all.required("pastTheirDate").asInt()
        + " are past their date.";
  }

  private void parts() {
    m.open("nav", "aria-label", "Parts of this report").open("ul");
    for (List<String> part :
        List.of(
            List.of("scope", "Scope"),
            List.of("files", "What was checked"),
            List.of("requirements", "Requirements and their sources"),
            List.of("pictures", "The box"),
            List.of("attention", "What is not proved"),
            List.of("advice", "Advice"),
            List.of("verdicts", "Verdicts"),
            List.of("locking", "The locking"),
            List.of("assumptions", "Assumptions"),
            List.of("pulling", "Pulling orders"),
            List.of("certificates", "Certificates"),
            List.of("runs", "Runs"),
            List.of("read-back", "Read-back"),
            List.of("signature", "Signature"))) {
      m.open("li").link(part.get(0), part.get(1)).close();
    }
    m.close().close();
  }

  private void scope(String box) {
    m.open("section", "aria-labelledby", "scope").element("h2", "Scope", "id", "scope");
    m.element(
        "p",
        "Whether the levers, locking and token instruments of "
            + box
            + ", as the files below give them and worked in any order that they allow, keep the"
            + " requirements below.");
    m.element("p", "This version does not look at:").open("ul", "class", "short");
    result.required("leftOut").forEach(l -> m.element("li", l.asText()));
    m.close().close();
  }

  private void files() {
    m.open("section", "aria-labelledby", "files");
    m.element("h2", "What was checked, and by what", "id", "files");
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode f : result.required("files")) {
      rows.add(List.of(f.required("name").asText(), f.required("sha256").asText()));
    }
    Tables.write(m, List.of("file", "SHA-256"), rows);
    JsonNode tool = result.required("tool");
    m.element(
        "p",
        tool.required("name").asText()
            + " "
            + tool.required("version").asText()
            + "; searched by "
            + tool.required("solver").asText()
            + "; certificates checked by trying all combinations or by "
            + tool.required("secondSolver").asText()
            + ", runs by playing them.");
    m.close();
  }

  private void requirements() {
    m.open("section", "aria-labelledby", "requirements");
    m.element("h2", "Requirements and their sources", "id", "requirements");
    List<String> columns = List.of("requirement", "what it says", "source", "verdicts");
    Tables.head(m, columns);
    for (JsonNode c : result.required("catalogue")) {
      String name = c.required("name").asText();
      m.open("tr", "id", anchors.of("catalogue", name));
      m.element("th", name, "scope", "row");
      m.open("td", "data-label", columns.get(1)).text(c.required("words").asText());
      m.element("p", "One for " + c.required("appliesTo").asText() + ".", "class", "small");
      m.close().open("td", "data-label", columns.get(2)).open("ul");
      for (JsonNode s : c.required("sources")) {
        String known = s.required("known").asText();
        m.element("li", s.required("source").asText() + (known.equals("read") ? "" : "; " + known));
      }
      m.close().close();
      Tables.cell(m, columns.get(3), tally(name, c.required("counts")));
      m.close();
    }
    Tables.end(m);
    m.open("details").element("summary", "The words of the formulas below");
    Tables.write(m, List.of("written", "meaning"), Formula.WORDS);
    m.close().close();
  }

  private String tally(String requirement, JsonNode counts) {
    List<String> words = new ArrayList<>();
    for (Word word : Word.values()) {
      int number = counts.required(word.word()).asInt();
      if (number > 0) {
        words.add(number + " " + word.word());
      }
    }
    int advice = 0;
    for (JsonNode a : result.required("advice")) {
      advice += a.required("name").asText().equals(requirement) ? 1 : 0;
    }
    if (advice > 0) {
      words.add(advice + " as advice");
    }
    return words.isEmpty() ? "none here" : String.join(", ", words);
  }
}
