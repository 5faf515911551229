package lockwright.worker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import lockwright.proof.Knowledge;
import lockwright.system.Clause;
import lockwright.system.Target;
import lockwright.system.TransitionSystem;
import lockwright.verdict.Trace;
import lockwright.verdict.Verdict;

/**
 * What a search found, as it goes from one process to another: each certificate once.
 *
 * @param job the digest of the job that it answers
 * @param solver name and version of the solver
 */
record Answer(String job, String solver, List<List<Clause>> certificates, List<Told> told) {
  /** The verdict on one target: a certificate by its number, or a trace, or else a reason. */
  record Told(
      String target, Integer certificate, Trace trace, boolean shortest, String reason, String by) {
    Told {
      if (Stream.of(certificate, trace, reason).filter(Objects::nonNull).count() != 1) {
        throw new IllegalArgumentException("not one verdict on " + target);
      }
    }
  }

  static Answer of(Knowledge known, String job, String solver) {
    List<List<Clause>> certificates = new ArrayList<>();
    List<Told> told = new ArrayList<>();
    known
        .verdicts()
        .forEach(
            (target, verdict) -> {
              String by = known.decidedBy().get(target);
              told.add(
                  verdict.fold(
                      never ->
                          new Told(
                              target,
                              number(never.certificate(), certificates),
                              null,
                              false,
                              null,
                              by),
                      reached ->
                          new Told(target, null, reached.trace(), reached.shortest(), null, by),
                      unknown -> new Told(target, null, null, false, unknown.reason(), by)));
            });
    return new Answer(job, solver, certificates, told);
  }

  private static int number(List<Clause> certificate, List<List<Clause>> certificates) {
    int number = certificates.indexOf(certificate);
    if (number < 0) {
      certificates.add(certificate);
      return certificates.size() - 1;
    }
    return number;
  }

  /**
   * What was found for a job.
   *
   * @throws IllegalArgumentException if this answers another job, or not just the targets of this
   *     one
   */
  Found found(TransitionSystem system, String digest) {
    if (!job.equals(digest)) {
      throw new IllegalArgumentException("it answers another job");
    }
    if (!told.stream()
        .map(Told::target)
        .toList()
        .equals(system.targets().stream().map(Target::name).toList())) {
      throw new IllegalArgumentException("it does not speak of each target once");
    }
    List<Verdict.Never> proofs = certificates.stream().map(Verdict.Never::new).toList();
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    Map<String, String> by = new LinkedHashMap<>();
    for (Told one : told) {
      Verdict verdict;
      if (one.certificate() != null) {
        verdict = proofs.get(one.certificate());
      } else if (one.trace() != null) {
        verdict = new Verdict.Reached(one.trace(), one.shortest());
      } else {
        verdict = new Verdict.Unknown(one.reason());
      }
      verdicts.put(one.target(), verdict);
      if (one.by() != null) {
        by.put(one.target(), one.by());
      }
    }
    return new Found(verdicts, by, solver);
  }
}
