package lockwright.working;

import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lockwright.railway.Box;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.railway.words.Event;
import org.junit.jupiter.api.Test;

/** When requirements are broken, and their subjects come about: docs/meaning.md 6 and 7. */
class BreachesTest {
  private static final Route MAIN = HandBox.withTrap(route("1", "4N"), "7", Lie.NORMAL);
  private static final Route LOOP = route("1", "4R 6Nt");

  /**
   * Signals 1 and 2, distant 8, bolts 3 (out) and 5 (in), points 4 and 6, trap 7, a yard, points
   * 11.
   */
  private static final Box BOX =
      new HandBox()
          .signal("1", Arm.STOP)
          .signal("2", Arm.STOP)
          .bolt("3", "4", false)
          .points("4")
          .bolt("5", "6", true)
          .points("6")
          .points("7")
          .signal("8", Arm.DISTANT)
          .release("9", "yard", true, "Y1")
          .lever("10", new Work.Spare())
          .economical("11")
          .section(Sections.pair(3))
          .routes(MAIN, LOOP)
          .box();

  private static final Working WORKING = Working.parted(BOX);

  /** All normal but these: "1M 4R", with "Y1R" for points of the ground frame. */
  private static State at(String positions) {
    Map<String, String> values = new HashMap<>();
    WORKING.beginnings().iterator().next().values().forEach(values::put);
    for (String p : positions.split(" ")) {
      if (!p.isEmpty()) {
        String id = p.substring(0, p.length() - 1);
        values.put((id.equals("Y1") ? "points " : "lever ") + id, p.substring(p.length() - 1));
      }
    }
    return WORKING.state(values);
  }

  private static void assertBroken(Requirement requirement, String... states) {
    Breach breach = WORKING.breach(requirement);
    assertThat(breach.movements()).isEmpty();
    assertThat(List.of(states)).allMatch(s -> breach.state().evaluate(at(s)));
  }

  private static void assertKept(Requirement requirement, String... states) {
    Breach breach = WORKING.breach(requirement);
    assertThat(List.of(states)).noneMatch(s -> breach.state().evaluate(at(s)));
  }

  /** Bolted at both ends of the stroke, and not between: common practice, no source. */
  @Test
  void an_economical_lock_bolts_at_either_end() {
    Condition bolted = WORKING.reaches(new Subject.Bolted("11"));
    assertThat(List.of("", "11R")).allMatch(s -> bolted.evaluate(at(s)));
    assertThat(bolted.evaluate(at("11M"))).isFalse();
    Route facing = route("1", "11R");
    Requirement pointsBolted = new Requirement.PointsBolted("1", "11", List.of(facing));
    assertKept(pointsBolted, "1R 11R", "1M 11R", "1R 11M");
  }

  @Test
  void points_set() {
    Requirement set = new Requirement.PointsSet("1", List.of(MAIN, LOOP));
    assertKept(set, "", "4M", "1M", "1R", "1R 4R", "1R 4R 7R", "1M 4R 7M");
    assertBroken(set, "1M 4M", "1R 4M", "1R 7R", "1R 7M", "1M 4R 6R", "1M 4R 6M");
  }

  @Test
  void an_arm_without_a_route_is_never_off() {
    Requirement set = new Requirement.PointsSet("2", List.of());
    assertKept(set, "", "1R");
    assertBroken(set, "2M", "2R");
  }

  @Test
  void points_bolted() {
    Requirement bolted = new Requirement.PointsBolted("1", "4", List.of(MAIN, LOOP));
    assertKept(bolted, "", "1R 3R", "1M 3R 4R", "1R 4M", "3N", "1R 4R 6R");
    assertBroken(bolted, "1R", "1M", "1M 3M", "1R 4R 3M");
    assertKept(new Requirement.PointsBolted("1", "6", List.of(LOOP)), "1R 4R", "1R 6M", "1R 5R");
    assertBroken(new Requirement.PointsBolted("1", "6", List.of(LOOP)), "1M 4R 5M", "1R 4R 5R");
    assertBroken(new Requirement.PointsBolted("1", "7", List.of(MAIN)), "1M");
  }

  @Test
  void bolt_and_points_agree() {
    assertKept(new Requirement.BoltAndPointsAgree("4"), "", "4M", "3M", "3R", "4R 3R");
    assertBroken(new Requirement.BoltAndPointsAgree("4"), "4M 3M", "4M 3R");
    assertKept(new Requirement.BoltAndPointsAgree("6"), "", "6M 5R", "5M", "6R");
    assertBroken(new Requirement.BoltAndPointsAgree("6"), "6M", "6M 5M");
  }

