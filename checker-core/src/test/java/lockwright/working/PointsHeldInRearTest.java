package lockwright.working;

import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import lockwright.railway.layout.Arm;
import lockwright.railway.requirement.Requirement;
import org.junit.jupiter.api.Test;

/**
 * Either-way locking of points in rear: signal 3 reversed holds points 6, 9 and 10 either way, 14
 * holds 7 and 10, 15 holds 11, so that no second train is turned towards a signal before it is put
 * back. From practitioners' discussion: common practice, no published source. The rule itself is of
 * the Board of Trade Requirements, no. 7, as printed in W. H. Mills, Railway Construction (1898).
 */
class PointsHeldInRearTest {
  private static final Map<String, List<String>> HELD =
      Map.of("3", List.of("6", "9", "10"), "14", List.of("7", "10"), "15", List.of("11"));

  @Test
  void each_signal_holds_its_points_either_way_and_leaves_the_others_free() {
    BruteForce all = BruteForce.of(Working.parted(box("").box()));
    HELD.keySet()
        .forEach(
            signal -> {
              for (String points : List.of("6", "7", "9", "10", "11")) {
                assertThat(all.shortest(held(signal, points)))
                    .as(signal + " and " + points)
                    .isEqualTo(
                        HELD.get(signal).contains(points)
                            ? OptionalInt.empty()
                            : OptionalInt.of(2));
              }
            });
  }

  @Test
  void each_entry_left_out_lets_a_train_be_turned() {
    HELD.forEach(
        (signal, all) -> {
          for (String points : all) {
            String entry = signal + " locks both ways " + points;
            BruteForce rest = BruteForce.of(Working.parted(box(entry).box()));
            assertThat(rest.shortest(held(signal, points))).as("without " + entry).hasValue(2);
          }
        });
  }

  private static Requirement held(String signal, String points) {
    return new Requirement.PointsHeldInRear(signal, points);
  }

  private static HandBox box(String without) {
    HandBox box = new HandBox().routes(route("3", ""));
    HELD.keySet().stream().sorted().forEach(s -> box.signal(s, Arm.STOP));
    List.of("6", "7", "9", "10", "11").forEach(box::points);
    HELD.forEach(
        (signal, all) ->
            all.stream()
                .map(points -> signal + " locks both ways " + points)
                .filter(entry -> !entry.equals(without))
                .forEach(box::locking));
    return box;
  }
}
