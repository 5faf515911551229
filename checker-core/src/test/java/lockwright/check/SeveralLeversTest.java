package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.railway.Box;
import lockwright.railway.locking.Entry;
import lockwright.railway.section.Section;
import lockwright.report.Findings;
import lockwright.report.Rule;
import lockwright.report.Sequence;
import lockwright.report.readback.ReadBack;
import org.junit.jupiter.api.Test;

/**
 * Several levers to one arm; {@code docs/meaning.md} 2.7. Common practice, no source. The box and
 * its locking are ours.
 */
class SeveralLeversTest {
  private static final Box BOX = Boxes.test("arm-with-two-levers");
  private static final Findings PROVED = Boxes.check(BOX);
  private static final Findings UNLOCKED = with("1 locks 6");
  private static final String TO_BRANCH = "points set: signal 1, lever 2";

  private static Findings with(String entry, Entry... others) {
    List<Entry> kept =
        new ArrayList<>(BOX.locking().stream().filter(e -> !e.words().equals(entry)).toList());
    assertThat(kept).as(entry).hasSize(BOX.locking().size() - 1);
    kept.addAll(List.of(others));
    return Boxes.check(BOX.withLocking(kept));
  }

  private static Entry entry(String lever, Entry.Kind kind, String... others) {
    return RandomBox.entry(kind, lever, List.of(others));
  }

  private static String draft(Findings findings, String requirement) {
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, requirement);
    Optional<MissingEntry> draft =
        MissingEntry.draft(findings.box(), broken.requirement(), broken.played());
    return draft.orElseThrow().words();
  }

  @Test
  void a_box_with_each_lever_locked_for_its_routes_is_proved() {
    Findings findings = PROVED;

    assertThat(findings.passes()).isTrue();
    assertThat(findings.audited().stream().map(a -> a.requirement().id()))
        .contains("points set: signal 1, lever 1", TO_BRANCH, "points set: signal 6")
        .doesNotContain("points set: signal 1");
  }

  @Test
  void the_points_are_asked_to_lie_for_a_route_that_the_lever_is_for() {
    Findings findings = with("2 released by 4");

    assertThat(Boxes.movements(findings, TO_BRANCH))
        .endsWith("lever 2 N>M")
        .doesNotContain("lever 4 N>M");
    assertThat(Boxes.of(findings, "points set: signal 1, lever 1"))
        .isInstanceOf(Audited.Proved.class);
    assertThat(draft(findings, TO_BRANCH)).isEqualTo("2 released by 4");
    assertThat(Rule.broken(Boxes.of(findings, TO_BRANCH).requirement()))
        .contains("off by lever 2, and no route that the lever is for lies");
  }

  /** The home may be off for the branch; no facing points stand before it. */
  @Test
  void a_distant_is_off_only_with_the_lever_for_its_path_over() {
    Findings findings = with("5 released by 1", entry("5", Entry.Kind.RELEASED_BY, "1", "2"));

    assertThat(Boxes.movements(findings, "distant follows: signal 5"))
        .contains("lever 2 M>R")
        .endsWith("lever 5 N>M")
        .doesNotContain("lever 1 N>M");
    assertThat(draft(findings, "distant follows: signal 5")).isEqualTo("5 released by 1");
  }

  @Test
  void a_slotted_arm_is_off_with_all_its_levers_over_and_not_before() {
    Findings findings = UNLOCKED;

    assertThat(Boxes.movements(findings, "no conflict: signals 1 and 6"))
        .hasSize(5)
        .contains("lever 6 N>M", "lever 7 N>M");
    assertThat(draft(findings, "no conflict: signals 1 and 6")).isEqualTo("1 locks 6");
    assertThat(Boxes.movements(PROVED, "route can be cleared: route 6 to west"))
        .containsExactly("lever 6 N>R", "lever 7 N>R");
  }

  /** The token is for the branch alone: the lever for the main line needs none. */
  @Test
  void the_arm_goes_off_into_the_section_by_the_lever_that_is_for_it() {
    String earned = "section signal earned: signal 1, section Bank to Holm";
    Section section = BOX.sections().get(0);
    Section.Release none =
        new Section.Release(List.of(), Section.Lasts.UNTIL_USED, Section.Begins.LOCKED);
    Findings findings = Boxes.check(BOX.withSection(section.withRelease(none)));

    assertThat(Boxes.movements(findings, earned)).endsWith("lever 2 N>M");
    assertThat(Boxes.movements(PROVED, "lever can be moved: lever 1"))
        .containsExactly("lever 3 N>R", "lever 1 N>R");
  }

  @Test
  void the_read_back_says_which_lever_is_for_which_route() {
    assertThat(ReadBack.csv(BOX))
        .contains("1, 2: each for some of its routes, off while one is over")
        .contains("6, 7: slotted, off only while all are over")
        .contains("signal 1, for branch");
  }

  @Test
  void a_slot_alone_is_said_to_leave_the_arm_on() {
    Findings findings = UNLOCKED;
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, "no conflict: signals 1 and 6");
    List<String> text = Sequence.of(findings.box(), broken.played()).text();
    assertThat(text).anyMatch(line -> line.contains("signal 6 still on"));
    assertThat(text).anyMatch(line -> line.contains("signal 6 part-way, taken as off"));
  }
}
