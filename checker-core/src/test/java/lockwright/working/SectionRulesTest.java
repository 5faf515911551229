package lockwright.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Route;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.section.Section.Release;
import lockwright.railway.words.Event.Deed;
import org.junit.jupiter.api.Test;

/** The rules of sections, one by one: 4 of docs/meaning.md. Common practice, no source. */
class SectionRulesTest {
  private static final String HERE = "Here";
  private static final String THERE = "There";

  private static Line bare(Sections section) {
    return new Line(Working.parted(new HandBox().section(section).box()), 1);
  }

  /** Signal 1 leads into the section, and a withdrawal releases its lever. */
  private static Working signalled(Sections section) {
    return Working.parted(
        new HandBox()
            .signal("1", Arm.STOP)
            .signal("2", Arm.SHUNTING)
            .routes(
                HandBox.route("1", "", new Route.End.InSection("line")),
                HandBox.route("2", "", new Route.End.InSection("line")))
            .section(section)
            .box());
  }

  private static Release release(Lasts lasts, Begins begins) {
    return new Release(List.of("1"), lasts, begins);
  }

  @Test
  void a_man_plunges_once_and_stops_once() {
    Line line = bare(Sections.pair(2));
    assertThat(line.free(Deed.STOP_PLUNGING, HERE)).isFalse();
    line.make(Deed.PLUNGE, HERE);
    assertThat(line.free(Deed.PLUNGE, HERE)).isFalse();
    assertThat(line.make(Deed.STOP_PLUNGING, HERE).is("plunging at Here")).isEqualTo("no");
  }

  @Test
  void nobody_plunges_where_nobody_attends() {
    Line line =
        bare(
            Sections.pair(2)
                .instruments(
                    new Instrument(HERE, true, List.of()),
                    new Instrument(THERE, false, List.of(HERE))));
    assertThat(line.free(Deed.PLUNGE, THERE)).isFalse();
    assertThat(line.is("plunging at There")).isNull();
    assertThat(line.free(Deed.START_WITHDRAWAL, HERE)).isTrue();
    assertThat(line.free(Deed.START_WITHDRAWAL, THERE)).isFalse();
    line.make(Deed.PLUNGE, HERE).make(Deed.START_WITHDRAWAL, THERE);
  }

  @Test
  void a_withdrawal_needs_consent_only_as_it_starts() {
    Line line = bare(Sections.pair(2));
    assertThat(line.free(Deed.START_WITHDRAWAL, HERE)).isFalse();
    line.make(Deed.PLUNGE, THERE).make(Deed.START_WITHDRAWAL, HERE);
    assertThat(line.free(Deed.START_WITHDRAWAL, HERE)).isFalse();
    line.make(Deed.STOP_PLUNGING, THERE).make(Deed.FINISH_WITHDRAWAL, HERE);
    assertThat(line.is("plunging at There")).isEqualTo("no");
    assertThat(line.is("withdrawal at Here")).isEqualTo("no");
  }

  @Test
  void a_withdrawal_needs_a_token_there() {
    Line line = new Line(Working.parted(new HandBox().section(Sections.pair(2)).box()), 0);
    assertThat(line.make(Deed.PLUNGE, THERE).free(Deed.START_WITHDRAWAL, HERE)).isFalse();
    assertThat(line.make(Deed.PLUNGE, HERE).free(Deed.START_WITHDRAWAL, THERE)).isTrue();
  }

  @Test
  void the_phase_reverses_at_the_end_by_default_and_otherwise_at_the_start() {
    Line end = bare(Sections.pair(2)).make(Deed.PLUNGE, THERE).make(Deed.START_WITHDRAWAL, HERE);
    assertThat(end.is("phase")).isEqualTo("in");
    assertThat(end.make(Deed.FINISH_WITHDRAWAL, HERE).is("phase")).isEqualTo("out");

    Line start = bare(Sections.pair(2).atStart());
    start.make(Deed.PLUNGE, THERE).make(Deed.START_WITHDRAWAL, HERE);
    assertThat(start.is("phase")).isEqualTo("out");
    assertThat(start.make(Deed.FINISH_WITHDRAWAL, HERE).is("phase")).isEqualTo("out");
  }

