package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lockwright.railway.drawing.Drawing;
import lockwright.railway.layout.TrackEnd;
import lockwright.report.picture.PictureProblems;
import lockwright.spec.Span;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What `drawing.yaml` may say of a box. The form is our own: `docs/spec.md`. */
class DrawingFileTest {
  @TempDir private Path folder;

  @BeforeEach
  void a_junction() throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
  }

  private BoxBuilder.Built with(String drawing) throws IOException {
    SpecsOnDisk.write(folder, "drawing.yaml", drawing);
    return BoxBuilder.read(folder);
  }

  private List<String> places(String drawing) throws IOException {
    return SpecsOnDisk.places(with(drawing).problems());
  }

  @Test
  void every_form_is_read_as_it_is_written() {
    Drawing drawing = BoxBuilder.read(SpecsOnDisk.EVERY_FORM).box().orElseThrow().drawing();
    assertThat(drawing.spots().stream().map(Drawing.Spot::thing))
        .containsExactly(
            new Drawing.OfPoints("5"),
            new Drawing.OfPoints("9"),
            new Drawing.OfCrossing("X1"),
            new Drawing.OfEnd(new TrackEnd("approach", 0)),
            new Drawing.OfEnd(new TrackEnd("departure", 0)),
            new Drawing.OfEnd(new TrackEnd("single line", 1)),
            new Drawing.OfEnd(new TrackEnd("departure", 1)));
    assertThat(drawing.spots().get(1))
        .isEqualTo(
            new Drawing.Spot(new Drawing.OfPoints("9"), 31.5, 5, new Span("drawing.yaml", 3, 6)));
    assertThat(drawing.levels())
        .containsExactly(
            new Drawing.Level("siding", 5, new Span("drawing.yaml", 13, 3)),
            new Drawing.Level("tramway west", 6, new Span("drawing.yaml", 14, 3)));
  }

  /** All but the drawing is the same, and the file is one of those that a result names. */
  @Test
  void the_railway_and_its_requirements_are_the_same_with_and_without_it() throws IOException {
    BoxBuilder.Built without = BoxBuilder.read(folder);
    BoxBuilder.Built drawn = with("points: {4: [12, 3]}\n");
    assertThat(without.box().orElseThrow().drawing()).isEqualTo(Drawing.NONE);
    assertThat(drawn.box().orElseThrow().drawing()).isNotEqualTo(Drawing.NONE);
    assertThat(drawn.box().orElseThrow().withDrawing(Drawing.NONE))
        .isEqualTo(without.box().orElseThrow());
    assertThat(drawn.digests()).containsKey("drawing.yaml").hasSize(without.digests().size() + 1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"{}", "points: {}", "tracks: {}"})
  void an_empty_list_places_nothing(String empty) throws IOException {
    assertThat(with(empty + "\n").box().orElseThrow().drawing()).isEqualTo(Drawing.NONE);
  }

  @Test
  void a_joint_may_be_named_from_either_side() throws IOException {
    Drawing one = with("joints: {approach + junction: [1, 2]}\n").box().orElseThrow().drawing();
    Drawing other = with("joints: {junction + approach: [1, 2]}\n").box().orElseThrow().drawing();
    assertThat(one).isEqualTo(other);
  }

  /** A track round which engines run: its two ends are one joint. */
  @Test
  void a_track_joined_to_itself_has_one_joint() throws IOException {
    SpecsOnDisk.change(folder, "plan.yaml", "branch]\nj", "branch, ring]\nj");
    SpecsOnDisk.change(folder, "plan.yaml", "+ junction]", "+ junction, ring + ring]");
    Box box = with("joints: {ring + ring: [4, 6]}\npoints: {4: [4, 2]}\n").box().orElseThrow();
    assertThat(box.drawing().spots().get(1).thing())
        .isEqualTo(new Drawing.OfEnd(new TrackEnd("ring", 0)));
    assertThat(PictureProblems.of(box)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "Infinity",
        "1e3",
        "0x10",
        "+1",
        "-0",
        "1.",
        ".5",
        "01",
        "9999.999",
        "10000",
        "1_000",
        "12mm",
        "\u0661\u0662",
        "\uff11",
        "1\u00a02",
        "yes",
        "~"
      })
  void what_is_no_plain_number_is_refused_where_it_stands(String number) throws IOException {
    assertThat(places("points:\n  4: [" + number + ", 3]\n"))
        .containsExactly("DRAW-101 drawing.yaml:2:7");
  }

  @Test
  void a_long_number_is_refused_quickly() throws IOException {
    for (String part : List.of("9", "0", "1.", " ")) {
      String number = "1" + part.repeat(900_000 / part.length()) + "x";
      assertThat(places("tracks: {main: " + number + "}\n"))
          .containsExactly("DRAW-101 drawing.yaml:1:16");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"12", "{x: 1, y: 2}", "[]", "[1]", "[1, 2, 3]"})
  void a_place_is_two_numbers(String place) throws IOException {
    assertThat(places("ends: {main: " + place + "}\n"))
        .containsExactly("YAML-108 drawing.yaml:1:14");
  }

  @Test
  void faults_of_this_file_are_told_beside_those_of_others() throws IOException {
    SpecsOnDisk.change(folder, "plan.yaml", "toe: junction", "toe: junktion");
    assertThat(places("points:\n  4: [a, b]\nlimits: {}\n"))
        .contains(
            "DRAW-101 drawing.yaml:2:7",
            "DRAW-101 drawing.yaml:2:10",
            "YAML-106 drawing.yaml:3:1",
            "PLAN-104 plan.yaml:7:12");
  }

  @ParameterizedTest
  @ValueSource(strings = {"drawing.yml", "drawings.yaml", "Drawing.yaml", "drawing.txt"})
  void a_file_of_a_name_like_it_is_not_left_out_silently(String name) throws IOException {
    SpecsOnDisk.write(folder, name, "points: {4: [12, 3]}\n");
    assertThat(SpecsOnDisk.places(BoxBuilder.read(folder).problems()))
        .containsExactly("FILE-107 " + name + ":1:1");
  }
}
