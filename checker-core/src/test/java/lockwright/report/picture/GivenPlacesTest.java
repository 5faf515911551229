package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lockwright.railway.BoxBuilder;
import lockwright.spec.Problem;
import lockwright.spec.SpecsOnDisk;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** What `docs/spec.md` says of `drawing.yaml`, measured in the picture of a junction. */
class GivenPlacesTest {
  @TempDir private Path folder;

  private JsonNode junction(String drawing) throws IOException {
    if (!folder.resolve("plan.yaml").toFile().exists()) {
      SpecsOnDisk.copy(SpecsOnDisk.JUNCTION, folder);
    }
    SpecsOnDisk.write(folder, "drawing.yaml", drawing);
    BoxBuilder.Built built = BoxBuilder.read(folder);
    assertThat(built.problems()).isEmpty();
    return Drawn.result(built.box().orElseThrow());
  }

  private static Element drawn(JsonNode result) {
    String svg = Pictures.diagram(result, Map.of());
    Drawn.readable(svg);
    return Drawn.parsed(svg);
  }

  private static List<Line2D> rail(Element root, String track) {
    return Drawn.rails(root).get(track);
  }

  private static double level(Element root, String track) {
    return rail(root, track).stream()
        .filter(l -> l.getY1() == l.getY2())
        .mapToDouble(Line2D::getY1)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void tracks_run_at_the_heights_given_in_one_scale() throws IOException {
    Element root =
        drawn(junction("tracks: {approach: 4, branch: 1, main: 6}\npoints: {4: [10, 4]}\n"));
    double square = (level(root, "main") - level(root, "branch")) / 5;
    assertThat(square).isPositive();
    assertThat(level(root, "approach")).isEqualTo(level(root, "junction"));
    assertThat(level(root, "approach") - level(root, "branch"))
        .isCloseTo(3 * square, Offset.offset(0.02));
  }

  /**
   * Between two heights the line goes aslant once, and at the joint, not at the bolt of the toe.
   */
  @Test
  void a_line_changes_its_height_at_a_joint() throws IOException {
    Element root =
        drawn(junction("ends: {approach: [0, 1], main: [30, 3]}\npoints: {4: [20, 3]}\n"));
    Point2D joint = rail(root, "junction").get(0).getP1();
    assertThat(level(root, "approach")).isEqualTo(joint.getY());
    assertThat(rail(root, "junction").get(0).getY2()).isGreaterThan(joint.getY());
    assertThat(level(root, "junction")).isEqualTo(level(root, "main"));
  }

  /** From right to left on the plan, so from right to left in the picture. */
  @Test
  void the_plan_is_turned_as_its_places_are() throws IOException {
    String places = "ends: {approach: [%d, 3], main: [%d, 3]}\n";
    Element right = drawn(junction(String.format(places, 0, 24)));
    Element left = drawn(junction(String.format(places, 24, 0)));
    assertThat(x(right, "approach")).isLessThan(x(right, "main"));
    assertThat(x(left, "approach")).isGreaterThan(x(left, "main"));
  }

  private static double x(Element root, String track) {
    return rail(root, track).get(0).getX1();
  }

  @Test
  void without_a_place_given_the_picture_is_as_it_was() {
    JsonNode quillby = Drawn.quillby();
    ObjectNode empty = quillby.deepCopy();
    empty.putObject("drawing").putArray("places");
    assertThat(Pictures.diagram(empty, Map.of())).isEqualTo(Pictures.diagram(quillby, Map.of()));
    assertThat(Pictures.withoutRoom(quillby)).isEmpty();
  }

  @Test
  void places_the_wrong_way_round_are_told_and_kept() throws IOException {
    JsonNode result =
        junction(
            "ends:\n  approach: [0, 3]\n  main: [24, 3]\n  branch: [24, 5]\n"
                + "points:\n  4: [6, 3]\njoints:\n  approach + junction: [9, 3]\n");
    assertThat(told(result))
        .containsExactly(
            "drawing.yaml:8:24 points 4 comes after the joint approach + junction from left to"
                + " right, and is given a place before it");
    Map<String, Point2D> given = new TreeMap<>();
    given.put("end approach 1", new Point2D.Double(0, 3));
    given.put("end main 1", new Point2D.Double(24, 3));
    given.put("end branch 1", new Point2D.Double(24, 5));
    given.put("points 4", new Point2D.Double(6, 3));
    given.put("end junction 0", new Point2D.Double(9, 3));
    GivenPlacesProperties.kept(given, Drawn.parsed(Pictures.diagram(result, Map.of())));
  }

  @Test
  void lines_above_each_other_at_one_height_are_told() throws IOException {
    assertThat(told(junction("tracks:\n  main: 3\n  branch: 3\n")))
        .containsExactly(
            "drawing.yaml:3:3 track main and track branch are given one height where one lies above"
                + " the other");
  }

  /** Tracks a hair apart would else need a picture many times as high. */
  @Test
  void heights_too_near_to_each_other_are_told() throws IOException {
    List<String> told = told(junction("tracks:\n  main: 3\n  branch: 3.1\n  approach: 90\n"));
    assertThat(told)
        .containsExactly(
            "drawing.yaml:3:3 there is no room between track main and track branch for what stands"
                + " there above and below them");
  }

  private static List<String> told(JsonNode result) {
    return Pictures.withoutRoom(result).stream()
        .peek(p -> assertThat(p.code()).isEqualTo("DRAW-201"))
        .map((Problem p) -> p.span() + " " + p.what())
        .toList();
  }

  /** As on the plan in words at the head of its file: the loop and the yard below the up line. */
  @Test
  void the_large_station_is_drawn_as_its_author_sees_it() {
    JsonNode result = Drawn.proved("pellowmere");
    assertThat(Pictures.withoutRoom(result)).isEmpty();
    Element root = drawn(result);
    List<String> downwards =
        List.of(
            "down siding",
            "down loop",
            "engine siding",
            "bay",
            "platform 1",
            "platform 2",
            "up loop",
            "yard");
    for (int i = 1; i < downwards.size(); i++) {
      assertThat(level(root, downwards.get(i - 1))).isLessThan(level(root, downwards.get(i)));
    }
    assertThat(level(root, "dock")).isEqualTo(level(root, "yard"));
  }
}
