package lockwright.report.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lockwright.explain.Asked;
import lockwright.explain.Explanation;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.report.Cautions;
import org.junit.jupiter.api.Test;

/** The lines, on the junction of the Indian Railways Signal Engineering Manual, 12.26.7(c)(iii). */
class ExplanationTextTest {
  private static Box junction() {
    return BoxBuilder.read(Path.of("src", "test", "resources", "boxes", "e1-junction"))
        .box()
        .orElseThrow();
  }

  private static List<String> lines(Box box, String reversed, String partWay, String lever) {
    return ExplanationText.lines(
        Explanation.of(box, Asked.written(reversed, partWay, lever), 1000), "box/");
  }

  @Test
  void a_lever_that_is_held() {
    List<String> expected =
        new ArrayList<>(
            List.of(
                "Alder Fen: lever 3 Bolt of 4, with 3, 1 reversed; all others normal",
                "this state is reached from all levers normal:",
                "  1. pull 3 Bolt of 4",
                "  2. pull 1 Main home",
                "to replace 3 Bolt of 4: back-locked",
                "  held by box/locking.csv:2:3  1 released by 3: 1 stands at R, 3 stands at R",
                "    back lock: 1 is reversed, and needs the release that 3 gives",
                "it is free after 1 movement, and not after fewer, by whole strokes:",
                "  1. replace 1 Main home",
                "  then replace 3 Bolt of 4"));
    expected.addAll(Cautions.ALL);
    assertThat(lines(junction(), "3,1", "", "3")).isEqualTo(expected);
  }

  @Test
  void a_state_that_cannot_be() {
    assertThat(lines(junction(), "1", "", "2"))
        .contains(
            "this state cannot be reached: the locking forbids it",
            "  box/locking.csv:2:3  1 released by 3")
        .noneMatch(l -> l.contains("free after"));
  }

  @Test
  void a_lever_part_way_has_two_ways() {
    assertThat(lines(junction(), "3", "1", "1"))
        .contains(
            "to pull 1 Main home the rest of the way: free",
            "to replace 1 Main home the rest of the way: free");
  }

  /** The label turns its line around and has an escape of terminals. */
  @Test
  void words_of_the_author_move_nothing_on_the_console() {
    Box box = junction();
    List<Lever> levers = new ArrayList<>(box.frame().levers());
    Lever first = levers.get(0);
    levers.set(0, new Lever(first.id(), "a\u202eb\u001b[2J", first.work(), first.at()));
    Box hostile =
        new Box(
            box.name() + "\u001b",
            box.layout(),
            new Frame(levers),
            box.locking(),
            box.sections(),
            box.routes(),
            box.notSignalled(),
            box.conflicts(),
            box.distantPaths(),
            box.requirements());
    assertThat(String.join("", lines(hostile, "3", "", "1")))
        .contains("a\\u202eb\\u001b[2J")
        .doesNotContain("\u202e", "\u001b");
    assertThat(ExplanationText.faults(Asked.written("\u001b", "", "1").faults(hostile)))
        .containsExactly(
            "lockwright.reversed",
            "  what: the frame has no lever '\\u001b'",
            "  fix:  its levers are 1, 2, 3, 4");
  }
}
