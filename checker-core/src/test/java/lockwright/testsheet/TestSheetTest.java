package lockwright.testsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.spec.Span;
import lockwright.walk.Outcome;
import lockwright.walk.Walks;
import lockwright.working.BruteForce;
import lockwright.working.HandBox;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

class TestSheetTest {
  private static Box read(String... path) {
    return BoxBuilder.read(Path.of("", path)).box().orElseThrow();
  }

  private static Box test(String name) {
    return read("src", "test", "resources", "boxes", name);
  }

  private static Box example(String name) {
    return read("..", "examples", "proved", name, "box");
  }

  /** The conditional release of the Indian Railways manual; what the levers work is ours. */
  private static Box conditional(String mark) {
    return new HandBox()
        .signal("1", Arm.STOP)
        .points("2")
        .points("3")
        .locking("1 released by 3 when 2 N" + mark)
        .box();
  }

  private static Box everyKind() {
    HandBox box = new HandBox();
    Stream.of("1", "2", "3", "4", "5").forEach(l -> box.signal(l, Arm.STOP));
    Stream.of("6", "7", "8").forEach(box::points);
    return box.locking(
            "1 released by 6 or 7",
            "2 locks 3 when 6 N and 7 R",
            "4 while normal locks both ways 8",
            "3 starts only with normal 5",
            "5 not again before 8",
            "2 locks both ways 6 when 8 N")
        .box();
  }

  /** Both the token lock and an entry hold lever 1 at first, and each could hide the other. */
  private static Box tokenAndEntry() {
    Box staffs = test("e5-staffs");
    Entry entry = staffs.locking().get(0);
    return staffs.withLocking(
        List.of(new Entry(entry.kind(), "1", List.of("2"), List.of(), false, "", entry.at())));
  }

  private static final List<String> BOXES =
      List.of(
          "quillby",
          "brindlewick",
          "corlhaven",
          "merrowdyke",
          "e1-junction",
          "e4-siding-and-branch",
          "e5-staffs",
          "e6-lever-plate",
          "conditional, holds",
          "conditional",
          "every kind",
          "token and entry");

  private static Box box(String name) {
    return switch (name) {
      case "quillby", "brindlewick", "corlhaven", "merrowdyke" -> example(name);
      case "conditional, holds" -> conditional(" (holds)");
      case "conditional" -> conditional("");
      case "every kind" -> everyKind();
      case "token and entry" -> tokenAndEntry();
      default -> test(name);
    };
  }

  private static final Map<String, TestSheet> SHEETS = new ConcurrentHashMap<>();

  /** Made once. */
  private static TestSheet sheet(String name) {
    return SHEETS.computeIfAbsent(name, n -> TestSheet.of(box(n), Walks.USUAL, p -> {}));
  }

  /**
   * The right frame passes, in both readings of unmarked pieces. A frame without an entry fails in
   * both, unless the sheet says that the entry is not covered; and nothing is named as not covered
   * in vain: then no line is failed in the reading in which all pieces hold.
   */
  @ParameterizedTest
  @FieldSource("BOXES")
  void the_right_frame_passes_and_a_frame_without_an_entry_fails(String name) {
    TestSheet sheet = sheet(name);
    Box box = sheet.box();
    assertThat(sheet.all()).isTrue();
    assertThat(TriedFrame.failures(Working.parted(box), sheet)).isEmpty();
    assertThat(TriedFrame.failures(Working.whole(box), sheet)).isEmpty();
    for (Entry entry : box.locking()) {
      List<Entry> others = new ArrayList<>(box.locking());
      others.remove(entry);
      Working allHold = Working.whole(box.withLocking(others));
      if (sheet.coversHeld(entry)) {
        assertThat(TriedFrame.failures(allHold, sheet)).as(entry.words()).isNotEmpty();
        assertThat(TriedFrame.failures(Working.parted(box, entry), sheet))
            .as(entry.words())
            .isNotEmpty();
      } else {
        assertThat(sheet.notTried()).anyMatch(n -> n.trial().entry().equals(entry));
        assertThat(TriedFrame.failures(allHold, sheet)).as(entry.words()).isEmpty();
      }
    }
  }

