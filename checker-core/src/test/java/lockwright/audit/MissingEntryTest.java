package lockwright.audit;

import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.section.Section.Release;
import lockwright.working.HandBox;
import lockwright.working.Sections;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * Which entry is found for a breach. The junction is that of the Indian Railways Signal Engineering
 * Manual, 12.26.7(c)(iii): each entry left out of its printed table is found again. The rest is
 * common practice, no source.
 */
class MissingEntryTest {

  private static String found(HandBox hand, Requirement requirement) {
    Box box = hand.box();
    Run run = new Runs(Working.parted(box)).breaking(requirement).orElseThrow();
    Played breach = Played.of(Working.parted(box), run);
    Optional<MissingEntry> missing = MissingEntry.draft(box, requirement, breach);
    missing.ifPresent(m -> assertThat(m.stopsAt()).isBetween(0, breach.steps().size()));
    return missing.map(MissingEntry::words).orElse("nothing");
  }

  private static HandBox junction(String... table) {
    return new HandBox()
        .signal("1", Arm.STOP)
        .signal("2", Arm.STOP)
        .bolt("3", "4", false)
        .points("4")
        .locking(table)
        .routes(route("1", "4N"), route("2", "4R"));
  }

  @Test
  void each_entry_left_out_of_the_printed_table_is_found_again() {
    Requirement set1 = new Requirement.PointsSet("1", List.of(route("1", "4N")));
    Requirement set2 = new Requirement.PointsSet("2", List.of(route("2", "4R")));
    Requirement bolted1 = new Requirement.PointsBolted("1", "4", List.of(route("1", "4N")));
    Requirement agree = new Requirement.BoltAndPointsAgree("4");
    String r13 = "1 released by 3";
    String l14 = "1 locks 4";
    String r23 = "2 released by 3";
    String r24 = "2 released by 4";
    String b34 = "3 locks both ways 4";
    assertThat(found(junction(r13, r23, r24, b34), set1)).isEqualTo(l14);
    assertThat(found(junction(r13, l14, r23, b34), set2)).isEqualTo(r24);
    assertThat(found(junction(l14, r23, r24, b34), bolted1)).isEqualTo(r13);
    assertThat(found(junction(r13, l14, r23, r24), agree)).isEqualTo(b34);
  }

  @Test
  void points_that_move_under_a_signal_are_to_be_locked() {
    HandBox noBolt =
        new HandBox().signal("1", Arm.STOP).points("4").routes(route("1", "4N"), route("1", "4R"));
    assertThat(found(noBolt, new Requirement.RouteHeld(route("1", "4N"))))
        .isEqualTo("1 locks both ways 4");
    HandBox one = new HandBox().signal("1", Arm.STOP).points("4").routes(route("1", "4N"));
    assertThat(found(one, new Requirement.RouteHeld(route("1", "4N")))).isEqualTo("1 locks 4");
  }

  @Test
  void a_bolt_that_stands_in_is_to_be_locked_in() {
    HandBox box =
        new HandBox()
            .signal("1", Arm.STOP)
            .bolt("3", "4", true)
            .points("4")
            .routes(route("1", "4N"));
    Requirement bolted = new Requirement.PointsBolted("1", "4", List.of(route("1", "4N")));
    assertThat(found(box, bolted)).isEqualTo("1 locks 3");
    assertThat(found(box, new Requirement.BoltAndPointsAgree("4")))
        .isEqualTo("3 while normal locks both ways 4");
    assertThat(found(box, new Requirement.RouteHeld(route("1", "4N")))).isEqualTo("1 locks 3");
  }

  /** Of two ways the one is told from the other by points 4. */
  @Test
  void an_entry_for_one_way_bars_no_other() {
    Route main = route("1", "4N 5N");
    Route loop = route("1", "4R");
    HandBox box = new HandBox().signal("1", Arm.STOP).points("4").points("5").routes(main, loop);
    assertThat(
            found(
                box.locking("1 locks both ways 4", "1 locks both ways 5"),
                new Requirement.PointsSet("1", List.of(main, loop))))
        .isEqualTo("1 locks 5 when 4 N");
  }

