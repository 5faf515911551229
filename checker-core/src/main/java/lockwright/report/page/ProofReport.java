package lockwright.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import lockwright.report.Cautions;
import lockwright.report.html.Markup;
import lockwright.report.html.Sheet;
import lockwright.report.html.Tables;
import lockwright.report.result.Parts;

/**
 * The proof report of a box: one page of HTML that needs nothing else, made from {@code
 * result.json} alone. The same result gives the same characters.
 */
public final class ProofReport {
  private ProofReport() {}

  /**
   * The report of a result that was checked in this run.
   *
   * @param result the bytes of {@code result.json}
   * @throws IllegalArgumentException if it does not hang together
   */
  public static String checked(byte[] result) {
    JsonNode json = read(result);
    Parts anchors = new Parts(json);
    Sheet sheet = Sheet.of("Proof report: " + json.required("box").asText());
    new Head(json, anchors, sheet.markup()).write();
    new Drawn(json, sheet.markup()).write();
    new Verdicts(json, anchors, sheet.markup()).write();
    new Evidence(json, anchors, sheet.markup()).write();
    new BoxRead(json, anchors, sheet.markup()).write();
    return sheet.finish();
  }

  /**
   * The page that stands where a result was not, or could not be, checked: it has no verdict.
   *
   * @param box what is known of which box it is
   * @param why what was found, a line each
   * @param digests of the files of the spec as they are now, by name
   */
  public static String notChecked(String box, List<String> why, SortedMap<String, String> digests) {
    Sheet sheet = Sheet.of("Not checked in this run: " + box);
    Markup m = sheet.markup();
    m.element("h1", "Not checked in this run: " + box);
    m.element(
        "p",
        "No verdict is shown, for none was checked. What the result says of this box is not"
            + " evidence of anything.",
        "class",
        "outcome bad");
    m.open("section", "aria-labelledby", "why").element("h2", "Why", "id", "why").open("ul");
    why.forEach(w -> m.element("li", w));
    m.close();
    m.element("p", "To check the box, run: mvn verify").close();
    Sheet.cautions(m, Cautions.ALL);
    List<List<String>> files = new ArrayList<>();
    digests.forEach((name, digest) -> files.add(List.of(name, digest)));
    m.open("section", "aria-labelledby", "files");
    m.element("h2", "The files of the spec as they are now", "id", "files");
    Tables.write(m, List.of("file", "SHA-256"), files);
    m.close();
    return sheet.finish();
  }

  private static JsonNode read(byte[] result) {
    try {
      return new JsonMapper().readTree(result);
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON: " + e.getMessage(), e);
    }
  }
}
