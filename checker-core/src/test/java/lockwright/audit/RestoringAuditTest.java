package lockwright.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Fact;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.frame.Position;
import lockwright.railway.locking.Entry;
import lockwright.railway.words.Event;
import lockwright.railway.words.Quantity;
import lockwright.spec.Span;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * What is claimed of restoring a frame stands only if it is so. The frame has a bolt that stands in
 * with its lever, 1, normal, and the points 2 that it bolts: to put these back, the bolt must be
 * drawn again (common practice, no source).
 */
class RestoringAuditTest {
  private static final String ID = "frame can be restored: all levers";
  private static final Box TOKEN = box("restored-by-a-token");

  /** The bolt may be drawn at any time, or only with the points normal. */
  private static final Box FREE = with();

  private static final Box STRANDED =
      with(
          new Entry(
              Entry.Kind.STARTS_ONLY_WITH_NORMAL,
              "1",
              List.of("2"),
              List.of(),
              false,
              "",
              new Span("locking.csv", 9, 1)));

  private static final Event DRAW = lever("1", Position.N, Position.R);
  private static final Event PUT_IN = lever("1", Position.R, Position.N);
  private static final Event REVERSE = lever("2", Position.N, Position.R);
  private static final Event PUT_BACK = lever("2", Position.R, Position.N);
  private static final List<Event> WAY = List.of(DRAW, PUT_BACK, PUT_IN);

  /** No lever part-way; and signal 3 is off only with the points reversed. */
  private static final Certificate ENDS =
      new Certificate(
          List.of(
              List.of(fact("1", "M", false)),
              List.of(fact("2", "M", false)),
              List.of(fact("3", "M", false)),
              List.of(fact("3", "N", true), fact("2", "R", true))));

  private static Box box(String name) {
    return BoxBuilder.read(Path.of("src", "test", "resources", "boxes", name)).box().orElseThrow();
  }

  private static Box with(Entry... more) {
    List<Entry> entries = new ArrayList<>(TOKEN.locking());
    entries.removeIf(e -> e.kind() == Entry.Kind.NOT_AGAIN_BEFORE);
    entries.addAll(List.of(more));
    return TOKEN.withLocking(entries);
  }

  private static Event lever(String lever, Position from, Position to) {
    return new Event.LeverMoves(lever, from, to);
  }

  private static Fact fact(String lever, String value, boolean is) {
    return new Fact(Quantity.lever(lever).key(), value, is);
  }

  private static Audited audit(Box box, Claim claim) {
    return Auditor.audit(box, new Claims(Map.of(), Map.of(), Map.of(ID, claim))).stream()
        .filter(a -> a.requirement().id().equals(ID))
        .findFirst()
        .orElseThrow();
  }

  private static void refused(Box box, Claim claim, String words) {
    assertThatThrownBy(() -> audit(box, claim))
        .isInstanceOf(Disagreement.class)
        .hasMessageContaining(words);
  }

  private static Run run(Box box, Event... events) {
    return new Run(
        new TreeMap<>(Working.whole(box).beginnings().iterator().next().values()), List.of(events));
  }

  private static Claim stranded(Box box, Certificate certificate, Event... events) {
    return new Claim.Stranded(run(box, events), certificate, Optional.empty());
  }

  @Test
  void a_frame_that_its_ways_back_restore() {
    Audited audited = audit(FREE, new Claim.Restorable(List.of(WAY), ENDS));
    assertThat(((Audited.Restorable) audited).ways()).containsExactly(WAY);
  }

  @Test
  void without_the_way_back_it_may_be_stuck() {
    refused(FREE, new Claim.Restorable(List.of(), ENDS), "does not exclude");
  }

  @Test
  void a_way_that_is_held_somewhere_is_of_no_use_there() {
    refused(STRANDED, new Claim.Restorable(List.of(WAY), ENDS), "does not exclude");
    refused(
        FREE,
        new Claim.Restorable(List.of(List.of(PUT_BACK, DRAW, PUT_IN)), ENDS),
        "does not exclude");
    Event replace3 = lever("3", Position.R, Position.N);
    refused(
        FREE,
        new Claim.Restorable(List.of(List.of(DRAW, replace3, PUT_IN)), ENDS),
        "does not exclude");
  }

