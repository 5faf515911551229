package lockwright.report.json;

import lockwright.railway.requirement.Exemption;
import lockwright.railway.requirement.Requirement;

/** An instance that is exempted by name: it has no verdict. */
record ExemptionPart(
    String id, String name, String subject, Concerns concerns, String reason, Place at) {
  static ExemptionPart of(Exemption exemption) {
    Requirement r = exemption.requirement();
    return new ExemptionPart(
        r.id(),
        r.name(),
        r.subject(),
        Concerns.of(r),
        exemption.reason(),
        Place.of(exemption.at()));
  }
}
