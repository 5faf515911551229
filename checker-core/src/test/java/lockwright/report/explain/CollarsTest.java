package lockwright.report.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import lockwright.explain.Asked;
import lockwright.explain.Collars;
import lockwright.explain.Explanation;
import lockwright.explain.Held;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import org.junit.jupiter.api.Test;

/** Collars on levers; docs/meaning.md 2.7. Common practice, no source. */
class CollarsTest {
  private static final Box JUNCTION = box("e1-junction");
  private static final int MOST = 1000;

  private static Box box(String name) {
    return BoxBuilder.read(Path.of("src", "test", "resources", "boxes", name)).box().orElseThrow();
  }

  private static Explanation explained(Box box, String reversed, String lever, String collars) {
    Asked asked = Asked.written(reversed, null, lever, collars);
    assertThat(asked.faults(box)).isEmpty();
    return Explanation.of(box, asked, MOST);
  }

  private static List<String> left(Box box, String reversed, String collars) {
    Explanation explanation = explained(box, reversed, null, collars);
    return ExplanationText.lines(explanation, Collars.of(explanation, MOST));
  }

  @Test
  void a_route_is_cleared_without_the_lever_that_has_a_collar() {
    assertThat(left(JUNCTION, "", "1"))
        .containsExactly(
            "with collars on 1, by whole strokes from this state (a collar reminds; nothing is proved"
                + " of it):",
            "  route 1 to main: cannot be cleared",
            "  route 2 to branch: by pull 4 Junction points, pull 3 Bolt of 4, pull 2 Branch home");
  }

  @Test
  void a_lever_is_held_where_it_stands() {
    assertThat(left(JUNCTION, "4", "4"))
        .contains(
            "  route 1 to main: cannot be cleared",
            "  route 2 to branch: by pull 3 Bolt of 4, pull 2 Branch home");
    assertThat(left(JUNCTION, "3 1", "3 1")).contains("  route 1 to main: is cleared");
  }

  @Test
  void a_lever_with_a_collar_will_not_move_and_nothing_frees_it() {
    Explanation explanation = explained(JUNCTION, "", "3", "3");

    assertThat(explanation.ways().get(0).free()).isFalse();
    assertThat(explanation.ways().get(0).heldBy().stream().map(Held::rule))
        .containsExactly("a collar on it");
    assertThat(explanation.freeing()).isEmpty();
    assertThat(ExplanationText.lines(explanation, "box/"))
        .contains("Alder Fen: lever 3 Bolt of 4, with all levers normal; collars on 3")
        .contains("  held by a collar on it");
  }

  /** Lever 1 back-locks the bolt; with a collar on it, the bolt cannot be freed. */
  @Test
  void what_frees_another_lever_moves_none_with_a_collar() {
    assertThat(ExplanationText.lines(explained(JUNCTION, "3,1", "3", null), "box/"))
        .contains("  1. replace 1 Main home");
    assertThat(ExplanationText.lines(explained(JUNCTION, "3,1", "3", "1"), "box/"))
        .anyMatch(line -> line.startsWith("no sequence of whole strokes ever frees it"));
  }

  @Test
  void in_a_state_that_cannot_be_nothing_is_looked_for() {
    assertThat(left(JUNCTION, "1", "1")).hasSize(1).first().asString().contains("cannot be");
  }

  @Test
  void a_collar_on_no_lever_is_told() {
    assertThat(
            Asked.written("", "", "3", "33 4 4").faults(JUNCTION).stream().map(Asked.Fault::what))
        .containsExactly("the frame has no lever '33'", "lever 4 is named twice");
  }
}
