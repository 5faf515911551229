package lockwright.working;

import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.words.Event;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When the wire of an arm is free, docs/meaning.md 2.8: in each state, by hand. That there are
 * means for detecting any failure in the connections of facing points is Board of Trade
 * Requirements, no. 5, as printed in W. H. Mills, Railway Construction (1898); how a slide bars a
 * wire is common practice, no source.
 */
class DetectionTest {
  /** Arm 1 leads over 4 and 5 as they lie for one way or another, or over 4 alone. */
  private static HandBox junction() {
    return new HandBox()
        .signal("1", Arm.STOP)
        .bolt("3", "4", false)
        .points("4")
        .points("5")
        .routes(route("1", "4N 5N"), route("1", "4R"));
  }

  /** Lever 3 reversed puts the bolt of 4 in. */
  @ParameterizedTest
  @CsvSource({
    "4 5, R N N, true",
    "4 5, N N N, false",
    "4 5, M N N, false",
    "4 5, R M N, false",
    "4 5, R N M, false",
    "4 5, R N R, false",
    "4 5, R R N, true",
    "4 5, R R M, true",
    "4 5, R R R, true",
    "4,   N N N, false",
    "4,   R N M, true",
    "5,   N N N, true",
    "5,   N M R, false",
    "5,   N R R, true",
  })
  void each_detector_bars_the_wire_by_itself(String detected, String levers, boolean free) {
    assertThat(leavesNormal(junction().detection("1", detected.split(" ")), levers, true))
        .isEqualTo(free);
  }

  /** The detectors of two points do not know of each other: 4 N with 5 R is no route here. */
  @ParameterizedTest
  @CsvSource({
    "R N N, true, true",
    "R R R, true, true",
    "R N R, true, false",
    "R M R, false, false"
  })
  void only_for_possibility_all_lie_for_one_route(String levers, boolean most, boolean least) {
    HandBox box =
        new HandBox()
            .signal("1", Arm.STOP)
            .bolt("3", "4", false)
            .points("4")
            .points("5")
            .routes(route("1", "4N 5N"), route("1", "4R 5R"))
            .detection("1", "4", "5");
    assertThat(leavesNormal(box, levers, true)).isEqualTo(most);
    assertThat(leavesNormal(box, levers, false)).isEqualTo(least);
  }

  @ParameterizedTest
  @CsvSource({"N, true", "M, false", "R, true"})
  void an_economical_lock_is_detected_too(String points, boolean free) {
    HandBox box =
        new HandBox()
            .signal("1", Arm.STOP)
            .economical("4")
            .routes(route("1", "4N"), route("1", "4R"))
            .detection("1", "4");
    assertThat(leavesNormal(box, points, true)).isEqualTo(free);
  }

  /** Once the wire is pulled the detector bars nothing: 4 and its bolt go, and the arm comes on. */
  @ParameterizedTest
  @CsvSource({"M, R", "M, N", "R, M"})
  void it_is_tested_only_as_the_lever_leaves_normal(Position from, Position to) {
    Working working = Working.parted(junction().detection("1", "4").box());
    State state = state(working, "N M M", from.name());
    assertThat(working.free(state, new Event.LeverMoves("1", from, to))).isTrue();
  }

  private static boolean leavesNormal(HandBox hand, String levers, boolean parted) {
    Working working = parted ? Working.parted(hand.box()) : Working.whole(hand.box());
    State state = state(working, levers, "N");
    Position to = parted ? Position.M : Position.R;
    return working.free(state, new Event.LeverMoves("1", Position.N, to));
  }

  /** The levers after that of the arm, in their order. */
  private static State state(Working working, String levers, String arm) {
    Map<String, String> values = new TreeMap<>();
    String[] stand = (arm + " " + levers).split(" ");
    assertThat(working.quantities()).hasSameSizeAs(Arrays.asList(stand));
    for (int i = 0; i < stand.length; i++) {
      values.put(working.quantities().get(i).key(), stand[i]);
    }
    return working.state(values);
  }
}