  @Test
  void a_withdrawal_given_up_leaves_all_as_it_was() {
    for (Sections section : List.of(Sections.pair(2), Sections.pair(2).atStart())) {
      Line line = bare(section).make(Deed.PLUNGE, THERE).make(Deed.START_WITHDRAWAL, HERE);
      line.make(Deed.GIVE_UP_WITHDRAWAL, HERE);
      assertThat(line.is("phase")).isEqualTo("in");
      assertThat(line.is("tokens in Here")).isEqualTo("1");
      assertThat(line.free(Deed.GIVE_UP_WITHDRAWAL, HERE)).isFalse();
      assertThat(line.free(Deed.FINISH_WITHDRAWAL, HERE)).isFalse();
    }
  }

  @Test
  void a_man_plunges_while_he_withdraws_by_default() {
    Line line = bare(Sections.pair(2)).make(Deed.PLUNGE, THERE).make(Deed.PLUNGE, HERE);
    line.make(Deed.STOP_PLUNGING, HERE).make(Deed.START_WITHDRAWAL, HERE).make(Deed.PLUNGE, HERE);
  }

  @Test
  void a_man_may_be_kept_from_plunging_while_he_withdraws() {
    Line line = bare(Sections.pair(2).neverBoth()).make(Deed.PLUNGE, THERE);
    assertThat(line.make(Deed.PLUNGE, HERE).free(Deed.START_WITHDRAWAL, HERE)).isFalse();
    line.make(Deed.STOP_PLUNGING, HERE).make(Deed.START_WITHDRAWAL, HERE);
    assertThat(line.free(Deed.PLUNGE, HERE)).isFalse();
    assertThat(line.free(Deed.STOP_PLUNGING, THERE)).isTrue();
  }

  @Test
  void a_token_out_goes_in_at_either_end_and_reverses_the_phase() {
    for (String end : List.of(HERE, THERE)) {
      Line line = bare(Sections.pair(2)).withdraw(HERE);
      assertThat(line.make(Deed.PUT_OTHER_IN, end).is("phase")).isEqualTo("in");
      assertThat(line.free(Deed.PUT_OTHER_IN, end)).isFalse();
    }
  }

  @Test
  void no_fresh_tokens_are_counted_without_a_section_signal() {
    Line line = bare(Sections.pair(2)).withdraw(HERE);
    assertThat(line.is("fresh tokens")).isNull();
    assertThat(line.free(Deed.PUT_FRESH_IN, HERE)).isFalse();
    assertThat(line.free(Deed.PUT_OTHER_IN, HERE)).isTrue();
  }

  @Test
  void a_token_withdrawn_here_is_fresh_until_the_section_signal_goes_off() {
    Line line = new Line(signalled(Sections.pair(2)), 1).withdraw(HERE);
    assertThat(line.is("fresh tokens")).isEqualTo("1");
    assertThat(line.free(Deed.PUT_FRESH_IN, THERE)).isTrue();
    assertThat(line.free(Deed.PUT_OTHER_IN, THERE)).isFalse();
    line.stroke("2", Position.N, Position.M);
    assertThat(line.is("fresh tokens")).as("a shunting arm is no section signal").isEqualTo("1");
    line.stroke("1", Position.N, Position.M);
    assertThat(line.is("fresh tokens")).isEqualTo("0");
    assertThat(line.free(Deed.PUT_FRESH_IN, THERE)).isFalse();
    assertThat(line.make(Deed.PUT_OTHER_IN, THERE).is("tokens out")).isEqualTo("0");
  }

  @Test
  void a_token_withdrawn_there_is_not_fresh() {
    Line line = new Line(signalled(Sections.pair(2)), 1).withdraw(THERE);
    assertThat(line.is("fresh tokens")).isEqualTo("0");
    assertThat(line.free(Deed.PUT_FRESH_IN, HERE)).isFalse();
    assertThat(line.free(Deed.PUT_OTHER_IN, HERE)).isTrue();
  }

