package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import lockwright.report.Cautions;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.RelativeUri;

/**
 * The index over the boxes of a build: one page of HTML with their outcomes, a link to each proof
 * report, and what all of it rests on. The same boxes give the same characters.
 */
public final class ProofIndex {
  private static final List<String> COLUMNS =
      List.of("box", "module", "outcome", "verdicts", "proof report");

  private ProofIndex() {}

  /**
   * A box of the build.
   *
   * @param module where it is, in words
   * @param report the path of its proof report from the page, with slashes
   * @param box what its result says; nothing where that is no evidence
   * @param why what then was found, a line each
   */
  public record Entry(String module, String report, Optional<CheckedBox> box, List<String> why) {
    public Entry {
      why = List.copyOf(why);
      if (box.isPresent() != why.isEmpty()) {
        throw new IllegalArgumentException("a checked box, or why it is none");
      }
    }

    boolean passes() {
      return box.map(CheckedBox::passes).orElse(false);
    }
  }

  /** Whether there are boxes, and all pass. */
  public static boolean passes(List<Entry> entries) {
    return !entries.isEmpty() && entries.stream().allMatch(Entry::passes);
  }

  /** "Of 3 boxes 2 pass: 20 proved, 7 shown"; only boxes that were checked are counted. */
  public static String outcome(List<Entry> entries) {
    List<String> counts = new ArrayList<>();
    for (String verdict : CheckedBox.VERDICTS) {
      int count =
          entries.stream().flatMap(e -> e.box().stream()).mapToInt(b -> b.count(verdict)).sum();
      if (count > 0) {
        counts.add(count + " " + verdict);
      }
    }
    int exempted =
        entries.stream().flatMap(e -> e.box().stream()).mapToInt(b -> b.exempted().size()).sum();
    if (exempted > 0) {
      counts.add(exempted + " more exempted by name");
    }
    long missing = entries.stream().filter(e -> e.box().isEmpty()).count();
    return "Of "
        + entries.size()
        + (entries.size() == 1 ? " box " : " boxes ")
        + entries.stream().filter(Entry::passes).count()
        + " pass"
        + (missing > 0 ? ", " + missing + " not checked in this build" : "")
        + (counts.isEmpty() ? "" : ": " + String.join(", ", counts));
  }

  /**
   * The page.
   *
   * @param title of the build
   */
  public static String of(String title, List<Entry> entries) {
    Sheet sheet = Sheet.of("Proof reports: " + title);
    Markup m = sheet.markup();
    m.element("h1", "Proof reports: " + title);
    boolean passes = passes(entries);
    String words = outcome(entries) + ".";
    m.element(
        "p",
        (passes ? "\u2714 Passes. " : "\u2718 Does not pass. ") + words,
        "class",
        passes ? "outcome good" : "outcome bad");
    m.element(
        "p",
        "Certificates were not checked again for this page. Each box that is counted was checked in"
            + " this build; its files of the spec are still those that were checked, by their"
            + " SHA-256, and its proof report is that of its result.json. To check the certificates"
            + " again, run in the module: mvn lockwright:report");
    Sheet.cautions(m, Cautions.ALL);
    boxes(m, entries);
    why(m, entries);
    assumptions(m, entries);
    files(m, entries);
    return sheet.finish();
  }

  private static void boxes(Markup m, List<Entry> entries) {
    m.open("section", "aria-labelledby", "boxes").element("h2", "Boxes", "id", "boxes");
    Tables.head(m, COLUMNS);
    for (Entry entry : entries) {
      m.open("tr");
      Tables.cell(m, COLUMNS.get(0), entry.box().map(CheckedBox::name).orElse("not known"));
      Tables.cell(m, COLUMNS.get(1), entry.module());
      m.open("td", "data-label", COLUMNS.get(2));
      m.element("span", outcome(entry), "class", entry.passes() ? "good" : "bad").close();
      Tables.cell(m, COLUMNS.get(3), entry.box().map(CheckedBox::counted).orElse("none"));
      m.open("td", "data-label", COLUMNS.get(4));
      if (entry.box().isPresent()) {
        m.linkToPage(RelativeUri.of(entry.report()), "proof report");
      } else {
        m.text("none");
      }
      m.close().close();
    }
    Tables.end(m);
    m.close();
  }

  private static String outcome(Entry entry) {
    if (entry.box().isEmpty()) {
      return "\u2718 not checked in this build";
    }
    CheckedBox box = entry.box().orElseThrow();
    boolean known = box.requirements().stream().anyMatch(i -> i.expected().isPresent());
    return !box.passes()
        ? "\u2718 does not pass"
        : known ? "passes, with failures that are expected or waived" : "\u2714 passes";
  }

  private static void why(Markup m, List<Entry> entries) {
    if (passes(entries)) {
      return;
    }
    m.open("section", "aria-labelledby", "why").element("h2", "What does not pass", "id", "why");
    if (entries.isEmpty()) {
      m.element("p", "No module has a box.");
    }
    for (Entry entry : entries) {
      if (!entry.passes()) {
        m.element("h3", entry.module()).open("ul");
        entry.why().forEach(w -> m.element("li", w));
        entry.box().ifPresent(b -> failing(m, b));
        m.close();
      }
    }
    m.close();
  }

  private static void failing(Markup m, CheckedBox box) {
    box.requirements().stream().filter(i -> i.fails()).forEach(i -> m.element("li", i.found()));
    if (!box.somethingProved()) {
      m.element("li", "no requirement of safety is proved, and nothing proves nothing");
    }
  }

  private static void assumptions(Markup m, List<Entry> entries) {
    Map<List<String>, TreeSet<String>> all = new TreeMap<>(ProofIndex::compare);
    for (Entry entry : entries) {
      for (CheckedBox box : entry.box().stream().toList()) {
        for (JsonNode a : box.json().required("assumptions")) {
          List<String> assumed =
              List.of(
                  a.required("words").asText(),
                  a.required("appliesTo").asText(),
                  a.required("source").asText());
          all.computeIfAbsent(assumed, x -> new TreeSet<>()).add(box.name());
        }
      }
    }
    List<List<String>> rows = new ArrayList<>();
    all.forEach(
        (assumed, boxes) -> {
          List<String> row = new ArrayList<>(assumed);
          row.add(String.join(", ", boxes));
          rows.add(row);
        });
    m.open("section", "aria-labelledby", "assumptions");
    m.element("h2", "Assumptions of all boxes", "id", "assumptions");
    Tables.write(m, List.of("what is assumed", "applies to", "source", "boxes"), rows);
    m.close();
  }

  private static int compare(List<String> a, List<String> b) {
    for (int i = 0; i < a.size(); i++) {
      int order = a.get(i).compareTo(b.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  private static void files(Markup m, List<Entry> entries) {
    List<List<String>> rows = new ArrayList<>();
    for (Entry entry : entries) {
      entry
          .box()
          .ifPresent(
              b -> b.digests().forEach((file, sha) -> rows.add(List.of(b.name(), file, sha))));
    }
    m.open("section", "aria-labelledby", "files");
    m.element("h2", "Files that were checked", "id", "files");
    Tables.write(m, List.of("box", "file", "SHA-256"), rows);
    m.close();
  }
}
