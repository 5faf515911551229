package lockwright.audit;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lockwright.encode.names.Certificate;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Requirement;

/**
 * What has been audited of one entry of the locking table, left out alone; 10.2 of {@code
 * docs/meaning.md}. Only this package makes one. Look at it with {@link #fold}.
 */
public abstract sealed class EntryVerdict {
  private final Entry entry;

  private EntryVerdict(Entry entry) {
    this.entry = entry;
  }

  public Entry entry() {
    return entry;
  }

  /** The answer of the case that this is. */
  public abstract <T> T fold(Cases<T> cases);

  /** An answer for each case. */
  public interface Cases<T> {
    T needed(Needed needed);

    T neededByAdvice(NeededByAdvice needed);

    T implied(Implied implied);

    T notNeeded(NotNeeded notNeeded);

    T undecided(Undecided undecided);
  }

  /**
   * A run that is possible without the entry.
   *
   * @param shortest whether the search says that none is shorter; that is not audited
   * @param heldAt the number of its movement, from 1, that the entry, and nothing else, would hold
   */
  public record Allowed(Played played, boolean shortest, int heldAt) {}

  /** A requirement of safety, or an advice, that is broken without the entry, at the run's end. */
  public record Break(Requirement requirement, Allowed run) {}

  /** That something never comes about without the entry, and the checked reason. */
  public record Never(Certificate certificate, Set<CheckedBy> checkedBy) {
    public Never {
      checkedBy = EnumSet.copyOf(checkedBy);
    }

    @Override
    public Set<CheckedBy> checkedBy() {
      return EnumSet.copyOf(checkedBy);
    }
  }

  /** A requirement of safety, or an advice, that nothing breaks without the entry. */
  public record Kept(Requirement requirement, Never never) {}

  /** Without it these requirements are broken, one or more; of those open nothing is known. */
  public static final class Needed extends EntryVerdict {
    private final List<Break> breaks;
    private final List<Break> advice;
    private final List<Requirement> open;

    Needed(Entry entry, List<Break> breaks, List<Break> advice, List<Requirement> open) {
      super(entry);
      this.breaks = List.copyOf(breaks);
      this.advice = List.copyOf(advice);
      this.open = List.copyOf(open);
    }

    /** The advice that is not kept without it either. */
    public List<Break> advice() {
      return advice;
    }

    public List<Break> breaks() {
      return breaks;
    }

    public List<Requirement> open() {
      return open;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.needed(this);
    }
  }

  /** Without it each requirement of safety is kept, but some advice, one or more, is not. */
  public static final class NeededByAdvice extends EntryVerdict {
    private final List<Break> advice;
    private final List<Kept> kept;

    NeededByAdvice(Entry entry, List<Break> advice, List<Kept> kept) {
      super(entry);
      this.advice = List.copyOf(advice);
      this.kept = List.copyOf(kept);
    }

    public List<Break> advice() {
      return advice;
    }

    /** One for each requirement of safety. */
    public List<Kept> kept() {
      return kept;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.neededByAdvice(this);
    }
  }

  /** Without it, what it forbids never comes about all the same. */
  public static final class Implied extends EntryVerdict {
    private final Never never;

    Implied(Entry entry, Never never) {
      super(entry);
      this.never = never;
    }

    public Never never() {
      return never;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.implied(this);
    }
  }

  /**
   * Without it, what it forbids comes about and each requirement of safety, and each advice, is
   * kept: not needed by the requirements of this catalogue, under these assumptions, while all
   * others stay.
   */
  public static final class NotNeeded extends EntryVerdict {
    private final Allowed allows;
    private final List<Kept> kept;

    NotNeeded(Entry entry, Allowed allows, List<Kept> kept) {
      super(entry);
      this.allows = allows;
      this.kept = List.copyOf(kept);
    }

    /** The run to what the entry forbids. */
    public Allowed allows() {
      return allows;
    }

    /** One for each requirement of safety, and then one for each advice. */
    public List<Kept> kept() {
      return kept;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.notNeeded(this);
    }
  }

  /** None of these was found out. */
  public static final class Undecided extends EntryVerdict {
    private final List<String> reasons;

    Undecided(Entry entry, List<String> reasons) {
      super(entry);
      this.reasons = List.copyOf(reasons);
    }

    /** What is open, and why: one or more. */
    public List<String> reasons() {
      return reasons;
    }

    @Override
    public <T> T fold(Cases<T> cases) {
      return cases.undecided(this);
    }
  }
}
