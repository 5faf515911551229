package lockwright.audit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Run;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.working.Breach;
import lockwright.working.Condition;
import lockwright.working.State;
import lockwright.working.Working;

/**
 * Audits what the search claims of a box. Each requirement gets a verdict:
 *
 * <ol>
 *   <li>a run is played on the working, and must begin, follow the rules and end in what it claims;
 *   <li>a certificate must hold in the beginnings, be kept by every movement and exclude what it
 *       claims;
 *   <li>a requirement of safety is proved only if each of its subjects is played, and is empty if
 *       one is proved never to come about;
 *   <li>what was not claimed, or could not be checked within the limits, is undecided.
 * </ol>
 */
public final class Auditor {
  private final Box box;
  private final Claims claims;
  private final Working parted;
  private final Working whole;
  private final CertificateAudit onParted;
  private final CertificateAudit onWhole;
  private final RestoringAudit restoring;
  private final Map<String, OfSubject> subjects = new HashMap<>();

  private Auditor(Box box, Claims claims) {
    this.box = box;
    this.claims = claims;
    this.parted = Working.parted(box);
    this.whole = Working.whole(box);
    this.onParted = new CertificateAudit(parted);
    this.onWhole = new CertificateAudit(whole);
    this.restoring = new RestoringAudit(box, whole, onWhole);
  }

  /**
   * One verdict a requirement, in the order of the box, and then one for each advice.
   *
   * @throws Disagreement if a claim does not stand: a fault of this program
   */
  public static List<Audited> audit(Box box, Claims claims) {
    Auditor auditor = new Auditor(box, claims);
    auditor.refuseStrayClaims();
    return box.checked().stream().map(auditor::audit).toList();
  }

  private void refuseStrayClaims() {
    Set<String> stray = new TreeSet<>(claims.safety().keySet());
    stray.addAll(claims.possibilities().keySet());
    stray.addAll(claims.subjects().keySet());
    for (Requirement r : box.checked()) {
      stray.remove(r.id());
      r.speaksAbout().forEach(s -> stray.remove(s.id()));
      if ((r.possibility() ? claims.safety() : claims.possibilities()).containsKey(r.id())) {
        throw new Disagreement(r.id() + ": claimed as what it is not, safety or possibility");
      }
    }
    if (!stray.isEmpty()) {
      throw new Disagreement("claims about nothing that the box requires: " + stray);
    }
  }

  private Audited audit(Requirement r) {
    Claim claim = (r.possibility() ? claims.possibilities() : claims.safety()).get(r.id());
    if (r instanceof Requirement.FrameCanBeRestored) {
      return restoring(r, claim);
    } else if (claim instanceof Claim.Reached reached) {
      return r.possibility() ? shown(r, reached) : broken(r, reached);
    } else if (claim instanceof Claim.Never never) {
      return r.possibility() ? impossible(r, never.certificate()) : proved(r, never.certificate());
    }
    return new Audited.Undecided(r, reason(claim));
  }

  private Audited restoring(Requirement r, Claim claim) {
    if (claim instanceof Claim.Restorable restorable) {
      return restoring.restorable(r, restorable);
    } else if (claim instanceof Claim.Stranded stranded) {
      return restoring.stranded(r, stranded);
    } else if (claim instanceof Claim.Reached || claim instanceof Claim.Never) {
      throw new Disagreement(r.id() + ": claimed as another possibility would be");
    }
    return new Audited.Undecided(r, reason(claim));
  }

  static String reason(Claim claim) {
    return claim instanceof Claim.Unknown unknown ? unknown.reason() : "nothing was found out";
  }

  private Audited broken(Requirement r, Claim.Reached claim) {
    return new Audited.Broken(r, broken(r.id(), parted, parted.breach(r), claim), claim.shortest());
  }

  /**
   * Plays a run that must break something, and if claimed shortest not before its end.
   *
   * @throws Disagreement if it does not
   */
  static Played broken(String what, Working working, Breach breach, Claim.Reached claim) {
    Played played = play(what, working, claim.run());
    for (int i = 0; i < played.states().size(); i++) {
      boolean last = i == played.states().size() - 1;
      boolean broken = broken(breach, played, i);
      if (last && !broken) {
        throw new Disagreement(what + ": the run does not break it\n" + played.text());
      } else if (broken && !last && claim.shortest()) {
        throw new Disagreement(
            what + ": claimed shortest, but broken after " + i + "\n" + played.text());
      }
    }
    return played;
  }

  /** Whether the play breaks the requirement in this state, or by the movement that led to it. */
  private static boolean broken(Breach breach, Played played, int state) {
    if (breach.state().evaluate(played.states().get(state))) {
      return true;
    }
    if (state == 0) {
      return false;
    }
    Condition forbidden =
        breach.movements().getOrDefault(played.steps().get(state - 1).event(), Condition.FALSE);
    return forbidden.evaluate(played.states().get(state - 1));
  }

