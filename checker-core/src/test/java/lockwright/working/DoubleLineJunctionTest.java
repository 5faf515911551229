package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lockwright.railway.layout.Arm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Double-line junction: W. H. Mills, Railway Construction (1898), ch. VII, fig. 498 (text read to a
 * cut, figure not seen). Printed are the levers of each movement, which are then free, which are
 * locked meanwhile and which are free at the same time. The locking below, and what each signal
 * lever works, is ours: the source prints results, not a table. 8 bolts 9, the facing points; 12
 * are the trailing points. Of the main to the branch the columns were not read, nor of the main
 * line back.
 */
class DoubleLineJunctionTest {
  private static final Working JUNCTION = junction();

  private static Working junction() {
    HandBox box = new HandBox();
    List.of("1", "2", "4", "5", "6").forEach(s -> box.signal(s, Arm.STOP));
    box.bolt("8", "9", false).points("9").points("12");
    List.of("13", "14", "15", "16", "17").forEach(s -> box.signal(s, Arm.STOP));
    return Working.parted(
        box.locking(
                "8 locks both ways 9",
                "5 released by 8",
                "5 locks 9",
                "4 released by 5",
                "2 released by 8",
                "2 released by 9",
                "1 released by 2",
                "14 released by 12",
                "15 released by 14",
                "16 locks 12",
                "17 released by 16",
                "5 locks 14")
            .box());
  }

  @Test
  void main_line_outwards() {
    Frames set = Frames.pulled(JUNCTION, "8", "5", "4", "6");
    assertThat(List.of("2", "1", "14", "15")).noneMatch(set::free);
    assertThat(List.of("12", "16", "13")).allMatch(set::free);
    Frames.pulled(JUNCTION, "8", "5", "4", "6", "16", "17", "13");
    Frames otherWay = Frames.pulled(JUNCTION, "8", "5", "4", "6", "12");
    assertThat(List.of("2", "1", "14", "15")).noneMatch(otherWay::free);
  }

  @Test
  void branch_inwards() {
    Frames set = Frames.pulled(JUNCTION, "12", "14", "15");
    assertThat(List.of("5", "4", "16", "17")).noneMatch(set::free);
    assertThat(List.of("9", "8")).allMatch(set::free);
    Frames.pulled(JUNCTION, "12", "14", "15", "9", "8", "2", "1");
    Frames bolted = Frames.pulled(JUNCTION, "12", "14", "15", "8");
    assertThat(List.of("5", "4", "16", "17")).noneMatch(bolted::free);
  }

  /** The first five pairs are printed; the last is by the geometry of the drawing, ours. */
  @ParameterizedTest
  @CsvSource({
    "5, 2, false",
    "5, 14, false",
    "14, 16, false",
    "5, 16, true",
    "2, 14, true",
    "2, 16, true"
  })
  void signals_of_conflicting_movements_are_never_off_together(
      String one, String other, boolean together) {
    Working w = JUNCTION;
    int first = place(w, one);
    int second = place(w, other);
    boolean[] seen = {false};
    BruteForce.of(w)
        .forEach(s -> seen[0] |= s.value(first).equals("R") && s.value(second).equals("R"));
    assertThat(seen[0]).isEqualTo(together);
  }

  private static int place(Working working, String lever) {
    return working.quantities().stream().map(q -> q.key()).toList().indexOf("lever " + lever);
  }
}
