package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lockwright.railway.Box;
import lockwright.railway.layout.Conflict;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Findings;
import lockwright.report.readback.ReadBack;
import org.junit.jupiter.api.Test;

/** A box that can be switched out; `docs/meaning.md` 2.5. The box and its locking are ours. */
class ClosingLeverTest {
  private static final Box BOX = Boxes.test("opposed-through-signals");

  private static Findings without(String entry) {
    List<Entry> kept = BOX.locking().stream().filter(e -> !e.words().equals(entry)).toList();
    assertThat(kept).as(entry).hasSize(BOX.locking().size() - 1);
    return Boxes.check(BOX.withLocking(kept));
  }

  @Test
  void opposed_through_signals_may_be_off_together_only_with_the_lever_over() {
    Findings findings = Boxes.check(BOX);

    assertThat(findings.passes()).isTrue();
    assertThat(findings.audited().stream().map(a -> a.requirement().name()))
        .contains("no conflict")
        .doesNotContain("box closed");
  }

  @Test
  void an_entry_that_waits_for_the_lever_to_be_over_is_needed_while_it_is_not() {
    assertThat(Boxes.movements(without("1 locks 9 when 3 N"), "no conflict: signals 1 and 9"))
        .containsExactly("lever 1 N>M", "lever 9 N>M");
  }

  @Test
  void each_pair_is_opposed_and_under_the_lever() {
    Box box = Boxes.test("opposed-through-signals");
    assertThat(box.conflicts()).hasSize(3).allMatch(Conflict::opposed);
    assertThat(box.requirements().stream().filter(Requirement.NoConflict.class::isInstance))
        .allMatch(r -> ((Requirement.NoConflict) r).closing().equals(Optional.of("3")));
  }

  @Test
  void the_read_back_tells_which_goes_first() {
    assertThat(ReadBack.csv(BOX))
        .contains(
            "through signals 1, 2, 8, 9; it goes over first, since some of these have opposed");
    assertThat(ReadBack.csv(Boxes.example("proved/pellowmere")))
        .contains("its signals go off first, and it goes over last");
  }
}