  private Audited shown(Requirement r, Claim.Reached claim) {
    Played played = reach(r.id(), whole, whole.goal(r), claim);
    return new Audited.Shown(r, played, claim.shortest());
  }

  /** Plays a run that must end, and if claimed shortest first arrive, where the goal holds. */
  private static Played reach(String what, Working working, Condition goal, Claim.Reached claim) {
    Played played = play(what, working, claim.run());
    List<State> states = played.states();
    if (!goal.evaluate(states.get(states.size() - 1))) {
      throw new Disagreement(what + ": the run does not come to it\n" + played.text());
    }
    if (claim.shortest()
        && states.subList(0, states.size() - 1).stream().anyMatch(goal::evaluate)) {
      throw new Disagreement(what + ": claimed shortest, but reached before\n" + played.text());
    }
    return played;
  }

  static Played play(String what, Working working, Run run) {
    Played played;
    try {
      played = Played.of(working, run);
    } catch (IllegalArgumentException e) {
      throw new Disagreement(what + ": the run cannot be played: " + e.getMessage());
    }
    if (!played.followsRules()) {
      throw new Disagreement(
          what
              + (played.begins() ? ": the run breaks the rules\n" : ": no run begins so\n")
              + played.text());
    }
    return played;
  }

  private Audited impossible(Requirement r, Certificate certificate) {
    CertificateAudit.Result result = onWhole.proves(r.id(), certificate, List.of(whole.goal(r)));
    if (result instanceof CertificateAudit.Result.Proves proves) {
      return new Audited.Impossible(r, certificate, proves.by());
    }
    return undecided(r, result);
  }

  static Audited undecided(Requirement r, CertificateAudit.Result open) {
    return new Audited.Undecided(
        r, "its certificate: " + ((CertificateAudit.Result.Open) open).reason());
  }

  private Audited proved(Requirement r, Certificate certificate) {
    CertificateAudit.Result result =
        onParted.proves(r.id(), certificate, targets(parted, parted.breach(r)));
    if (!(result instanceof CertificateAudit.Result.Proves proves)) {
      return undecided(r, result);
    }
    List<Audited.Never> never = new ArrayList<>();
    List<Played> witnesses = new ArrayList<>();
    List<String> open = new ArrayList<>();
    for (Subject subject : r.speaksAbout()) {
      OfSubject of = subjects.computeIfAbsent(subject.id(), id -> audit(subject));
      if (of instanceof OfSubject.Witness witness) {
        witnesses.add(witness.played());
      } else if (of instanceof OfSubject.Absent absent) {
        never.add(absent.never());
      } else {
        open.add(subject.id() + ": " + ((OfSubject.Open) of).reason());
      }
    }
    if (!never.isEmpty()) {
      return new Audited.Empty(r, certificate, proves.by(), never);
    } else if (!open.isEmpty()) {
      return new Audited.Undecided(
          r, "not known to come about: " + open.stream().collect(Collectors.joining("; ")));
    }
    return new Audited.Proved(r, certificate, proves.by(), witnesses);
  }

  /** All that is a breach, as conditions on one state. */
  static List<Condition> targets(Working working, Breach breach) {
    List<Condition> targets = new ArrayList<>(List.of(breach.state()));
    working
        .movements()
        .forEach(
            m -> {
              Condition forbidden = breach.movements().get(m.event());
              if (forbidden != null) {
                targets.add(Condition.all(forbidden, m.needs()));
              }
            });
    return targets;
  }

  /** What is known of a subject. */
  private sealed interface OfSubject {
    record Witness(Played played) implements OfSubject {}

    record Absent(Audited.Never never) implements OfSubject {}

    record Open(String reason) implements OfSubject {}
  }

  private OfSubject audit(Subject subject) {
    Claim claim = claims.subjects().get(subject.id());
    if (claim instanceof Claim.Reached reached) {
      return new OfSubject.Witness(reach(subject.id(), parted, parted.reaches(subject), reached));
    } else if (claim instanceof Claim.Never never) {
      CertificateAudit.Result result =
          onParted.proves(subject.id(), never.certificate(), List.of(parted.reaches(subject)));
      return result instanceof CertificateAudit.Result.Proves proves
          ? new OfSubject.Absent(
              new Audited.Never(subject, never.certificate(), EnumSet.copyOf(proves.by())))
          : new OfSubject.Open(((CertificateAudit.Result.Open) result).reason());
    }
    return new OfSubject.Open(reason(claim));
  }
}
