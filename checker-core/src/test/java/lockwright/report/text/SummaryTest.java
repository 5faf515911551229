package lockwright.report.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Frame;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Position;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.railway.words.Event.AtInstrument;
import lockwright.railway.words.Event.Deed;
import lockwright.railway.words.Event.LeverMoves;
import lockwright.report.Findings;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/** The runs are made by hand and audited; no search takes part. */
class SummaryTest {
  private static final String BREACH = "no conflict: signals 2 and 22";
  private static final String WEST = "Sedgeholm to Quillby";

  private static Box box(String example) {
    return BoxBuilder.read(Path.of("..", "examples", "broken", example, "box")).box().orElseThrow();
  }

  private static List<Event> pull(String lever) {
    return List.of(
        new LeverMoves(lever, Position.N, Position.M),
        new LeverMoves(lever, Position.M, Position.R));
  }

  private static Run run(Box box, List<Event> events) {
    return new Run(Working.parted(box).beginnings().iterator().next().values(), events);
  }

  private static Box with(Box box, String name, Frame frame, List<Requirement> requirements) {
    return new Box(
        name,
        box.layout(),
        frame,
        box.locking(),
        box.sections(),
        box.routes(),
        box.notSignalled(),
        box.conflicts(),
        box.distantPaths(),
        requirements);
  }

  /** One claim, all else undecided. */
  private static Findings findings(Box box, Claims claims) {
    SortedMap<String, String> digests = new TreeMap<>(Map.of("plan.yaml", "0".repeat(64)));
    return new Findings(box, digests, Auditor.audit(box, claims), Map.of(), "Z3");
  }

  private static Findings broken(Box box, String requirement, List<Event> events) {
    Claim claim = new Claim.Reached(run(box, events), true);
    return findings(box, new Claims(Map.of(requirement, claim), Map.of(), Map.of()));
  }

  private static Findings opposingSignals(Box box) {
    List<Event> events = new ArrayList<>();
    events.addAll(pull("8"));
    events.addAll(pull("9"));
    events.addAll(pull("2"));
    events.addAll(pull("17"));
    events.add(new LeverMoves("22", Position.N, Position.M));
    return broken(box, BREACH, events);
  }

  @Test
  void a_breach_is_told_as_numbered_pulls_with_what_they_move() {
    assertThat(Summary.failed(opposingSignals(box("opposing-signals"))))
        .containsSubsequence(
            "Quillby: 113 of 113 requirements fail (1 broken, 112 undecided)",
            "broken: " + BREACH,
            "  beginning: all levers normal",
            "  1. pull 8 West points        points W lie reverse",
            "  2. pull 9 West bolt          bolt of W in",
            "  3. pull 2 Down home          signal 2 off",
            "  4. pull 17 East bolt         bolt of E in",
            "  5. pull 22 Up home part-way  signal 22 part-way, taken as off",
            "  here it breaks: signals 2 and 22 are off together, for conflicting routes",
            "  the requirement: No two arms are off for conflicting routes.",
            "  perhaps missing: '2 locks 22 when 8 R'; with it movement 5 would not be free",
            "    (a draft for a competent person; that it mends the requirement is not claimed)");
  }

  @Test
  void half_strokes_with_something_between_them_stay_apart() {
    Box box = box("opposing-signals");
    List<Event> events = new ArrayList<>();
    events.add(new LeverMoves("8", Position.N, Position.M));
    events.addAll(pull("17"));
    events.add(new LeverMoves("8", Position.M, Position.R));
    events.addAll(pull("9"));
    events.addAll(pull("2"));
    events.add(new LeverMoves("2", Position.R, Position.M));
    events.add(new LeverMoves("22", Position.N, Position.M));
    assertThat(Summary.failed(broken(box, BREACH, events)))
        .containsSubsequence(
            "  1. pull 8 West points part-way             points W lie neither way",
            "  2. pull 17 East bolt                       bolt of E in",
            "  3. pull 8 West points the rest of the way  points W lie reverse",
            "  4. pull 9 West bolt                        bolt of W in",
            "  5. pull 2 Down home                        signal 2 off",
            "  6. replace 2 Down home part-way            signal 2 part-way, taken as off");
  }

