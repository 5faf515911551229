package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;
import lockwright.report.result.Parts;

/** What was read of the box and what follows from its layout, to be compared; and the signature. */
record BoxRead(JsonNode result, Parts anchors, Markup m) {
  void write() {
    m.open("section", "aria-labelledby", "read-back");
    m.element("h2", "Read-back", "id", "read-back");
    m.element(
        "p",
        "The files agree with the plan only as far as someone has compared them. What follows was"
            + " read from them, or derived from the layout; read-back.txt has it in more words.");
    levers();
    levelCrossings();
    groundFrames();
    pointsByHand();
    sprungPoints();
    controls();
    routes();
    notSignalled();
    conflicts();
    distants();
    FlankRead.write(result.required("flankPaths"), m);
    OverlapRead.write(result.required("overlaps"), m);
    line("Compared with the signalling plan and the locking table by");
    m.close();
    signature();
  }

  private void table(String heading, List<String> columns, List<List<String>> rows) {
    m.element("h3", heading);
    if (rows.isEmpty()) {
      m.element("p", "none");
    } else {
      Tables.write(m, columns, rows);
    }
  }

  private void levers() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode lever : result.required("levers")) {
      JsonNode work = lever.required("work");
      String works = work.required("kind").asText();
      String of =
          switch (works) {
            case "signal" ->
                " "
                    + work.required("signal").asText()
                    + (work.has("for") ? ", for " + list(work.required("for")) : "")
                    + (work.has("slotted") ? ", slotted" : "");
            case "points" -> " " + list(work.required("points")) + economical(work);
            case "bolt" ->
                " of points "
                    + list(work.required("points"))
                    + ", "
                    + work.required("normal").asText()
                    + " at normal";
            case "release" ->
                " of ground frame "
                    + work.required("groundFrame").asText()
                    + (work.required("heldWhileOpen").asBoolean()
                        ? ", held while open"
                        : ", not held while open");
            case "gates", "gate lock" ->
                " of level crossing "
                    + work.required("levelCrossing").asText()
                    + ", "
                    + work.required("normal").asText()
                    + " at normal";
            case "wickets" -> " of level crossing " + work.required("levelCrossing").asText();
            case "closing" -> " lever, through signals " + list(work.required("signals"));
            case "spare" -> "";
            case "out of use" -> ", was " + work.required("was").asText();
            default -> throw new IllegalArgumentException("no work of this version: " + work);
          };
      rows.add(
          List.of(
              lever.required("id").asText(),
              lever.required("label").asText(),
              works + of + connections(lever)));
    }
    table("Levers", List.of("lever", "label", "works"), rows);
  }

  /** What lies between the lever and what it works. */
  private String connections(JsonNode lever) {
    List<String> electric = new ArrayList<>();
    List<String> rods = new ArrayList<>();
    if (lever.required("work").required("kind").asText().equals("points")) {
      for (JsonNode id : lever.required("work").required("points")) {
        JsonNode points = anchors.part("points", id.asText());
        if (points.has("workedElectrically")) {
          electric.add(id.asText());
        }
        if (points.has("rodMayBreak")) {
          rods.add(id.asText());
        }
      }
    }
    return (lever.has("detection") ? ", detecting points " + list(lever.get("detection")) : "")
        + (electric.isEmpty() ? "" : ", worked electrically with indication locking")
        + (rods.isEmpty() ? "" : ", of which a rod may break: " + String.join(", ", rods));
  }

  private void levelCrossings() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode crossing : result.required("layout").required("levelCrossings")) {
      JsonNode lever = anchors.part("lever", crossing.required("gateLever").asText());
      String works = lever.required("work").required("kind").asText();
      rows.add(
          List.of(
              crossing.required("id").asText(),
              crossing.required("label").asText(),
              list(crossing.required("tracks")),
              works + " on lever " + lever.required("id").asText()));
    }
    if (!rows.isEmpty()) {
      table("Level crossings", List.of("crossing", "label", "over tracks", "worked by"), rows);
    }
  }

  private void groundFrames() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode frame : result.required("layout").required("groundFrames")) {
      List<String> released = new ArrayList<>();
      if (frame.has("releaseLever")) {
        released.add("lever " + frame.get("releaseLever").asText());
      }
      if (frame.has("releaseSection")) {
        released.add("tokens of section " + frame.get("releaseSection").asText() + held(frame));
      }
      rows.add(
          List.of(
              frame.required("id").asText(),
              frame.required("label").asText(),
              list(frame.required("points")),
              String.join(", and ", released)));
    }
    if (!rows.isEmpty()) {
      table("Ground frames", List.of("ground frame", "label", "points", "released by"), rows);
    }
  }

  private void pointsByHand() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode points : result.required("layout").required("points")) {
      if (points.has("workedByHand")) {
        rows.add(
            List.of(
                points.required("id").asText(),
                points.required("label").asText(),
                points.has("boltLever")
                    ? "their bolt, lever " + points.get("boltLever").asText()
                    : "nothing"));
      }
    }
    if (!rows.isEmpty()) {
      table("Points worked by hand", List.of("points", "label", "held by"), rows);
    }
  }

  private void sprungPoints() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode points : result.required("layout").required("points")) {
      if (points.has("sprung")) {
        rows.add(
            List.of(
                points.required("id").asText(),
                points.required("label").asText(),
                points.has("trap")
                    ? "for the trap; no path leads into it"
                    : "to "
                        + points.required("normal").asText()
                        + "; no path leads facing to "
                        + points.required("reverse").asText()));
      }
    }
    if (!rows.isEmpty()) {
      table("Sprung points", List.of("points", "label", "always lie"), rows);
    }
  }

  private void controls() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode c : result.at("/controls/conditions")) {
      rows.add(
          List.of(
              "condition " + c.required("name").asText(),
              c.required("kind").asText()
                  + ": "
                  + list(c.required("of"))
                  + (c.required("forOnePull").asBoolean() ? "; for one pull" : "")));
    }
    for (JsonNode l : result.at("/controls/leverLocks")) {
      String lever = "lever " + l.required("lever").asText();
      if (!l.required("leavingNormal").isEmpty()) {
        rows.add(List.of(lever + ", to leave N", "needs " + list(l.required("leavingNormal"))));
      }
      if (!l.required("leavingReversed").isEmpty()) {
        rows.add(List.of(lever + ", to leave R", "needs " + list(l.required("leavingReversed"))));
      }
    }
    for (JsonNode c : result.at("/controls/armControls")) {
      rows.add(
          List.of(
              "signal " + c.required("signal").asText(),
              "off only with " + list(c.required("needs"))));
    }
    if (!rows.isEmpty()) {
      table("Lever locks and arm controls", List.of("what", "how"), rows);
    }
  }

  private String held(JsonNode frame) {
    JsonNode section = anchors.part("section", frame.required("releaseSection").asText());
    for (JsonNode lock : section.required("groundFrames")) {
      if (lock.required("groundFrame").equals(frame.required("id"))) {
        return lock.required("heldWhileOpen").asBoolean()
            ? ", held while open"
            : ", not held while open";
      }
    }
    throw new IllegalArgumentException("no token releases " + frame);
  }

  private static String economical(JsonNode work) {
    JsonNode lock = work.required("economicalLock");
    return lock.isEmpty() ? "" : ", economical lock on " + list(lock);
  }

  private void routes() {
    m.element("h3", "Routes");
    List<String> columns = List.of("route", "passes", "points", "flank traps", "ends at");
    Tables.head(m, columns);
    for (JsonNode route : result.required("routes")) {
      String name = route.required("name").asText();
      m.open("tr", "id", anchors.of("route", name));
      Tables.cell(m, columns.get(0), name);
      String crossings =
          route.required("crossings").isEmpty()
              ? ""
              : "; crossings " + list(route.required("crossings"));
      Tables.cell(m, columns.get(1), list(route.required("tracks")) + crossings);
      Tables.cell(m, columns.get(2), passed(route.required("points")));
      Tables.cell(m, columns.get(3), passed(route.required("flankTraps")));
      Tables.cell(m, columns.get(4), end(route.required("end")));
      m.close();
    }
    Tables.end(m);
  }

  private static String end(JsonNode end) {
    String kind = end.required("kind").asText();
    return switch (kind) {
      case "signals" -> "signal " + list(end.required("signals"));
      case "section" -> "section " + end.required("section").asText();
      case "limit" -> end.required("limit").asText();
      default -> kind;
    };
  }

  /** "W normal, facing; S normal, trailing". */
  private static String passed(JsonNode points) {
    List<String> words = new ArrayList<>();
    for (JsonNode p : points) {
      String way = p.has("facing") ? p.get("facing").asBoolean() ? ", facing" : ", trailing" : "";
      String lie = p.required("lie").asText();
      words.add(
          p.required("points").asText()
              + (p.has("sprung") ? ", sprung, by the " + lie + " leg" : " " + lie)
              + way);
    }
    return words.isEmpty() ? "none" : String.join("; ", words);
  }

  private void notSignalled() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode path : result.required("notSignalled")) {
      rows.add(
          List.of(
              list(path.required("signals")),
              list(path.required("tracks")),
              passed(path.required("points"))));
    }
    table("Paths that are not signalled", List.of("from signals", "passes", "points"), rows);
  }

  private void conflicts() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode c : result.required("conflicts")) {
      rows.add(
          List.of(
              c.required("first").asText(),
              c.required("second").asText(),
              c.required("reason").asText(),
              c.required("canLieTogether").asBoolean() ? "yes" : "no"));
    }
    table(
        "Conflicts of routes",
        List.of("route", "and route", "they share", "can lie together"),
        rows);
  }

  private void distants() {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode path : result.required("distantPaths")) {
      List<String> posts = new ArrayList<>();
      path.required("posts")
          .forEach(p -> posts.add(p.isEmpty() ? "a post without an arm for it" : or(p)));
      rows.add(
          List.of(
              path.required("distant").asText(),
              posts.isEmpty() ? "none" : String.join(", then ", posts),
              passed(path.required("facing"))));
    }
    table(
        "What each distant speaks for",
        List.of("distant", "stop signals", "facing points before the last"),
        rows);
  }

  private static String or(JsonNode arms) {
    return String.join(" or ", Formula.names(arms));
  }

  private static String list(JsonNode names) {
    return String.join(", ", Formula.names(names));
  }

  private void signature() {
    m.open("section", "class", "signature", "aria-labelledby", "signature");
    m.element("h2", "Signature", "id", "signature");
    m.element("p", "Read with the cautions above. Blank until signed by a competent person.");
    line("Name and office");
    line("Signed");
    m.close();
  }

  private void line(String words) {
    m.open("p", "class", "line").text(words + " ");
    m.element("span", "", "class", "blank").text(" on ").element("span", "", "class", "date");
    m.close();
  }
}
