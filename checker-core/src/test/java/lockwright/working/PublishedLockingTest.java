package lockwright.working;

import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.layout.Arm;
import lockwright.railway.requirement.Requirement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Locking tables printed with their results, played on the frame. Each source is named beside it.
 */
class PublishedLockingTest {

  /**
   * Junction with a facing point lock: Indian Railways Signal Engineering Manual, chapter 12, para
   * 12.26.7(c)(iii)-(iv), figure 1 (text read, figure not seen).
   */
  private static HandBox junction(String... table) {
    return new HandBox()
        .signal("1", Arm.STOP)
        .signal("2", Arm.STOP)
        .bolt("3", "4", false)
        .points("4")
        .locking(table)
        .routes(route("1", "4N"), route("2", "4R"));
  }

  private static final String[] JUNCTION = {
    "1 released by 3", "1 locks 4", "2 released by 3", "2 released by 4", "3 locks both ways 4"
  };

  @ParameterizedTest
  @CsvSource({
    "'',      '1 2',   ''",
    "3,       '2 4',   1",
    "3 1,     3,       ''",
    "4 3,     '1 4',   2",
    "4 3 2,   3,       ''"
  })
  void the_five_printed_lines_of_a_junction_with_a_facing_point_lock(
      String pulled, String locked, String free) {
    Frames frame = Frames.pulled(Working.parted(junction(JUNCTION).box()), levers(pulled));
    assertThat(levers(locked)).noneMatch(frame::free);
    assertThat(levers(free)).allMatch(frame::free);
  }

  /** Counted by hand for this project, not published. */
  @Test
  void the_junction_counted_and_two_faults_of_it_counted() {
    Box whole = junction(JUNCTION).box();
    assertCounts(Working.whole(whole), 6, 10);
    assertCounts(Working.parted(whole), 11, 20);

    Box noLock = junction(without(JUNCTION, 1)).box();
    assertCounts(Working.whole(noLock), 8, 16);
    Frames.pulled(Working.parted(noLock), "4", "3", "1");

    Box noBolt = junction(without(JUNCTION, 4)).box();
    assertCounts(Working.whole(noBolt), 6, 12);
  }

  /** The faults as requirements: each is seen where it lies, and only there. */
  @Test
  void the_two_faults_break_what_they_should() {
    Requirement set = new Requirement.PointsSet("1", List.of(route("1", "4N")));
    Requirement agree = new Requirement.BoltAndPointsAgree("4");
    BruteForce sound = BruteForce.of(Working.parted(junction(JUNCTION).box()));
    assertThat(sound.shortest(set)).isEmpty();
    assertThat(sound.shortest(agree)).isEmpty();

    BruteForce noLock = BruteForce.of(Working.parted(junction(without(JUNCTION, 1)).box()));
    assertThat(noLock.shortest(set)).hasValue(4 + 1);
    BruteForce noBolt = BruteForce.of(Working.parted(junction(without(JUNCTION, 4)).box()));
    assertThat(noBolt.shortest(agree)).hasValue(2);
  }

  /**
   * Conditional release: the same manual, 12.26.7(c)(vi)-(vii), figure 2 (text read). Three levers;
   * what they work is ours.
   */
  private static Box conditional(String entry) {
    return new HandBox().signal("1", Arm.STOP).points("2").points("3").locking(entry).box();
  }

  private static final String HOLDS = "1 released by 3 when 2 N (holds)";
  private static final String WEAKEST = "1 released by 3 when 2 N";

  @ParameterizedTest
  @CsvSource({
    "'',    1,     ''",
    "2,     '',    1",
    "2 1,   '3 2', ''",
    "3,     '',    1",
    "3 1,   '2 3', ''"
  })
  void the_five_printed_lines_of_a_conditional_release(String pulled, String locked, String free) {
    Frames frame = Frames.pulled(Working.parted(conditional(HOLDS)), levers(pulled));
    assertThat(levers(locked)).noneMatch(frame::free);
    assertThat(levers(free)).allMatch(frame::free);
  }

