package lockwright.testsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import lockwright.check.RandomBox;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.walk.Walks;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * Sheets of random boxes: the right frame passes, however unmarked pieces hold; a frame without an
 * entry fails, or the entry is named as not tried alone.
 */
class TestSheetProperties {
  private static final Map<String, Integer> COUNTED = new TreeMap<>();

  @Property(tries = 80, seed = "1856", shrinking = ShrinkingMode.OFF)
  void a_sheet_passes_the_right_frame_and_fails_a_wrong_one(@ForAll long seed) {
    Box box = RandomBox.of(new Random(seed));
    TestSheet sheet = TestSheet.of(box, Walks.USUAL);
    assertThat(sheet.all()).isTrue();
    assertThat(TriedFrame.failures(Working.parted(box), sheet)).isEmpty();
    assertThat(TriedFrame.failures(Working.whole(box), sheet)).isEmpty();
    for (Entry entry : box.locking()) {
      List<Entry> others = new ArrayList<>(box.locking());
      others.remove(entry);
      Working allHold = Working.whole(box.withLocking(others));
      if (sheet.coversHeld(entry)) {
        COUNTED.merge("covered: " + entry.kind(), 1, Integer::sum);
        assertThat(TriedFrame.failures(allHold, sheet)).as(entry.words()).isNotEmpty();
        assertThat(TriedFrame.failures(Working.parted(box, entry), sheet))
            .as(entry.words())
            .isNotEmpty();
      } else {
        COUNTED.merge("not covered", 1, Integer::sum);
        assertThat(sheet.notTried()).anyMatch(n -> n.trial().entry().equals(entry));
      }
    }
  }

  @AfterContainer
  static void each_kind_was_covered_and_some_were_not() {
    for (Entry.Kind kind : Entry.Kind.values()) {
      assertThat(COUNTED.getOrDefault("covered: " + kind, 0)).as(kind.words()).isPositive();
    }
    assertThat(COUNTED.get("not covered")).isGreaterThan(5);
  }
}