  @Test
  void what_is_done_at_instruments_is_told_with_where_the_tokens_are() {
    Box box = box("token-without-consent");
    List<Event> events =
        List.of(
            new AtInstrument(WEST, Deed.PLUNGE, "Quillby"),
            new AtInstrument(WEST, Deed.START_WITHDRAWAL, "Sedgeholm"),
            new AtInstrument(WEST, Deed.STOP_PLUNGING, "Quillby"),
            new AtInstrument(WEST, Deed.START_WITHDRAWAL, "Quillby"),
            new AtInstrument(WEST, Deed.FINISH_WITHDRAWAL, "Sedgeholm"),
            new AtInstrument(WEST, Deed.FINISH_WITHDRAWAL, "Quillby"));
    Run run = run(box, events);
    SortedMap<String, String> beginning = new TreeMap<>(run.beginning());
    beginning.put("section " + WEST + ": tokens in Sedgeholm", "6");
    beginning.put("section " + WEST + ": tokens in Quillby", "9");
    Claim claim = new Claim.Reached(new Run(beginning, events), false);
    String id = "one token out: section " + WEST;
    assertThat(Summary.failed(findings(box, new Claims(Map.of(id, claim), Map.of(), Map.of()))))
        .containsSubsequence(
            "  beginning: section Sedgeholm to Quillby: 6 tokens in Sedgeholm, 9 tokens in Quillby,"
                + " release locked",
            "  1. Quillby plunges",
            "  2. Sedgeholm starts to withdraw a token",
            "  3. Quillby stops plunging",
            "  4. Quillby starts to withdraw a token",
            "  5. Sedgeholm finishes the withdrawal of the token  1 token out",
            "  6. Quillby finishes the withdrawal of the token    2 tokens out; lever 11 released for"
                + " one pull",
            "  here it breaks: two are out of section Sedgeholm to Quillby",
            "  perhaps a shorter sequence breaks it too");
  }

  @Test
  void a_possibility_in_the_full_log_has_its_pulling_order() {
    Box box = box("opposing-signals");
    Claim claim =
        new Claim.Reached(run(box, List.of(new LeverMoves("12", Position.N, Position.R))), true);
    Claims claims = new Claims(Map.of(), Map.of(), Map.of("lever can be moved: lever 12", claim));
    assertThat(FullLog.of(findings(box, claims)))
        .contains(
            "shown: lever can be moved: lever 12\n"
                + "  beginning: all levers normal\n"
                + "  1. pull 12 Siding release  Siding release given\n");
  }

  @Test
  void nothing_undecided_is_called_proved() {
    Findings findings = findings(box("opposing-signals"), new Claims(Map.of(), Map.of(), Map.of()));
    assertThat(Summary.failed(findings))
        .contains("Quillby: 113 of 113 requirements fail (113 undecided)");
    assertThat(Summary.failing(findings)).hasSize(113).allMatch(l -> l.startsWith("undecided: "));
    assertThat(String.join("\n", Summary.failed(findings))).doesNotContainIgnoringCase("proved");
    assertThat(FullLog.of(findings)).doesNotContain("proved");
    assertThatThrownBy(() -> Summary.passed(findings)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_box_without_requirements_of_safety_does_not_pass() {
    Box box = box("opposing-signals");
    Box nothing = with(box, "Quillby", box.frame(), List.of());
    assertThat(Summary.failed(findings(nothing, new Claims(Map.of(), Map.of(), Map.of()))))
        .containsExactly(
            "Quillby: there is no requirement of safety, so nothing is said of its safety");
  }

  /** A label that would forge a line or move the cursor. */
  @Test
  void a_label_forges_no_line() {
    Box box = box("opposing-signals");
    List<Lever> levers =
        box.frame().levers().stream()
            .map(
                l -> new Lever(l.id(), "x\nQuillby: all proved\r\u001b[2K\u202e", l.work(), l.at()))
            .toList();
    Box forged = with(box, "Quillby\u0085", new Frame(levers), box.requirements());
    List<String> lines = Summary.failed(opposingSignals(forged));
    assertThat(lines.get(0)).startsWith("Quillby\\u0085: ");
    assertThat(lines)
        .anyMatch(l -> l.contains("pull 8 x\\u000aQuillby: all proved\\u000d\\u001b[2K\\u202e"))
        .noneMatch(l -> l.matches("(?s).*[\\p{Cc}\\p{Cf}].*"));
  }
}
