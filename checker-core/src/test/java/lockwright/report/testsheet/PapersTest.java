package lockwright.report.testsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.report.Cautions;
import lockwright.testsheet.TestSheet;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The papers of the junction of the Indian Railways Signal Engineering Manual, 12.26.7(c)(iii). */
class PapersTest {
  private static final SortedMap<String, String> DIGESTS =
      new TreeMap<>(java.util.Map.of("locking.csv", "0123abcd"));

  private static Box junction() {
    return box("e1-junction");
  }

  private static Box box(String name) {
    return BoxBuilder.read(Path.of("src", "test", "resources", "boxes", name)).box().orElseThrow();
  }

  private static TestSheet sheet(Box box) {
    return TestSheet.of(box, 1000, p -> {});
  }

  private static List<String> all(TestSheet sheet) {
    return List.of(
        Papers.text(sheet, DIGESTS), Papers.csv(sheet, DIGESTS), Papers.page(sheet, DIGESTS));
  }

  @Test
  void all_cautions_the_files_and_a_place_to_sign_are_in_each_form() {
    for (String paper : all(sheet(junction()))) {
      String flat = paper.replace("&quot;", "\"").replace("&#39;", "'").replaceAll("\\s+", " ");
      for (String caution : Cautions.ALL) {
        assertThat(flat.replace("\"\"", "\"")).contains(caution);
      }
      assertThat(flat.toLowerCase(java.util.Locale.ROOT))
          .contains("tried on the frame by", "signed", "locking.csv, sha-256 0123abcd");
    }
  }

  @Test
  void the_same_sheet_gives_the_same_characters() {
    assertThat(all(sheet(junction()))).isEqualTo(all(sheet(junction())));
  }

  /** Two of the printed lines, as they stand: with 4 and 3 reversed 1 is locked, and 2 free. */
  @Test
  void a_line_has_its_set_up_what_to_do_what_to_expect_and_a_box_to_tick() {
    String text = Papers.text(sheet(junction()), DIGESTS);
    assertThat(text)
        .contains(
            """
            5. set up: pull 3 Bolt of 4
               [ ] try to pull 1 Main home: held normal   (reversed: 3, 4)
                   held by 1 locks 4 (locking.csv:2:5)
                   lock: 1 locks 4
            """)
        .contains("[ ] pull 2 Branch home: free   (reversed: 3, 4)\n")
        .contains("5 of 5 entries of the table are covered both ways")
        .contains("converse (not alone): 1 locks 4", "not alone: in every state that can");
  }

  /** What is wanting, what is to be seen, and what cannot be tried: in each form. */
  @Test
  void what_holds_levers_besides_the_table_and_arms_has_lines_of_its_own() throws Exception {
    TestSheet sheet = sheet(box("two-levers-detected-and-controlled"));
    int last = sheet.lines().size() + sheet.rules().lines().size();
    String locked = "lever 4 from normal, lever 4 leaves N only with arm 6 at danger: in no state";
    assertThat(Papers.text(sheet, DIGESTS))
        .contains(
            """
            What holds lever 1 Home to main besides the table
            -------------------------------------------------

            13. set up: replace 6 Up home
                set up: pull 4 Junction points
                [ ] try to pull 1 Home to main: held normal   (reversed: 4)
                    held by the detector of points 4 bars the wire of signal 1
            14. set up: replace 4 Junction points
                [ ] pull 1 Home to main: free   (reversed: none)
                    nothing wanting of what holds it besides the table
            """)
        .contains(
            """
            Control of arm 1
            ----------------

            19. set up: replace 2 Home to branch
                [ ] look at arm 1: on   (reversed: 1, 4)
                    without Slot, given by lever 1 (controls.yaml:4:3)
            20. set up: Slot: Holm gives the slot
                [ ] look at arm 1: off   (reversed: 1, 4)
                    with all that it needs, given by lever 1 (controls.yaml:4:3)
            """)
        .contains("5 of 6 things that hold a lever besides the table, or an arm on, are each tried")
        .contains(last + " lines, " + sheet.movements() + " movements")
        .contains("- " + locked + " that can be reached\n");
    List<List<String>> rows =
        Arrays.stream(Papers.csv(sheet, DIGESTS).split("\r\n")).map(PapersTest::cells).toList();
    assertThat(rows).filteredOn(r -> r.get(0).equals("line")).hasSize(last);
    assertThat(rows)
        .anySatisfy(
            r ->
                assertThat(r)
                    .startsWith("line", "19", "arm 1")
                    .endsWith(
                        "1, 4",
                        "look at arm 1",
                        "on",
                        "without Slot, given by lever 1 (controls.yaml:4:3)",
                        ""))
        .anySatisfy(r -> assertThat(r.get(7)).startsWith(locked));
    assertThat(parse(Papers.page(sheet, DIGESTS)).getDocumentElement().getTextContent())
        .contains("Control of arm 1", "look at arm 1", locked);
  }

