package lockwright.audit;

import java.util.List;
import java.util.Optional;
import lockwright.encode.names.Claim;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.words.Event;
import lockwright.working.Condition;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Audits what is claimed of restoring the frame; 6 and 7 of {@code docs/meaning.md}.
 *
 * <ul>
 *   <li>Restorable: each way back must be one, by what its movements change; the certificate must
 *       exclude that the frame is stuck, by what the working says that each movement of a way needs
 *       after those before it.
 *   <li>Stranded: the run must be played; the certificate must hold where it ends, be kept by every
 *       movement of levers, points and gates, and exclude all levers N.
 * </ul>
 */
record RestoringAudit(Box box, Working whole, CertificateAudit onWhole) {
  Audited restorable(Requirement r, Claim.Restorable claim) {
    CertificateAudit.Result result =
        onWhole.proves(r.id(), claim.certificate(), List.of(stuck(r, claim.ways())));
    return result instanceof CertificateAudit.Result.Proves proves
        ? new Audited.Restorable(r, claim.ways(), claim.certificate(), proves.by())
        : Auditor.undecided(r, result);
  }

  private Condition stuck(Requirement r, List<List<Event>> ways) {
    try {
      return whole.stuck(ways);
    } catch (IllegalArgumentException e) {
      throw new Disagreement(r.id() + ": claimed as a way back, but " + e.getMessage());
    }
  }

  Audited stranded(Requirement r, Claim.Stranded claim) {
    Played played = Auditor.play(r.id(), whole, claim.run());
    State end = played.last();
    CertificateAudit.Result result =
        new CertificateAudit(Working.restoring(box, end))
            .proves(r.id(), claim.noWayBack(), List.of(whole.allNormal()));
    if (!(result instanceof CertificateAudit.Result.Proves proves)) {
      return Auditor.undecided(r, result);
    }
    Optional<Played> helped = claim.helped().map(run -> Auditor.play(r.id(), whole, run));
    helped.ifPresent(on -> goesOn(r, played, on));
    return new Audited.Stranded(r, played, claim.noWayBack(), proves.by(), helped);
  }

  private void goesOn(Requirement r, Played stranded, Played on) {
    if (on.steps().size() < stranded.steps().size()
        || !on.states().subList(0, stranded.states().size()).equals(stranded.states())
        || !on.steps().subList(0, stranded.steps().size()).equals(stranded.steps())
        || !whole.allNormal().evaluate(on.last())) {
      throw new Disagreement(
          r.id() + ": this does not lead from there to all levers N\n" + on.text());
    }
  }
}