  /**
   * The same lines, third and fifth: unmarked, the entry leaves one lever free that is printed
   * locked.
   */
  @Test
  void without_the_mark_the_third_and_fifth_lines_are_weaker() {
    Working weakest = Working.parted(conditional(WEAKEST));
    assertThat(Frames.pulled(weakest, "2", "1").free("3")).isTrue();
    assertThat(Frames.pulled(weakest, "2", "1").free("2")).isFalse();
    assertThat(Frames.pulled(weakest, "3", "1").free("2")).isTrue();
    assertThat(Frames.pulled(weakest, "3", "1").free("3")).isFalse();
  }

  /** Counted by hand for this project, not published. For possibility every such piece holds. */
  @Test
  void the_conditional_release_counted() {
    assertCounts(Working.whole(conditional(HOLDS)), 7, 14);
    assertCounts(Working.whole(conditional(WEAKEST)), 7, 14);
    assertCountsOneLeverPartWay(Working.parted(conditional(HOLDS)), 14, 28);
    assertCountsOneLeverPartWay(Working.parted(conditional(WEAKEST)), 16, 36);
  }

  /** By whole strokes, weakest reading: 7 states and 18 movements, counted from half-strokes. */
  @Test
  void the_weakest_conditional_release_counted_by_whole_strokes() {
    Working weakest = Working.parted(conditional(WEAKEST));
    int[] counts = new int[2];
    Condition whole = partWay(weakest, 0);
    BruteForce.of(weakest, 1000, partWay(weakest, 1))
        .forEach(
            state -> {
              if (whole.evaluate(state)) {
                counts[0]++;
                counts[1] +=
                    (int) Stream.of("1", "2", "3").filter(l -> leaves(weakest, state, l)).count();
              }
            });
    assertThat(counts).containsExactly(7, 18);
  }

  private static boolean leaves(Working working, State state, String lever) {
    return working.movements().stream()
        .anyMatch(
            m ->
                m.event().key().startsWith("lever " + lever + " ")
                    && working.free(state, m.event()));
  }

  /**
   * Lever plate: G. Findlay, The Working and Management of an English Railway, p. 74 (read): the
   * plate of lever 10 reads 5, 7, 23.
   */
  @Test
  void a_lever_moves_only_when_the_three_on_its_plate_have_been_moved() {
    HandBox box = new HandBox();
    Stream.of("5", "7", "23").forEach(box::points);
    box.signal("10", Arm.STOP).locking("10 released by 5", "10 released by 7", "10 released by 23");
    Working working = Working.parted(box.box());
    assertThat(Frames.pulled(working, "5", "7", "23").free("10")).isTrue();
    assertThat(Frames.pulled(working, "5", "7").free("10")).isFalse();
    assertThat(Frames.pulled(working, "7", "23").free("10")).isFalse();
    assertThat(Frames.pulled(working, "5", "23").free("10")).isFalse();
    Frames pulled = Frames.pulled(working, "23", "7", "5", "10");
    assertThat(List.of("5", "7", "23")).noneMatch(pulled::free);
  }

  private static void assertCounts(Working working, int states, int movements) {
    BruteForce all = BruteForce.of(working);
    assertThat(List.of(all.states(), (int) all.movements())).containsExactly(states, movements);
  }

  private static void assertCountsOneLeverPartWay(Working working, int states, int movements) {
    BruteForce all = BruteForce.of(working, 1000, partWay(working, 1));
    assertThat(List.of(all.states(), (int) all.movements())).containsExactly(states, movements);
  }

  /** No more than so many of three levers are part-way. */
  private static Condition partWay(Working working, int most) {
    Quantities three = new Quantities(conditional(HOLDS));
    List<Condition> notPartWay = three.all().stream().map(q -> three.is(q, "N", "R")).toList();
    return Condition.any(
        IntStream.range(0, 8)
            .filter(set -> Integer.bitCount(set) >= 3 - most)
            .mapToObj(
                set ->
                    Condition.all(
                        IntStream.range(0, 3)
                            .filter(i -> (set & 1 << i) != 0)
                            .mapToObj(notPartWay::get)
                            .toList()))
            .toList());
  }

  private static String[] levers(String written) {
    return written == null || written.isBlank() ? new String[0] : written.trim().split(" ");
  }

  private static String[] without(String[] table, int row) {
    return IntStream.range(0, table.length)
        .filter(i -> i != row)
        .mapToObj(i -> table[i])
        .toArray(String[]::new);
  }
}
