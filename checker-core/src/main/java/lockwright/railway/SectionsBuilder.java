package lockwright.railway;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lockwright.railway.section.Section;
import lockwright.spec.FrameFile;
import lockwright.spec.Message;
import lockwright.spec.PlanFile;
import lockwright.spec.Problems;
import lockwright.spec.SectionsFile;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/**
 * Makes the single-line sections; `docs/meaning.md` 4. Their tracks are checked with the layout.
 */
final class SectionsBuilder {
  private final Optional<PlanFile> plan;
  private final Optional<FrameFile> frame;
  private final SpecFolder spec;
  private final Problems problems;

  /** The lever that releases each ground frame, in words. */
  private final Map<String, String> byLever = new HashMap<>();

  /** The section whose tokens release each ground frame, in words. */
  private final Map<String, String> byTokens = new HashMap<>();

  private SectionsBuilder(SpecFolder spec, Problems problems) {
    this.plan = spec.plan();
    this.frame = spec.frame();
    this.spec = spec;
    this.problems = problems;
    for (FrameFile.Lever lever : frame.map(FrameFile::levers).orElse(List.of())) {
      if (lever.work().orElse(null) instanceof FrameFile.OfRelease work) {
        byLever.put(work.groundFrame().text(), "lever " + lever.id().quoted());
      }
    }
  }

  /** The sections in order of their names; only worth having if no problem was told. */
  static List<Section> build(SectionsFile file, SpecFolder spec, Problems problems) {
    SectionsBuilder builder = new SectionsBuilder(spec, problems);
    file.sections().forEach(builder::check);
    return problems.isEmpty()
        ? file.sections().stream()
            .map(builder::section)
            .sorted(Comparator.comparing(Section::name))
            .toList()
        : List.of();
  }

  private void check(SectionsFile.Section section) {
    List<String> instruments = texts(section.instruments());
    Optional<String> box = box();
    boolean here = box.isEmpty() || instruments.contains(box.get());
    if (!instruments.isEmpty() && (instruments.size() < 2 || !here)) {
      problems.add(
          Message.SECTION_INSTRUMENTS,
          section.instruments().get(0).at(),
          "section "
              + section.name().quoted()
              + (here
                  ? " has one instrument only"
                  : " has no instrument named as the box, " + box.get()),
          "name two instruments or more, and the one at this box just as the box in plan.yaml");
    }
    section.unattended().forEach(name -> known(name, section));
    for (SectionsFile.Consent consent : section.consent()) {
      known(consent.instrument(), section);
      consent.of().forEach(name -> checkConsent(name, consent, section));
    }
    section.release().ifPresent(release -> release.levers().forEach(this::checkLever));
    section.locks().forEach(lock -> checkLock(lock.groundFrame(), section));
  }

  private void checkLock(Written groundFrame, SectionsFile.Section section) {
    List<String> known =
        plan.map(PlanFile::groundFrames).orElse(List.of()).stream()
            .map(g -> g.id().text())
            .toList();
    if (!known.contains(groundFrame.text()) && spec.isWhole(SpecFolder.PLAN)) {
      problems.add(
          Message.SECTION_UNKNOWN_GROUND_FRAME,
          groundFrame.at(),
          "there is no ground frame " + groundFrame.quoted(),
          Problems.didYouMean(
              groundFrame.text(), known, "add it to the ground frames of plan.yaml"));
      return;
    }
    String other =
        byTokens.putIfAbsent(
            groundFrame.text(), "the tokens of section " + section.name().quoted());
    String lever = byLever.get(groundFrame.text());
    if (other != null) {
      releasedTwice(groundFrame, other, "let one of them release it");
    } else if (lever != null && !needsBoth(groundFrame)) {
      releasedTwice(
          groundFrame,
          lever,
          "say how they work together: if its points need both, write 'released by: lever and token'"
              + " with the ground frame in plan.yaml; if either of them is enough, this version"
              + " cannot say so: leave none of them out");
    }
  }

  private void releasedTwice(Written groundFrame, String earlier, String fix) {
    problems.add(
        Message.GROUND_FRAME_RELEASED_TWICE,
        groundFrame.at(),
        "ground frame " + groundFrame.quoted() + " is released by " + earlier + " already",
        fix);
  }

  private boolean needsBoth(Written groundFrame) {
    return plan.map(PlanFile::groundFrames).orElse(List.of()).stream()
        .anyMatch(g -> g.id().text().equals(groundFrame.text()) && g.byLeverAndToken());
  }

