package lockwright.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The dialects of CSV that spreadsheets write; quoting and line ends as in RFC 4180, section 2. */
class CsvDialectTest {
  private static final String TABLE =
      "lever;released by;locks;note\n1;3;4;\n2;\"3, 4\";;\"see \"\"B\"\"\nsheet 2\"\n";
  private static final String READ =
      "1 released by 3, 1 locks 4 []; 2 released by 3, 2 released by 4 [see \"B\"/sheet 2]";

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void any_line_end_will_do(String lineEnd) {
    assertThat(read(TABLE.replace("\n", lineEnd))).isEqualTo(READ);
  }

  @Test
  void semicolons_or_commas_will_do() {
    assertThat(read(TABLE)).isEqualTo(READ);
    assertThat(read(TABLE.replace(";", ","))).isEqualTo(READ);
  }

  @Test
  void the_last_line_needs_no_end_and_blank_rows_are_skipped() {
    assertThat(read(TABLE.stripTrailing())).isEqualTo(READ);
    assertThat(read(TABLE.replace("2;", "\n;;;\n   \n2;"))).isEqualTo(READ);
  }

  @Test
  void columns_come_in_any_order_and_headings_may_be_quoted() {
    assertThat(read("locks;\"lever\"\n4;1\n")).isEqualTo("1 locks 4 []");
  }

  @Test
  void a_column_without_heading_and_cells_is_left_out() {
    assertThat(read("lever;locks;;\n1;4;;\n")).isEqualTo("1 locks 4 []");
  }

  @Test
  void several_rows_may_have_one_lever() {
    assertThat(read("lever;locks\n1;4\n1;5\n")).isEqualTo("1 locks 4 []; 1 locks 5 []");
  }

  @Test
  void the_place_of_a_lever_is_told_in_quoted_cells_over_several_lines() {
    Problems problems = new Problems();
    LockingFile file =
        LockingReader.readCsv("t.csv", "lever;locks\r\n1;\"3,\r\n 4\"\r\n", problems).orElseThrow();
    List<String> places =
        file.rows().get(0).locks().stream().map(l -> l.others().get(0).at().toString()).toList();
    assertThat(places).containsExactly("t.csv:2:4", "t.csv:3:2");
  }

  @Test
  void a_list_that_commas_would_tear_apart_is_refused() {
    Problems problems = new Problems();
    LockingReader.readCsv("t.csv", "lever,released by,locks\n2,3, 4\n", problems);
    assertThat(SpecsOnDisk.places(problems.sorted())).containsExactly("CSV-107 t.csv:2:5");
  }

  private static String read(String text) {
    Problems problems = new Problems();
    LockingFile file = LockingReader.readCsv("t.csv", text, problems).orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    return file.rows().stream()
        .map(
            row ->
                row.locks().stream()
                        .map(l -> row.lever() + " " + l.column() + " " + l.others().get(0))
                        .collect(Collectors.joining(", "))
                    + " ["
                    + row.note().replaceAll("\\R", "/")
                    + "]")
        .collect(Collectors.joining("; "));
  }
}
