package lockwright.testsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import lockwright.check.RandomBox;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.walk.Walks;
import lockwright.working.BruteForce;
import lockwright.working.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/**
 * Sheets of random boxes: the right frame passes, however unmarked pieces hold; a frame without an
 * entry fails, or the entry is named as not tried alone; and so does one without a contact of a
 * lever lock or an arm control.
 */
class TestSheetProperties {
  private static final Map<String, Integer> COUNTED = new TreeMap<>();

  @Property(tries = 80, seed = "1856", shrinking = ShrinkingMode.OFF)
  void a_sheet_passes_the_right_frame_and_fails_a_wrong_one(@ForAll long seed) {
    Box box = RandomBox.of(new Random(seed));
    TestSheet sheet = TestSheet.of(box, Walks.USUAL, p -> {});
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
    for (RuleLine line : sheet.rules().lines()) {
      if (!line.free() && line.trial().tried() instanceof RuleTrial.AtLever) {
        COUNTED.merge("rule tried", 1, Integer::sum);
        Optional<RuleTrial> missing = Optional.of(line.trial());
        assertThat(TriedFrame.failures(Working.parted(box), missing, sheet)).isNotEmpty();
        // By whole strokes detectors bar the wire by another rule besides.
        if (!line.trial().wanting().get().contains("detector")) {
          assertThat(TriedFrame.failures(Working.whole(box), missing, sheet)).isNotEmpty();
        }
      }
    }
    for (WithoutContact wrong : WithoutContact.all(box)) {
      if (wrong.triedOn(sheet)) {
        COUNTED.merge("contact tried", 1, Integer::sum);
        assertThat(TriedFrame.failures(Working.parted(wrong.box()), sheet))
            .as(wrong.words())
            .isNotEmpty();
      } else {
        COUNTED.merge("contact not tried", 1, Integer::sum);
        assertThat(wrong.namedOn(sheet)).as(wrong.words()).isTrue();
        assertThat(makesADifference(box, wrong)).as(wrong.words()).isFalse();
      }
    }
  }

  /** Whether, in any state that is reached, the contact alone holds the lever, or the arm on. */
  private static boolean makesADifference(Box box, WithoutContact wrong) {
    Working right = Working.parted(box);
    Working less = Working.parted(wrong.box());
    boolean[] found = new boolean[1];
    BruteForce.of(Working.whole(box))
        .forEach(
            0,
            1,
            state ->
                found[0] |=
                    wrong
                        .lever()
                        .map(half -> less.free(state, half) && !right.free(state, half))
                        .orElseGet(
                            () ->
                                less.surelyOff(wrong.of()).evaluate(state)
                                    && !right.off(wrong.of()).evaluate(state)));
    return found[0];
  }

  @AfterContainer
  static void each_kind_was_covered_and_some_were_not() {
    System.out.println("sheets of random boxes: " + COUNTED);
    for (Entry.Kind kind : Entry.Kind.values()) {
      assertThat(COUNTED.getOrDefault("covered: " + kind, 0)).as(kind.words()).isPositive();
    }
    assertThat(COUNTED.get("not covered")).isGreaterThan(5);
    assertThat(COUNTED.get("rule tried")).isGreaterThan(20);
    assertThat(COUNTED.get("contact tried")).isGreaterThan(5);
    assertThat(COUNTED.get("contact not tried")).isGreaterThan(5);
  }
}
