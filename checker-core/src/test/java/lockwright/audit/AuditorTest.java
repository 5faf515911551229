package lockwright.audit;

import static lockwright.audit.Certificates.certificate;
import static lockwright.working.HandBox.route;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.frame.Position;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Conflict;
import lockwright.railway.layout.Route;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.working.HandBox;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * Verdicts on the junction of the Indian Railways Signal Engineering Manual, 12.26.7(c)(iii), whole
 * and with faults put in.
 */
class AuditorTest {
  private static final Route MAIN = route("1", "4N");
  private static final Route BRANCH = route("2", "4R");

  private static final Requirement SET = new Requirement.PointsSet("1", List.of(MAIN));
  private static final Requirement AGREE = new Requirement.BoltAndPointsAgree("4");
  private static final Requirement HELD = new Requirement.RouteHeld(BRANCH);
  private static final Requirement CLEARED = new Requirement.RouteCanBeCleared(BRANCH);
  private static final Requirement APART =
      new Requirement.NoConflict(
          "1",
          "2",
          List.of(new Conflict(MAIN, BRANCH, "points 4 (N and R)", false, false)),
          true,
          Optional.empty());

  private static final Box JUNCTION =
      new HandBox()
          .signal("1", Arm.STOP)
          .signal("2", Arm.STOP)
          .bolt("3", "4", false)
          .points("4")
          .locking(
              "1 released by 3",
              "1 locks 4",
              "2 released by 3",
              "2 released by 4",
              "3 locks both ways 4")
          .routes(MAIN, BRANCH)
          .requirements(SET, AGREE, HELD, APART, CLEARED)
          .box();

  private static final Certificate LOCKS =
      certificate(
          "lever 1 is N or lever 3 is R",
          "lever 1 is N or lever 4 is N",
          "lever 2 is N or lever 3 is R",
          "lever 2 is N or lever 4 is R",
          "lever 3 is N or lever 4 is not M");

  private static final Map<String, Claim> NEVER = never(LOCKS, SET, AGREE, HELD, APART);

  private static Map<String, Claim> never(Certificate certificate, Requirement... all) {
    Map<String, Claim> never = new HashMap<>();
    for (Requirement r : all) {
      never.put(r.id(), new Claim.Never(certificate));
    }
    return never;
  }

  private static Box without(int... entries) {
    List<Entry> left = new ArrayList<>(JUNCTION.locking());
    IntStream.of(entries)
        .boxed()
        .sorted(Collections.reverseOrder())
        .forEach(i -> left.remove((int) i));
    return JUNCTION.withLocking(left);
  }

  /** The verdict in a word, by requirement. */
  private static Map<String, String> verdicts(Box box, Claims claims) {
    Map<String, String> words = new HashMap<>();
    for (Audited audited : Auditor.audit(box, claims)) {
      words.put(audited.requirement().id(), audited.fold(new Words()));
    }
    return words;
  }

  private static final class Words implements Audited.Cases<String> {
    @Override
    public String proved(Audited.Proved proved) {
      assertThat(proved.witnesses()).isNotEmpty().allMatch(Played::followsRules);
      return "proved";
    }

    @Override
    public String empty(Audited.Empty empty) {
      return "empty: " + empty.never().get(0).subject().id();
    }

    @Override
    public String broken(Audited.Broken broken) {
      return "broken in " + broken.played().steps().size();
    }

    @Override
    public String undecided(Audited.Undecided undecided) {
      return "undecided: " + undecided.reason();
    }

    @Override
    public String shown(Audited.Shown shown) {
      return "shown in " + shown.played().steps().size();
    }

    @Override
    public String impossible(Audited.Impossible impossible) {
      return "impossible";
    }

    @Override
    public String restorable(Audited.Restorable restorable) {
      return "restorable in " + restorable.ways().size() + " ways";
    }

    @Override
    public String stranded(Audited.Stranded stranded) {
      return "stranded in " + stranded.played().steps().size();
    }
  }

  @Test
  void the_whole_junction_is_proved() {
    assertThat(verdicts(JUNCTION, Runs.claims(JUNCTION, NEVER)))
        .containsEntry(SET.id(), "proved")
        .containsEntry(AGREE.id(), "proved")
        .containsEntry(HELD.id(), "proved")
        .containsEntry(APART.id(), "proved")
        .containsEntry(CLEARED.id(), "shown in 3");
  }

