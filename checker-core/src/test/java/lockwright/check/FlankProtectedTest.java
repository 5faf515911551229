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
 * Flank protection beyond traps. Sources: Board of Trade Requirements, on safety points at the
 * junctions of goods lines and sidings with passenger lines (from memory); Indian Railways Signal
 * Engineering Manual, para 7.6.1(a), isolation (read). That points into a spur do for a trap is
 * common practice, no source.
 */
class FlankProtectedTest {
  private static final String FLANK = "flank protected: signal 1, from loop";

  @Test
  void points_that_lead_into_a_spur_protect_the_main_line() {
    Findings findings = Boxes.check(Boxes.test("goods-loop-with-spur"));
    assertThat(findings.failing()).isEmpty();
    assertThat(Boxes.of(findings, FLANK)).isInstanceOf(Audited.Proved.class);
  }

  @Test
  void without_the_lock_on_them_the_main_line_is_open_and_the_entry_is_named() {
    Box whole = Boxes.test("goods-loop-with-spur");
    List<Entry> less =
        whole.locking().stream().filter(e -> !e.words().equals("1 locks 4")).toList();
    assertThat(less).hasSize(whole.locking().size() - 1);
    Box box = whole.withLocking(less);
    Findings findings = Boxes.check(box);
    assertThat(findings.failing().stream().map(a -> a.requirement().id())).containsExactly(FLANK);
    assertThat(Boxes.movements(findings, FLANK)).hasSize(2);
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, FLANK);
    assertThat(MissingEntry.draft(box, broken.requirement(), broken.played()))
        .map(MissingEntry::words)
        .contains("1 locks 4");
  }

  /** The signal of a goods loop does not do for points or a trap, that of the main line does. */
  @Test
  void the_read_back_says_what_protects_each_flank() {
    String text = ReadBack.text(Boxes.test("goods-loop-with-spur")).replaceAll("\\s+", " ");
    assertThat(text)
        .contains(
            "from loop at points B protected by points A N, away from the route; not by signal 2,"
                + " since a siding or goods line joins a passenger line")
        .contains("protected by signal 1 at danger, as far as drivers obey it");
  }
}
