package lockwright.railway.requirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.TrackEnd;
import org.junit.jupiter.api.Test;

/**
 * Which points would best be locked against each other, on junctions of double lines: Board of
 * Trade Requirements, no. 7, as printed in W. H. Mills, Railway Construction (1898): points are
 * interlocked with one another, where possible, to avoid collision. Where that is, is ours.
 */
class PointsHeldApartTest {

  /** A down line with points D to a branch over the up line, which has points U beyond it. */
  private static Drawing junction(boolean turnedD, boolean turnedU, String onUp) {
    return new Drawing()
        .tracks("down", "road", "main", "lead", "branch", "up main", "up road", "up lead")
        .tracks("up branch", "up")
        .joint("down", "road")
        .joint("up main", "up road")
        .points("D", "road", turnedD ? "lead" : "main", turnedD ? "main" : "lead")
        .crossing("X", onUp, "up lead", "lead", "branch")
        .points("U", "up", turnedU ? "up branch" : "up lead", turnedU ? "up lead" : "up branch")
        .limit(Attachment.Limit.BLOCK, "down", "main", "branch", "up main", "up branch", "up")
        .signal("1", Arm.STOP, "down", "road")
        .signal("2", Arm.STOP, "up main", "up road");
  }

  private static Drawing plain() {
    return junction(false, false, "up road");
  }

  /** With levers 1 and 2 for these signals, and one for each of these lots of points. */
  private static List<String> advice(Drawing drawing, List<String> ids, String... lots) {
    List<Lever> levers = new ArrayList<>();
    drawing
        .layout()
        .signals()
        .forEach(s -> levers.add(lever("s" + s.id(), new Work.OfSignal(s.id()))));
    for (int i = 0; i < lots.length; i++) {
      levers.add(lever(ids.get(i), new Work.OfPoints(List.of(lots[i].split(" ")))));
    }
    return Derivation.derive(drawing.layout(), new Frame(levers), List.of()).advice().stream()
        .map(Requirement::subject)
        .toList();
  }

  private static List<String> advice(Drawing drawing, String... lots) {
    return advice(drawing, List.of("7", "8", "9", "10"), lots);
  }

  private static Lever lever(String id, Work work) {
    return new Lever(id, "", work, Drawing.NOWHERE);
  }

  @Test
  void points_that_lead_two_routes_over_one_crossing_are_held_apart() {
    assertThat(advice(plain(), "D", "U")).containsExactly("points D R, points U N");
    assertThat(advice(junction(true, true, "up road"), "D", "U"))
        .containsExactly("points D N, points U R");
  }

  @Test
  void so_they_are_not_where_nobody_or_no_lever_is_there_to_work_them() {
    assertThat(advice(plain(), "D")).isEmpty();
    assertThat(advice(plain(), "D U")).isEmpty();
  }

  /** With both normal the frame stands, so nothing holds them then. */
  @Test
  void points_normal_for_both_routes_are_not_held_apart() {
    assertThat(advice(junction(true, false, "up road"), "D", "U")).isEmpty();
  }

  /** A lever is never pulled and pushed at once. */
  @Test
  void the_two_ways_of_one_lever_need_not_be_held_apart() {
    Drawing drawing = junction(false, true, "up road");
    assertThat(advice(drawing, "D", "U")).containsExactly("points D R, points U R");
    assertThat(advice(drawing, List.of("7-pull", "7-push"), "D", "U")).isEmpty();
  }

  /** More points on the up line, before the crossing: E normal on to it, reverse away from it. */
  private static Drawing withMorePoints() {
    return junction(false, false, "up on")
        .tracks("up on", "up off")
        .points("E", "up road", "up on", "up off")
        .limit(Attachment.Limit.BLOCK, "up off");
  }

  @Test
  void what_one_lever_holds_apart_needs_no_lock_between_two() {
    assertThat(advice(withMorePoints(), "D", "U", "E"))
        .containsExactly("points D R, points U N", "points D R, points E N");
    assertThat(advice(withMorePoints(), "D E", "U")).isEmpty();
  }

  /** A third line with a siding, of which the trap is reverse for the trap. */
  private static Drawing withSiding() {
    Drawing drawing =
        plain()
            .tracks("far", "far road", "far on", "siding lead", "siding")
            .joint("far", "far road")
            .points("S", "far road", "far on", "siding lead")
            .limit(Attachment.Limit.BLOCK, "far", "far on")
            .signal("3", Arm.STOP, "far", "far road", "far on");
    return drawing
        .points(
            "T",
            new TrackEnd("siding", 0),
            Optional.of(new TrackEnd("siding lead", 1)),
            Optional.empty())
        .limit(Attachment.Limit.BUFFER_STOP, new TrackEnd("siding", 1));
  }

  /** On one lever with D, it has to be reverse while 3 is off, and then U could not be normal. */
  @Test
  void points_that_a_route_needs_as_a_trap_are_not_taken_from_it() {
    assertThat(advice(withSiding(), "D", "U", "S", "T")).containsExactly("points D R, points U N");
    assertThat(advice(withSiding(), "D T", "U", "S")).isEmpty();
  }
}
