package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.report.Findings;
import lockwright.report.readback.ReadBack;
import org.junit.jupiter.api.Test;

/**
 * Overlaps. Source: Indian Railways Signal Engineering Manual, para 7.6.1(a): a signal cannot be
 * taken off unless the points of route, overlap and isolation are set (read). That two overlaps as
 * they lie do not meet is common practice, no source.
 */
class OverlapsTest {
  private static final String SET = "overlap set: route 1 to outer";
  private static final String APART = "overlaps apart: signals 1 and 3";
  private static final Box WHOLE = Boxes.test("overlap-beyond-the-home");

  private static Findings without(String kind, String lever, String other) {
    List<Entry> less =
        WHOLE.locking().stream()
            .map(
                e ->
                    e.words().startsWith(lever + " " + kind) && e.others().equals(List.of(other))
                        ? null
                        : e)
            .filter(e -> e != null)
            .toList();
    assertThat(less).hasSize(WHOLE.locking().size() - 1);
    return Boxes.check(WHOLE.withLocking(less));
  }

  @Test
  void the_box_that_holds_the_overlap_as_it_lies_is_proved() {
    Findings findings = Boxes.check(WHOLE);
    assertThat(findings.failing()).isEmpty();
    assertThat(Boxes.of(findings, SET)).isInstanceOf(Audited.Proved.class);
    assertThat(Boxes.of(findings, APART)).isInstanceOf(Audited.Proved.class);
  }

  @Test
  void points_beyond_the_home_that_are_free_leave_no_overlap_lying() {
    Findings findings = without("locks", "1", "5");
    assertThat(findings.failing().stream().map(a -> a.requirement().id())).containsExactly(SET);
    assertThat(Boxes.movements(findings, SET)).hasSize(2);
  }

  @Test
  void an_arm_that_reads_into_the_overlap_is_kept_on_by_an_entry_that_is_named() {
    Findings findings = without("locks", "1", "3");
    assertThat(findings.failing().stream().map(a -> a.requirement().id())).containsExactly(APART);
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, APART);
    assertThat(MissingEntry.draft(findings.box(), broken.requirement(), broken.played()))
        .map(MissingEntry::words)
        .contains("1 locks 3");
  }

  @Test
  void the_read_back_lists_each_overlap_with_its_points() {
    assertThat(ReadBack.text(WHOLE).replaceAll("\\s+", " "))
        .contains("overlap neck, road 2 overlap, points P R, facing");
  }
}
