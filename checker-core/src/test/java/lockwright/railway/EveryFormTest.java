package lockwright.railway;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lockwright.railway.control.Contact;
import lockwright.railway.frame.Lever;
import lockwright.railway.frame.Work;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Attachment;
import lockwright.railway.layout.Lie;
import lockwright.railway.layout.Signal;
import lockwright.railway.layout.TrackEnd;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Expectation;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;
import lockwright.spec.Span;
import lockwright.spec.SpecsOnDisk;
import org.junit.jupiter.api.Test;

/**
 * Every form that the files can take, in one invented box; the meaning is that of `docs/spec.md`.
 */
class EveryFormTest {
  private final Box box = BoxBuilder.read(SpecsOnDisk.EVERY_FORM).box().orElseThrow();

  @Test
  void levers_are_in_order_of_number_then_letter() {
    assertThat(box.frame().levers().stream().map(Lever::id))
        .containsExactly(
            "2", "3", "4", "6", "6A", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16-pull",
            "16-push");
  }

  @Test
  void levers_work_several_points_a_release_or_nothing() {
    assertThat(box.frame().lever("6").work())
        .isEqualTo(new Work.OfSignal("5", List.of("up loop"), false));
    assertThat(box.frame().lever("6A").work()).isEqualTo(new Work.OfSignal("6", List.of(), true));
    assertThat(box.frame().lever("7").work())
        .isEqualTo(new Work.OfPoints(List.of("5", "8"), List.of("8")));
    assertThat(box.frame().lever("9").work()).isEqualTo(new Work.OfRelease("Quarry", true));
    assertThat(box.frame().lever("10").work()).isEqualTo(new Work.Spare());
    assertThat(box.frame().lever("14").work()).isEqualTo(new Work.OutOfUse("Loop points"));
    assertThat(box.frame().lever("15").work()).isEqualTo(new Work.OfClosing(List.of("2", "4")));
  }

  @Test
  void points_are_worked_by_a_lever_a_ground_frame_by_hand_or_by_a_spring() {
    assertThat(box.layout().sprung("T2")).isTrue();
    assertThat(box.layout().sprung("T1")).isFalse();
    assertThat(box.layout().byHand("T1")).isTrue();
    assertThat(box.layout().byHand("5")).isFalse();
    assertThat(box.layout().pointsBesideLevers()).containsExactly("9", "T1", "P1");
  }

  @Test
  void the_wire_of_an_arm_detects_points() {
    assertThat(box.frame().connections().detected("4")).containsExactly("5");
    assertThat(box.frame().connections().detected("2")).isEmpty();
    assertThat(box.frame().connections().brokenRods()).containsExactly("5");
  }

  @Test
  void levers_work_gates_their_lock_and_wickets() {
    assertThat(box.frame().lever("11").work()).isEqualTo(new Work.OfGateLock("Fen Lane", false));
    assertThat(box.frame().lever("12").work()).isEqualTo(new Work.OfGates("Quarry Road", true));
    assertThat(box.frame().lever("13").work()).isEqualTo(new Work.OfWickets("Fen Lane"));
    assertThat(box.layout().levelCrossing("Fen Lane").tracks())
        .containsExactly("approach", "up loop");
  }

  @Test
  void levers_are_locked_and_arms_controlled_from_outside() {
    assertThat(box.controls().conditions())
        .extracting(c -> c.name() + ", " + c.kind().words() + " " + c.of() + ", " + c.onePull())
        .containsExactly(
            "Platform clear, track circuit [up loop, departure], false",
            "Fen accepts, release [Alder Fen], true",
            "Fen slot, slot [Alder Fen], false",
            "Train arrived, treadle [approach], false",
            "Time run, time [2 minutes], false");
    assertThat(box.controls().leverLocks())
        .extracting(l -> l.lever() + " " + words(l.leavingNormal()) + words(l.leavingReversed()))
        .containsExactly(
            "4 [Fen accepts, Platform clear][]",
            "7 [arm 2 at danger, Platform clear, Train arrived][arm 2 at danger]",
            "11 [Time run][arm 2 at danger]");
    assertThat(box.controls().armControls())
        .extracting(c -> c.signal() + " " + words(c.needs()))
        .containsExactly(
            "2 [Platform clear, arm 4 at danger]",
            "4 [Fen slot, arm 6 at danger]",
            "5 [arm 4 off]");
  }

  private static List<String> words(List<Contact> contacts) {
    return contacts.stream().map(Contact::words).toList();
  }

  @Test
  void entries_have_alternatives_conditions_holding_pieces_and_notes() {
    assertThat(box.locking().stream().map(Entry::words))
        .containsExactly(
            "2 released by 8",
            "2 locks 3",
            "2 locks 4",
            "2 locks 7",
            "3 released by 7",
            "3 released by 8",
            "3 locks 4",
            "3 locks 6",
            "3 locks 6A",
            "4 released by 8 or 9 when 7 N (holds)",
            "4 locks 7",
            "4 locks both ways 8",
            "6A released by 7 when 2 N and 3 N",
            "6A released by 7 when 4 R",
            "8 locks both ways 7",
            "3 starts only with normal 9 when 7 R",
            "3 not again before 4 when 7 R",
            "9 while normal locks both ways 6");
    assertThat(box.locking().get(8).at()).hasToString("locking.yaml:3:51");
    assertThat(box.locking().get(8).note()).isEqualTo("in, not out");
  }

