package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.words.Event.Deed;
import org.junit.jupiter.api.Test;

/**
 * A pair of staff instruments, played against what A. Williams, How It Works, p. 75 (read), prints.
 */
class StaffsInPhaseTest {
  private static final Requirement ONE_OUT = new Requirement.OneTokenOut("line");

  private static Line tenAndTen(Sections section) {
    return new Line(Working.parted(new HandBox().section(section).box()), 10);
  }

  /** Printed: 20 staffs, 10 at each end: the instruments agree, and a staff can be withdrawn. */
  @Test
  void ten_and_ten_agree() {
    for (String end : List.of("Here", "There")) {
      Line line = tenAndTen(Sections.pair(20)).withdraw(end);
      assertThat(line.is("tokens in " + end)).isEqualTo("9");
      assertThat(line.is("tokens out")).isEqualTo("1");
    }
  }

  /** Printed: one out, 9 and 10: locked at both ends. */
  @Test
  void nine_and_ten_are_locked_at_both_ends() {
    Line line = tenAndTen(Sections.pair(20)).withdraw("Here");
    line.make(Deed.PLUNGE, "Here").make(Deed.PLUNGE, "There");
    assertThat(line.free(Deed.START_WITHDRAWAL, "Here")).isFalse();
    assertThat(line.free(Deed.START_WITHDRAWAL, "There")).isFalse();
  }

  /** Printed: put in at the far end, 9 and 11: in phase again. */
  @Test
  void nine_and_eleven_agree_again() {
    Line line = tenAndTen(Sections.pair(20)).withdraw("Here").make(Deed.PUT_OTHER_IN, "There");
    assertThat(line.is("tokens in Here")).isEqualTo("9");
    assertThat(line.is("tokens in There")).isEqualTo("11");
    assertThat(line.is("tokens out")).isEqualTo("0");
    line.withdraw("There").make(Deed.PUT_OTHER_IN, "There").withdraw("Here");
  }

  /**
   * Not printed, but follows: one irregular withdrawal while a staff is out puts the pair in phase
   * again, and a third can be drawn in the ordinary way.
   */
  @Test
  void an_irregular_withdrawal_lets_a_third_staff_out() {
    Line line = tenAndTen(Sections.pair(20).irregular(Irregular.ONCE));
    line.withdraw("Here").make(Deed.IRREGULAR_WITHDRAWAL, "There");
    assertThat(line.free(Deed.IRREGULAR_WITHDRAWAL, "There")).isFalse();
    assertThat(line.withdraw("Here").is("tokens out")).isEqualTo("3");
  }

  /** Mills, Railway Construction (1898), p. 143 (read): one token at most is out of a pair. */
  @Test
  void one_at_most_is_out_if_consent_ends_where_a_withdrawal_starts() {
    assertThat(shortest(Sections.pair(3).neverBoth())).isEmpty();
    assertThat(shortest(Sections.pair(3).atStart())).isEmpty();
  }

  /** Ours: with both readings that allow most, both men start, then both finish. */
  @Test
  void two_are_out_if_both_may_withdraw_at_once() {
    assertThat(shortest(Sections.pair(3))).hasValue(6);
  }

  @Test
  void two_are_out_by_an_irregular_withdrawal() {
    assertThat(shortest(Sections.pair(3).neverBoth().irregular(Irregular.ONCE))).hasValue(4);
    assertThat(shortest(Sections.pair(3).neverBoth().irregular(Irregular.ANY))).hasValue(2);
  }

  /**
   * Without consent a start needs only the phase: start and finish at one end, then at the other.
   */
  @Test
  void two_are_out_if_nobody_need_consent_and_the_phase_reverses_late() {
    Sections without =
        Sections.pair(3)
            .instruments(
                new Instrument("Here", false, List.of()),
                new Instrument("There", false, List.of()));
    assertThat(shortest(without)).hasValue(4);
    assertThat(shortest(without.atStart())).isEmpty();
  }

  private static OptionalInt shortest(Sections section) {
    return BruteForce.of(Working.parted(new HandBox().section(section).box())).shortest(ONE_OUT);
  }
}
