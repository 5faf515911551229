package lockwright.report.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lockwright.audit.CheckedBy;
import lockwright.audit.EntryVerdict;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.report.Entries;
import lockwright.report.Rule;
import lockwright.report.Sequence;

/** What there is to say of each entry of the locking table, left out alone. */
record EntryLines(Box box) implements EntryVerdict.Cases<List<String>> {
  private static final int REASONS = 3;

  /** The one word of a verdict. */
  enum Kind implements EntryVerdict.Cases<Kind> {
    NEEDED("needed"),
    NEEDED_BY_ADVICE("needed by advice"),
    IMPLIED("implied by others"),
    NOT_NEEDED("not needed"),
    UNDECIDED("undecided");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    static Kind of(EntryVerdict verdict) {
      return verdict.fold(UNDECIDED);
    }

    @Override
    public Kind needed(EntryVerdict.Needed needed) {
      return NEEDED;
    }

    @Override
    public Kind neededByAdvice(EntryVerdict.NeededByAdvice needed) {
      return NEEDED_BY_ADVICE;
    }

    @Override
    public Kind implied(EntryVerdict.Implied implied) {
      return IMPLIED;
    }

    @Override
    public Kind notNeeded(EntryVerdict.NotNeeded notNeeded) {
      return NOT_NEEDED;
    }

    @Override
    public Kind undecided(EntryVerdict.Undecided undecided) {
      return UNDECIDED;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /** How many entries have each verdict: "37 needed, 2 implied by others, ...". */
  static String count(Entries entries) {
    Map<Kind, Integer> counts = new TreeMap<>();
    for (Kind kind : Kind.values()) {
      counts.put(kind, 0);
    }
    counts.remove(Kind.NEEDED_BY_ADVICE);
    entries.verdicts().forEach(v -> counts.merge(Kind.of(v), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(e -> e.getValue() + " " + e.getKey())
        .collect(Collectors.joining(", "));
  }

  /** A heading, and every entry with its verdict. */
  List<String> text(Entries entries) {
    if (!entries.notTried().isEmpty()) {
      return List.of(
          "Entries of the locking table, each left out alone: not tried, as " + entries.notTried());
    }
    List<String> text = new ArrayList<>();
    text.add(
        "Entries of the locking table, each left out alone while all others stay: "
            + count(entries));
    text.add("That an entry may be left out, or two together, is not said of any.");
    for (EntryVerdict verdict : entries.verdicts()) {
      text.add(
          Kind.of(verdict) + ": '" + verdict.entry().words() + "' (" + verdict.entry().at() + ")");
      text.addAll(verdict.fold(this));
    }
    return text;
  }

  @Override
  public List<String> needed(EntryVerdict.Needed needed) {
    List<String> text = new ArrayList<>();
    for (EntryVerdict.Break one : needed.breaks()) {
      text.add(
          "  without it broken after "
              + one.run().played().steps().size()
              + " half-strokes and events: "
              + one.requirement().id());
      if (text.size() == 1) {
        text.addAll(sequence(one.run()));
        text.add("  here it breaks: " + Rule.broken(one.requirement()));
      }
    }
    advice(needed.advice(), text);
    if (!needed.open().isEmpty()) {
      text.add(
          "  not known of: "
              + needed.open().stream().map(Requirement::id).collect(Collectors.joining("; ")));
    }
    return text;
  }

  @Override
  public List<String> neededByAdvice(EntryVerdict.NeededByAdvice needed) {
    List<String> text = new ArrayList<>();
    text.add("  no requirement of this catalogue breaks without it; but this advice needs it:");
    advice(needed.advice(), text);
    text.addAll(sequence(needed.advice().get(0).run()));
    return text;
  }

  private static void advice(List<EntryVerdict.Break> advice, List<String> text) {
    for (EntryVerdict.Break one : advice) {
      text.add(
          "  without it not kept, as advice, after "
              + one.run().played().steps().size()
              + " half-strokes and events: "
              + one.requirement().id());
    }
  }

  @Override
  public List<String> implied(EntryVerdict.Implied implied) {
    return List.of(
        "  without it, what it forbids never comes about all the same (certificate checked by: "
            + words(implied.never().checkedBy())
            + ")");
  }

  @Override
  public List<String> notNeeded(EntryVerdict.NotNeeded notNeeded) {
    List<String> text = new ArrayList<>();
    text.add(
        "  not needed by the requirements of this catalogue, under these assumptions, while all"
            + " others stay; but without it, what it forbids comes about:");
    text.addAll(sequence(notNeeded.allows()));
    return text;
  }

  @Override
  public List<String> undecided(EntryVerdict.Undecided undecided) {
    List<String> reasons = undecided.reasons();
    List<String> text = new ArrayList<>();
    reasons.stream().limit(REASONS).forEach(r -> text.add("  open: " + r));
    if (reasons.size() > REASONS) {
      text.add("  open: " + (reasons.size() - REASONS) + " more");
    }
    return text;
  }

  private List<String> sequence(EntryVerdict.Allowed allowed) {
    Sequence sequence = Sequence.of(box, allowed.played());
    List<String> text = new ArrayList<>(sequence.text());
    text.add("  with it, movement " + sequence.line(allowed.heldAt()) + " is not free");
    return text;
  }

  private static String words(Collection<CheckedBy> by) {
    return by.stream().map(CheckedBy::words).collect(Collectors.joining(", "));
  }
}