  /**
   * Lever locks and arm controls: the right frame passes, and one that lacks any contact fails; or
   * it is named as not tried.
   */
  @ParameterizedTest
  @CsvSource({
    "merrowdyke, 6, 0",
    "calling-on-proved, 2, 0",
    "arms-proved, 4, 0",
    "two-levers-detected-and-controlled, 1, 1"
  })
  void a_frame_without_a_contact_fails(String name, int tried, int named) {
    TestSheet sheet = sheet(name);
    assertThat(TriedFrame.failures(Working.parted(sheet.box()), sheet)).isEmpty();
    assertThat(TriedFrame.failures(Working.whole(sheet.box()), sheet)).isEmpty();
    List<WithoutContact> all = WithoutContact.all(sheet.box());
    assertThat(all.stream().filter(w -> w.triedOn(sheet))).hasSize(tried);
    assertThat(all.stream().filter(w -> w.namedOn(sheet))).hasSize(named);
    assertThat(tried + named).isEqualTo(all.size());
    for (WithoutContact wrong : all) {
      boolean fails = !TriedFrame.failures(Working.parted(wrong.box()), sheet).isEmpty();
      assertThat(fails).as(wrong.words()).isEqualTo(wrong.triedOn(sheet));
    }
  }

  /**
   * Token locks, siding releases, gate locks, detectors, lever locks: a frame that lacks one of
   * them fails, or it is named as not tried.
   */
  @ParameterizedTest
  @CsvSource({
    "quillby, 4, 0",
    "brindlewick, 1, 0",
    "corlhaven, 3, 0",
    "merrowdyke, 3, 1",
    "e5-staffs, 1, 0",
    "arms-proved, 1, 0",
    "push-pull-shunts, 0, 0",
    "points-worked-by-hand, 1, 0",
    "two-levers-detected-and-controlled, 3, 1"
  })
  void a_frame_without_a_rule_fails(String name, int tried, int named) {
    TestSheet sheet = sheet(name);
    List<RuleTrial> held =
        sheet.rules().lines().stream()
            .map(RuleLine::trial)
            .filter(t -> t.tried() instanceof RuleTrial.AtLever && t.wanting().isPresent())
            .toList();
    assertThat(held).hasSize(tried);
    assertThat(sheet.rules().notTriedWanting()).isEqualTo(named);
    for (RuleTrial trial : held) {
      assertThat(TriedFrame.failures(Working.parted(sheet.box()), Optional.of(trial), sheet))
          .as(trial.wanting().get())
          .isNotEmpty();
    }
  }

  /** 3.2: with 20 reversed the piece, which is not marked, may hold 6. */
  @Test
  void a_rule_is_not_tried_where_a_piece_that_is_not_marked_may_hold() {
    Box quillby = box("quillby");
    List<Entry> entries = new ArrayList<>(quillby.locking());
    List<Entry.Condition> when = List.of(new Entry.Condition("6", Position.N));
    Span at = entries.get(0).at();
    entries.add(new Entry(Entry.Kind.LOCKS, "20", List.of("16"), when, false, "", at));
    Box box = quillby.withLocking(entries);
    TestSheet sheet = TestSheet.of(box, Walks.USUAL, p -> {});
    RuleTrial trial =
        sheet.rules().lines().stream()
            .map(RuleLine::trial)
            .filter(t -> t.tried().equals(new RuleTrial.AtLever("6", Position.N)))
            .findFirst()
            .orElseThrow();
    assertThat(TriedFrame.failures(Working.whole(box), Optional.of(trial), sheet)).isNotEmpty();
  }

  /** Also where the table lets both levers of an arm be over: else the other might give it. */
  @Test
  void a_control_is_tried_with_one_lever_of_the_arm_at_a_time() {
    Box box = box("two-levers-detected-and-controlled").withLocking(List.of());
    List<RuleLine> lines =
        TestSheet.of(box, Walks.USUAL, p -> {}).rules().lines().stream()
            .filter(l -> l.trial().tried() instanceof RuleTrial.AtArm)
            .toList();
    assertThat(lines)
        .extracting(l -> l.at().values().get("lever 1") + l.at().values().get("lever 2"))
        .containsExactly("RN", "RN", "NR", "NR");
  }

