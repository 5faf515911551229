package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lockwright.audit.Audited;
import lockwright.explain.Asked;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Position;
import lockwright.railway.words.Event.LeverMoves;
import lockwright.report.Findings;
import lockwright.report.LeverWords;
import lockwright.report.MovementWords;
import lockwright.testsheet.TestSheet;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Push-pull levers; {@code docs/meaning.md} 2.7. Common practice, no source. The box and its
 * locking are ours.
 */
class PushPullTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "boxes", "push-pull-shunts");
  private static final String APART = "no conflict: signals 2 and 3";
  private static final Box BOX = Boxes.test("push-pull-shunts");

  private static Path changed(Path to, String... pairs) throws IOException {
    for (String name : List.of("plan.yaml", "frame.yaml", "locking.csv")) {
      String text = Files.readString(FOLDER.resolve(name));
      for (int i = 0; i < pairs.length; i += 2) {
        text = text.replace(pairs[i], pairs[i + 1]);
      }
      Files.writeString(to.resolve(name), text);
    }
    return to;
  }

  @Test
  void a_lever_that_is_pulled_is_not_pushed_and_no_entry_need_say_so() {
    Findings findings = Boxes.check(BOX);

    assertThat(findings.passes()).isTrue();
    assertThat(Boxes.of(findings, APART)).isInstanceOf(Audited.Proved.class);
    assertThat(findings.decidedBy().get(APART)).isEqualTo("written invariants");
  }

  @Test
  void two_levers_in_its_place_need_an_entry(@TempDir Path folder) throws IOException {
    Box two =
        Boxes.read(
            changed(
                folder,
                "5: {pull: {signal: 2, label: Into the yard}, push: {signal: 3, label: Out of the"
                    + " yard}}",
                "5: {signal: 2}\n  6: {signal: 3}",
                "5-pull",
                "5",
                "5-push",
                "6"));

    assertThat(Boxes.movements(Boxes.check(two), APART)).hasSize(2);
  }

  @Test
  void the_other_way_is_held_until_the_lever_is_back_in_the_middle() {
    Working working = Working.parted(BOX);
    State state = working.beginnings().iterator().next();
    LeverMoves push = new LeverMoves("5-push", Position.N, Position.M);
    assertThat(working.free(state, push)).isTrue();
    state = working.make(state, new LeverMoves("5-pull", Position.N, Position.M));
    assertThat(working.free(state, push)).isFalse();
    assertThat(working.holds(state, push).get(0).words()).contains("back to the middle");
    state = working.make(state, new LeverMoves("5-pull", Position.M, Position.N));
    assertThat(working.free(state, push)).isTrue();
  }

  @Test
  void movements_are_told_as_they_are_made() {
    MovementWords words = new MovementWords(BOX, false);
    assertThat(words.of(new LeverMoves("5-pull", Position.N, Position.R)))
        .isEqualTo("pull 5 Into the yard");
    assertThat(words.of(new LeverMoves("5-push", Position.N, Position.M)))
        .isEqualTo("push 5 Out of the yard part-way");
    assertThat(words.of(new LeverMoves("5-push", Position.M, Position.N)))
        .isEqualTo("put 5 Out of the yard back the rest of the way to the middle");
    assertThat(LeverWords.of("5-push", "", "R", "N")).isEqualTo("put 5 back to the middle");
    assertThat(LeverWords.of("5", "", "R", "M")).isEqualTo("replace 5 part-way");
  }

  @Test
  void a_way_is_no_more_locked_by_the_other_than_a_lever_by_itself(@TempDir Path folder)
      throws IOException {
    BoxBuilder.Built built =
        BoxBuilder.read(changed(folder, "5-push;4;", "5-push;4;\n5-push;5-pull;"));

    assertThat(built.problems()).hasSize(1);
    assertThat(built.problems().get(0).code()).isEqualTo("LOCK-106");
  }

  @Test
  void nobody_asks_about_a_lever_that_is_pulled_and_pushed() {
    assertThat(Asked.written("5-pull 5-push", null, "4").faults(BOX))
        .singleElement()
        .satisfies(
            f -> assertThat(f.what()).isEqualTo("lever 5 cannot be pulled and pushed at once"));
    assertThat(Asked.written("5-pull", null, "5-push").faults(BOX)).isEmpty();
  }

  @Test
  void every_entry_of_each_way_is_on_the_test_sheet() {
    TestSheet sheet = TestSheet.of(BOX, 10_000, p -> {});
    assertThat(sheet.notTried()).isEmpty();
    assertThat(sheet.lines().stream().map(l -> l.stroke().lever())).contains("5-pull", "5-push");
  }
}