  private boolean known(Written instrument, SectionsFile.Section section) {
    List<String> instruments = texts(section.instruments());
    if (!instruments.contains(instrument.text())) {
      problems.add(
          Message.SECTION_UNKNOWN_INSTRUMENT,
          instrument.at(),
          "section " + section.name().quoted() + " has no instrument " + instrument.quoted(),
          Problems.didYouMean(
              instrument.text(), instruments, "name one of its instruments, or add it to them"));
    }
    return instruments.contains(instrument.text());
  }

  private void checkConsent(
      Written of, SectionsFile.Consent consent, SectionsFile.Section section) {
    boolean itself = of.text().equals(consent.instrument().text());
    boolean unattended = texts(section.unattended()).contains(of.text());
    if (known(of, section) && (itself || unattended)) {
      problems.add(
          Message.SECTION_CONSENT,
          of.at(),
          consent.instrument().quoted()
              + " would need the consent of "
              + (itself ? "itself" : of.quoted() + ", where nobody attends"),
          "name other, attended instruments, or none: []");
    }
  }

  private void checkLever(Written lever) {
    if (!spec.isWhole(SpecFolder.FRAME)) {
      return;
    }
    Optional<FrameFile.Lever> known =
        frame.orElseThrow().levers().stream()
            .filter(l -> l.id().text().equals(lever.text()))
            .findFirst();
    if (known.isEmpty()) {
      problems.add(
          Message.RELEASE_UNKNOWN_LEVER,
          lever.at(),
          "the frame has no lever " + lever.quoted(),
          "name a lever of frame.yaml that works a stop or calling-on signal");
    } else if (spec.isWhole(SpecFolder.PLAN) && !worksRunningSignal(known.get())) {
      problems.add(
          Message.RELEASE_NOT_STOP_SIGNAL,
          lever.at(),
          "lever "
              + lever.quoted()
              + " works no stop or calling-on signal, so no token can release it",
          "name the lever of the signal that leads into the section");
    }
  }

  private boolean worksRunningSignal(FrameFile.Lever lever) {
    return lever.work().orElse(null) instanceof FrameFile.OfSignal work
        && plan.orElseThrow().signals().stream()
            .filter(s -> s.id().text().equals(work.signal().text()))
            .flatMap(s -> s.arm().stream())
            .anyMatch(arm -> arm.text().equals("stop") || arm.text().equals("calling-on"));
  }

  private Optional<String> box() {
    return plan.flatMap(PlanFile::box).map(Written::text);
  }

  private Section section(SectionsFile.Section section) {
    String working = section.working().orElseThrow().text();
    return new Section(
        section.name().text(),
        section.track().orElseThrow().text(),
        word(Section.Token.class, working.substring("electric ".length())),
        section.tokens().orElseThrow(),
        instruments(section),
        box().orElseThrow(),
        section.plungeWhileWithdrawing(),
        section.phaseReverses().filter(w -> w.text().equals("at the start")).isPresent(),
        word(Section.Irregular.class, section.irregular(), "never"),
        section.release().map(SectionsBuilder::release),
        section.locks().stream()
            .map(l -> new Section.Lock(l.groundFrame().text(), l.heldWhileOpen()))
            .toList(),
        section.name().at());
  }

  private static List<Section.Instrument> instruments(SectionsFile.Section section) {
    List<String> names = texts(section.instruments());
    List<String> unattended = texts(section.unattended());
    Map<String, List<String>> consent = new HashMap<>();
    section.consent().forEach(c -> consent.put(c.instrument().text(), texts(c.of())));
    return names.stream()
        .map(
            name ->
                new Section.Instrument(
                    name,
                    !unattended.contains(name),
                    consent.getOrDefault(
                        name,
                        names.stream()
                            .filter(n -> !n.equals(name) && !unattended.contains(n))
                            .toList())))
        .toList();
  }

  private static Section.Release release(SectionsFile.Release release) {
    return new Section.Release(
        texts(release.levers()),
        word(Section.Lasts.class, release.lasts(), "until used"),
        word(Section.Begins.class, release.begins(), "either"));
  }

  private static <E extends Enum<E>> E word(
      Class<E> type, Optional<Written> written, String otherwise) {
    return word(type, written.map(Written::text).orElse(otherwise));
  }

  private static <E extends Enum<E>> E word(Class<E> type, String words) {
    return Enum.valueOf(type, words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  private static List<String> texts(List<Written> written) {
    return written.stream().map(Written::text).toList();
  }
}
