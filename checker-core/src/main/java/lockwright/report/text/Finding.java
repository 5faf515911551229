package lockwright.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lockwright.audit.Audited;
import lockwright.audit.CheckedBy;
import lockwright.audit.MissingEntry;
import lockwright.report.Findings;
import lockwright.report.Rule;
import lockwright.report.Sequence;

/** What there is to say of a verdict, below the line with its word. */
record Finding(Findings findings) implements Audited.Cases<List<String>> {
  /** The line with the word, and what is below it. */
  List<String> text(Audited audited) {
    List<String> text = new ArrayList<>(List.of(VerdictLine.of(findings, audited)));
    text.addAll(audited.fold(this));
    return text;
  }

  @Override
  public List<String> proved(Audited.Proved proved) {
    return List.of();
  }

  @Override
  public List<String> empty(Audited.Empty empty) {
    List<String> text = new ArrayList<>();
    text.add("  it cannot be broken, but what it speaks about cannot come about either:");
    empty.never().forEach(n -> text.add("  never: " + n.subject().id()));
    return text;
  }

  @Override
  public List<String> broken(Audited.Broken broken) {
    Sequence sequence = Sequence.of(findings.box(), broken.played());
    List<String> text = new ArrayList<>(sequence.text());
    text.add("  here it breaks: " + Rule.broken(broken.requirement()));
    text.add("  the requirement: " + Rule.words(broken.requirement()));
    text.add(
        broken.shortest()
            ? "  no sequence of fewer half-strokes and events breaks it"
            : "  perhaps a shorter sequence breaks it too");
    text.addAll(AdviceLines.meetings(broken.requirement()));
    MissingEntry.draft(findings.box(), broken.requirement(), broken.played())
        .ifPresent(missing -> text.addAll(missing(missing, sequence)));
    return text;
  }

  static List<String> missing(MissingEntry missing, Sequence sequence) {
    String stops =
        missing.stopsAt() == 0
            ? "the sequence could not begin so"
            : "movement " + sequence.line(missing.stopsAt()) + " would not be free";
    return List.of(
        "  perhaps missing: '" + missing.words() + "'; with it " + stops,
        "    (a draft for a competent person; that it mends the requirement is not claimed)");
  }

  @Override
  public List<String> undecided(Audited.Undecided undecided) {
    return List.of("  reason: " + undecided.reason());
  }

  @Override
  public List<String> shown(Audited.Shown shown) {
    return Sequence.of(findings.box(), shown.played()).text();
  }

  @Override
  public List<String> impossible(Audited.Impossible impossible) {
    return List.of(
        "  it cannot come about from any beginning, however the box is worked (certificate checked"
            + " by: "
            + checkers(impossible.checkedBy())
            + ")");
  }

  @Override
  public List<String> restorable(Audited.Restorable restorable) {
    List<String> text = new ArrayList<>();
    text.add(
        "  from every state levers are put back one by one"
            + (restorable.ways().isEmpty() ? "" : ", or in one of these ways")
            + " (certificate checked by: "
            + checkers(restorable.checkedBy())
            + ")");
    restorable
        .ways()
        .forEach(way -> text.add("  way back: " + Sequence.words(findings.box(), way)));
    return text;
  }

  @Override
  public List<String> stranded(Audited.Stranded stranded) {
    Sequence sequence = Sequence.of(findings.box(), stranded.played());
    List<String> text = new ArrayList<>(sequence.text());
    text.add(
        "  "
            + Rule.broken(stranded.requirement())
            + " (certificate checked by: "
            + checkers(stranded.checkedBy())
            + ")");
    text.add("  the requirement: " + Rule.words(stranded.requirement()));
    text.add("  perhaps a shorter sequence leads to such a state too");
    if (stranded.helped().isPresent()) {
      text.add("  with what others do at the instruments, or outside, it can be restored, so:");
      text.addAll(Sequence.of(findings.box(), stranded.helped().get()).text());
    }
    return text;
  }

  private static String checkers(Set<CheckedBy> by) {
    return String.join(", ", by.stream().map(CheckedBy::words).toList());
  }
}
