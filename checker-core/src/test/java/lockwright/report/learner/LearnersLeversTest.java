package lockwright.report.learner;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.working.State;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/** The script's levers of other kinds, against {@code working}: 2.7 of docs/meaning.md. */
class LearnersLeversTest {
  private static final String SECTION = "section Bank to Holm: ";
  private static final String FRESH = SECTION + "fresh tokens";

  private static void compared(String name, Consumer<LearnersLockingTest.Compared> test) {
    Box box = BoxBuilder.read(Path.of("src/test/resources/boxes", name)).box().orElseThrow();
    Working working = Working.parted(box);
    try (Scripted script =
        new Scripted(box, working.quantities().stream().map(Quantity::key).toList())) {
      test.accept(new LearnersLockingTest.Compared(box, working, script));
    }
  }

  private static State beginning(LearnersLockingTest.Compared compared) {
    return compared.state(compared.script().beginning());
  }

  /** The token is for the branch, so the lever for the main line leaves it fresh. */
  @Test
  void a_lever_that_is_for_another_route_does_not_use_the_token() {
    compared(
        "arm-with-two-levers",
        compared -> {
          State state = made(compared, beginning(compared), withdrawn("Sallow Bank"));
          state = made(compared, state, List.of("lever 3 N>M", "lever 3 M>R", "lever 1 N>M"));
          assertThat(state.values()).containsEntry(FRESH, "1");
          state = made(compared, state, List.of("lever 1 M>N", "lever 3 R>M", "lever 3 M>N"));
          state = made(compared, state, List.of("lever 4 N>M", "lever 4 M>R"));
          state = made(compared, state, List.of("lever 3 N>M", "lever 3 M>R", "lever 2 N>M"));
          assertThat(state.values()).containsEntry(FRESH, "0");
        });
  }

  /** The same with an arm that its control puts off while the lever stands over. */
  @Test
  void nor_does_a_control_that_puts_the_arm_off_for_another_route() {
    compared(
        "two-levers-detected-and-controlled",
        compared -> {
          State state = made(compared, beginning(compared), withdrawn("Sallow Cutting"));
          state = with(compared, state, "condition Slot", "unmet");
          state = made(compared, state, List.of("lever 1 N>M", "condition Slot: becomes met"));
          assertThat(state.values()).containsEntry(FRESH, "1");
          state = made(compared, state, List.of("lever 1 M>N", "condition Slot: ceases to be met"));
          state = made(compared, state, List.of("lever 4 N>M", "lever 4 M>R", "lever 2 N>M"));
          assertThat(state.values()).containsEntry(FRESH, "1");
          state = made(compared, state, List.of("condition Slot: becomes met"));
          assertThat(state.values()).containsEntry(FRESH, "0");
        });
  }

  private static List<String> withdrawn(String here) {
    return List.of(
        SECTION + "plunge at Holm",
        SECTION + "start a withdrawal at " + here,
        SECTION + "finish the withdrawal at " + here);
  }

  private static State with(
      LearnersLockingTest.Compared compared, State state, String quantity, String value) {
    Map<String, String> values = new TreeMap<>(state.values());
    values.put(quantity, value);
    return compared.working().state(values);
  }

  private static State made(LearnersLockingTest.Compared compared, State state, List<String> keys) {
    State now = state;
    for (String key : keys) {
      now = made(compared, now, key);
    }
    return now;
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
    compared(
        "push-pull-shunts",
        compared -> {
          State state = beginning(compared);
          Random random = new Random(1905);
          for (int step = 0; step < 200; step++) {
            List<Event> free = compared.free(state);
            state = compared.make(state, free.get(random.nextInt(free.size())));
            Map<String, String> values = state.values();
            assertThat(List.of(values.get("lever 5-pull"), values.get("lever 5-push")))
                .contains("N");
          }
        });
  }
}