  @Test
  void route_held() {
    assertThat(held(MAIN)).containsExactlyInAnyOrder("lever 4", "lever 3", "lever 7");
    assertThat(held(LOOP)).containsExactlyInAnyOrder("lever 4", "lever 3", "lever 6");
    assertThat(held(route("1", "Y1N"))).containsExactlyInAnyOrder("points Y1", "lever 9");
    Breach breach = WORKING.breach(new Requirement.RouteHeld(MAIN));
    assertThat(breach.state()).isEqualTo(Condition.FALSE);
    for (Condition c : breach.movements().values()) {
      assertThat(List.of("1M", "1R", "1M 7M", "1R 3M")).allMatch(s -> c.evaluate(at(s)));
      assertThat(List.of("", "1R 4R", "1R 4M")).noneMatch(s -> c.evaluate(at(s)));
    }
  }

  /** What may not move, each by all of its half-strokes. */
  private static Set<String> held(Route route) {
    List<String> moves =
        WORKING.breach(new Requirement.RouteHeld(route)).movements().keySet().stream()
            .map(e -> e.key().substring(0, e.key().lastIndexOf(' ')))
            .toList();
    Set<String> once = moves.stream().collect(Collectors.toSet());
    assertThat(moves).hasSize(4 * once.size());
    return once;
  }

  @Test
  void no_conflict() {
    Route other = route("2", "6R");
    Conflict conflict = new Conflict(MAIN, other, "", true, false);
    Requirement always =
        new Requirement.NoConflict("1", "2", List.of(conflict), true, Optional.empty());
    assertBroken(always, "1M 2M", "1R 2M 4M");
    assertKept(always, "", "1R", "2R");
    Requirement some =
        new Requirement.NoConflict("1", "2", List.of(conflict), false, Optional.empty());
    assertBroken(some, "1M 2M 6R", "1R 2R 6R 7R");
    assertKept(some, "1R 2R", "1R 2R 4R 6R", "1R 2R 6M", "1R 6R");
  }

  @Test
  void no_conflict_but_for_opposed_routes_with_the_closing_lever_over() {
    Conflict opposed = new Conflict(MAIN, route("2", "6R"), "", true, true);
    Conflict not = new Conflict(MAIN, route("2", "7R"), "", true, false);
    Requirement always =
        new Requirement.NoConflict("1", "2", List.of(opposed, not), true, Optional.of("8"));
    assertBroken(always, "1M 2M", "1R 2R 8M", "1R 2R 7R 8R");
    assertKept(always, "1R 2R 8R", "1M 2M 6R 8R", "1R 2R 4R 7R 8R");
    Requirement some =
        new Requirement.NoConflict("1", "2", List.of(opposed, not), false, Optional.of("8"));
    assertBroken(some, "1M 2M 6R", "1R 2R 6R 8M", "1R 2R 7R 8R");
    assertKept(some, "1R 2R", "1R 2R 6R 8R");
  }

  @Test
  void box_closed() {
    Requirement closed = new Requirement.BoxClosed("8", List.of("1", "2"));
    assertBroken(closed, "8M", "8R", "8R 1R", "8M 1R 2M");
    assertKept(closed, "", "1R", "8R 1R 2R");
  }

  @Test
  void distant_follows() {
    DistantPath path =
        new DistantPath(
            "8",
            List.of(List.of("1", "2"), List.of("1")),
            List.of(new PointsOnRoute("4", Lie.NORMAL, true)));
    Requirement follows = new Requirement.DistantFollows(path, List.of("4"));
    assertKept(follows, "", "4R", "8R 1R 3R", "8M 1R 2R 3R");
    assertBroken(follows, "8M", "8R 1M 3R", "8R 2R 3R", "8R 1R", "8R 1R 3M", "8R 1R 3R 4M");
  }

  @Test
  void release_home() {
    Route yard = route("1", "Y1R 4N");
    Requirement home = new Requirement.ReleaseHome("1", "yard", List.of(yard));
    assertKept(home, "", "1R Y1R", "9R Y1R", "1R 9R", "1R 9R Y1R 4R");
    assertBroken(home, "1M 9M Y1R", "1R 9R Y1R");
  }

