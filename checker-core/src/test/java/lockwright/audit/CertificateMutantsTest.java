package lockwright.audit;

import static lockwright.audit.Certificates.certificate;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Fact;
import lockwright.railway.layout.Arm;
import lockwright.railway.requirement.Requirement;
import lockwright.working.Condition;
import lockwright.working.HandBox;
import lockwright.working.Sections;
import lockwright.working.Working;
import org.junit.jupiter.api.Test;

/**
 * Good certificates are accepted and each small change of one is judged as the plainest reading of
 * the rules judges it, by both ways of checking.
 */
class CertificateMutantsTest {
  /** The table printed in the Indian Railways Signal Engineering Manual, 12.26.7(c)(iii). */
  private static final Working JUNCTION =
      Working.parted(
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
              .box());

  private static final Certificate LOCKS =
      certificate(
          "lever 1 is N or lever 3 is R",
          "lever 1 is N or lever 4 is N",
          "lever 2 is N or lever 3 is R",
          "lever 2 is N or lever 4 is R",
          "lever 3 is N or lever 4 is not M");

  private static final Condition BOLT_DISAGREES =
      JUNCTION.breach(new Requirement.BoltAndPointsAgree("4")).state();

  /** One token of two out at the most: it follows from the phase and from who withdraws. */
  private static final Working LINE =
      Working.parted(new HandBox().section(Sections.pair(2).atStart()).box());

  private static final Certificate PHASES =
      certificate(
          "section line: phase is out or section line: tokens out is 0",
          "section line: phase is out or section line: withdrawal at Here is no",
          "section line: phase is out or section line: withdrawal at There is no",
          "section line: withdrawal at Here is no or section line: withdrawal at There is no",
          "section line: withdrawal at Here is no or section line: tokens out is 0",
          "section line: withdrawal at There is no or section line: tokens out is 0",
          "section line: tokens out is not 2",
          "section line: phase is in or section line: tokens out is not 0"
              + " or section line: withdrawal at Here is yes"
              + " or section line: withdrawal at There is yes");

  private static final Condition TWO_OUT = LINE.breach(new Requirement.OneTokenOut("line")).state();

  @Test
  void good_certificates_are_accepted_both_ways() {
    assertAccepted(JUNCTION, LOCKS, BOLT_DISAGREES);
    assertAccepted(LINE, PHASES, TWO_OUT);
  }

  private static void assertAccepted(Working working, Certificate certificate, Condition target) {
    Invariant invariant = Invariant.read(working, certificate);
    for (Checker checker : List.of(new Enumeration(invariant), new Solving(invariant))) {
      assertThat(checker.begins()).isInstanceOf(Outcome.Holds.class);
      assertThat(checker.keeps()).isInstanceOf(Outcome.Holds.class);
      assertThat(checker.excludes(target)).isInstanceOf(Outcome.Holds.class);
    }
  }

  @Test
  void every_mutant_is_judged_rightly_both_ways() {
    int[] junction = judge(JUNCTION, LOCKS, BOLT_DISAGREES);
    int[] line = judge(LINE, PHASES, TWO_OUT);
    assertThat(junction[0]).as("mutants refused").isGreaterThan(20);
    assertThat(line[0]).as("mutants refused").isGreaterThan(25);
    assertThat(junction[1] + line[1]).as("mutants that are certificates too").isPositive();
  }

  /** How many mutants are refused, and how many accepted. */
  private static int[] judge(Working working, Certificate certificate, Condition target) {
    int[] counts = new int[2];
    for (Certificate mutant : mutants(working, certificate)) {
      boolean begins = Certificates.begins(working, mutant);
      boolean keeps = Certificates.keeps(working, mutant);
      boolean excludes =
          Certificates.all(working).stream()
              .noneMatch(s -> Certificates.in(mutant, s) && target.evaluate(s));
      Invariant invariant = Invariant.read(working, mutant);
      for (Checker checker : List.of(new Enumeration(invariant), new Solving(invariant))) {
        assertJudged(checker.begins(), begins, mutant);
        assertJudged(checker.keeps(), keeps, mutant);
        assertJudged(checker.excludes(target), excludes, mutant);
      }
      counts[begins && keeps && excludes ? 1 : 0]++;
    }
    return counts;
  }

