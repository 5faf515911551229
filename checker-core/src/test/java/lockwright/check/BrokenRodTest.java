package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.Box;
import lockwright.railway.frame.Connections;
import lockwright.railway.frame.Detection;
import lockwright.report.Findings;
import lockwright.report.Sequence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What comes of a broken rod; `docs/meaning.md` 2.8. Board of Trade Requirements, no. 5, as printed
 * in W. H. Mills, Railway Construction (1898): there are means for detecting any failure in the
 * connections between cabin and points; and the same book on what a signalman does in ignorance of
 * a breakage: he pulls his signal lever. The box and its locking are ours.
 */
class BrokenRodTest {
  private static final Box BOX = Boxes.test("broken-rod");

  private static Box with(List<Detection> detections, String... rods) {
    return BOX.withConnections(new Connections(detections, List.of(rods), List.of()));
  }

  /** Every arm is kept at on whose blades do not lie for it, though its levers stand right. */
  @Test
  void with_detection_no_arm_comes_off_over_points_that_have_not_followed_their_lever() {
    Findings findings = Boxes.check(BOX);

    assertThat(findings.passes()).isTrue();
    assertThat(Boxes.of(findings, "points set: signal 2")).isInstanceOf(Audited.Proved.class);
    assertThat(findings.decidedBy().values()).doesNotContain("property directed reachability");
  }

  /**
   * Shortest by hand: the rod, four half-strokes of points and bolt, one of the signal. That the
   * rod breaks before all is as short; the order of 7 puts movements of levers first.
   */
  @ParameterizedTest
  @ValueSource(strings = {"2", "5"})
  void without_detection_the_lever_goes_over_and_the_points_do_not(String signal) {
    Findings findings = Boxes.check(with(List.of(), "4"));

    assertThat(Boxes.movements(findings, "points set: signal " + signal))
        .containsExactly(
            "lever 4 N>M",
            "rod of 4 breaks at M",
            "lever 4 M>R",
            "lever 3 N>M",
            "lever 3 M>R",
            "lever " + signal + " N>M");
  }

  /** With the lever back at N the arm leads over points that stay part-way, or reverse. */
  @Test
  void points_left_part_way_are_found_too() {
    Findings findings = Boxes.check(with(List.of(), "4"));

    assertThat(Boxes.movements(findings, "points set: signal 1"))
        .containsExactly(
            "lever 4 N>M",
            "rod of 4 breaks at M",
            "lever 4 M>N",
            "lever 3 N>M",
            "lever 3 M>R",
            "lever 1 N>M");
  }

  /** No entry of the table stops it: the levers stand right. */
  @Test
  void the_draft_of_what_is_missing_is_a_detector() {
    Findings findings = Boxes.check(with(List.of(), "4"));
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, "points set: signal 2");

    Optional<MissingEntry> draft =
        MissingEntry.draft(findings.box(), broken.requirement(), broken.played());
    assertThat(draft).map(MissingEntry::words).contains("the wire of lever 2 detects points 4");
    assertThat(Sequence.of(findings.box(), broken.played()).text())
        .extracting(line -> line.strip().replaceAll(" {2,}", " | "))
        .containsExactly(
            "beginning: all levers normal",
            "1. pull 4 Junction points part-way | points 4 lie neither way",
            "2. the rod of points 4 breaks | points 4 stay neither way",
            "3. pull 4 Junction points the rest of the way | points 4 stay neither way",
            "4. pull 3 Bolt of 4 | bolt of 4 in",
            "5. pull 2 Branch home part-way | signal 2 part-way, taken as off");
  }

  @Test
  void with_the_fault_off_the_same_locking_is_enough() {
    assertThat(Boxes.check(with(List.of())).passes()).isTrue();
  }

  /** Only the arm that detects them is kept at on. */
  @Test
  void detection_by_one_arm_says_nothing_for_another() {
    Detection one = BOX.frame().connections().detections().get(0);
    Findings findings = Boxes.check(with(List.of(one), "4"));

    assertThat(Boxes.of(findings, "points set: signal 1")).isInstanceOf(Audited.Proved.class);
    assertThat(Boxes.of(findings, "points set: signal 2")).isInstanceOf(Audited.Broken.class);
  }
}