  @Test
  void the_faults_are_broken() {
    Box noLock = without(1);
    assertThat(verdicts(noLock, Runs.claims(noLock, Map.of())).get(SET.id()))
        .isEqualTo("broken in 5");
    Box noBolt = without(4);
    assertThat(verdicts(noBolt, Runs.claims(noBolt, Map.of())).get(AGREE.id()))
        .isEqualTo("broken in 2");
    Box notHeld = without(3, 4);
    assertThat(verdicts(notHeld, Runs.claims(notHeld, Map.of())).get(HELD.id()))
        .startsWith("broken");
  }

  /** Without the entry that it rests on, a certificate is refused, whatever the requirement. */
  @Test
  void a_certificate_for_another_table_is_a_disagreement() {
    for (int entry = 0; entry < JUNCTION.locking().size(); entry++) {
      Box box = without(entry);
      Claims claims = new Claims(NEVER, Runs.claims(JUNCTION, NEVER).subjects(), Map.of());
      assertThatThrownBy(() -> Auditor.audit(box, claims))
          .isInstanceOf(Disagreement.class)
          .hasMessageContaining("lever")
          .hasMessageContaining(LOCKS.digest());
    }
  }

  @Test
  void a_lever_that_can_never_be_pulled_makes_a_proof_empty() {
    List<Entry> entries = new ArrayList<>(JUNCTION.locking());
    entries.add(HandBox.entry("2 locks 3"));
    Box box = JUNCTION.withLocking(entries);
    Map<String, Claim> never = new HashMap<>(NEVER);
    Certificate stuck =
        certificate("lever 2 is N or lever 3 is R", "lever 2 is N or lever 3 is N", "lever 2 is N");
    HELD.speaksAbout().forEach(s -> never.put(s.id(), new Claim.Never(stuck)));
    APART.speaksAbout().forEach(s -> never.put(s.id(), new Claim.Never(stuck)));
    never.put(CLEARED.id(), new Claim.Never(stuck));
    assertThat(verdicts(box, Runs.claims(box, never)))
        .containsEntry(SET.id(), "proved")
        .containsEntry(HELD.id(), "empty: signalled: 2 by 4R")
        .containsEntry(APART.id(), "empty: signal 2 off")
        .containsEntry(CLEARED.id(), "impossible");
  }

  @Test
  void what_is_not_claimed_or_not_known_is_undecided() {
    Claims all = Runs.claims(JUNCTION, NEVER);
    assertThat(verdicts(JUNCTION, new Claims(Map.of(), Map.of(), Map.of())).values())
        .allMatch("undecided: nothing was found out"::equals);
    assertThat(verdicts(JUNCTION, new Claims(all.safety(), Map.of(), Map.of())).get(SET.id()))
        .isEqualTo("undecided: not known to come about: signal 1 off: nothing was found out");
    Map<String, Claim> unknown = new HashMap<>(all.safety());
    unknown.put(SET.id(), new Claim.Unknown("time"));
    assertThat(verdicts(JUNCTION, new Claims(unknown, all.subjects(), Map.of())).get(SET.id()))
        .isEqualTo("undecided: time");
  }

  @Test
  void a_run_with_a_movement_left_out_or_two_exchanged_is_a_disagreement() {
    Box box = without(1);
    Claims claims = Runs.claims(box, Map.of());
    Run run = ((Claim.Reached) claims.safety().get(SET.id())).run();
    assertThat(run.events()).hasSize(5);
    for (int i = 0; i < run.events().size(); i++) {
      List<Event> shorter = new ArrayList<>(run.events());
      shorter.remove(i);
      assertRefused(box, claims, new Run(run.beginning(), shorter));
    }
    for (int i = 0; i + 1 < run.events().size(); i++) {
      List<Event> exchanged = new ArrayList<>(run.events());
      Collections.swap(exchanged, i, i + 1);
      assertRefused(box, claims, new Run(run.beginning(), exchanged));
    }
    Map<String, String> elsewhere = new HashMap<>(run.beginning());
    elsewhere.put("lever 4", "R");
    assertRefused(box, claims, new Run(elsewhere, run.events()));
    Map<String, String> unknown = new HashMap<>(run.beginning());
    unknown.put("lever 9", "N");
    assertRefused(box, claims, new Run(unknown, run.events()));
    Map<String, String> missing = new HashMap<>(run.beginning());
    missing.remove("lever 4");
    assertRefused(box, claims, new Run(missing, run.events()));
  }

  @Test
  void a_run_claimed_shortest_that_breaks_sooner_is_a_disagreement() {
    Box box = without(1);
    Claims claims = Runs.claims(box, Map.of());
    Run run = ((Claim.Reached) claims.safety().get(SET.id())).run();
    List<Event> longer = new ArrayList<>(run.events());
    longer.add(new Event.LeverMoves("1", Position.M, Position.R));
    assertRefused(box, claims, new Run(run.beginning(), longer));
    Map<String, Claim> safety = new HashMap<>(claims.safety());
    safety.put(SET.id(), new Claim.Reached(new Run(run.beginning(), longer), false));
    assertThat(
            verdicts(box, new Claims(safety, claims.subjects(), claims.possibilities()))
                .get(SET.id()))
        .isEqualTo("broken in 6");
  }