  @Test
  void an_irregular_withdrawal_needs_neither_phase_nor_consent() {
    Line line = bare(Sections.pair(2).irregular(Irregular.ANY));
    line.make(Deed.IRREGULAR_WITHDRAWAL, HERE).make(Deed.IRREGULAR_WITHDRAWAL, THERE);
    assertThat(line.is("phase")).isEqualTo("in");
    assertThat(line.is("irregular withdrawal")).isNull();
    assertThat(line.free(Deed.IRREGULAR_WITHDRAWAL, HERE)).isFalse();
  }

  /** 6 of docs/meaning.md: what is possible only against the rules is not shown. */
  @Test
  void for_possibility_no_withdrawal_is_irregular() {
    for (Irregular kind : List.of(Irregular.ONCE, Irregular.ANY)) {
      Working whole = Working.whole(new HandBox().section(Sections.pair(2).irregular(kind)).box());
      assertThat(new Line(whole, 1).free(Deed.IRREGULAR_WITHDRAWAL, HERE)).isFalse();
    }
  }

  @Test
  void a_release_frees_its_lever_for_one_pull() {
    Sections section = Sections.pair(2).release(release(Lasts.UNTIL_USED, Begins.LOCKED));
    Line line = new Line(signalled(section), 1);
    assertThat(line.leaves("1")).isFalse();
    assertThat(line.withdraw(THERE).leaves("1")).isFalse();
    line = new Line(signalled(section), 1).withdraw(HERE);
    line.stroke("1", Position.N, Position.M);
    assertThat(line.is("release")).isEqualTo("locked");
    line.stroke("1", Position.M, Position.N);
    assertThat(line.leaves("1")).isFalse();
  }

  @Test
  void a_release_lasts_as_its_wiring_says() {
    assertThat(releaseAfterPuttingIn(Lasts.UNTIL_USED)).containsExactly("given", "given");
    assertThat(releaseAfterPuttingIn(Lasts.UNTIL_PUT_IN_HERE)).containsExactly("locked", "given");
    assertThat(releaseAfterPuttingIn(Lasts.UNTIL_PUT_IN)).containsExactly("locked", "locked");
  }

  private static List<String> releaseAfterPuttingIn(Lasts lasts) {
    Working working = signalled(Sections.pair(2).release(release(lasts, Begins.LOCKED)));
    return Stream.of(HERE, THERE)
        .map(e -> new Line(working, 1).withdraw(HERE).make(Deed.PUT_FRESH_IN, e).is("release"))
        .toList();
  }

  @Test
  void the_beginnings_are_all_distributions_and_what_the_release_begins_as() {
    assertThat(signalled(Sections.pair(2)).beginnings()).hasSize(3);
    for (Begins begins : Begins.values()) {
      Sections section = Sections.pair(20).release(release(Lasts.UNTIL_USED, begins));
      assertThat(signalled(section).beginnings()).hasSize(begins == Begins.EITHER ? 42 : 21);
    }
  }

  /** Without a release the signal goes off at once; with one that begins locked, never unearned. */
  @Test
  void a_section_signal_is_earned_by_a_release_that_ends_with_its_token() {
    Requirement earned = new Requirement.SectionSignalEarned("line", "1");
    assertThat(BruteForce.of(signalled(Sections.pair(2))).shortest(earned)).hasValue(1);
    Sections lasting = Sections.pair(2).neverBoth();
    assertThat(
            BruteForce.of(signalled(lasting.release(release(Lasts.UNTIL_PUT_IN, Begins.LOCKED))))
                .shortest(earned))
        .isEmpty();
    assertThat(
            BruteForce.of(signalled(lasting.release(release(Lasts.UNTIL_PUT_IN, Begins.EITHER))))
                .shortest(earned))
        .hasValue(1);
    assertThat(
            BruteForce.of(signalled(lasting.release(release(Lasts.UNTIL_USED, Begins.LOCKED))))
                .shortest(earned))
        .as("plunge, start, finish, put in, pull")
        .hasValue(5);
  }

  @Test
  void an_unknown_or_missing_quantity_or_value_makes_no_state() {
    Line line = bare(Sections.pair(2));
    for (Map<String, String> wrong :
        List.of(
            Map.of("section line: tokens out", "3"), Map.of("section other: tokens out", "1"))) {
      assertThatIllegalArgumentException().isThrownBy(() -> line.but(wrong));
    }
  }
}
