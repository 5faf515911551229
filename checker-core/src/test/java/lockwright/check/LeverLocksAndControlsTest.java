package lockwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lockwright.audit.Audited;
import lockwright.audit.MissingEntry;
import lockwright.explain.Asked;
import lockwright.explain.Explanation;
import lockwright.railway.Box;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Contact.ArmAtDanger;
import lockwright.railway.control.Controls;
import lockwright.railway.control.LeverLock;
import lockwright.railway.control.OutsideCondition;
import lockwright.report.Findings;
import lockwright.report.explain.ExplanationText;
import lockwright.spec.Span;
import org.junit.jupiter.api.Test;

/**
 * What is kept by lever locks and arm controls alone, and what they do not keep. The slot of a
 * distant on the post of a stop signal, which keeps it on until the stop arm is off and puts it on
 * again with it: J. Ford, Railway Signalling in Britain, part 3, Slotting (2013). All else is
 * common practice, no source; the boxes are invented.
 */
class LeverLocksAndControlsTest {
  private static final Span HERE = new Span("test", 1, 1);
  private static final Box PROVED = Boxes.test("arms-proved");
  private static final Box SECTION = Boxes.test("calling-on-proved");
  private static final String DISTANT = "distant follows: signal 1";
  private static final String OPPOSED = "no conflict: signals 2 and 8";
  private static final String ROAD = "road closed: signal 2, level crossing Fen Lane";
  private static final String EARNED = "section signal earned: signal 1, section Tarn to Holm";
  private static final String APART =
      "section signals apart: signals 1 and 2, section Tarn to Holm";

  private static Controls without(Controls all, String signal, String lever) {
    return new Controls(
        all.conditions(),
        all.leverLocks().stream().filter(l -> !l.lever().equals(lever)).toList(),
        all.armControls().stream().filter(c -> !c.signal().equals(signal)).toList());
  }

  private static Controls controlling(OutsideCondition condition, String signal) {
    return new Controls(
        List.of(condition),
        List.of(),
        List.of(new ArmControl(signal, List.of(new Contact.Outside(condition.name())), HERE)));
  }

  private static OutsideCondition condition(OutsideCondition.Kind kind) {
    return new OutsideCondition("Given", kind, List.of("Holm"), false, HERE);
  }

  @Test
  void a_box_is_proved_by_what_its_arms_prove() {
    Findings findings = Boxes.check(PROVED);
    assertThat(findings.audited())
        .allMatch(
            a ->
                a instanceof Audited.Proved
                    || a instanceof Audited.Shown
                    || a instanceof Audited.Restorable);
    assertThat(findings.audited())
        .extracting(a -> a.requirement().id())
        .contains(DISTANT, OPPOSED, ROAD);
  }

  @Test
  void without_its_slot_the_distant_does_not_follow() {
    Findings findings = Boxes.check(PROVED.withControls(without(PROVED.controls(), "1", "")));
    assertThat(Boxes.movements(findings, DISTANT)).containsExactly("lever 1 N>M");
    assertThat(Boxes.of(findings, OPPOSED)).isInstanceOf(Audited.Proved.class);
    assertThat(Boxes.of(findings, ROAD)).isInstanceOf(Audited.Proved.class);
  }

