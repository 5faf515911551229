package lockwright.report.json;

import java.util.List;
import lockwright.railway.section.Section;

/**
 * A single-line section.
 *
 * @param phaseReverses "at the start" or "at the end"
 * @param release none if a withdrawal here releases no lever
 */
record SectionPart(
    String name,
    String track,
    String token,
    int tokens,
    List<Instrument> instruments,
    String here,
    boolean plungeWhileWithdrawing,
    String phaseReverses,
    String irregularWithdrawal,
    Release release,
    List<Lock> groundFrames,
    Place at) {

  /** Of a ground frame that the tokens release. */
  record Lock(String groundFrame, boolean heldWhileOpen) {}

  record Instrument(String name, boolean attended, List<String> needsConsentOf) {}

  record Release(List<String> levers, String lasts, String begins) {}

  static SectionPart of(Section s) {
    return new SectionPart(
        s.name(),
        s.track(),
        Words.of(s.token()),
        s.tokens(),
        s.instruments().stream()
            .map(i -> new Instrument(i.name(), i.attended(), i.needsConsentOf()))
            .toList(),
        s.here(),
        s.plungeWhileWithdrawing(),
        s.phaseReversesAtStart() ? "at the start" : "at the end",
        Words.of(s.irregular()),
        s.release()
            .map(r -> new Release(r.levers(), Words.of(r.lasts()), Words.of(r.begins())))
            .orElse(null),
        s.locks().stream().map(l -> new Lock(l.groundFrame(), l.heldWhileOpen())).toList(),
        Place.of(s.at()));
  }
}