  @Test
  void a_flank_trap_is_to_lie_for_the_trap() {
    Route trapped = HandBox.withTrap(route("1", ""), "7", Lie.REVERSE);
    HandBox box = new HandBox().signal("1", Arm.STOP).points("7").routes(trapped);
    assertThat(found(box, new Requirement.PointsSet("1", List.of(trapped))))
        .isEqualTo("1 released by 7");
  }

  @Test
  void conflicting_signals_are_to_lock_each_other() {
    Route main = route("1", "4N");
    Route loop = route("1", "4R");
    Route out = route("2", "");
    Conflict conflict = new Conflict(loop, out, "track loop", true, false);
    HandBox box =
        new HandBox()
            .signal("1", Arm.STOP)
            .signal("2", Arm.STOP)
            .points("4")
            .routes(main, loop, out);
    assertThat(
            found(
                box,
                new Requirement.NoConflict("1", "2", List.of(conflict), true, Optional.empty())))
        .isEqualTo("1 locks 2");
    assertThat(
            found(
                box,
                new Requirement.NoConflict("1", "2", List.of(conflict), false, Optional.empty())))
        .isEqualTo("1 locks 2 when 4 R");
    assertThat(found(box, new Requirement.SectionSignalsApart("line", "1", "2")))
        .isEqualTo("1 locks 2");
  }

  @Test
  void a_distant_is_to_be_released_by_the_signals_it_speaks_for() {
    DistantPath path =
        new DistantPath(
            "8", List.of(List.of("1", "2")), List.of(new PointsOnRoute("4", Lie.NORMAL, true)));
    HandBox box = new HandBox().signal("1", Arm.STOP).signal("2", Arm.STOP).points("4");
    box.bolt("3", "4", false).signal("8", Arm.DISTANT);
    Requirement follows = new Requirement.DistantFollows(path, List.of("4"));
    assertThat(found(box, follows)).isEqualTo("8 released by 1 or 2");
    assertThat(found(box.locking("8 released by 1 or 2"), follows)).isEqualTo("8 released by 3");
    assertThat(found(box.locking("8 released by 3"), follows)).isEqualTo("8 locks 4");
  }

  /**
   * G. Findlay, The Working and Management of an English Railway, p. 90: the key locks the signals.
   */
  @Test
  void a_signal_is_to_lock_the_release_of_a_ground_frame() {
    Route route = route("1", "Y1N");
    HandBox box =
        new HandBox().signal("1", Arm.STOP).release("3", "yard", true, "Y1").routes(route);
    assertThat(found(box, new Requirement.ReleaseHome("1", "yard", List.of(route))))
        .isEqualTo("1 locks 3");
    assertThat(found(box, new Requirement.RouteHeld(route))).isEqualTo("1 locks 3");
    assertThat(found(box, new Requirement.PointsSet("1", List.of(route)))).isEqualTo("1 locks 3");
  }

  /** Board of Trade Requirements, no. 29, in W. H. Mills, Railway Construction (1898). */
  @Test
  void a_signal_is_to_need_the_gates_locked_across_the_road() {
    Route route = route("1", "");
    Requirement closed = new Requirement.RoadClosed("1", "lane", List.of(route));
    HandBox open = new HandBox().signal("1", Arm.STOP).gateLock("2", "lane", false).routes(route);
    assertThat(found(open, closed)).isEqualTo("1 released by 2");
    HandBox shut = new HandBox().signal("1", Arm.STOP).gates("2", "lane", true).routes(route);
    assertThat(found(shut, closed)).isEqualTo("1 locks 2");
    assertThat(found(shut, new Requirement.RouteHeld(route))).isEqualTo("1 locks 2");
  }