  /** Board of Trade Requirements, no. 2, in W. H. Mills, Railway Construction (1898). */
  @Test
  void siding_locked() {
    Working working =
        Working.parted(
            new HandBox()
                .groundFrame("pit", "P1", "P2")
                .section(Sections.pair(3).lock("pit", true))
                .box());
    Condition unlocked = working.breach(new Requirement.SidingLocked("line", "pit")).state();
    Condition open = working.reaches(new Subject.FrameOpen("pit"));
    for (String lock : List.of("empty", "fresh", "other")) {
      for (String first : List.of("N", "M", "R")) {
        for (String second : List.of("N", "M", "R")) {
          for (int out = 0; out <= 3; out++) {
            Map<String, String> values = working.beginnings().iterator().next().values();
            values.put("section line: lock of pit", lock);
            values.put("section line: tokens out", "" + out);
            values.put("points P1", first);
            values.put("points P2", second);
            State state = working.state(values);
            boolean normal = first.equals("N") && second.equals("N");
            assertThat(unlocked.evaluate(state))
                .as(state.toString())
                .isEqualTo(lock.equals("empty") ? !normal : out > 1);
            assertThat(open.evaluate(state)).isEqualTo(first.equals("R") || second.equals("R"));
          }
        }
      }
    }
  }

  /** A token in, or out of, the lock of points on the route: as of the lever of a release. */
  @Test
  void a_route_over_points_that_a_token_releases_is_held_at_their_lock() {
    Route yard = route("1", "P1N");
    Working working =
        Working.parted(
            new HandBox()
                .signal("1", Arm.STOP)
                .groundFrame("pit", "P1")
                .groundFrame("far", "P2")
                .section(Sections.pair(1).lock("pit", true).lock("far", true))
                .routes(yard)
                .box());
    Breach held = working.breach(new Requirement.RouteHeld(yard));
    assertThat(held.movements().keySet().stream().map(Event::key))
        .filteredOn(k -> k.startsWith("section"))
        .containsExactlyInAnyOrder(
            "section line: put another token in the lock of pit",
            "section line: take the token out of the lock of pit");
    Requirement home = new Requirement.ReleaseHome("1", "pit", List.of(yard));
    Map<String, String> values = working.beginnings().iterator().next().values();
    values.put("lever 1", "M");
    assertThat(working.breach(home).state().evaluate(working.state(values))).isFalse();
    values.put("section line: lock of pit", "other");
    assertThat(working.breach(home).state().evaluate(working.state(values))).isTrue();
  }

  @Test
  void section_signals_apart() {
    Requirement apart = new Requirement.SectionSignalsApart("line", "1", "2");
    assertKept(apart, "", "1R", "2R");
    assertBroken(apart, "1M 2M", "1R 2M");
  }

  @Test
  void possibilities() {
    Condition cleared = WORKING.goal(new Requirement.RouteCanBeCleared(LOOP));
    assertThat(cleared.evaluate(at("1R 4R"))).isTrue();
    assertThat(List.of("1M 4R", "1R", "1R 4R 6R")).noneMatch(s -> cleared.evaluate(at(s)));
    Condition moved = WORKING.goal(new Requirement.LeverCanBeMoved("9"));
    assertThat(moved.evaluate(at("9R"))).isTrue();
    assertThat(moved.evaluate(at("9M"))).isFalse();
  }

  @Test
  void subjects() {
    assertComesAbout(new Subject.SignalOff("8"), "8R", "8M");
    assertComesAbout(new Subject.RouteSignalled(List.of(MAIN)), "1R", "1M");
    assertComesAbout(new Subject.RouteSignalled(List.of(MAIN, LOOP)), "1R 4R", "1R 4M");
    assertComesAbout(new Subject.Bolted("4"), "3R", "3M");
    assertComesAbout(new Subject.Bolted("6"), "", "5M");
    assertComesAbout(new Subject.PartWay("Y1"), "Y1M", "Y1R");
    Condition out = WORKING.reaches(new Subject.TokenOut("line"));
    assertThat(
            BruteForce.of(Working.parted(new HandBox().section(Sections.pair(1)).box()))
                .shortest(new Subject.TokenOut("line")))
        .hasValue(3);
    assertThat(out.evaluate(at(""))).isFalse();
  }

  private static void assertComesAbout(Subject subject, String there, String notThere) {
    assertThat(WORKING.reaches(subject).evaluate(at(there))).isTrue();
    assertThat(WORKING.reaches(subject).evaluate(at(notThere))).isFalse();
  }
}
