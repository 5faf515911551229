package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;
import lockwright.report.Findings;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A siding on a single line, opened by the token: Board of Trade Requirements, no. 2, as printed in
 * W. H. Mills, Railway Construction (1898). The box and its faults are ours.
 */
class TokenSidingTest {
  private static final String LOCKED = "siding locked: ground frame Pit, section Marl to Holm";
  private static final Box BOX = Boxes.test("token-siding");

  /** The box, with a lock that lets the token go. */
  private static Findings lettingGo() {
    Section held = BOX.sections().get(0);
    return Boxes.check(BOX.withSection(held.withLocks(List.of(new Section.Lock("Pit", false)))));
  }

  @Test
  void the_token_locks_the_siding() {
    Findings findings = Boxes.check(BOX);

    assertThat(findings.passes()).isTrue();
    assertThat(Boxes.of(findings, LOCKED)).isInstanceOf(Audited.Proved.class);
  }

  /** What guards points out in the section is the token; no signal leads over them. */
  @Test
  void no_route_leads_so_far() {
    assertThat(BOX.routes()).allMatch(r -> r.points().isEmpty());
    assertThat(BOX.requirements())
        .hasAtLeastOneElementOfType(Requirement.SidingLocked.class)
        .noneMatch(Requirement.ReleaseHome.class::isInstance);
  }

  /** Its points may then be left open without a token, and so may they be to begin with. */
  @Test
  void a_token_that_the_lock_lets_go_does_not_lock_the_siding() {
    Findings findings = lettingGo();

    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, LOCKED);
    Optional<MissingEntry> draft =
        MissingEntry.draft(findings.box(), broken.requirement(), broken.played());
    assertThat(broken.played().steps()).isEmpty();
    assertThat(broken.played().beginning()).doesNotContainEntry("points P1", "N");
    assertThat(draft.orElseThrow().words())
        .isEqualTo(
            "section Marl to Holm: the token is held in the lock of ground frame Pit while its"
                + " points are open");
  }

  /** Both men withdraw at once; one token opens the siding, and the other sends a train there. */
  @Test
  void a_second_token_out_makes_the_siding_unsafe() {
    Findings findings = Boxes.check(Boxes.test("token-siding-without-consent"));

    assertThat(Boxes.movements(findings, LOCKED))
        .hasSize(5)
        .last()
        .isEqualTo("section Marl to Holm: put a fresh token in the lock of Pit");
  }

  /** Common practice, no source: the signalman has to give his release too. */
  @Test
  void a_lever_and_the_token_lock_the_siding_together() {
    Findings findings = Boxes.check(Boxes.test("siding-by-lever-and-token"));

    assertThat(findings.passes()).isTrue();
    assertThat(Boxes.of(findings, LOCKED)).isInstanceOf(Audited.Proved.class);
  }

  /** The token is held as before, and yet the points may be left open. */
  @Test
  void a_lever_that_goes_home_while_the_points_are_open_does_not_lock_them(@TempDir Path folder)
      throws IOException {
    SpecsOnDisk.copy(SpecsOnDisk.BOXES.resolve("siding-by-lever-and-token"), folder);
    SpecsOnDisk.change(folder, "frame.yaml", "held while open: yes", "held while open: no");

    Findings findings = Boxes.check(Boxes.read(folder));

    assertThat(Boxes.of(findings, LOCKED)).isInstanceOf(Audited.Broken.class);
    assertThat(Boxes.movements(findings, LOCKED)).last().isEqualTo("lever 3 M>N");
  }
}