  /** A lever that a lever lock holds, and no entry: the lock is what is named. */
  @Test
  void what_hides_a_trial_may_be_a_lever_lock() {
    assertThat(sheet("arms-proved").notTried())
        .anyMatch(
            n ->
                n.why()
                    .endsWith(
                        "held; in the nearest by lever 7 leaves N only with arm 2 at danger"));
  }

  @Test
  void all_entries_of_the_published_boxes_and_of_two_examples_are_covered_both_ways() {
    for (String name :
        List.of(
            "e1-junction",
            "e4-siding-and-branch",
            "e5-staffs",
            "e6-lever-plate",
            "conditional, holds",
            "conditional",
            "token and entry",
            "quillby",
            "brindlewick")) {
      Box box = sheet(name).box();
      assertThat(sheet(name).covered()).as(name).isEqualTo(box.locking());
    }
  }

  /**
   * The printed lines of a junction with a facing point lock: Indian Railways Signal Engineering
   * Manual, chapter 12, para 12.26.7(c)(iii)-(iv), figure 1 (text read, figure not seen).
   */
  @ParameterizedTest
  @CsvSource({
    "'',    1, held", "'',    2, held", "3,     2, held", "3,     4, held", "3,     1, free",
    "'1 3', 3, held", "'3 4', 1, held", "'3 4', 4, held", "'3 4', 2, free", "'2 3 4', 3, held"
  })
  void the_printed_lines_of_a_junction_are_on_its_sheet(
      String reversed, String lever, String expected) {
    assertLine("e1-junction", reversed, lever, expected);
  }

  /**
   * Those of a conditional release: the same manual, 12.26.7(c)(vi)-(vii), figure 2 (text read).
   */
  @ParameterizedTest
  @CsvSource({
    "'',    1, held",
    "2,     1, free",
    "'1 2', 3, held",
    "'1 2', 2, held",
    "3,     1, free",
    "'1 3', 2, held",
    "'1 3', 3, held"
  })
  void the_printed_lines_of_a_conditional_release_are_on_its_sheet(
      String reversed, String lever, String expected) {
    assertLine("conditional, holds", reversed, lever, expected);
  }

  private static void assertLine(String name, String reversed, String lever, String expected) {
    Box box = sheet(name).box();
    assertThat(sheet(name).lines())
        .anyMatch(
            l ->
                reversed(box, l).equals(reversed)
                    && l.lever().equals(lever)
                    && (l.free() ? "free" : "held").equals(expected));
  }

  private static String reversed(Box box, Line line) {
    return String.join(
        " ",
        box.frame().levers().stream()
            .map(l -> l.id())
            .filter(l -> line.at().values().get("lever " + l).equals("R"))
            .toList());
  }

  /**
   * Lever plate: G. Findlay, The Working and Management of an English Railway, p. 74 (read): the
   * plate of lever 10 reads 5, 7, 23.
   */
  @Test
  void the_plate_of_a_lever_names_those_to_be_pulled_before_it() {
    PullingOrder order =
        sheet("e6-lever-plate").orders().stream()
            .filter(o -> o.route().signal().equals("10"))
            .filter(o -> o.plate("10").size() == 3)
            .findFirst()
            .orElseThrow();
    assertThat(order.plate("10")).containsExactly("5", "7", "23");
    assertThat(order.plate("5")).isEmpty();
  }

  /** By brute force over all states. */
  @ParameterizedTest
  @CsvSource({"e1-junction", "e4-siding-and-branch", "e6-lever-plate", "brindlewick"})
  void no_pulling_order_is_longer_than_it_must_be(String name) {
    BruteForce all = BruteForce.of(Working.whole(sheet(name).box()));
    for (PullingOrder order : sheet(name).orders()) {
      Requirement requirement = new Requirement.RouteCanBeCleared(order.route());
      if (order.outcome() instanceof Outcome.Found found) {
        assertThat(all.shortest(requirement)).hasValue(found.walk().events().size());
      } else {
        assertThat(all.shortest(requirement)).isEmpty();
      }
    }
  }