  @Test
  void signals_are_of_every_kind() {
    assertThat(box.layout().signals().stream().map(Signal::arm))
        .containsExactly(
            Arm.DISTANT, Arm.STOP, Arm.SHUNTING, Arm.STOP, Arm.CALLING_ON, Arm.SHUNTING);
    assertThat(box.layout().signals().stream().map(Signal::fixed))
        .containsExactly(true, false, false, false, false, false);
    assertThat(box.layout().signal("3").label()).isEqualTo("Shunt to siding, \"inwards\"");
  }

  @Test
  void a_signal_stands_at_a_joint_at_a_leg_of_points_or_at_a_crossing() {
    assertThat(box.layout().at(box.layout().signal("2").stands()))
        .isInstanceOf(Attachment.Joint.class);
    assertThat(box.layout().at(box.layout().signal("4").stands()))
        .isInstanceOf(Attachment.AtPoints.class);
    assertThat(box.layout().at(box.layout().signal("6").stands()))
        .isInstanceOf(Attachment.AtCrossing.class);
  }

  @Test
  void trap_points_have_one_leg() {
    assertThat(box.layout().points("8").trap()).isEqualTo(Optional.of(Lie.NORMAL));
    assertThat(box.layout().points("8").normal()).isEmpty();
    assertThat(box.layout().points("8").reverse()).isEqualTo(Optional.of("siding throat"));
  }

  @Test
  void tracks_end_at_limits_or_in_a_section_and_only_some_are_on_passenger_lines() {
    assertThat(box.layout().at(new TrackEnd("single line", 1)))
        .isEqualTo(new Attachment.InSection("Fen to Holm"));
    assertThat(box.layout().at(new TrackEnd("shed", 1)))
        .isEqualTo(new Attachment.AtLimit(Attachment.Limit.BUFFER_STOP));
    assertThat(box.layout().limitsOfShunt()).isEqualTo(Set.of(new TrackEnd("approach", 0)));
    assertThat(box.layout().track("siding").passenger()).isFalse();
    assertThat(box.layout().track("siding").label()).isEqualTo("Siding");
  }

  @Test
  void points_out_in_a_section_lie_between_ends_in_it_and_its_tokens_release_them() {
    assertThat(box.layout().at(new TrackEnd("line to pit", 1)))
        .isEqualTo(new Attachment.InSection("Fen to Holm"));
    assertThat(box.layout().at(new TrackEnd("line past pit", 1)))
        .isEqualTo(new Attachment.InSection("Fen to Holm"));
    assertThat(box.frame().ofRelease("Pit")).isEmpty();
    assertThat(box.releasing("Pit")).contains(box.sections().get(0));
    assertThat(box.releasing("Quarry")).isEmpty();
    assertThat(box.requirements().stream().map(Requirement::id))
        .contains("siding locked: ground frame Pit, section Fen to Holm")
        .noneMatch(id -> id.contains("P1"));
  }

  @Test
  void failures_are_expected_or_waived() {
    assertThat(BoxBuilder.read(SpecsOnDisk.EVERY_FORM).expectations())
        .containsExactly(
            new Expectation(
                "one token out: section Fen to Holm",
                Expectation.Verdict.BROKEN,
                "an irregular withdrawal, once",
                Optional.empty(),
                new Span("waivers.yaml", 2, 4)),
            new Expectation(
                "points set: signal 3",
                Expectation.Verdict.BROKEN,
                "the entry for the trap comes with the next change of the frame",
                Optional.of(new Expectation.Waiver("signal engineer", LocalDate.of(2031, 4, 30))),
                new Span("waivers.yaml", 4, 4)));
  }

  @Test
  void a_section_is_read_with_all_its_choices() {
    assertThat(box.sections()).hasSize(1);
    Section section = box.sections().get(0);
    assertThat(section)
        .isEqualTo(
            new Section(
                "Fen to Holm",
                "single line",
                Section.Token.STAFF,
                4,
                List.of(
                    new Section.Instrument("Alder Fen", true, List.of("Holm")),
                    new Section.Instrument("Holm", true, List.of("Alder Fen")),
                    new Section.Instrument("Quarry Halt", false, List.of())),
                "Holm",
                false,
                true,
                Section.Irregular.ONCE,
                Optional.of(
                    new Section.Release(
                        List.of("4"), Section.Lasts.UNTIL_PUT_IN_HERE, Section.Begins.LOCKED)),
                List.of(new Section.Lock("Pit", true)),
                section.at()));
  }
}
