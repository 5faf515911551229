package lockwright.report.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import lockwright.audit.Audited;
import lockwright.audit.CheckedBy;
import lockwright.audit.MissingEntry;
import lockwright.audit.Played;
import lockwright.encode.names.Certificate;
import lockwright.railway.layout.Lie;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.requirement.Subject;
import lockwright.report.Assumption;
import lockwright.report.Findings;

/** Makes the instance of each verdict, and collects what they share. */
record Instances(Findings findings, Runs runs, Certificates certificates)
    implements Audited.Cases<Instance> {

  @Override
  public Instance proved(Audited.Proved a) {
    List<Subject> subjects = a.requirement().speaksAbout();
    List<Instance.Witness> witnesses = new ArrayList<>();
    for (int i = 0; i < subjects.size(); i++) {
      String id = subjects.get(i).id();
      witnesses.add(new Instance.Witness(id, decidedBy(id), runs.half(a.witnesses().get(i))));
    }
    return proof(a, "proved", a.certificate(), a.checkedBy(), witnesses, null);
  }

  @Override
  public Instance empty(Audited.Empty a) {
    List<Instance.Absent> never = a.never().stream().map(this::absent).toList();
    return proof(a, "empty", a.certificate(), a.checkedBy(), null, never);
  }

  @Override
  public Instance impossible(Audited.Impossible a) {
    return proof(a, "impossible", a.certificate(), a.checkedBy(), null, null);
  }

  @Override
  public Instance broken(Audited.Broken a) {
    Requirement r = a.requirement();
    Instance.Sequence sequence =
        new Instance.Sequence(
            runs.half(a.played()), a.shortest(), breaksBy(r), missing(r, a.played()));
    return instance(a, "broken", decidedBy(r.id()), null, sequence, null, null, null);
  }

  @Override
  public Instance shown(Audited.Shown a) {
    Requirement r = a.requirement();
    Instance.Sequence sequence =
        new Instance.Sequence(runs.whole(a.played()), a.shortest(), null, null);
    return instance(a, "shown", decidedBy(r.id()), null, sequence, null, null, assumptions(r));
  }

  @Override
  public Instance restorable(Audited.Restorable a) {
    List<List<EventPart>> ways =
        a.ways().stream().map(way -> way.stream().map(EventPart::of).toList()).toList();
    Instance.Restoring restoring =
        new Instance.Restoring(
            certificates.digest(a.certificate()), words(a.checkedBy()), ways, null);
    return restoring(a, "shown", null, restoring);
  }

  @Override
  public Instance stranded(Audited.Stranded a) {
    Instance.Sequence sequence =
        new Instance.Sequence(runs.whole(a.played()), false, breaksBy(a.requirement()), null);
    Instance.Restoring restoring =
        new Instance.Restoring(
            certificates.digest(a.noWayBack()),
            words(a.checkedBy()),
            null,
            a.helped().map(runs::whole).orElse(null));
    return restoring(a, "broken", sequence, restoring);
  }

  private Instance restoring(
      Audited a, String verdict, Instance.Sequence sequence, Instance.Restoring restoring) {
    Requirement r = a.requirement();
    return instance(a, verdict, decidedBy(r.id()), null, sequence, restoring, null, assumptions(r));
  }

  @Override
  public Instance undecided(Audited.Undecided a) {
    return instance(a, "undecided", null, null, null, null, a.reason(), null);
  }

  /** "state", or "movement" if it is the last movement that is forbidden. */
  static String breaksBy(Requirement r) {
    return r instanceof Requirement.RouteHeld || r instanceof Requirement.SectionSignalEarned
        ? "movement"
        : "state";
  }

  private Instance proof(
      Audited a,
      String verdict,
      Certificate certificate,
      Collection<CheckedBy> by,
      List<Instance.Witness> witnesses,
      List<Instance.Absent> never) {
    Requirement r = a.requirement();
    Instance.Proof proof =
        new Instance.Proof(certificates.digest(certificate), words(by), witnesses, never);
    return instance(a, verdict, decidedBy(r.id()), proof, null, null, null, assumptions(r));
  }

  private Instance instance(
      Audited a,
      String verdict,
      String decidedBy,
      Instance.Proof proof,
      Instance.Sequence sequence,
      Instance.Restoring restoring,
      String reason,
      List<String> assumptions) {
    Requirement r = a.requirement();
    return new Instance(
        r.id(),
        r.name(),
        r.subject(),
        r.possibility() ? "possibility" : "safety",
        Concerns.of(r),
        verdict,
        decidedBy,
        proof,
        sequence,
        restoring,
        reason,
        assumptions,
        findings.judgement(a).map(ExpectationPart::of).orElse(null),
        r instanceof Requirement.PointsToPoints p ? apart(p) : null,
        findings.box().asked().stream()
            .filter(asked -> asked.requirement().equals(r))
            .map(asked -> new Instance.AskedFor(asked.reason(), Place.of(asked.at())))
            .findFirst()
            .orElse(null));
  }

  private static Instance.Apart apart(Requirement.PointsToPoints r) {
    return new Instance.Apart(
        List.of(lying(r.first(), r.firstLie()), lying(r.second(), r.secondLie())),
        r.meetings().stream()
            .map(c -> new Instance.Meeting(c.first().name(), c.second().name(), c.reason()))
            .toList());
  }

  private static Instance.Lying lying(List<String> points, Lie lie) {
    return new Instance.Lying(points, Words.of(lie));
  }

  private Instance.Absent absent(Audited.Never never) {
    String id = never.subject().id();
    return new Instance.Absent(
        id, decidedBy(id), certificates.digest(never.certificate()), words(never.checkedBy()));
  }

  private Instance.Missing missing(Requirement r, Played breach) {
    return MissingEntry.draft(findings.box(), r, breach)
        .map(
            m ->
                new Instance.Missing(
                    m.words(), m.entry().map(EntryPart::ofDraft).orElse(null), m.stopsAt()))
        .orElse(null);
  }

  private String decidedBy(String target) {
    return findings.decidedBy().get(target);
  }

  private List<String> assumptions(Requirement r) {
    return Assumption.of(findings.box()).stream()
        .filter(a -> a.isFor(r))
        .map(Assumption::id)
        .toList();
  }

  private static List<String> words(Collection<CheckedBy> by) {
    return by.stream().sorted().map(CheckedBy::words).toList();
  }
}
