package lockwright.report.learner;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/** The script's levers of other kinds, against {@code working}: 2.7 of docs/meaning.md. */
class LearnersLeversTest {
  private static Box box(String name) {
    return BoxBuilder.read(Path.of("src/test/resources/boxes", name)).box().orElseThrow();
  }

  /** The token is for the branch, so the lever for the main line leaves it fresh. */
  @Test
  void a_lever_that_is_for_another_route_does_not_use_the_token() {
    Box box = box("arm-with-two-levers");
    Working working = Working.parted(box);
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      LearnersLockingTest.Compared compared =
          new LearnersLockingTest.Compared(box, working, script);
      State state = compared.state(script.beginning());
      String section = "section Bank to Holm: ";
      for (String key :
          List.of(
              section + "plunge at Holm",
              section + "start a withdrawal at Sallow Bank",
              section + "finish the withdrawal at Sallow Bank",
              "lever 3 N>M",
              "lever 3 M>R",
              "lever 1 N>M")) {
        state = made(compared, state, key);
      }
      assertThat(state.values()).containsEntry(section + "fresh tokens", "1");
      for (String key : List.of("lever 1 M>N", "lever 3 R>M", "lever 3 M>N", "lever 4 N>M")) {
        state = made(compared, state, key);
      }
      for (String key : List.of("lever 4 M>R", "lever 3 N>M", "lever 3 M>R", "lever 2 N>M")) {
        state = made(compared, state, key);
      }
      assertThat(state.values()).containsEntry(section + "fresh tokens", "0");
    }
  }

  private static State made(LearnersLockingTest.Compared compared, State state, String key) {
    Event event =
        compared.free(state).stream()
            .filter(e -> e.key().equals(key))
            .findFirst()
            .orElseThrow(() -> new AssertionError("not free: " + key));
    return compared.make(state, event);
  }

  @Test
  void a_push_pull_lever_goes_one_way_at_a_time() {
    Box box = box("push-pull-shunts");
    Working working = Working.parted(box);
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      LearnersLockingTest.Compared compared =
          new LearnersLockingTest.Compared(box, working, script);
      State state = compared.state(script.beginning());
      Random random = new Random(1905);
      for (int step = 0; step < 200; step++) {
        List<Event> free = compared.free(state);
        state = compared.make(state, free.get(random.nextInt(free.size())));
        assertThat(List.of(state.values().get("lever 5-pull"), state.values().get("lever 5-push")))
            .contains("N");
      }
    }
  }
}