  @Test
  void a_pulling_order_and_the_plate_of_its_lever() {
    assertThat(Papers.text(sheet(junction()), DIGESTS))
        .contains(
            """
                pull 4 Junction points
                pull 3 Bolt of 4
                pull 2 Branch home
                plate of lever 2: 4, 3
            """);
  }

  /** RFC 4180: lines end in CR LF; each has as many cells as the first. */
  @Test
  void the_table_has_a_row_for_each_line_and_an_empty_cell_to_tick() {
    TestSheet sheet = sheet(junction());
    String[] rows = Papers.csv(sheet, DIGESTS).split("\r\n");
    assertThat(Arrays.stream(rows).map(r -> cells(r).size())).containsOnly(9);
    List<List<String>> lines =
        Arrays.stream(rows).map(PapersTest::cells).filter(c -> c.get(0).equals("line")).toList();
    assertThat(lines).hasSize(sheet.lines().size()).allMatch(c -> c.get(8).isEmpty());
    assertThat(lines.get(4))
        .startsWith(
            "line", "5", "1", "pull 3 Bolt of 4", "3, 4", "pull 1 Main home", "held normal");
  }

  private static List<String> cells(String row) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : row.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }

  @Test
  void the_page_has_a_box_to_tick_for_each_line_and_lets_nothing_in() throws Exception {
    TestSheet sheet = sheet(junction());
    String page = Papers.page(sheet, DIGESTS);
    Document document = parse(page);
    NodeList cells = document.getElementsByTagName("td");
    int boxes = 0;
    for (int i = 0; i < cells.getLength(); i++) {
      boxes += cells.item(i).getTextContent().equals("\u2610") ? 1 : 0;
    }
    assertThat(boxes).isEqualTo(sheet.lines().size());
    assertThat(page).contains("default-src &#39;none&#39;");
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
  }

  /** Labels that would be markup, a formula, another cell, or that turn the line around. */
  @Test
  void words_of_the_author_stay_words() throws Exception {
    List<String> hostile =
        List.of(
            "<script>x</script>", "=1+1", "a\",b", "\u202eb", "\u001b[2J", "]]>&amp;", "a\r\nb");
    int tags = parse(Papers.page(sheet(junction()), DIGESTS)).getElementsByTagName("*").getLength();
    for (String words : hostile) {
      TestSheet sheet = sheet(labelled(words));
      for (String paper : all(sheet)) {
        assertThat(paper).doesNotContain("\u202e", "\u001b", "b\"\r\nb");
      }
      assertThat(Papers.page(sheet, DIGESTS)).doesNotContain("<script>");
      assertThat(parse(Papers.page(sheet, DIGESTS)).getElementsByTagName("*").getLength())
          .isEqualTo(tags);
      String[] rows = Papers.csv(sheet, DIGESTS).split("\r\n");
      assertThat(Arrays.stream(rows).map(r -> cells(r).size())).containsOnly(9);
      assertThat(Arrays.stream(rows).flatMap(r -> cells(r).stream()))
          .noneMatch(c -> c.startsWith("="));
    }
  }

  private static Box labelled(String words) {
    Box box = junction();
    List<Lever> levers =
        box.frame().levers().stream().map(l -> new Lever(l.id(), words, l.work(), l.at())).toList();
    return new Box(
        words,
        box.layout(),
        new Frame(levers),
        box.locking(),
        box.sections(),
        box.routes(),
        box.notSignalled(),
        box.conflicts(),
        box.distantPaths(),
        box.requirements());
  }

  private static Document parse(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page.replace("<!DOCTYPE html>", ""))));
  }
}
