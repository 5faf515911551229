package lockwright.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * An arm with a control is drawn, and said, as docs/meaning.md 2.9 has it: on, while its control
 * holds it, though its lever is reversed. Signal 2 needs a track circuit and arm 4 at danger, and
 * arm 4 a slot and arm 6 at danger.
 */
class ControlledArmsTest {
  private static final JsonNode BOX =
      Drawn.result(Path.of("src", "test", "resources", "boxes", "every-form"));

  private static String arm(Map<String, String> state, String signal) {
    return Drawn.that(Drawn.parsed(Pictures.diagram(BOX, state)), "data-signal").stream()
        .filter(g -> g.getAttribute("data-signal").equals(signal))
        .map(g -> g.getAttribute("class"))
        .filter(c -> c.startsWith("arm "))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void an_arm_whose_control_lacks_a_condition_is_drawn_on() {
    assertThat(arm(Map.of("lever 2", "R", "condition Platform clear", "met"), "2"))
        .isEqualTo("arm stop off");
    assertThat(arm(Map.of("lever 2", "R", "condition Platform clear", "unmet"), "2"))
        .isEqualTo("arm stop on");
    assertThat(arm(Map.of("lever 2", "M", "condition Platform clear", "unmet"), "2"))
        .isEqualTo("arm stop on");
  }

  /** Lever 4 does not matter as such, but whether its arm is off: held by its slot, it is not. */
  @Test
  void an_arm_that_proves_another_looks_at_that_arm() {
    Map<String, String> off = Map.of("lever 2", "R", "lever 4", "R", "condition Fen slot", "met");
    Map<String, String> on = Map.of("lever 2", "R", "lever 4", "R", "condition Fen slot", "unmet");
    assertThat(arm(off, "2")).isEqualTo("arm stop on");
    assertThat(arm(off, "4")).isEqualTo("arm stop off");
    assertThat(arm(on, "2")).isEqualTo("arm stop off");
    assertThat(arm(on, "4")).isEqualTo("arm stop on");
    assertThat(Pictures.outside(BOX, on)).contains("signal 2 off").doesNotContain("signal 4 off");
  }
}
