package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import lockwright.audit.Audited;
import lockwright.railway.Box;
import lockwright.railway.frame.Connections;
import lockwright.report.Findings;
import lockwright.report.readback.ReadBack;
import org.junit.jupiter.api.Test;

/**
 * What the detection of points is for; `docs/meaning.md` 2.8. Board of Trade Requirements, no. 5,
 * as printed in W. H. Mills, Railway Construction (1898): facing points have means for detecting
 * any failure in the connections between them and the cabin. The boxes are ours.
 */
class DetectedPointsTest {
  private static final Box GROUND_FRAME = Boxes.test("ground-frame-detected");

  /** The release does not hold the points normal; the wire of the arm sees how they lie. */
  @Test
  void points_left_open_at_a_ground_frame_bar_the_wire_of_the_arm() {
    Findings findings = Boxes.check(GROUND_FRAME);

    assertThat(findings.passes()).isTrue();
    assertThat(Boxes.of(findings, "points set: signal 1")).isInstanceOf(Audited.Proved.class);
  }

  @Test
  void without_detection_the_arm_comes_off_over_them() {
    Findings findings = Boxes.check(GROUND_FRAME.withConnections(Connections.PLAIN));

    assertThat(Boxes.movements(findings, "points set: signal 1")).containsExactly("lever 1 N>M");
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, "points set: signal 1");
    assertThat(broken.played().beginning()).doesNotContainEntry("points 4", "N");
  }

  @Test
  void the_read_back_tells_what_is_detected() {
    assertThat(ReadBack.csv(GROUND_FRAME)).contains("signal 1, with detection of points 4");
  }
}