  /** The other box gives its slot, whatever the arms here do. */
  @Test
  void the_slot_of_another_box_does_not_suffice() {
    Controls all = PROVED.controls();
    List<ArmControl> arms = new ArrayList<>(without(all, "1", "").armControls());
    arms.add(new ArmControl("1", List.of(new Contact.Outside("Given")), HERE));
    Findings findings =
        Boxes.check(
            PROVED.withControls(
                new Controls(
                    List.of(condition(OutsideCondition.Kind.SLOT)), all.leverLocks(), arms)));
    assertThat(Boxes.movements(findings, DISTANT)).containsExactly("lever 1 N>M");
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, DISTANT);
    assertThat(broken.played().beginning()).containsEntry("condition Given", "met");
  }

  @Test
  void without_their_proving_opposed_arms_go_off_together_and_an_entry_is_drafted() {
    Findings findings = Boxes.check(PROVED.withControls(without(PROVED.controls(), "8", "")));
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, OPPOSED);
    assertThat(Boxes.movements(findings, OPPOSED)).containsExactly("lever 2 N>M", "lever 8 N>M");
    assertThat(
            MissingEntry.draft(findings.box(), broken.requirement(), broken.played())
                .orElseThrow()
                .words())
        .isEqualTo("2 locks 8");
  }

  @Test
  void without_its_lock_the_gates_are_opened_under_the_signal() {
    Findings findings = Boxes.check(PROVED.withControls(without(PROVED.controls(), "", "7")));
    assertThat(Boxes.movements(findings, ROAD)).containsExactly("lever 2 N>M", "lever 7 N>M");
    assertThat(Boxes.of(findings, DISTANT)).isInstanceOf(Audited.Proved.class);
  }

  /** A lock on one stroke is not tested on the other, nor once the lever has left its end. */
  @Test
  void a_lock_of_the_stroke_back_does_not_hold_the_pull() {
    List<LeverLock> back =
        List.of(new LeverLock("7", List.of(), List.of(new ArmAtDanger("2")), HERE));
    Controls all = PROVED.controls();
    Findings findings =
        Boxes.check(PROVED.withControls(new Controls(all.conditions(), back, all.armControls())));
    assertThat(Boxes.movements(findings, ROAD)).containsExactly("lever 2 N>M", "lever 7 N>M");
  }

  @Test
  void a_lock_by_the_other_arm_keeps_section_signals_apart() {
    assertThat(Boxes.of(Boxes.check(SECTION), APART)).isInstanceOf(Audited.Proved.class);
    assertThat(Boxes.of(Boxes.check(SECTION), EARNED)).isInstanceOf(Audited.Proved.class);
    Findings findings = Boxes.check(SECTION.withControls(Controls.NONE));
    assertThat(Boxes.of(findings, APART)).isInstanceOf(Audited.Broken.class);
  }

  /** The lever is pulled with the arm held on; the token is back before the control comes. */
  @Test
  void an_arm_that_its_control_lets_go_off_later_has_not_earned_it() {
    Findings findings =
        Boxes.check(
            SECTION.withControls(controlling(condition(OutsideCondition.Kind.TRACK_CIRCUIT), "1")));
    assertThat(Boxes.movements(findings, EARNED))
        .containsExactly(
            "section Tarn to Holm: start a withdrawal at Tarn End",
            "section Tarn to Holm: finish the withdrawal at Tarn End",
            "lever 1 N>M",
            "section Tarn to Holm: put a fresh token in at Tarn End",
            "condition Given: becomes met");
    Audited.Broken broken = (Audited.Broken) Boxes.of(findings, EARNED);
    assertThat(
            MissingEntry.draft(findings.box(), broken.requirement(), broken.played())
                .orElseThrow()
                .words())
        .isEqualTo("lever lock: lever 1 needs Given, normal to reverse");
  }

  /** 4.3: as the other lever goes back, the arm that it proves goes off, its own lever still. */
  @Test
  void an_arm_goes_off_by_the_lever_of_another() {
    Box box =
        SECTION
            .withLocking(List.of())
            .withControls(
                new Controls(
                    List.of(),
                    List.of(),
                    List.of(new ArmControl("2", List.of(new ArmAtDanger("1")), HERE))));
    Findings findings = Boxes.check(box);
    String earned = EARNED.replace("signal 1", "signal 2");
    assertThat(Boxes.of(findings, APART)).isInstanceOf(Audited.Proved.class);
    assertThat(Boxes.movements(findings, earned)).last().isEqualTo("lever 1 M>N");
  }

  /** Nothing outside happens on the way back; that the other box would help is told. */
  @Test
  void a_lever_held_reversed_by_another_box_is_not_restored() {
    LeverLock lock = new LeverLock("1", List.of(), List.of(new Contact.Outside("Given")), HERE);
    Box box =
        SECTION.withControls(
            new Controls(
                List.of(condition(OutsideCondition.Kind.RELEASE)), List.of(lock), List.of()));
    Audited.Stranded stranded =
        (Audited.Stranded) Boxes.of(Boxes.check(box), "frame can be restored: all levers");
    assertThat(stranded.helped().orElseThrow().steps())
        .extracting(s -> s.event().key())
        .contains("condition Given: becomes met");
  }

  /** The release is used up as the lever leaves N, and is to be given anew. */
  @Test
  void a_release_for_one_pull_is_used_up() {
    OutsideCondition onePull =
        new OutsideCondition("Given", OutsideCondition.Kind.RELEASE, List.of("Holm"), true, HERE);
    LeverLock lock = new LeverLock("8", List.of(new Contact.Outside("Given")), List.of(), HERE);
    Box box = PROVED.withControls(new Controls(List.of(onePull), List.of(lock), List.of()));
    assertThat(explained(box, "8", List.of()))
        .contains("  held by lever 8 leaves N only with the release Given (Holm)")
        .contains("  1. Given: Holm gives the release");
    assertThat(explained(box, "8", List.of("8"))).contains("to replace 8 Starting: free");
  }

  private static List<String> explained(Box box, String lever, List<String> reversed) {
    return ExplanationText.lines(
        Explanation.of(box, new Asked(reversed, List.of(), lever), 1000), "box/");
  }
}