  @Test
  void what_leaves_no_fewer_levers_reversed_is_no_way_back() {
    for (List<Event> way :
        List.of(
            List.<Event>of(),
            List.of(DRAW),
            List.of(DRAW, PUT_IN),
            List.of(DRAW, PUT_IN, REVERSE, PUT_BACK))) {
      refused(FREE, new Claim.Restorable(List.of(WAY, way), ENDS), "no way back");
    }
  }

  @Test
  void a_way_back_is_made_of_movements_of_the_frame_alone() {
    Event plunge = new Event.AtInstrument("Withy to Holm", Event.Deed.PLUNGE, "Holm");
    Event halfStroke = lever("2", Position.M, Position.N);
    Event nothing = lever("99", Position.R, Position.N);
    for (Event other : List.of(plunge, halfStroke, nothing)) {
      Claim claim = new Claim.Restorable(List.of(WAY, List.of(PUT_BACK, other)), ENDS);
      refused(FREE, claim, "no way back");
    }
  }

  @Test
  void a_certificate_must_be_one() {
    refused(
        FREE,
        new Claim.Restorable(List.of(WAY), new Certificate(List.of(List.of(fact("2", "N", true))))),
        "leads out of the invariant");
    refused(
        FREE, new Claim.Restorable(List.of(WAY), new Certificate(List.of())), "does not exclude");
  }

  /** There the points stay reversed, since the bolt stays in. */
  private static final Certificate HELD =
      new Certificate(List.of(List.of(fact("1", "N", true)), List.of(fact("2", "R", true))));

  @Test
  void a_frame_that_is_not_restored() {
    Audited audited = audit(STRANDED, stranded(STRANDED, HELD, DRAW, REVERSE, PUT_IN));
    assertThat(((Audited.Stranded) audited).played().followsRules()).isTrue();
    assertThat(((Audited.Stranded) audited).helped()).isEmpty();
  }

  @Test
  void a_frame_that_is_restored_from_there_is_not_called_so() {
    refused(FREE, stranded(FREE, HELD, DRAW, REVERSE, PUT_IN), "leads out of the invariant");
    refused(STRANDED, stranded(STRANDED, HELD, DRAW, REVERSE), "beginning");
    refused(
        STRANDED,
        stranded(STRANDED, new Certificate(List.of()), DRAW, REVERSE, PUT_IN),
        "does not exclude");
  }

  @Test
  void the_run_must_lead_there() {
    refused(STRANDED, stranded(STRANDED, HELD, REVERSE, PUT_IN), "breaks the rules");
    refused(
        STRANDED, stranded(STRANDED, HELD, DRAW, REVERSE, PUT_IN, PUT_BACK), "breaks the rules");
  }

  /** There the bolt waits for signal 3, and that for a token. */
  private static final Certificate WAITING =
      new Certificate(
          List.of(
              List.of(fact("1", "N", true)),
              List.of(fact("2", "R", true)),
              List.of(fact("3", "N", true)),
              List.of(new Fact("turn of 1 after 3", "pull awaited", true)),
              List.of(new Fact("section Withy to Holm: release", "locked", true))));

  @Test
  void what_others_do_must_restore_it_from_there() {
    Run there = run(TOKEN, DRAW, REVERSE, PUT_IN);
    for (Run helped : List.of(there, run(TOKEN), run(TOKEN, DRAW, PUT_IN))) {
      Claim claim = new Claim.Stranded(there, WAITING, Optional.of(helped));
      refused(TOKEN, claim, "does not lead from there to all levers N");
    }
    assertThat(audit(TOKEN, new Claim.Stranded(there, WAITING, Optional.empty())))
        .isInstanceOf(Audited.Stranded.class);
  }

  @Test
  void it_is_not_claimed_as_another_possibility_is() {
    refused(FREE, new Claim.Reached(run(FREE), true), "another possibility");
    refused(FREE, new Claim.Never(ENDS), "another possibility");
    assertThat(audit(FREE, new Claim.Unknown("a limit"))).isInstanceOf(Audited.Undecided.class);
  }
}