  @Test
  void two_tokens_out_are_answered_by_a_rule_of_the_section() {
    Requirement one = new Requirement.OneTokenOut("line");
    assertThat(found(new HandBox().section(Sections.pair(2)), one))
        .isEqualTo("section line: nobody can plunge while he withdraws");
    assertThat(found(new HandBox().section(Sections.pair(2).irregular(Irregular.ONCE)), one))
        .isEqualTo("section line: no irregular withdrawal");
    Sections unasked =
        Sections.pair(2)
            .instruments(
                new Instrument("Here", true, List.of()), new Instrument("There", true, List.of()));
    assertThat(found(new HandBox().section(unasked), one))
        .isEqualTo(
            "section line: a withdrawal needs the consent of every other attended instrument");
    Sections unattended =
        Sections.pair(2)
            .instruments(
                new Instrument("Here", false, List.of()),
                new Instrument("There", false, List.of()));
    assertThat(found(new HandBox().section(unattended), one))
        .isEqualTo("section line: the phase reverses at the start of a withdrawal");
  }

  @Test
  void a_section_signal_unearned_is_answered_by_a_rule_of_the_release() {
    Requirement earned = new Requirement.SectionSignalEarned("line", "1");
    assertThat(found(signalled(Sections.pair(2)), earned))
        .isEqualTo("section line: a withdrawal here releases lever 1 for one pull");
    assertThat(found(signalled(Lasts.UNTIL_PUT_IN, Begins.EITHER), earned))
        .isEqualTo("section line: the release begins locked");
    assertThat(found(signalled(Lasts.UNTIL_USED, Begins.LOCKED), earned))
        .startsWith("section line: the release lasts until a token is put in");
  }

  private static HandBox signalled(Lasts lasts, Begins begins) {
    return signalled(
        Sections.pair(2).neverBoth().release(new Release(List.of("1"), lasts, begins)));
  }

  private static HandBox signalled(Sections section) {
    return new HandBox()
        .signal("1", Arm.STOP)
        .routes(route("1", "", new Route.End.InSection("line")))
        .section(section);
  }

  /** What is drafted stops the sequence; an entry that stands already is not drafted again. */
  @Test
  void nothing_is_found_where_no_entry_would_help() {
    HandBox box = new HandBox().signal("1", Arm.STOP).points("4").routes(route("1", "4N"));
    Requirement bolted = new Requirement.PointsBolted("1", "4", List.of(route("1", "4N")));
    assertThat(found(box, bolted)).as("there is no bolt").isEqualTo("nothing");
  }

  /** The points begin reversed, so locking the release would not stop it; a detector would. */
  @Test
  void an_entry_that_does_not_stop_the_sequence_is_not_drafted() {
    Route route = route("1", "Q1N");
    HandBox box = new HandBox().signal("1", Arm.STOP).release("3", "quarry", false, "Q1");
    Requirement set = new Requirement.PointsSet("1", List.of(route));
    assertThat(found(box.routes(route), set)).isEqualTo("the wire of lever 1 detects points Q1");
  }

  @Test
  void the_entry_drafted_holds_a_movement_of_the_sequence() {
    Requirement set = new Requirement.PointsSet("1", List.of(route("1", "4N")));
    Box box = junction("1 released by 3").box();
    Run run = new Runs(Working.parted(box)).breaking(set).orElseThrow();
    Played breach = Played.of(Working.parted(box), run);
    MissingEntry missing = MissingEntry.draft(box, set, breach).orElseThrow();
    Entry entry = missing.entry().orElseThrow();
    assertThat(entry.words()).isEqualTo("1 locks 4");
    Played again = Played.of(Working.parted(box.withLocking(List.of(entry))), run);
    assertThat(again.followsRules()).isFalse();
    assertThat(again.steps().get(missing.stopsAt() - 1).heldBy().get(0).entry()).contains(entry);
  }
}
