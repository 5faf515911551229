package lockwright.audit;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lockwright.encode.names.Certificate;
import lockwright.working.Condition;
import lockwright.working.Working;

/**
 * Audits certificates on one working. That the beginnings are in it and the movements keep it is
 * checked once for each certificate; that it excludes a target, for each target.
 */
final class CertificateAudit {
  /** How many certificates are kept ready for further targets; the others are read again. */
  private static final int READY = 4;

  private final Working working;
  private final Map<Certificate, Outcome> outcomes = new HashMap<>();
  private final Map<Certificate, Ready> ready =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Certificate, Ready> eldest) {
          return size() > READY;
        }
      };

  CertificateAudit(Working working) {
    this.working = working;
  }

  /** A certificate as read, with both ways of checking it. */
  private record Ready(Enumeration enumeration, Solving solving) {}

  /** Whether a certificate proves that its targets never come about. */
  sealed interface Result {
    record Proves(Set<CheckedBy> by) implements Result {}

    record Open(String reason) implements Result {}
  }

  /**
   * Checks that the certificate excludes each of the targets.
   *
   * @param what what it is about, for the message
   * @throws Disagreement if it does not
   */
  Result proves(String what, Certificate certificate, List<Condition> targets) {
    Ready own = ready.computeIfAbsent(certificate, this::read);
    Set<CheckedBy> by = EnumSet.noneOf(CheckedBy.class);
    Outcome outcome = outcomes.computeIfAbsent(certificate, c -> check(own));
    note(what, certificate, outcome, by);
    for (int i = 0; i < targets.size() && outcome instanceof Outcome.Holds; i++) {
      Condition target = targets.get(i);
      Checker checker = own.enumeration().affordable(target) ? own.enumeration() : own.solving();
      outcome = checker.excludes(target);
      note(what, certificate, outcome, by);
    }
    return outcome instanceof Outcome.Open open
        ? new Result.Open(open.reason())
        : new Result.Proves(by);
  }

  private Ready read(Certificate certificate) {
    Invariant invariant = Invariant.read(working, certificate);
    return new Ready(new Enumeration(invariant), new Solving(invariant));
  }

  private static Outcome check(Ready own) {
    Checker checker = own.enumeration().affordable() ? own.enumeration() : own.solving();
    Outcome outcome = checker.begins();
    return outcome instanceof Outcome.Holds ? checker.keeps() : outcome;
  }

  private static void note(
      String what, Certificate certificate, Outcome outcome, Set<CheckedBy> by) {
    if (outcome instanceof Outcome.Fails fails) {
      throw new Disagreement(
          what
              + ": the search offers a certificate that does not prove it: "
              + fails.words()
              + "\nThe certificate, "
              + certificate.digest()
              + ":\n"
              + certificate.text());
    } else if (outcome instanceof Outcome.Holds holds) {
      by.add(holds.by());
    }
  }
}