  private static void assertRefused(Box box, Claims claims, Run run) {
    Map<String, Claim> safety = new HashMap<>(claims.safety());
    safety.put(SET.id(), new Claim.Reached(run, true));
    Claims wrong = new Claims(safety, claims.subjects(), claims.possibilities());
    assertThatThrownBy(() -> Auditor.audit(box, wrong))
        .isInstanceOf(Disagreement.class)
        .hasMessageContaining(SET.id());
  }

  /** A possibility is played by whole strokes, so half-strokes show nothing; nor the other way. */
  @Test
  void each_claim_is_played_with_its_own_strokes() {
    Claims claims = Runs.claims(JUNCTION, NEVER);
    Run parted =
        new Runs(Working.parted(JUNCTION)).to(Working.parted(JUNCTION).goal(CLEARED)).orElseThrow();
    Map<String, Claim> byHalves = Map.of(CLEARED.id(), new Claim.Reached(parted, true));
    assertThatThrownBy(() -> Auditor.audit(JUNCTION, new Claims(Map.of(), Map.of(), byHalves)))
        .isInstanceOf(Disagreement.class);
    Map<String, Claim> subjects = new HashMap<>(claims.subjects());
    subjects.put(SET.speaksAbout().get(0).id(), claims.possibilities().get(CLEARED.id()));
    assertThatThrownBy(
            () -> Auditor.audit(JUNCTION, new Claims(claims.safety(), subjects, Map.of())))
        .isInstanceOf(Disagreement.class);
  }

  @Test
  void a_run_that_does_not_come_to_its_goal_is_a_disagreement() {
    Claims claims = Runs.claims(JUNCTION, NEVER);
    Run nowhere =
        new Run(Working.whole(JUNCTION).beginnings().iterator().next().values(), List.of());
    Map<String, Claim> possibilities = Map.of(CLEARED.id(), new Claim.Reached(nowhere, false));
    assertThatThrownBy(() -> Auditor.audit(JUNCTION, new Claims(Map.of(), Map.of(), possibilities)))
        .isInstanceOf(Disagreement.class)
        .hasMessageContaining("does not come to it");
    for (String subject : claims.subjects().keySet()) {
      Map<String, Claim> subjects = new HashMap<>(claims.subjects());
      subjects.put(subject, new Claim.Reached(nowhere, false));
      assertThatThrownBy(
              () -> Auditor.audit(JUNCTION, new Claims(claims.safety(), subjects, Map.of())))
          .isInstanceOf(Disagreement.class)
          .hasMessageContaining(subject);
    }
  }

  /** Kept by every movement, and true in the beginning, yet it says nothing of the requirement. */
  @Test
  void a_certificate_that_excludes_too_little_is_a_disagreement() {
    Claims claims = Runs.claims(JUNCTION, NEVER);
    for (Certificate weak :
        List.of(new Certificate(List.of()), certificate("lever 1 is N or lever 3 is R"))) {
      for (Requirement r : List.of(SET, AGREE, HELD, APART)) {
        Claims wrong = new Claims(never(weak, r), claims.subjects(), Map.of());
        assertThatThrownBy(() -> Auditor.audit(JUNCTION, wrong))
            .isInstanceOf(Disagreement.class)
            .hasMessageContaining(r.id())
            .hasMessageContaining("does not exclude");
      }
      Claims wrong = new Claims(Map.of(), Map.of(), never(weak, CLEARED));
      assertThatThrownBy(() -> Auditor.audit(JUNCTION, wrong)).isInstanceOf(Disagreement.class);
    }
  }

  @Test
  void a_claim_about_nothing_required_is_a_disagreement() {
    Claim claim = new Claim.Unknown("");
    for (Claims stray :
        List.of(
            new Claims(Map.of("points set: signal 9", claim), Map.of(), Map.of()),
            new Claims(Map.of(), Map.of("signal 9 off", claim), Map.of()),
            new Claims(Map.of(), Map.of(), Map.of(SET.id(), claim)),
            new Claims(Map.of(CLEARED.id(), claim), Map.of(), Map.of()))) {
      assertThatThrownBy(() -> Auditor.audit(JUNCTION, stray)).isInstanceOf(Disagreement.class);
    }
  }
}
