package lockwright.railway.requirement;

import static lockwright.railway.layout.Arm.CALLING_ON;
import static lockwright.railway.layout.Arm.DISTANT;
import static lockwright.railway.layout.Arm.SHUNTING;
import static lockwright.railway.layout.Arm.STOP;
import static lockwright.railway.layout.Attachment.Limit.BLOCK;
import static lockwright.railway.layout.Attachment.Limit.BUFFER_STOP;
import static lockwright.railway.layout.Attachment.Limit.PLAN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.DistantPath;
import lockwright.railway.layout.FlankTrap;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.PointsOnRoute;
import lockwright.railway.layout.Route;
import lockwright.railway.section.Section;
import org.junit.jupiter.api.Test;

/** Small layouts, each with what a plan of it would say. All layouts are ours. */
class HandMadeLayoutsTest {

  private static Derived derive(Drawing drawing, Section... sections) {
    return Derivation.derive(
        drawing.layout(), Frames.of(drawing.layout(), List.of(), 0), List.of(sections));
  }

  private static List<String> names(Derived derived) {
    return derived.routes().stream().map(Route::name).toList();
  }

  private static Route route(Derived derived, String name) {
    return derived.routes().stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> conflicts(Derived derived) {
    return derived.conflicts().stream()
        .map(c -> c.first().name() + " / " + c.second().name() + ": " + c.reason())
        .toList();
  }

  private static List<String> instances(Derived derived, String name) {
    return derived.requirements().stream()
        .filter(r -> r.name().equals(name))
        .map(Requirement::subject)
        .toList();
  }

  /**
   * Levers 1 to 4 as in Indian Railways Signal Engineering Manual, para 12.26.7(c)(iii) (text read,
   * figure not seen): 1 the signal for the straight, 2 for the diverging way, 4 the facing points.
   */
  @Test
  void the_two_signals_of_a_junction_share_its_facing_points_in_two_positions() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("approach", "junction", "main", "branch")
                .joint("approach", "junction")
                .points("4", "junction", "main", "branch")
                .limit(BLOCK, "approach", "main", "branch")
                .signal("1", STOP, "approach", "junction", "main")
                .signal("2", STOP, "approach", "junction", "branch"));
    assertThat(names(derived)).containsExactly("1 to main", "2 to branch");
    assertThat(route(derived, "2 to branch").points())
        .containsExactly(new PointsOnRoute("4", Lie.REVERSE, true));
    assertThat(conflicts(derived))
        .containsExactly("1 to main / 2 to branch: track junction, points 4 (N and R)");
    assertThat(derived.conflicts().get(0).possible()).isFalse();
    assertThat(derived.notSignalled()).isEmpty();
    assertThat(instances(derived, "points bolted"))
        .containsExactly("signal 1, points 4", "signal 2, points 4");
    assertThat(instances(derived, "no conflict")).containsExactly("signals 1 and 2");
  }

  @Test
  void a_path_that_no_arm_admits_is_not_signalled() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("approach", "junction", "main", "branch")
                .joint("approach", "junction")
                .points("4", "junction", "main", "branch")
                .limit(BLOCK, "approach", "main", "branch")
                .signal("1", STOP, "approach", "junction", "main"));
    assertThat(derived.notSignalled()).hasSize(1);
    assertThat(derived.notSignalled().get(0).signals()).containsExactly("1");
    assertThat(derived.notSignalled().get(0).tracks()).containsExactly("junction", "branch");
  }

  /**
   * Which ways conflict: W. H. Mills, Railway Construction (1898), ch. VII, fig. 498 (text read to
   * a cut, figure not seen): A to C with A to D, A to C with D to A, D to A with C to A; not A to C
   * with C to A, nor A to D with D to A. The layout is ours: the line from D, to meet the line to
   * A, crosses the line to C on the level. That A to D with C to A is compatible follows from this
   * geometry, and is not published.
   */
  @Test
  void the_ways_over_a_double_line_junction_conflict_as_published() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("from-a", "down", "down-main", "to-c", "to-d")
                .tracks("from-c", "up", "to-a", "from-d", "up-branch")
                .joint("from-a", "down")
                .points("9", "down", "down-main", "to-d")
                .crossing("diamond", "down-main", "to-c", "from-d", "up-branch")
                .points("12", "to-a", "up", "up-branch")
                .joint("from-c", "up")
                .limit(BLOCK, "from-a", "to-c", "to-d", "from-c", "from-d", "to-a")
                .signal("5", STOP, "from-a", "down", "to-c")
                .signal("2", STOP, "from-a", "down", "to-d")
                .signal("16", STOP, "from-c", "up")
                .signal("14", STOP, "from-d", "up-branch"));
    assertThat(instances(derived, "no conflict"))
        .containsExactly(
            "signals 5 and 2", // A to C with A to D: published
            "signals 5 and 14", // A to C with D to A: published
            "signals 16 and 14"); // D to A with C to A: published
    assertThat(conflicts(derived)).contains("5 to to-c / 14 to to-a: crossing diamond");
    assertThat(instances(derived, "points bolted"))
        .containsExactly("signal 5, points 9", "signal 2, points 9");
  }

  private static Drawing crossingLoop() {
    return new Drawing()
        .tracks("west", "west-throat", "one", "two", "east-throat", "east")
        .joint("west", "west-throat")
        .points("5", "west-throat", "one", "two")
        .points("6", "east-throat", "one", "two")
        .joint("east-throat", "east")
        .section("to west", "west")
        .section("to east", "east");
  }

  @Test
  void a_crossing_loop_has_two_ways_in_and_its_starters_earn_their_tokens() {
    Derived derived =
        derive(
            crossingLoop()
                .signal("1", DISTANT, "west", "west-throat")
                .signal("2", STOP, "west", "west-throat")
                .signal("3", STOP, "one", "east-throat")
                .signal("4", STOP, "two", "east-throat")
                .signal("7", STOP, "one", "west-throat")
                .signal("8", STOP, "two", "west-throat")
                .signal("9", STOP, "east", "east-throat"),
            Frames.section("to east", "east"),
            Frames.section("to west", "west"));
    assertThat(names(derived))
        .containsExactly(
            "2 to one",
            "2 to two",
            "3 to east",
            "4 to east",
            "7 to west",
            "8 to west",
            "9 to one",
            "9 to two");
    assertThat(route(derived, "2 to two").end()).isEqualTo(new Route.End.AtSignals(List.of("4")));
    assertThat(route(derived, "3 to east").points())
        .containsExactly(new PointsOnRoute("6", Lie.NORMAL, false));
    assertThat(instances(derived, "section signal earned"))
        .containsExactly(
            "signal 3, section to east",
            "signal 4, section to east",
            "signal 7, section to west",
            "signal 8, section to west");
    assertThat(instances(derived, "section signals apart"))
        .containsExactly("signals 3 and 4, section to east", "signals 7 and 8, section to west");
    // both homes into one platform road: head on, at the far end of the same track
    assertThat(conflicts(derived)).contains("2 to one / 9 to one: track one");
    // a starter and the road into which the opposing home may lead
    assertThat(conflicts(derived)).contains("2 to one / 7 to west: track west-throat, points 5");
    // the home and the starting signal ahead of it do not conflict
    assertThat(conflicts(derived)).noneMatch(c -> c.startsWith("2 to one / 3 to east"));
    assertThat(derived.distantPaths())
        .containsExactly(
            new DistantPath(
                "1",
                List.of(List.of("2"), List.of("3")),
                List.of(new PointsOnRoute("5", Lie.NORMAL, true)),
                List.of(List.of("west-throat", "one"), List.of("east-throat", "east"))));
  }

  @Test
  void a_distant_speaks_for_the_way_that_it_names() {
    Derived derived =
        derive(
            crossingLoop()
                .signal("1", DISTANT, "west", "west-throat", "two")
                .signal("2", STOP, "west", "west-throat", "one")
                .signal("3", STOP, "west", "west-throat", "two")
                .signal("4", STOP, "two", "east-throat"));
    // on the post of stop signals it speaks for the one that admits the path
    assertThat(derived.distantPaths().get(0).posts()).containsExactly(List.of("3"), List.of("4"));
    assertThat(derived.distantPaths().get(0).facing())
        .containsExactly(new PointsOnRoute("5", Lie.REVERSE, true));
  }

  @Test
  void a_fixed_distant_has_a_path_and_no_requirement() {
    Drawing drawing = crossingLoop().signal("2", STOP, "west-throat", "west");
    drawing.signal("1", DISTANT, drawing.layout().signal("2").stands(), "west", List.of(), true);
    Derived derived = derive(drawing);
    assertThat(derived.distantPaths().get(0).posts()).containsExactly(List.of("2"));
    assertThat(instances(derived, "distant follows")).isEmpty();
  }

  private static Drawing siding() {
    return new Drawing()
        .tracks("main", "middle", "on", "exit")
        .track("siding", false)
        .joint("main", "middle")
        .points("5", "on", "middle", "exit")
        .points("6", "siding", "trap", "exit")
        .limit(BLOCK, "main", "on")
        .limit(BUFFER_STOP, "siding");
  }

  @Test
  void a_trap_in_a_siding_protects_the_main_line() {
    Derived derived =
        derive(siding().groundFrame("yard", "5", "6").signal("1", STOP, "main", "middle"));
    assertThat(route(derived, "1 to on").flankTraps())
        .containsExactly(new FlankTrap("6", Lie.NORMAL));
    assertThat(instances(derived, "release home")).containsExactly("signal 1, ground frame yard");
  }

  @Test
  void a_signal_at_the_exit_ends_the_search_for_traps() {
    Derived derived =
        derive(siding().signal("1", STOP, "main", "middle").signal("2", SHUNTING, "exit", "on"));
    assertThat(route(derived, "1 to on").flankTraps()).isEmpty();
  }

  @Test
  void a_distant_at_the_exit_does_not_end_it() {
    Derived derived =
        derive(siding().signal("1", STOP, "main", "middle").signal("2", DISTANT, "exit", "on"));
    assertThat(route(derived, "1 to on").flankTraps()).hasSize(1);
  }

  @Test
  void no_route_leads_into_a_trap() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("yard", "siding", "exit")
                .joint("yard", "siding")
                .points("6", "siding", "trap", "exit")
                .limit(BUFFER_STOP, "yard", "exit")
                .signal("1", SHUNTING, "yard", "siding"));
    assertThat(names(derived)).containsExactly("1 to exit");
    assertThat(route(derived, "1 to exit").points())
        .containsExactly(new PointsOnRoute("6", Lie.REVERSE, true));
    assertThat(instances(derived, "points bolted")).isEmpty();
  }

  @Test
  void a_path_round_a_balloon_comes_back_on_itself_and_is_no_route() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("line", "neck", "balloon")
                .joint("line", "neck")
                .points("3", "neck", "balloon", "balloon")
                .limit(BLOCK, "line")
                .signal("1", STOP, "line", "neck"));
    assertThat(derived.routes()).isEmpty();
    assertThat(derived.notSignalled()).isEmpty();
    assertThat(instances(derived, "points set")).as("it must never be cleared").hasSize(1);
  }

  @Test
  void a_balloon_with_a_signal_in_it_has_a_route_each_way_round() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("line", "neck", "left", "right")
                .joint("line", "neck")
                .points("3", "neck", "left", "right")
                .joint("left", "right")
                .limit(BLOCK, "line")
                .signal("1", STOP, "line", "neck")
                .signal("2", STOP, "left", "right")
                .signal("4", STOP, "right", "left"));
    assertThat(names(derived)).containsExactly("1 to left", "1 to right", "2 to line", "4 to line");
    assertThat(conflicts(derived))
        .contains("1 to left / 4 to line: track neck, track left, points 3");
  }

  @Test
  void the_ways_over_a_diamond_crossing_conflict() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c", "d")
                .crossing("x", "a", "b", "c", "d")
                .limit(PLAN, "a", "b", "c", "d")
                .signal("1", STOP, "a", "b")
                .signal("2", STOP, "c", "d"));
    assertThat(conflicts(derived)).containsExactly("1 to b / 2 to d: crossing x");
    assertThat(derived.conflicts().get(0).possible()).isTrue();
  }

  @Test
  void opposing_signals_conflict_by_the_tracks_between_them() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c")
                .joint("a", "b")
                .joint("b", "c")
                .limit(BLOCK, "a", "c")
                .signal("1", STOP, "a", "b")
                .signal("2", STOP, "c", "b"));
    assertThat(conflicts(derived)).containsExactly("1 to c / 2 to a: track b");
  }

  /** Common practice, no source: two trains set off towards each other over one joint. */
  @Test
  void opposing_signals_at_one_joint_conflict_though_their_routes_share_no_track() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b")
                .joint("a", "b")
                .limit(BLOCK, "a", "b")
                .signal("1", STOP, "a", "b")
                .signal("2", SHUNTING, "b", "a"));
    assertThat(conflicts(derived)).containsExactly("1 to b / 2 to a: joint a + b (opposed)");
    assertThat(instances(derived, "no conflict")).containsExactly("signals 1 and 2");
  }

  @Test
  void a_route_and_the_next_ahead_do_not_conflict() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c")
                .joint("a", "b")
                .joint("b", "c")
                .limit(BLOCK, "a", "c")
                .signal("1", STOP, "a", "b")
                .signal("2", STOP, "b", "c"));
    assertThat(derived.conflicts()).isEmpty();
    assertThat(instances(derived, "no conflict")).isEmpty();
  }

  @Test
  void two_arms_for_one_way_on_one_post_conflict_and_end_where_their_kinds_do() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c", "d")
                .joint("a", "b")
                .joint("b", "c")
                .joint("c", "d")
                .limit(BLOCK, "a", "d")
                .signal("1", STOP, "a", "b")
                .signal("2", CALLING_ON, "a", "b")
                .signal("3", SHUNTING, "b", "c")
                .signal("4", STOP, "c", "d"));
    assertThat(names(derived)).containsExactly("1 to c", "2 to b", "3 to c", "4 to d");
    assertThat(instances(derived, "no conflict"))
        .containsExactly("signals 1 and 2", "signals 1 and 3");
  }

  @Test
  void a_subsidiary_route_ends_at_a_limit_of_shunt_and_a_running_one_does_not() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c")
                .joint("a", "b")
                .joint("b", "c")
                .limit(BLOCK, "a", "c")
                .limitOfShunt("b", "c")
                .signal("1", STOP, "a", "b")
                .signal("2", SHUNTING, "a", "b"));
    assertThat(names(derived)).containsExactly("1 to c", "2 to b");
    assertThat(route(derived, "2 to b").end()).isEqualTo(new Route.End.AtLimitOfShunt());
  }

  @Test
  void a_limit_of_shunt_for_the_other_way_ends_nothing() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c")
                .joint("a", "b")
                .joint("b", "c")
                .limit(BLOCK, "a", "c")
                .limitOfShunt("c", "b")
                .signal("2", SHUNTING, "a", "b"));
    assertThat(names(derived)).containsExactly("2 to c");
  }

  @Test
  void two_ways_to_one_track_are_told_apart_by_the_facing_points() {
    Derived derived = derive(crossingLoop().signal("2", STOP, "west", "west-throat"));
    assertThat(names(derived)).containsExactly("2 to east by 5 N", "2 to east by 5 R");
  }

  @Test
  void arms_that_conflict_by_points_alone_on_some_of_their_routes_make_no_instance() {
    Derived derived =
        derive(
            new Drawing()
                .tracks("a", "b", "c", "d", "e", "f")
                .joint("a", "b")
                .points("3", "b", "c", "d")
                .points("4", "e", "d", "f")
                .limit(BLOCK, "a", "c", "e", "f")
                .signal("1", STOP, "a", "b")
                .signal("2", STOP, "f", "e"));
    List<Conflict> found = derived.conflicts();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reason()).isEqualTo("track e, points 4 (N and R)");
    assertThat(found.get(0).possible()).isFalse();
    assertThat(instances(derived, "no conflict")).isEmpty();
  }
}
