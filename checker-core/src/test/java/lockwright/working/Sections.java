package lockwright.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lockwright.railway.section.Section;
import lockwright.railway.section.Section.Instrument;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lock;
import lockwright.railway.section.Section.Release;
import lockwright.spec.Span;

/** Sections of two instruments, Here and There, made by hand. For tests. */
public record Sections(
    int tokens,
    List<Instrument> instruments,
    boolean plungeWhileWithdrawing,
    boolean phaseReversesAtStart,
    Irregular irregular,
    Optional<Release> release,
    List<Lock> locks) {

  /** Both attended, each needing the other's consent, all else by default; no release. */
  public static Sections pair(int tokens) {
    return new Sections(
        tokens,
        List.of(
            new Instrument("Here", true, List.of("There")),
            new Instrument("There", true, List.of("Here"))),
        true,
        false,
        Irregular.NEVER,
        Optional.empty(),
        List.of());
  }

  public Sections instruments(Instrument... all) {
    return new Sections(
        tokens,
        List.of(all),
        plungeWhileWithdrawing,
        phaseReversesAtStart,
        irregular,
        release,
        locks);
  }

  public Sections neverBoth() {
    return new Sections(
        tokens, instruments, false, phaseReversesAtStart, irregular, release, locks);
  }

  public Sections atStart() {
    return new Sections(
        tokens, instruments, plungeWhileWithdrawing, true, irregular, release, locks);
  }

  public Sections irregular(Irregular kind) {
    return new Sections(
        tokens, instruments, plungeWhileWithdrawing, phaseReversesAtStart, kind, release, locks);
  }

  public Sections release(Release its) {
    return new Sections(
        tokens,
        instruments,
        plungeWhileWithdrawing,
        phaseReversesAtStart,
        irregular,
        Optional.of(its),
        locks);
  }

  /** A ground frame that its tokens release. */
  public Sections lock(String groundFrame, boolean held) {
    List<Lock> more = new ArrayList<>(locks);
    more.add(new Lock(groundFrame, held));
    return new Sections(
        tokens,
        instruments,
        plungeWhileWithdrawing,
        phaseReversesAtStart,
        irregular,
        release,
        more);
  }

  public Section section() {
    return new Section(
        "line",
        "front",
        Section.Token.STAFF,
        tokens,
        instruments,
        "Here",
        plungeWhileWithdrawing,
        phaseReversesAtStart,
        irregular,
        release,
        locks,
        new Span("by hand", 1, 1));
  }
}