  /** Each kind is broken down: every release, condition, position and rule has its own lines. */
  @Test
  void every_kind_of_entry_is_broken_down() {
    TestSheet sheet = sheet("every kind");
    assertThat(aspects(sheet, "1 released by 6 or 7"))
        .containsExactlyInAnyOrder(
            "release wanting 1",
            "released 1",
            "released 1",
            "back lock 6",
            "back lock 7",
            "back lock off, another gives the release 6",
            "back lock off, another gives the release 7");
    assertThat(aspects(sheet, "2 locks 3 when 6 N and 7 R"))
        .contains(
            "lock 2",
            "lock off 2",
            "converse 3",
            "converse off 3",
            "condition not met 2",
            "held by its condition 7");
    assertThat(aspects(sheet, "4 while normal locks both ways 8"))
        .contains(
            "both ways: held normal 8", "both ways: held reversed 8",
            "both ways off: free from normal 8", "both ways off: free from reversed 8");
    assertThat(aspects(sheet, "3 starts only with normal 5"))
        .contains("order 3", "order kept 3", "free once the other has started 5");
    assertThat(aspects(sheet, "5 not again before 8")).contains("rotation 5", "rotation kept 5");
    assertThat(aspects(sheet("conditional, holds"), "1 released by 3 when 2 N (holds)"))
        .contains("piece holds normal 3", "piece holds reversed 2", "piece holds normal 2");
  }

  /** What an entry of this table has tried, with the lever. */
  private static List<String> aspects(TestSheet sheet, String entry) {
    return sheet.lines().stream()
        .flatMap(l -> l.covers().stream())
        .filter(t -> t.entry().words().equals(entry))
        .map(t -> t.aspect().words() + " " + t.lever())
        .toList();
  }

  /** A rotation is seen to be kept only after it has been seen to hold. */
  @Test
  void a_rotation_is_kept_after_it_has_held() {
    List<Line> lines = sheet("every kind").lines();
    assertThat(first(lines, Aspect.ROTATION_KEPT)).isGreaterThan(first(lines, Aspect.ROTATION));
  }

  private static int first(List<Line> lines, Aspect aspect) {
    return lines.stream()
        .filter(l -> l.covers().stream().anyMatch(t -> t.aspect() == aspect))
        .findFirst()
        .orElseThrow()
        .number();
  }

  @Test
  void levers_are_tried_in_the_order_of_their_numbers() {
    Box box = sheet("quillby").box();
    List<String> groups = sheet("quillby").lines().stream().map(Line::group).distinct().toList();
    List<String> levers = box.frame().levers().stream().map(l -> l.id()).toList();
    assertThat(groups.get(0)).isEmpty();
    assertThat(groups.stream().skip(1).map(levers::indexOf)).isSorted();
  }

  /** 8 is held by 9 both ways whenever 1 stands reversed, so the converse of '1 locks 8' hides. */
  @Test
  void what_cannot_be_tried_alone_is_named_with_what_hides_it() {
    assertThat(sheet("e1-junction").notTried())
        .extracting(
            n -> n.trial().entry().words() + ", " + n.trial().aspect().words() + ": " + n.why())
        .containsExactly(
            "1 locks 4, converse: not alone: in every state that can be reached others hold the"
                + " lever too; in the nearest 3 locks both ways 4",
            "2 released by 4, back lock: not alone: in every state that can be reached others hold"
                + " the lever too; in the nearest 3 locks both ways 4");
  }

  /** 18 stands as a condition in pieces that are not marked, and may be held by them too. */
  @Test
  void what_hangs_on_pieces_that_are_not_marked_is_not_called_covered() {
    TestSheet sheet = sheet("corlhaven");
    assertThat(sheet.notTried())
        .filteredOn(n -> n.trial().entry().words().equals("5 locks both ways 18"))
        .hasSize(2)
        .allMatch(n -> n.why().startsWith("alone only if pieces that are not marked do not hold"));
    assertThat(sheet.box().locking())
        .filteredOn(e -> !sheet.coversHeld(e))
        .extracting(Entry::words)
        .contains("5 locks both ways 18");
  }

  @Test
  void a_limit_is_called_one_and_what_is_not_found_is_named() {
    TestSheet sheet = TestSheet.of(test("e1-junction"), 2, p -> {});
    assertThat(sheet.all()).isFalse();
    assertThat(sheet.covered()).isNotEqualTo(sheet.box().locking());
    assertThat(sheet.notTried()).anyMatch(n -> n.why().contains("among those looked at"));
    assertThat(TriedFrame.failures(Working.parted(sheet.box()), sheet)).isEmpty();
  }
}
