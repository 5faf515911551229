package lockwright.report.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lockwright.railway.Box;
import lockwright.railway.frame.Frame;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Layout;
import lockwright.railway.requirement.Derivation;
import lockwright.railway.requirement.Derived;
import lockwright.railway.requirement.Drawing;
import lockwright.railway.requirement.Frames;
import lockwright.railway.section.Section;
import lockwright.report.Cautions;
import org.junit.jupiter.api.Test;

class ReadBackTest {

  private static final Box LOOP = box("Reed Halt", "outer, down");

  /** A loop with a siding, invented. */
  private static Box box(String name, String track) {
    Layout layout =
        new Drawing()
            .tracks("down", "throat", "one", "two", "east", "exit of siding", track)
            .track("siding", false)
            .limit(Attachment.Limit.BLOCK, track)
            .joint(track, "down")
            .joint("down", "throat")
            .points("5", "throat", "one", "two")
            .points("6", "east", "one", "exit of siding")
            .points("7", "siding", "trap", "exit of siding")
            .limit(Attachment.Limit.BUFFER_STOP, "siding", "two")
            .section("Reed to Sedge", "east")
            .groundFrame("yard", "7")
            .signal("1", Arm.DISTANT, track, "down")
            .signal("2", Arm.STOP, "down", "throat", "one")
            .signal("3", Arm.SHUNTING, "down", "throat", "two")
            .signal("4", Arm.STOP, "one", "east")
            .layout();
    Frame frame = Frames.of(layout, List.of("5"), 1);
    List<Section> sections = List.of(Frames.section("Reed to Sedge", "east"));
    Derived d = Derivation.derive(layout, frame, sections);
    return new Box(
        name,
        layout,
        frame,
        List.of(),
        sections,
        d.routes(),
        d.notSignalled(),
        d.conflicts(),
        d.distantPaths(),
        d.requirements());
  }

  @Test
  void what_every_report_says_is_not_checked_is_said_here_too() {
    String flat = ReadBack.text(LOOP).replaceAll("\\s+", " ");
    assertThat(Cautions.LEFT_OUT).allMatch(l -> flat.contains("does not check " + l));
  }

  @Test
  void the_text_says_what_the_plan_says() {
    assertThat(ReadBack.text(LOOP))
        .startsWith("Read-back of Reed Halt\n======================\n")
        .contains("compared with the plan by ____")
        .contains("Caution: This is an aid")
        .contains("\nRoute 2 to one\n--------------\n  passes                throat, one\n")
        .contains("  points 5              N, facing, on a passenger line: must be bolted\n")
        .contains("  flank trap 7          N, for the trap\n")
        .contains("  ends at               signal 4\n")
        .contains("  speaks for            signal 2, then 4\n")
        .contains(
            "conflict              2 to one with 3 to two: track throat, points 5 (N and R)\n")
        .contains("  past 2                throat, two; by points 5 R\n")
        .contains("  7                     bolt of points 5: out at N, in at R\n")
        .contains("instrument            far, attended; needs the consent of: here\n")
        .contains("from two at points 5  NOTHING protects it")
        .contains("another way than by the flanks listed");
  }

  @Test
  void the_text_is_100_columns_wide_and_has_no_blank_line_ends() {
    assertThat(ReadBack.text(LOOP).lines())
        .allSatisfy(
            line -> assertThat(line).hasSizeLessThanOrEqualTo(100).isEqualTo(line.stripTrailing()));
  }

  @Test
  void the_same_box_gives_the_same_characters() {
    Box again = box("Reed Halt", "outer, down");
    assertThat(ReadBack.text(again)).isEqualTo(ReadBack.text(LOOP));
    assertThat(ReadBack.csv(again)).isEqualTo(ReadBack.csv(LOOP));
  }

  /** RFC 4180, section 2: rules 1, 4, 5, 6 and 7. */
  @Test
  void the_table_has_five_cells_a_row_and_gives_back_what_went_in() {
    Box box = box("Reed \"Old, Halt\"", "outer");
    List<List<String>> rows = parsed(ReadBack.csv(box));
    assertThat(rows.get(0)).containsExactly("kind", "name", "what", "value", "compared");
    assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(5));
    assertThat(rows.get(1).get(1)).isEqualTo("Reed \"Old, Halt\"");
    assertThat(rows).contains(List.of("route", "2 to one", "passes", "throat, one", ""));
    assertThat(rows).anyMatch(row -> row.get(0).equals("caution"));
    assertThat(rows)
        .anyMatch(row -> row.get(3).startsWith("vehicles that come into a route another way"));
  }

  @Test
  void a_cell_that_a_spreadsheet_would_work_out_is_made_inert() {
    for (String bad : List.of("=1+1", "+1", "-1", "@sum", "\t=1")) {
      assertThat(CsvSheet.cell(bad)).startsWith("'");
    }
    assertThat(CsvSheet.cell("=\"a\",1")).isEqualTo("\"'=\"\"a\"\",1\"");
    assertThat(parsed(ReadBack.csv(box("=cmd", "+down"))).stream().flatMap(List::stream))
        .noneMatch(cell -> cell.matches("[=+@\\t-].*"));
  }

  @Test
  void control_characters_are_shown_and_never_sent() {
    String name = "A\u001b[2J\r\nB\u202eC\\";
    Box box = box(name, "down\nRoute 9 to nowhere");
    assertThat(ReadBack.text(box))
        .contains("A\\u001b[2J\\u000d\\u000aB\\u202eC\\\\")
        .doesNotContain("\nRoute 9 to nowhere");
    assertThat(ReadBack.text(box).replace("\n", ""))
        .matches(text -> text.chars().noneMatch(Character::isISOControl));
    assertThat(ReadBack.csv(box).replace("\r\n", ""))
        .matches(text -> text.chars().noneMatch(Character::isISOControl));
  }

  /** A reader of the RFC's grammar, for the tests. */
  private static List<List<String>> parsed(String csv) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < csv.length(); i++) {
      char c = csv.charAt(i);
      if (quoted && c == '"' && csv.startsWith("\"\"", i)) {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == ',' || csv.startsWith("\r\n", i))) {
        row.add(cell.toString());
        cell.setLength(0);
        if (c == '\r') {
          rows.add(row);
          row = new ArrayList<>();
          i++;
        }
      } else {
        cell.append(c);
      }
    }
    return rows;
  }
}