  private static void assertJudged(Outcome outcome, boolean holds, Certificate mutant) {
    assertThat(outcome instanceof Outcome.Holds)
        .as(outcome + "\n" + mutant.text())
        .isEqualTo(holds);
    assertThat(outcome).isNotInstanceOf(Outcome.Open.class);
  }

  /** Each clause dropped; each fact dropped, turned round, and with each other value. */
  private static List<Certificate> mutants(Working working, Certificate certificate) {
    List<Certificate> mutants = new ArrayList<>();
    for (int c = 0; c < certificate.clauses().size(); c++) {
      mutants.add(without(certificate, c));
      List<Fact> clause = certificate.clauses().get(c);
      for (int f = 0; f < clause.size(); f++) {
        Fact fact = clause.get(f);
        List<Fact> shorter = new ArrayList<>(clause);
        shorter.remove(f);
        if (!shorter.isEmpty()) {
          mutants.add(with(certificate, c, shorter));
        }
        mutants.add(with(certificate, c, f, new Fact(fact.quantity(), fact.value(), !fact.is())));
        working.quantities().stream()
            .filter(q -> q.key().equals(fact.quantity()))
            .flatMap(q -> q.values().stream())
            .filter(v -> !v.equals(fact.value()))
            .map(v -> new Fact(fact.quantity(), v, fact.is()))
            .forEach(other -> mutants.add(with(certificate, clause, fact, other)));
      }
    }
    return mutants;
  }

  private static Certificate without(Certificate certificate, int clause) {
    List<List<Fact>> clauses = new ArrayList<>(certificate.clauses());
    clauses.remove(clause);
    return new Certificate(clauses);
  }

  private static Certificate with(Certificate certificate, int clause, List<Fact> facts) {
    List<List<Fact>> clauses = new ArrayList<>(certificate.clauses());
    clauses.set(clause, facts);
    return new Certificate(clauses);
  }

  private static Certificate with(Certificate certificate, int clause, int fact, Fact other) {
    List<Fact> facts = new ArrayList<>(certificate.clauses().get(clause));
    facts.set(fact, other);
    return with(certificate, clause, facts);
  }

  private static Certificate with(
      Certificate certificate, List<Fact> clause, Fact fact, Fact other) {
    int index = certificate.clauses().indexOf(clause);
    return with(certificate, index, clause.indexOf(fact), other);
  }

  @Test
  void an_impossible_certificate_is_never_a_proof() {
    Certificate impossible = certificate("lever 1 is N", "lever 1 is R");
    Invariant invariant = Invariant.read(JUNCTION, impossible);
    assertThat(new Enumeration(invariant).begins()).isInstanceOf(Outcome.Fails.class);
    assertThat(new Solving(invariant).begins()).isInstanceOf(Outcome.Fails.class);
    assertThat(new Solving(invariant).keeps()).isInstanceOf(Outcome.Open.class);
    assertThat(new Solving(invariant).excludes(BOLT_DISAGREES)).isInstanceOf(Outcome.Open.class);
    Invariant nothing = Invariant.read(JUNCTION, new Certificate(List.of(List.of())));
    assertThat(new Enumeration(nothing).begins()).isInstanceOf(Outcome.Fails.class);
    assertThat(new Solving(nothing).begins()).isInstanceOf(Outcome.Fails.class);
    assertThat(new Solving(nothing).keeps()).isInstanceOf(Outcome.Open.class);
  }

  @Test
  void a_fact_of_an_unknown_thing_or_value_is_a_disagreement() {
    assertThatThrownBy(() -> Invariant.read(JUNCTION, certificate("lever 9 is N")))
        .isInstanceOf(Disagreement.class)
        .hasMessageContaining("lever 9 is N");
    assertThatThrownBy(() -> Invariant.read(JUNCTION, certificate("lever 1 is X")))
        .isInstanceOf(Disagreement.class)
        .hasMessageContaining("[N, M, R]");
  }
}
