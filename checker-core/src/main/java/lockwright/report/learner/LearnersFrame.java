package lockwright.report.learner;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.report.picture.Pictures;
import lockwright.report.result.CheckedBox;

/**
 * The page on which a learner works the frame himself: diagram, levers, instruments, and what holds
 * a lever that will not move. What each part is for is in {@code
 * docs/decisions/0008-what-each-part-of-the-learners-frame-is-for.md}.
 */
public final class LearnersFrame {
  /** Its name, beside the lessons. */
  public static final String FILE = "frame.html";

  private static final String STYLE = Sheet.read(LearnersFrame.class, "frame.css");
  private static final String SCRIPT =
      Sheet.read(LearnersFrame.class, "locking.js") + Sheet.read(LearnersFrame.class, "frame.js");

  private final JsonNode result;
  private final CheckedBox box;
  private final Sheet sheet;
  private final Markup m;

  private LearnersFrame(CheckedBox box) {
    this.box = box;
    result = box.json();
    sheet = Sheet.of("The frame of " + box.name(), STYLE, SCRIPT);
    m = sheet.markup();
  }

  /** Whether everything of a box is proved or shown: of no other box is there such a page. */
  public static boolean isFor(byte[] result) {
    CheckedBox box = CheckedBox.read(result);
    return box.passes() && box.count("proved") + box.count("shown") == box.requirements().size();
  }

  /**
   * The page; the same result gives the same characters.
   *
   * @param result the bytes of a {@code result.json} that was checked again
   * @throws IllegalArgumentException if it is not one of a box of which everything is proved or
   *     shown
   */
  public static String of(byte[] result) {
    if (!isFor(result)) {
      throw new IllegalArgumentException("not everything is proved or shown");
    }
    return new LearnersFrame(CheckedBox.read(result)).page();
  }

  private String page() {
    m.element("p", "A frame to be worked", "class", "kind");
    m.element("h1", box.name());
    List<String> cautions = new ArrayList<>();
    result.required("cautions").forEach(c -> cautions.add(c.asText()));
    Sheet.cautions(m, cautions);
    m.element("p", "This page needs its script to be worked.", "class", "without");
    m.element("div", BoxData.of(result), "id", "data", "hidden", "hidden");
    controls();
    picture("Track diagram", Pictures.movingDiagram(result));
    levers();
    m.open("section", "aria-labelledby", "instruments", "class", "with");
    m.element("h2", "What else can be done", "id", "instruments");
    m.open("div", "id", "others").close().close();
    m.open("section", "aria-labelledby", "made", "class", "with");
    m.element("h2", "What you have done", "id", "made");
    m.open("ol", "id", "done").close().close();
    madeFrom();
    return sheet.finish();
  }

  private void controls() {
    m.open("div", "class", "controls with", "role", "group", "aria-label", "The frame").open("div");
    m.element("button", "Undo", "type", "button", "id", "undo");
    m.element("button", "Start again", "type", "button", "id", "again");
    m.open("span").open("input", "type", "checkbox", "id", "part-way");
    m.element("label", "stop part-way", "for", "part-way").close();
    m.open("span").open("input", "type", "checkbox", "id", "collars");
    m.element("label", "put collars on, or take them off", "for", "collars").close().close();
    m.element("p", "", "id", "says", "role", "status", "aria-live", "polite").close();
  }

  private void picture(String name, String picture) {
    m.open("section", "class", "with").element("h2", name);
    m.open("div", "class", "picture-frame", "tabindex", "0", "role", "region", "aria-label", name);
    m.written(picture).close().close();
  }

  private void levers() {
    m.open("section", "class", "with", "aria-labelledby", "frame");
    m.element("h2", "Lever frame", "id", "frame");
    List<String> pictures = Pictures.movingLevers(result);
    List<String> words = Pictures.leversInWords(result);
    m.open("div", "id", "levers", "role", "group", "aria-labelledby", "frame");
    for (int i = 0; i < pictures.size(); i++) {
      String work = result.required("levers").get(i).at("/work/kind").asText();
      List<String> attributes =
          new ArrayList<>(
              List.of("type", "button", "id", "lever-" + i, "data-label", words.get(i)));
      if (List.of("spare", "out of use").contains(work)) {
        attributes.addAll(List.of("disabled", "disabled"));
      }
      m.open("button", attributes.toArray(String[]::new)).written(pictures.get(i)).close();
    }
    m.close();
    m.element(
        "p",
        "Press a lever, or go to it with the tabulator or the arrow keys and press the space bar. It"
            + " makes a whole stroke, if the locking lets it. With 'stop part-way' it stops between,"
            + " and goes back when it is worked again; without, it then goes on. With 'put collars on'"
            + " a press puts a collar on a lever, which then does not move, or takes it off; it is a"
            + " reminder, and no part of what is proved.");
    m.close();
  }

  private void madeFrom() {
    m.open("section", "aria-labelledby", "made-from");
    m.element("h2", "How to read it", "id", "made-from");
    m.open("details").element("summary", "What the shapes of the diagram mean");
    m.open("div", "class", "picture-frame", "tabindex", "0", "role", "region", "aria-label", "Key");
    m.written(Pictures.key()).close().close();
    m.element(
        "p",
        "Everything that is required of this box is proved or shown, within the model, the files below"
            + " and the assumptions in its proof report: "
            + box.count("proved")
            + " requirements of safety, "
            + box.count("shown")
            + " possibilities. They were checked again in the run that wrote this page.");
    m.element(
        "p",
        "The levers are locked as the proofs read the files: by half-strokes, and where a word of the"
            + " files has two readings, by the one that allows more. So what moves here is not for"
            + " that reason right, or allowed by the rules. There are no trains here.");
    m.element(
        "p",
        "It begins with all levers normal. What the files leave open is chosen: points of ground frames"
            + " and gates as normal, tokens shared out evenly, releases locked, conditions from outside"
            + " not met.");
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode f : result.required("files")) {
      rows.add(List.of(f.required("name").asText(), f.required("sha256").asText()));
    }
    m.open("details").element("summary", "The files, by their digests");
    Tables.write(m, List.of("file", "SHA-256"), rows);
    m.close().close();
  }
}
